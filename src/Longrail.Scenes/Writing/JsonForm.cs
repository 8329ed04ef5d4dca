using System.Text.Encodings.Web;
using System.Text.Json;

namespace Longrail.Scenes.Writing;

/// <summary>How JSON is written: for people, indented, or one object a line.</summary>
/// <remarks>Only what JSON itself demands is escaped. The files are for people and programs; whoever puts one into a
/// web page must escape it for that page.</remarks>
public static class JsonForm
{
    /// <summary>Indented, for people.</summary>
    public static JsonWriterOptions Indented { get; } = new()
    {
        Indented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>On one line, for programs, as fast as can be: the writer does not check that it is called in a legal
    /// order. The same code writes the indented form, which does check.</summary>
    public static JsonWriterOptions OneLine { get; } = new()
    {
        SkipValidation = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Indented text of what a function writes, ending with a line break.</summary>
    /// <param name="write">Writes one JSON value.</param>
    public static byte[] ToUtf8(Action<Utf8JsonWriter> write)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, Indented))
            write(json);
        buffer.WriteByte((byte)'\n');
        return buffer.ToArray();
    }
}
