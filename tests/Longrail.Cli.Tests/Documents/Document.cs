namespace Longrail.Cli.Tests.Documents;

/// <summary>A page of the documentation.</summary>
/// <param name="Name">Its path from the root, with slashes.</param>
internal sealed record Document(string Name)
{
    /// <summary>All pages.</summary>
    public static IEnumerable<Document> All() =>
        Directory.EnumerateFiles(CliRun.Root, "*.md")
            .Concat(Directory.EnumerateFiles(Path.Combine(CliRun.Root, "docs"), "*.md", SearchOption.AllDirectories))
            .Concat(Directory.EnumerateFiles(Path.Combine(CliRun.Root, "bench"), "*.md"))
            .Select(path => new Document(Path.GetRelativePath(CliRun.Root, path).Replace('\\', '/')))
            .OrderBy(page => page.Name, StringComparer.Ordinal);

    /// <summary>The names of the pages, for theories.</summary>
    public static TheoryData<string> Names() => [.. All().Select(page => page.Name)];

    /// <summary>Its path.</summary>
    public string FullPath => Path.Combine(CliRun.Root, Name);

    /// <summary>Its lines.</summary>
    public string[] Lines() => File.ReadAllLines(FullPath);

    /// <summary>The commands that it shows, and their output where it shows that too.</summary>
    public IReadOnlyList<ShownCommand> Commands() => ShownCommand.In(Lines());
}
