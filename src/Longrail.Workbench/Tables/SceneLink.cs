using System.Buffers.Text;
using System.IO.Compression;
using System.Reflection;
using Longrail.Scenes;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Writing;

namespace Longrail.Workbench.Tables;

/// <summary>A scene as the part of an address: packed, so that a whole table fits into a link.</summary>
/// <remarks>Reading it back gives the same scene, every number bit for bit. A link is a stranger's text: whatever
/// stands in it, reading it ends in a scene or in a sentence.</remarks>
internal static class SceneLink
{
    /// <summary>The longest link that is read, characters. A scene of 64 balls takes about 3,000.</summary>
    public const int Longest = 40_000;

    private const string Form = "1.";

    /// <summary>The version of the program that writes the links.</summary>
    public static string Version { get; } =
        typeof(SceneLink).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!
            .InformationalVersion.Split('+')[0];

    /// <summary>The scene as a word of letters, digits, "-", "_" and ".".</summary>
    public static string Of(Scene scene)
    {
        using var packed = new MemoryStream();
        using (var pack = new BrotliStream(packed, CompressionLevel.Optimal, leaveOpen: true))
            pack.Write(Compact(scene));
        return Form + Base64Url.EncodeToString(packed.GetBuffer().AsSpan(0, (int)packed.Length));
    }

    /// <summary>The scene of a link, or why there is none.</summary>
    public static SceneReading Read(string? link)
    {
        if (link is null || link.Length > Longest || !link.StartsWith(Form, StringComparison.Ordinal))
            return Broken("this is no link of a table");
        byte[]? text = Unpack(link.AsSpan(Form.Length));
        return text is null or [] ? Broken("this link is damaged or cut off") : SceneReader.Read(text);
    }

    private static byte[] Compact(Scene scene)
    {
        using var buffer = new MemoryStream();
        using (var json = new System.Text.Json.Utf8JsonWriter(buffer, JsonForm.OneLine))
            SceneWriter.Write(json, scene);
        return buffer.ToArray();
    }

    // Reads no further than the largest scene, whatever the packed text would swell to.
    private static byte[]? Unpack(ReadOnlySpan<char> packed)
    {
        if (!Base64Url.IsValid(packed))
            return null;
        try
        {
            using var from = new BrotliStream(new MemoryStream(Base64Url.DecodeFromChars(packed)),
                CompressionMode.Decompress);
            byte[] buffer = new byte[SceneReader.LargestScene + 1];
            int read = from.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
            return read > SceneReader.LargestScene ? null : buffer[..read];
        }
        catch (Exception e) when (e is InvalidDataException or InvalidOperationException)
        {
            return null;
        }
    }

    private static SceneReading Broken(string problem) =>
        new(null, [new SceneError("", problem, "a whole link, copied from this page's address")]);
}
