using System.Text.Json;
using System.Text.Unicode;
using Longrail.Scenes.Fields;

namespace Longrail.Scenes.Reading;

/// <summary>Reads one kind of file of ours: JSON that follows a catalogue of fields. Nothing that can be in a file
/// makes it throw.</summary>
/// <typeparam name="TRoot">What the file describes.</typeparam>
/// <param name="root">The catalogue of its fields.</param>
/// <param name="noun">What a message calls it, as in "scene".</param>
/// <param name="fieldElsewhere">The path of a field of that name within other objects of the file, for "did you
/// mean".</param>
internal sealed class FileReader<TRoot>(Section<TRoot> root, string noun, Func<string, string?> fieldElsewhere)
    where TRoot : class, new()
{
    /// <summary>The size of the largest file that is read, bytes.</summary>
    public const int LargestFile = 1_000_000;

    /// <summary>How JSON is read: with comments and trailing commas.</summary>
    public static JsonReaderOptions Options { get; } = new()
    {
        CommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
        MaxDepth = 16,
    };

    /// <summary>Reads a text.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    /// <returns>What it describes, or null and what is wrong with it.</returns>
    public (TRoot? Root, IReadOnlyList<SceneError> Errors) Read(ReadOnlySpan<byte> utf8)
    {
        if (utf8.Length > LargestFile)
            return Failed($"the {noun} is more than {LargestFile} bytes long", $"up to {LargestFile} bytes");
        utf8 = WithoutMark(utf8);
        if (!Utf8.IsValid(utf8))
            return Failed("this is no text in UTF-8", "JSON in UTF-8");

        var state = new SceneReadState { FieldElsewhere = fieldElsewhere };
        var read = new TRoot();
        try
        {
            var json = new Utf8JsonReader(utf8, Options);
            ReadRoot(ref json, read, state);
        }
        catch (JsonException broken)
        {
            // The reader of the framework reports broken JSON in no other way.
            return (null, [.. state.Errors(utf8), Broken(broken, utf8)]);
        }

        return state.IsGood ? (read, []) : (null, state.Errors(utf8));
    }

    /// <summary>The text without a byte order mark.</summary>
    public static ReadOnlySpan<byte> WithoutMark(ReadOnlySpan<byte> utf8) =>
        utf8.StartsWith(System.Text.Encoding.UTF8.Preamble) ? utf8[3..] : utf8;

    private void ReadRoot(ref Utf8JsonReader json, TRoot read, SceneReadState state)
    {
        json.Read();
        if (json.TokenType != JsonTokenType.StartObject)
        {
            string found = SceneReadState.KindOf(ref json);
            json.Skip();
            state.Add(0, $"{found} where a {noun} is wanted", "one object, { ... }");
        }
        else
        {
            root.Read(ref json, read, state);
        }

        // Anything after the object makes the reader throw; at the end it just says no.
        json.Read();
    }

    private static (TRoot? Root, IReadOnlyList<SceneError> Errors) Failed(string problem, string allowed) =>
        (null, [new SceneError("", problem, allowed)]);

    private SceneError Broken(JsonException broken, ReadOnlySpan<byte> utf8)
    {
        var error = new SceneError("", Explain(broken, utf8), "JSON; comments and trailing commas may stand in it");
        return error with
        {
            Line = (int)Math.Min(int.MaxValue, (broken.LineNumber ?? 0) + 1),
            Column = (int)Math.Min(int.MaxValue, (broken.BytePositionInLine ?? 0) + 1),
        };
    }

    private string Explain(JsonException broken, ReadOnlySpan<byte> utf8)
    {
        if (utf8.Trim(" \t\r\n"u8).IsEmpty)
            return "there is nothing to read";
        // Two of the framework's texts speak of its own workings; the others end with the position, which stands in
        // front already.
        string text = broken.Message;
        if (text.Contains("depth to be zero", StringComparison.Ordinal))
            return $"the text ends before the {noun} does";
        if (text.Contains("configured depth", StringComparison.Ordinal))
            return $"objects or lists stand more than {Options.MaxDepth} deep in one another";
        int position = text.IndexOf(" LineNumber:", StringComparison.Ordinal);
        if (position > 0)
            text = text[..position];
        return "this is not JSON: " + text.TrimEnd('.');
    }
}
