using System.Globalization;

namespace Longrail.Cli.Input;

/// <summary>A number of cushions as it is typed: "1", or "0..2".</summary>
/// <param name="Fewest">The fewest.</param>
/// <param name="Most">The most.</param>
public readonly record struct RailRange(int Fewest, int Most)
{
    /// <summary>The most cushions of an object ball that are looked at.</summary>
    public const int Limit = 3;

    /// <summary>How it is written, for messages.</summary>
    public const string Form = "a number from 0 to 3, or a range as 0..2";

    /// <summary>Reads a range; null if it is none.</summary>
    /// <param name="text">As typed.</param>
    public static RailRange? Read(string text)
    {
        string[] ends = text.Split("..");
        if (ends.Length > 2 || Number(ends[0]) is not { } fewest || Number(ends[^1]) is not { } most)
            return null;
        return fewest <= most && most <= Limit ? new RailRange(fewest, most) : null;
    }

    private static int? Number(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : null;
}
