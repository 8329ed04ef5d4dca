using System.Text;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;

namespace Longrail.Scenes.Reading;

/// <summary>Reads scenes. Nothing that can be in a file makes it throw.</summary>
public static class SceneReader
{
    /// <summary>The size of the largest scene that is read, bytes.</summary>
    public const int LargestScene = FileReader<Scene>.LargestFile;

    private static readonly FileReader<Scene> _reader = new(SceneFields.Root, "scene", SceneFields.PathEndingIn);

    /// <summary>Reads a scene.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    public static SceneReading Read(ReadOnlySpan<byte> utf8)
    {
        (Scene? scene, IReadOnlyList<SceneError> errors) = _reader.Read(utf8);
        return new SceneReading(scene, errors);
    }

    /// <summary>Reads a scene and makes it ready, so that an error of either kind points at its place in the
    /// text.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    public static SceneCompilation ReadReady(ReadOnlySpan<byte> utf8) => ReadReady(utf8, asLayout: false);

    /// <summary>Reads a scene and makes its layout ready (see <see cref="Scene.AsLayout"/>): for questions that leave
    /// open how it is played.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    public static SceneCompilation ReadLayout(ReadOnlySpan<byte> utf8) => ReadReady(utf8, asLayout: true);

    private static SceneCompilation ReadReady(ReadOnlySpan<byte> utf8, bool asLayout)
    {
        SceneReading reading = Read(utf8);
        if (reading.Scene is null)
            return new SceneCompilation(null, reading.Errors);
        SceneCompilation compilation = SceneCompiler.Compile(asLayout ? reading.Scene.AsLayout() : reading.Scene);
        if (compilation.Errors.Count == 0)
            return compilation;
        ReadOnlySpan<byte> text = FileReader<Scene>.WithoutMark(utf8);
        var located = new List<SceneError>(compilation.Errors.Count);
        foreach (SceneError error in compilation.Errors)
            located.Add(FieldLocator.Locate(error, text, FileReader<Scene>.Options));
        return compilation with { Errors = located };
    }

    /// <summary>Reads a scene.</summary>
    /// <param name="text">The text.</param>
    public static SceneReading Read(string text) => Read(Encoding.UTF8.GetBytes(text));
}
