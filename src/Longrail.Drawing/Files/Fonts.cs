using SkiaSharp;

namespace Longrail.Drawing.Files;

/// <summary>Makes sure that text will be seen: without a font the renderer leaves it out and says nothing.</summary>
internal static class Fonts
{
    internal const string Wanted = "DejaVu Sans";

    /// <summary>Throws if there is no font with plain letters and digits.</summary>
    internal static void Require() => Require(SKFontManager.Default.MatchFamily(Wanted) ?? SKTypeface.Default);

    /// <summary>The same for a given typeface.</summary>
    internal static void Require(SKTypeface? typeface)
    {
        using SKFont? font = typeface is null ? null : new SKFont(typeface);
        if (font is null || !font.ContainsGlyphs("AZaz09.°"))
        {
            throw new PictureException(
                "Cannot make a PNG or PDF: no font is installed, the text would be missing. Install one "
                + "(Debian: apt-get install fonts-dejavu-core), or ask for an .svg, which is set where it is shown.");
        }
    }
}
