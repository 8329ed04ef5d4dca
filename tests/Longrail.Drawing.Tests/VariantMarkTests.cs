using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Tests;

public class VariantMarkTests
{
    [Fact]
    public void No_two_variants_share_a_letter_or_a_dash_pattern()
    {
        VariantMark[] marks = [.. Enumerable.Range(0, 200).Select(VariantMark.Of)];

        Assert.Equal(200, marks.Select(m => m.Letter).Distinct().Count());
        Assert.Equal(200, marks.Select(m => m.Dash ?? "full").Distinct().Count());
        Assert.Equal(["A", "B", "Z", "AA", "AB"], new[] { 0, 1, 25, 26, 27 }.Select(i => marks[i].Letter));
    }

    // Contrast as in W3C, WCAG 2.2, "relative luminance" and success criterion 1.4.11 (3 : 1 for lines that carry
    // meaning), which the pale colours of the set miss; for those the dashes and the letter speak. Text is set in
    // graphite, 4.5 : 1 and more (1.4.3).
    [Theory]
    [InlineData(Ink.Graphite, 4.5)]
    [InlineData(Ink.Soft, 4.5)]
    [InlineData("#0072b2", 3.0)]
    [InlineData("#d55e00", 3.0)]
    [InlineData("#009e73", 3.0)]
    public void Words_and_the_first_three_variants_stand_out_from_the_paper(string colour, double least) =>
        Assert.InRange(Contrast(colour, Ink.Paper), least, 21);

    // Okabe and Ito give these as sRGB triples (Color Universal Design, 2008, figure 16).
    [Fact]
    public void The_colours_are_those_of_okabe_and_ito() =>
        Assert.Equal(
            ["#0072b2", "#d55e00", "#009e73", "#cc79a7", "#e69f00", "#56b4e9"], Ink.Colours);

    private static double Contrast(string a, string b)
    {
        double la = Luminance(a);
        double lb = Luminance(b);
        return (Math.Max(la, lb) + 0.05) / (Math.Min(la, lb) + 0.05);
    }

    private static double Luminance(string colour)
    {
        double Channel(int at)
        {
            double c = Convert.ToInt32(colour.Substring(at, 2), 16) / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }

        return 0.2126 * Channel(1) + 0.7152 * Channel(3) + 0.0722 * Channel(5);
    }
}
