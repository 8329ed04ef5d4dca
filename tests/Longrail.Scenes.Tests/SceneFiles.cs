using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Text;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Outcomes;
using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Tests;

/// <summary>Scenes for the tests: those of the repository, and short ones made in place.</summary>
internal static class SceneFiles
{
    private static readonly ConcurrentDictionary<string, Lazy<Outcome>> _played = new();

    /// <summary>The root of the repository.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The scene files of the repository.</summary>
    public static IEnumerable<string> All() => Directory.EnumerateFiles(Path.Combine(Root, "scenes"), "*.json").Order();

    /// <summary>The names of those files, for theories.</summary>
    public static TheoryData<string> Names() => [.. All().Select(path => Path.GetFileName(path)!)];

    /// <summary>The text of one of them.</summary>
    public static byte[] Text(string name) => File.ReadAllBytes(Path.Combine(Root, "scenes", name));

    /// <summary>One of them, played. Solving an aim takes hundreds of shots: each is played once for all
    /// tests.</summary>
    public static Outcome Played(string name) => _played.GetOrAdd(
        name, static name => new Lazy<Outcome>(() => Outcome.Of(Ready(Encoding.UTF8.GetString(Text(name)))))).Value;

    /// <summary>A scene of one cue ball in the middle of the bed, with more fields.</summary>
    public static string OneBall(string moreFields = "") =>
        $$"""{"balls":[{"id":"cue","x":1.0,"y":0.6}]{{More(moreFields)}}}""";

    /// <summary>A scene of a cue ball and an object ball, with more fields.</summary>
    public static string TwoBalls(string moreFields = "") =>
        $$"""{"balls":[{"id":"cue","x":0.8,"y":0.6},{"id":"9","x":1.5,"y":0.6}]{{More(moreFields)}}}""";

    /// <summary>The ready scene of a text that is in order.</summary>
    public static ReadyScene Ready(string text)
    {
        SceneCompilation compilation = SceneReader.ReadReady(Encoding.UTF8.GetBytes(text));
        Assert.True(compilation.Errors.Count == 0, string.Join("\n", compilation.Errors));
        return compilation.Ready!;
    }

    /// <summary>What is wrong with a text.</summary>
    public static IReadOnlyList<SceneError> Errors(string text)
    {
        SceneCompilation compilation = SceneReader.ReadReady(Encoding.UTF8.GetBytes(text));
        Assert.Equal(compilation.Ready is null, compilation.Errors.Count > 0);
        return compilation.Errors;
    }

    /// <summary>The one thing that is wrong with a text.</summary>
    public static SceneError Error(string text) => Assert.Single(Errors(text));

    private static string More(string fields) => fields.Length == 0 ? "" : "," + fields;

    private static string FindRoot([CallerFilePath] string thisFile = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(thisFile)!, "..", ".."));
}
