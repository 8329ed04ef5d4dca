using System.Globalization;
using System.Text.RegularExpressions;

namespace Longrail.Coaching.Ways.Words;

/// <summary>Puts together cautions that differ in their numbers only: "at 5.1 m/s" and "at 5.9 m/s" become "at 5.1 to
/// 5.9 m/s".</summary>
internal static partial class CautionGroup
{
    /// <summary>What cautions have in common.</summary>
    internal static string KeyOf(string caution) => Number().Replace(caution, "#");

    /// <summary>The text for several cautions with one key.</summary>
    internal static string TextOf(IReadOnlyList<string> cautions)
    {
        string[][] numbers =
            [.. cautions.Select(text => Number().Matches(text).Select(match => match.Value).ToArray())];
        int at = 0;
        return Number().Replace(cautions[0], _ =>
        {
            int column = at++;
            string[] values =
            [
                .. numbers.Select(row => row[column]).Distinct()
                    .OrderBy(value => double.Parse(value, CultureInfo.InvariantCulture)),
            ];
            return values.Length == 1 ? values[0] : $"{values[0]} to {values[^1]}";
        });
    }

    [GeneratedRegex(@"\d+(\.\d+)?")]
    private static partial Regex Number();
}
