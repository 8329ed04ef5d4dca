using System.Text;

namespace Longrail.Cli.Tests.Documents;

/// <summary>A command of the program that a page shows.</summary>
/// <param name="Text">The command, from the verb on.</param>
/// <param name="Output">What the page says it prints; null where it shows the command alone.</param>
/// <param name="FirstLine">Index of the first line of the output within the page.</param>
internal sealed record ShownCommand(string Text, IReadOnlyList<string>? Output, int FirstLine)
{
    private const string Prompt = "$ longrail ";
    private const string LongForm = "dotnet run --project src/Longrail.Cli -- ";

    /// <summary>The commands of a page: with their output in a block of the kind "console", alone in any
    /// other.</summary>
    public static IReadOnlyList<ShownCommand> In(string[] lines)
    {
        var found = new List<ShownCommand>();
        bool inside = false;
        bool console = false;
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].StartsWith("```", StringComparison.Ordinal))
            {
                inside = !inside;
                console = lines[i] == "```console";
            }
            else if (inside && console && lines[i].StartsWith(Prompt, StringComparison.Ordinal))
            {
                string[] output = [.. lines.Skip(i + 1).TakeWhile(line => line[..Math.Min(2, line.Length)] is not ("$ " or "``"))];
                found.Add(new ShownCommand(lines[i][Prompt.Length..], output, i + 1));
            }
            else if (inside && lines[i].StartsWith(LongForm, StringComparison.Ordinal))
            {
                found.Add(new ShownCommand(lines[i][LongForm.Length..], null, i + 1));
            }
        }

        return found;
    }

    /// <summary>The name of the picture that it draws, without its ending; null if it draws none.</summary>
    public string? Picture
    {
        get
        {
            List<string> words = Words(Text);
            int at = words.IndexOf("--picture");
            return at >= 0 ? Path.GetFileNameWithoutExtension(words[at + 1]) : null;
        }
    }

    /// <summary>Runs it; understands "&lt; FILE" and "| head -n N" at its end. Pictures go to a folder, as
    /// SVG.</summary>
    /// <returns>What it prints, errors last.</returns>
    public string[] Run(string pictures)
    {
        List<string> words = Words(Text);
        int most = int.MaxValue;
        if (words is [.., "|", "head", "-n", var count])
        {
            most = int.Parse(count, System.Globalization.CultureInfo.InvariantCulture);
            words.RemoveRange(words.Count - 4, 4);
        }

        string input = "";
        if (words is [.., "<", var file])
        {
            input = File.ReadAllText(Path.Combine(CliRun.Root, file));
            words.RemoveRange(words.Count - 2, 2);
        }

        for (int i = 0; i < words.Count; i++)
        {
            if (i > 0 && words[i - 1] == "--picture")
                words[i] = Path.Combine(pictures, Path.GetFileNameWithoutExtension(words[i]) + ".svg");
            else if (words[i].StartsWith("scenes/", StringComparison.Ordinal))
                words[i] = Path.Combine(CliRun.Root, words[i]);
        }

        CliRun run = CliRun.Of(input, [.. words]);
        string text = (run.Output + run.Error).Replace(CliRun.Root + Path.DirectorySeparatorChar, "");
        return [.. text.TrimEnd('\n').Split('\n').Select(line => line.TrimEnd('\r')).Take(most)];
    }

    /// <summary>The words of a command line, with double quotes as a shell takes them.</summary>
    private static List<string> Words(string text)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        bool quoted = false;
        foreach (char c in text + " ")
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c != ' ' || quoted)
            {
                word.Append(c);
            }
            else if (word.Length > 0)
            {
                words.Add(word.ToString());
                word.Clear();
            }
        }

        return words;
    }
}
