using Longrail.Drawing.Files;
using Longrail.Drawing.Sheets;
using SkiaSharp;
using UglyToad.PdfPig;

namespace Longrail.Drawing.Tests;

public sealed class PictureFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("longrail-pictures-").FullName;

    private static string Picture => ShotSheet.Draw(SyntheticShot.StraightBank());

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_png_has_the_size_asked_for_and_shows_lines_and_letters()
    {
        using SKBitmap whole = SKBitmap.Decode(SkiaRenderer.Png(Picture, 800));
        Assert.Equal(800, whole.Width);
        Assert.Equal(566, whole.Height); // 800 x 210 / 297 = 565.7

        // Letters: the same picture without its text elements differs in thousands of pixels, and only there.
        string mute = string.Join(
            '\n', Picture.Split('\n').Where(line => !line.TrimStart().StartsWith("<text", StringComparison.Ordinal)));
        using SKBitmap bare = SKBitmap.Decode(SkiaRenderer.Png(mute, 800));
        int letters = 0;
        int ink = 0;
        for (int x = 0; x < whole.Width; x++)
        {
            for (int y = 0; y < whole.Height; y++)
            {
                letters += whole.GetPixel(x, y) != bare.GetPixel(x, y) ? 1 : 0;
                ink += whole.GetPixel(x, y).Red < 100 ? 1 : 0;
            }
        }

        Assert.InRange(letters, 2000, 50_000);
        Assert.InRange(ink, 2000, 100_000);
    }

    [Fact]
    public void A_png_file_has_200_dots_per_inch_of_an_a4_sheet()
    {
        string path = Path.Combine(_folder, "shot.PNG");
        PictureFile.Save(Picture, path);

        using SKBitmap bitmap = SKBitmap.Decode(path);
        Assert.InRange(bitmap.Width, 2338, 2340); // 297 mm at 200 dots per inch: 2338.6
        Assert.InRange(bitmap.Height, 1653, 1655);
    }

    [Fact]
    public void A_pdf_is_one_a4_page_of_letters_and_lines_without_a_bitmap()
    {
        string path = Path.Combine(_folder, "shot.pdf");
        PictureFile.Save(Picture, path);

        using PdfDocument pdf = PdfDocument.Open(path);
        UglyToad.PdfPig.Content.Page page = pdf.GetPage(1);
        Assert.Equal(1, pdf.NumberOfPages);
        Assert.Equal(841.9, page.Width, 1.0); // A4 in points (ISO 216: 297 mm x 210 mm)
        Assert.Equal(595.3, page.Height, 1.0);
        // The font joins "fi" into one letter, U+FB01.
        string text = page.Text.Replace("\uFB01", "fi", StringComparison.Ordinal);
        Assert.Contains("Straight bank, firm", text, StringComparison.Ordinal);
        Assert.Contains("seen along the stick", text, StringComparison.Ordinal);
        Assert.Empty(page.GetImages());
        Assert.True(page.Paths.Count > 50, $"{page.Paths.Count} paths");
    }

    [Fact]
    public void An_svg_file_is_the_text_itself()
    {
        string path = Path.Combine(_folder, "shot.svg");
        PictureFile.Save(Picture, path);
        Assert.Equal(Picture, File.ReadAllText(path));
        Assert.NotEqual(0xEF, File.ReadAllBytes(path)[0]);
    }

    [Theory]
    [InlineData("shot.jpg", ".jpg")]
    [InlineData("shot", "\"\"")]
    [InlineData("shot.svg.txt", ".txt")]
    public void Another_ending_is_refused_with_the_ones_that_work(string name, string named)
    {
        PictureException e = Assert.Throws<PictureException>(
            () => PictureFile.Save(Picture, Path.Combine(_folder, name)));
        Assert.Contains(named, e.Message, StringComparison.Ordinal);
        Assert.Contains(".svg, .png or .pdf", e.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_named()
    {
        string path = Path.Combine(_folder, "nowhere", "shot.svg");
        PictureException e = Assert.Throws<PictureException>(() => PictureFile.Save(Picture, path));
        Assert.Contains("there is no folder", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_that_cannot_be_written_leaves_nothing_behind()
    {
        string path = Path.Combine(_folder, "taken.svg");
        Directory.CreateDirectory(path);

        PictureException e = Assert.Throws<PictureException>(() => PictureFile.Save(Picture, path));

        Assert.Contains("Cannot write", e.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public void A_file_that_was_there_stays_if_the_picture_cannot_be_made()
    {
        string path = Path.Combine(_folder, "shot.png");
        File.WriteAllText(path, "before");

        Assert.Throws<PictureException>(() => PictureFile.Save("this is no picture", path));

        Assert.Equal("before", File.ReadAllText(path));
        Assert.Single(Directory.GetFiles(_folder));
    }

    [Fact]
    public void Without_a_font_the_text_would_be_missing_and_that_is_an_error()
    {
        PictureException none = Assert.Throws<PictureException>(() => Fonts.Require(null));
        Assert.Contains("fonts-dejavu-core", none.Message, StringComparison.Ordinal);

        using SKTypeface empty = SKTypeface.Empty;
        Assert.Throws<PictureException>(() => Fonts.Require(empty));
    }
}
