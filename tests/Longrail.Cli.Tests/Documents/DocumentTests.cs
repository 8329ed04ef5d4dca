using System.Text.RegularExpressions;

namespace Longrail.Cli.Tests.Documents;

/// <summary>The pages say what the program does, and lead where they point. UPDATE_SNAPSHOTS=1 brings the shown outputs
/// and the figures up to date.</summary>
public sealed partial class DocumentTests : IDisposable
{
    private readonly string _pictures = Directory.CreateTempSubdirectory("longrail-documents-").FullName;

    private static bool Updates => Environment.GetEnvironmentVariable("UPDATE_SNAPSHOTS") == "1";

    public static TheoryData<string> Pages => Document.Names();

    public void Dispose() => Directory.Delete(_pictures, recursive: true);

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_command_prints_what_its_page_says(string name)
    {
        var page = new Document(name);
        List<string> lines = [.. page.Lines()];
        foreach (ShownCommand command in page.Commands().Reverse().Where(command => command.Output is not null))
        {
            string[] prints = command.Run(_pictures);
            if (Updates)
            {
                lines.RemoveRange(command.FirstLine, command.Output!.Count);
                lines.InsertRange(command.FirstLine, prints);
            }
            else
            {
                Assert.Equal(string.Join('\n', prints), string.Join('\n', command.Output!));
            }
        }

        if (Updates && !lines.SequenceEqual(page.Lines()))
            File.WriteAllText(page.FullPath, string.Join('\n', lines) + "\n");
    }

    [Fact]
    public void The_pages_show_commands_of_every_verb()
    {
        string[] verbs = [.. Document.All().SelectMany(page => page.Commands()).Where(command => command.Output is not null)
            .Select(command => command.Text.Split(' ')[0])];
        Assert.Contains("shoot", verbs);
        Assert.Contains("contrast", verbs);
        Assert.Contains("chart", verbs);
        Assert.Contains("ways", verbs);
        Assert.Contains("effects", verbs);
    }

    [Fact]
    public void Every_figure_is_what_its_command_draws()
    {
        ShownCommand[] drawing = [.. Document.All().SelectMany(page => page.Commands()).Where(command => command.Picture is not null)];
        // The workbench's pages are taken, as PNG, by its own tests.
        foreach (string figure in Directory.EnumerateFiles(Path.Combine(CliRun.Root, "docs", "figures"), "*.svg"))
        {
            string name = Path.GetFileNameWithoutExtension(figure);
            ShownCommand? command = drawing.FirstOrDefault(command => command.Picture == name);
            Assert.True(command is not null, $"No page shows the command that draws {name}.");
            command.Run(_pictures);
            string drawn = File.ReadAllText(Path.Combine(_pictures, name + ".svg"));
            if (Updates)
                File.WriteAllText(figure, drawn);
            Assert.True(drawn == File.ReadAllText(figure), $"{figure} is not what \"{command.Text}\" draws.");
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_link_leads_somewhere(string name)
    {
        var page = new Document(name);
        string text = string.Join('\n', page.Lines());
        Assert.All(Link().Matches(text), match =>
        {
            string target = match.Groups["target"].Value;
            if (target.StartsWith("http", StringComparison.Ordinal))
                return;
            string[] parts = target.Split('#');
            string path = parts[0].Length == 0
                ? page.FullPath
                : Path.GetFullPath(Path.Combine(Path.GetDirectoryName(page.FullPath)!, parts[0]));
            Assert.True(Path.Exists(path), $"{target}: there is no such file.");
            if (parts.Length > 1)
                Assert.Contains(parts[1], File.ReadAllLines(path).Where(line => line.StartsWith('#')).Select(Anchor));
        });
    }

    [Fact]
    public void Every_source_that_is_cited_is_in_the_list_once()
    {
        string list = File.ReadAllText(Path.Combine(CliRun.Root, "docs", "sources.md"));
        string[] listed = [.. ListedSource().Matches(list).Select(match => match.Groups[1].Value)];
        Assert.Equal(listed.Distinct(), listed);
        IEnumerable<string> cited = Document.All()
            .SelectMany(page => CitedSource().Matches(File.ReadAllText(page.FullPath)).Select(match => match.Value));
        Assert.All(cited, source => Assert.Contains(source, listed));
        Assert.True(listed.Length > 20);
    }

    [Fact]
    public void The_guide_shows_the_scene_that_it_plays()
    {
        string guide = File.ReadAllText(Path.Combine(CliRun.Root, "docs", "guide", "first-bank.md"));
        string scene = File.ReadAllText(CliRun.Scene("first-bank.json"));
        Assert.Contains(scene[scene.IndexOf('{')..].TrimEnd(), guide);
    }

    // As the usual forges make them: small letters, no punctuation, a hyphen for each space.
    private static string Anchor(string heading) =>
        Punctuation().Replace(heading.TrimStart('#').Trim().ToLowerInvariant(), "").Replace(' ', '-');

    [GeneratedRegex(@"\]\((?<target>[^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"[^\p{L}\p{N}\- _]")]
    private static partial Regex Punctuation();

    [GeneratedRegex(@"^\*\*(\[(?:S\d+|D)\])\*\*", RegexOptions.Multiline)]
    private static partial Regex ListedSource();

    [GeneratedRegex(@"\[(?:S\d+|D)\]")]
    private static partial Regex CitedSource();
}
