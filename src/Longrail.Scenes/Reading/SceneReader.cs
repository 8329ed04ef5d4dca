using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;

namespace Longrail.Scenes.Reading;

/// <summary>Reads scenes. Nothing that can be in a file makes it throw.</summary>
public static class SceneReader
{
    /// <summary>The size of the largest scene that is read, bytes.</summary>
    public const int LargestScene = 1_000_000;

    private static readonly JsonReaderOptions _options = new()
    {
        CommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
        MaxDepth = 16,
    };

    /// <summary>Reads a scene.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    public static SceneReading Read(ReadOnlySpan<byte> utf8)
    {
        if (utf8.Length > LargestScene)
            return Failed($"the scene is more than {LargestScene} bytes long", $"up to {LargestScene} bytes");
        utf8 = WithoutMark(utf8);
        if (!Utf8.IsValid(utf8))
            return Failed("this is no text in UTF-8", "JSON in UTF-8");

        var state = new SceneReadState();
        var scene = new Scene();
        try
        {
            var json = new Utf8JsonReader(utf8, _options);
            ReadRoot(ref json, scene, state);
        }
        catch (JsonException broken)
        {
            // The reader of the framework reports broken JSON in no other way.
            return new SceneReading(null, [.. state.Errors(utf8), Broken(broken, utf8)]);
        }

        return state.IsGood ? new SceneReading(scene, []) : new SceneReading(null, state.Errors(utf8));
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
        ReadOnlySpan<byte> text = WithoutMark(utf8);
        var located = new List<SceneError>(compilation.Errors.Count);
        foreach (SceneError error in compilation.Errors)
            located.Add(FieldLocator.Locate(error, text, _options));
        return compilation with { Errors = located };
    }

    /// <summary>Reads a scene.</summary>
    /// <param name="text">The text.</param>
    public static SceneReading Read(string text) => Read(Encoding.UTF8.GetBytes(text));

    private static ReadOnlySpan<byte> WithoutMark(ReadOnlySpan<byte> utf8) =>
        utf8.StartsWith(Encoding.UTF8.Preamble) ? utf8[3..] : utf8;

    private static void ReadRoot(ref Utf8JsonReader json, Scene scene, SceneReadState state)
    {
        json.Read();
        if (json.TokenType != JsonTokenType.StartObject)
        {
            string found = SceneReadState.KindOf(ref json);
            json.Skip();
            state.Add(0, $"{found} where a scene is wanted", "one object, { ... }");
        }
        else
        {
            SceneFields.Root.Read(ref json, scene, state);
        }

        // Anything after the scene makes the reader throw; at the end it just says no.
        json.Read();
    }

    private static SceneReading Failed(string problem, string allowed) =>
        new(null, [new SceneError("", problem, allowed)]);

    private static SceneError Broken(JsonException broken, ReadOnlySpan<byte> utf8)
    {
        var error = new SceneError("", Explain(broken, utf8), "JSON; comments and trailing commas may stand in it");
        return error with
        {
            Line = (int)Math.Min(int.MaxValue, (broken.LineNumber ?? 0) + 1),
            Column = (int)Math.Min(int.MaxValue, (broken.BytePositionInLine ?? 0) + 1),
        };
    }

    private static string Explain(JsonException broken, ReadOnlySpan<byte> utf8)
    {
        if (utf8.Trim(" \t\r\n"u8).IsEmpty)
            return "there is nothing to read";
        // Two of the framework's texts speak of its own workings; the others end with the position, which stands in
        // front already.
        string text = broken.Message;
        if (text.Contains("depth to be zero", StringComparison.Ordinal))
            return "the text ends before the scene does";
        if (text.Contains("configured depth", StringComparison.Ordinal))
            return $"objects or lists stand more than {_options.MaxDepth} deep in one another";
        int position = text.IndexOf(" LineNumber:", StringComparison.Ordinal);
        if (position > 0)
            text = text[..position];
        return "this is not JSON: " + text.TrimEnd('.');
    }
}
