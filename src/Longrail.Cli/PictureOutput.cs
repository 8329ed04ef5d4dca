using Longrail.Drawing;
using Longrail.Scenes.Outcomes;

namespace Longrail.Cli;

/// <summary>Where results meet the drawing board.</summary>
internal static class PictureOutput
{
    /// <summary>Whether a picture of that name could be drawn; if not, why. Asked before any work is done.</summary>
    public static string? Refusal(string path) => Try(() => PictureFile.RequireEnding(path));

    /// <summary>Draws an outcome and writes the picture, whole or not at all.</summary>
    /// <returns>Null, or why it could not be written.</returns>
    public static string? Write(Outcome outcome, string path) => Write(
        ShotPicture.Draw(new ShotPictureInput
        {
            Trace = outcome.Trace,
            Readings = outcome.Readings,
            Names = outcome.Scene.BallIds,
            StripeAxes = outcome.Scene.StripeAxes,
            Title = outcome.Scene.AsUsed.Title ?? "",
            TableName = outcome.Scene.AsUsed.Table?.Preset,
        }),
        path);

    /// <summary>Writes a picture, whole or not at all.</summary>
    /// <returns>Null, or why it could not be written.</returns>
    public static string? Write(string svg, string path) => Try(() => PictureFile.Save(svg, path));

    /// <summary>Writes a picture of several pages.</summary>
    /// <returns>Null, or why it could not be written.</returns>
    public static string? WritePages(IReadOnlyList<string> pages, string path) =>
        Try(() => PictureFile.SavePages(pages, path));

    private static string? Try(Action action)
    {
        try
        {
            action();
            return null;
        }
        catch (PictureException e)
        {
            return e.Message;
        }
    }
}
