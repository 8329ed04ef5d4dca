using Longrail.Drawing.Svg;
using SkiaSharp;

namespace Longrail.Drawing.Tests;

public class TextWidthTests
{
    // Independent route: the font's own advance widths, through the renderer.
    [Theory]
    [InlineData("Straight bank, an eighth of right side", false)]
    [InlineData("Straight bank, an eighth of right side", true)]
    [InlineData("0123456789 +-.,:;()[]{}%&*/\\|<>=?!@#$^_`'\"~", false)]
    [InlineData("cut 12.3° left", false)]
    public void A_text_is_as_wide_as_the_font_makes_it(string text, bool bold)
    {
        using SKTypeface face = SKTypeface.FromFamilyName("DejaVu Sans", bold ? SKFontStyle.Bold : SKFontStyle.Normal);
        Assert.Equal("DejaVu Sans", face.FamilyName);
        using var font = new SKFont(face, 1000) { Subpixel = true, LinearMetrics = true, Hinting = SKFontHinting.None };

        double real = font.MeasureText(text);

        // The table is rounded to a thousandth of the type size for each letter.
        Assert.Equal(real, TextWidth.Of(text, 1000, bold), text.Length * 0.5);
    }

    [Fact]
    public void A_text_that_fits_stays_whole_and_a_longer_one_ends_in_an_ellipsis_within_the_width()
    {
        Assert.Equal("short", TextWidth.Fit("short", 100, 10));
        string cut = TextWidth.Fit("a text that is much too long for its column", 100, 10);
        Assert.EndsWith("…", cut, StringComparison.Ordinal);
        Assert.True(TextWidth.Of(cut, 10) <= 100);
    }

    [Fact]
    public void Lines_break_between_words_and_no_line_is_too_wide()
    {
        IReadOnlyList<string> lines = TextWidth.Wrap("one two three four five six seven eight nine ten", 80, 10, 3);

        Assert.Equal(3, lines.Count);
        Assert.All(lines, line => Assert.True(TextWidth.Of(line, 10) <= 80, line));
        Assert.StartsWith("one two", lines[0], StringComparison.Ordinal);
        Assert.EndsWith("…", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void One_endless_word_is_broken_inside()
    {
        IReadOnlyList<string> lines = TextWidth.Wrap(new string('w', 200), 100, 10, 2);
        Assert.Equal(2, lines.Count);
        Assert.All(lines, line => Assert.True(TextWidth.Of(line, 10) <= 100, line));
    }
}
