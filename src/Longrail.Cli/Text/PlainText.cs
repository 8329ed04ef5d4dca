namespace Longrail.Cli.Text;

/// <summary>Text that comes from a user: titles, names, levels.</summary>
internal static class PlainText
{
    /// <summary>The text without control characters: it must not steer the terminal.</summary>
    internal static string Of(string text) => string.Create(text.Length, text, (span, from) =>
    {
        for (int i = 0; i < span.Length; i++)
            span[i] = char.IsControl(from[i]) ? ' ' : from[i];
    });

    /// <summary>A text broken between words into lines of a width.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">Most characters of a line, unless one word has more.</param>
    /// <param name="first">What stands before the first line.</param>
    /// <param name="indent">What stands before the others.</param>
    internal static IEnumerable<string> Wrapped(string text, int width, string first, string indent)
    {
        string line = first;
        bool isEmpty = true;
        foreach (string word in Of(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!isEmpty && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = indent;
                isEmpty = true;
            }

            line += isEmpty ? word : " " + word;
            isEmpty = false;
        }

        yield return line;
    }
}
