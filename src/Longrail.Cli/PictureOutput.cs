using Longrail.Scenes.Outcomes;

namespace Longrail.Cli;

/// <summary>Where outcomes meet the drawing board.</summary>
internal static class PictureOutput
{
    /// <summary>Whether a picture of that name could be drawn; if not, why. Asked before any work is done.</summary>
    public static string? Refusal(string path) => $"{path}: pictures are not available yet";

    /// <summary>Draws an outcome and writes the picture, whole or not at all.</summary>
    /// <returns>Null, or why it could not be written.</returns>
    public static string? Write(Outcome outcome, string path) => Refusal(path);
}
