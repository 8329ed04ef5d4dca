using System.Text;
using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Ways;
using Longrail.Scenes.Writing;

namespace Longrail.Cli.Ways;

/// <summary>Writes each way as a scene of its own into a folder.</summary>
internal static class WaysFolder
{
    /// <summary>Makes sure that the folder is there. Asked before any work is done.</summary>
    /// <returns>Null, or why it cannot be had.</returns>
    internal static string? Prepare(string folder) => Try(() => Directory.CreateDirectory(folder));

    /// <summary>Writes the scenes; each is named after its letter and its route.</summary>
    /// <returns>Null, or why one could not be written.</returns>
    internal static string? Write(WaysAnswer answer, string folder) => Try(() =>
    {
        for (int k = 0; k < answer.Ways.Count; k++)
        {
            Way way = answer.Ways[k];
            string file = Path.Combine(folder, NameOf(way, k));
            string part = file + ".part";
            File.WriteAllBytes(part, SceneWriter.ToUtf8(WayScene.Of(answer.Request, way)));
            File.Move(part, file, overwrite: true);
        }
    });

    /// <summary>The file of a way: "A-cross-side-bank-off-right-into-left-side.json".</summary>
    internal static string NameOf(Way way, int index)
    {
        var name = new StringBuilder(VariantLetter.Of(index)).Append('-');
        foreach (char c in way.Words)
        {
            if (char.IsAsciiLetterOrDigit(c))
                name.Append(c);
            else if (name[^1] != '-')
                name.Append('-');
        }

        return name.ToString().TrimEnd('-') + ".json";
    }

    private static string? Try(Action action)
    {
        try
        {
            action();
            return null;
        }
        catch (Exception e) when (
            e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return e.Message;
        }
    }
}
