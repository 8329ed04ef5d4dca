using System.Globalization;
using System.Text;
using Longrail.Drawing.Files;

namespace Longrail.Drawing;

/// <summary>Writes a picture to a file, in the form that the file's name asks for.</summary>
public static class PictureFile
{
    /// <summary>The endings that are understood.</summary>
    public static IReadOnlyList<string> Endings { get; } = [".svg", ".png", ".pdf"];

    /// <summary>Writes a picture: the SVG text itself, a PNG of it (200 dots per inch at its printed size), or a PDF
    /// page made of lines and letters. The file is written whole or not at all: a file that was there before stays if
    /// anything fails.</summary>
    /// <param name="svg">The picture as SVG text.</param>
    /// <param name="path">The file; ends in .svg, .png or .pdf.</param>
    /// <exception cref="PictureException">Another ending, a place that cannot be written, or no font to set the text
    /// in.</exception>
    public static void Save(string svg, string path)
    {
        RequireEnding(path);
        Write(path, Bytes(svg, Path.GetExtension(path).ToLowerInvariant()));
    }

    /// <summary>Writes a picture of several pages: one PDF, or as many SVGs or PNGs, of which the second is called
    /// NAME-2 and so on. Each file is written whole or not at all.</summary>
    /// <param name="pages">The pages as SVG text; one or more.</param>
    /// <param name="path">The file; ends in .svg, .png or .pdf.</param>
    /// <exception cref="PictureException">Another ending, a place that cannot be written, or no font to set the text
    /// in.</exception>
    public static void SavePages(IReadOnlyList<string> pages, string path)
    {
        ArgumentNullException.ThrowIfNull(pages);
        RequireEnding(path);
        string ending = Path.GetExtension(path);
        if (ending.Equals(".pdf", StringComparison.OrdinalIgnoreCase))
        {
            Write(path, SkiaRenderer.Pdf(pages));
            return;
        }

        string start = path[..^ending.Length];
        for (int k = 0; k < pages.Count; k++)
            Save(pages[k], k == 0 ? path : string.Create(CultureInfo.InvariantCulture, $"{start}-{k + 1}{ending}"));
    }

    /// <summary>Refuses a file name that <see cref="Save"/> could not write, before any work is done for it.</summary>
    /// <exception cref="PictureException">Another ending than .svg, .png or .pdf, or no such folder.</exception>
    public static void RequireEnding(string path)
    {
        string ending = Path.GetExtension(path).ToLowerInvariant();
        if (!Endings.Contains(ending))
            throw new PictureException($"A picture is written as .svg, .png or .pdf; \"{path}\" ends in \"{ending}\".");
        string folder = Path.GetDirectoryName(Path.GetFullPath(path)) ?? "";
        if (!Directory.Exists(folder))
            throw new PictureException($"Cannot write \"{path}\": there is no folder \"{folder}\".");
    }

    private static byte[] Bytes(string svg, string ending) => ending switch
    {
        ".png" => SkiaRenderer.Png(svg, SkiaRenderer.PrintWidth(svg, 200)),
        ".pdf" => SkiaRenderer.Pdf(svg),
        _ => new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(svg),
    };

    private static void Write(string path, byte[] bytes)
    {
        string full = Path.GetFullPath(path);
        // Beside its goal, so that the move stays on one disk and is one step.
        string part = Path.Combine(Path.GetDirectoryName(full)!, $".{Path.GetFileName(full)}.{Guid.NewGuid():N}.part");
        try
        {
            File.WriteAllBytes(part, bytes);
            File.Move(part, full, overwrite: true);
        }
        catch (Exception e) when (
            e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            File.Delete(part);
            throw new PictureException($"Cannot write \"{path}\": {e.Message}", e);
        }
    }
}
