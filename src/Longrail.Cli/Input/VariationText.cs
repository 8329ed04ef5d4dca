using System.Text;
using Longrail.Coaching.Contrasts;

namespace Longrail.Cli.Input;

/// <summary>Reads what is to be varied: path=level,level,...</summary>
/// <remarks>Levels stand between commas. A comma within quotes, brackets or braces belongs to its level; quotes around
/// a whole level are dropped, so that a level may also be empty or have blanks at its ends.</remarks>
public static class VariationText
{
    /// <summary>How it is written, for messages.</summary>
    public const string Form = "FIELD=LEVEL,LEVEL,... as in stroke.speed=\"1.2 m/s,2.5 m/s\"";

    /// <summary>Reads a variation.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="problem">What is wrong, if it cannot be read; else empty.</param>
    /// <returns>The variation, or null.</returns>
    public static Variation? Read(string text, out string problem)
    {
        int equals = text.IndexOf('=', StringComparison.Ordinal);
        string path = equals < 0 ? "" : text[..equals].Trim();
        if (path.Length == 0)
        {
            problem = $"\"{text}\" names no field; allowed: {Form}";
            return null;
        }

        List<string>? levels = Split(text[(equals + 1)..]);
        if (levels is null)
        {
            problem = $"{path}: a quote, bracket or brace is left open";
            return null;
        }

        int empty = levels.FindIndex(string.IsNullOrEmpty);
        if (empty >= 0)
        {
            problem = levels.Count == 1
                ? $"{path}: no level is given; allowed: {Form}"
                : $"{path}: level {empty + 1} of {levels.Count} is empty";
            return null;
        }

        problem = "";
        return new Variation(path, [.. levels.Select(Unquoted)]);
    }

    private static List<string>? Split(string text)
    {
        var levels = new List<string>();
        var level = new StringBuilder();
        char quote = '\0';
        int depth = 0;
        foreach (char c in text)
        {
            if (quote != '\0')
                quote = c == quote ? '\0' : quote;
            else if (c is '"' or '\'')
                quote = c;
            else if (c is '[' or '{')
                depth++;
            else if (c is ']' or '}')
                depth--;

            if (c == ',' && quote == '\0' && depth == 0)
            {
                levels.Add(level.ToString().Trim());
                level.Clear();
            }
            else
            {
                level.Append(c);
            }
        }

        levels.Add(level.ToString().Trim());
        return quote == '\0' && depth == 0 ? levels : null;
    }

    private static string Unquoted(string level) =>
        level.Length >= 2 && level[0] is '"' or '\'' && level[^1] == level[0] ? level[1..^1] : level;
}
