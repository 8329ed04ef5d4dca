using SkiaSharp;
using Svg.Skia;

namespace Longrail.Drawing.Files;

/// <summary>Makes pixels and pages out of SVG text.</summary>
public static class SkiaRenderer
{
    // What an SVG length of one inch is in user units, by CSS; and in the points of a page.
    private const double PixelsPerInch = 96.0;
    private const double PointsPerInch = 72.0;

    /// <summary>A PNG of a given width; its height follows from the picture.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="width">Width in pixels, from 16 to 20000.</param>
    /// <exception cref="PictureException">There is no font to set the text in, or the picture cannot be
    /// read.</exception>
    public static byte[] Png(string svg, int width)
    {
        if (width is < 16 or > 20000)
            throw new ArgumentOutOfRangeException(nameof(width), width, "A picture is 16 to 20000 pixels wide.");
        return With(svg, picture =>
        {
            SKRect frame = picture.CullRect;
            float scale = width / frame.Width;
            int height = (int)Math.Round(frame.Height * scale);
            using var surface = SKSurface.Create(
                new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul));
            surface.Canvas.Clear(SKColors.White);
            surface.Canvas.Scale(scale);
            surface.Canvas.DrawPicture(picture);
            using SKImage image = surface.Snapshot();
            using SKData data = image.Encode(SKEncodedImageFormat.Png, 100);
            return data.ToArray();
        });
    }

    /// <summary>A PDF of one page at the picture's printed size; lines stay lines and letters stay letters.</summary>
    /// <exception cref="PictureException">There is no font to set the text in, or the picture cannot be
    /// read.</exception>
    public static byte[] Pdf(string svg) => Pdf([svg]);

    /// <summary>A PDF of several pages, each at its picture's printed size.</summary>
    /// <param name="pages">The pages as SVG text; one or more.</param>
    /// <exception cref="PictureException">There is no font to set the text in, or a picture cannot be
    /// read.</exception>
    public static byte[] Pdf(IReadOnlyList<string> pages)
    {
        ArgumentNullException.ThrowIfNull(pages);
        using var stream = new MemoryStream();
        AddPages(pages, stream);
        return stream.ToArray();
    }

    private static void AddPages(IReadOnlyList<string> pages, MemoryStream stream)
    {
        SKDocument? document = null;
        try
        {
            foreach (string page in pages)
            {
                // Opened within the guard: the library itself may be missing.
                document = With(page, picture =>
                {
                    SKDocument open = document ?? SKDocument.CreatePdf(stream);
                    AddPage(open, picture);
                    return open;
                });
            }

            document?.Close();
        }
        finally
        {
            document?.Dispose();
        }
    }

    private static void AddPage(SKDocument document, SKPicture picture)
    {
        const float Scale = (float)(PointsPerInch / PixelsPerInch);
        SKRect frame = picture.CullRect;
        SKCanvas canvas = document.BeginPage(frame.Width * Scale, frame.Height * Scale);
        canvas.Scale(Scale);
        canvas.DrawPicture(picture);
        document.EndPage();
    }

    /// <summary>How many pixels wide a picture is when printed at a resolution.</summary>
    internal static int PrintWidth(string svg, double dotsPerInch) =>
        With(svg, picture => (int)Math.Round(picture.CullRect.Width / PixelsPerInch * dotsPerInch));

    private static T With<T>(string svg, Func<SKPicture, T> use)
    {
        try
        {
            Fonts.Require();
            using var reader = new SKSvg();
            SKPicture picture = reader.FromSvg(svg)
                ?? throw new PictureException("The picture's SVG text cannot be read.");
            return use(picture);
        }
        catch (System.Xml.XmlException e)
        {
            throw new PictureException($"The picture's SVG text cannot be read: {e.Message}", e);
        }
        catch (Exception e) when (e is DllNotFoundException or TypeInitializationException)
        {
            throw new PictureException(
                "Cannot make a PNG or PDF: the drawing library does not load here. On Linux it needs libfontconfig1 "
                + "(Debian: apt-get install libfontconfig1 fonts-dejavu-core). An .svg needs neither.", e);
        }
    }
}
