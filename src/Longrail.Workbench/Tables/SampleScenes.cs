using Longrail.Scenes.Reading;

namespace Longrail.Workbench.Tables;

/// <summary>The scenes of our own that the page offers.</summary>
internal static class SampleScenes
{
    private const string Prefix = "scenes/";
    private const string First = "first-bank";

    /// <summary>Their names: the file names without ending.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        .. typeof(SampleScenes).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(name => Path.GetFileNameWithoutExtension(name))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The scene that the page opens on: a bank that is made, with a striped ball.</summary>
    public static SceneReading Opening => Read(First);

    /// <summary>A scene by its name.</summary>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    public static SceneReading Read(string name)
    {
        using Stream stream = typeof(SampleScenes).Assembly.GetManifestResourceStream($"{Prefix}{name}.json")
            ?? throw new ArgumentException($"There is no scene \"{name}\".", nameof(name));
        using var text = new MemoryStream();
        stream.CopyTo(text);
        return SceneReader.Read(text.ToArray());
    }

    /// <summary>What a page calls it: "first bank".</summary>
    public static string Title(string name) => name.Replace('-', ' ');
}
