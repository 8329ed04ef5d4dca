using System.Globalization;
using Longrail.Coaching.Charts;
using Longrail.Drawing.Charts;
using Longrail.TestKit;

namespace Longrail.Drawing.Tests.Charts;

public class MapScaleTests
{
    [Fact]
    public void The_colours_only_get_darker_so_that_the_map_reads_in_grey()
    {
        // Relative luminance: W3C, Web Content Accessibility Guidelines 2.1 (2018). For protan and deutan eyes the
        // order of lightness is what remains; it is also what a grey print keeps.
        double[] luminance = [.. Enumerable.Range(0, 10).Select(k => Luminance(MapScale.BandColour(k, 10)))];
        for (int k = 1; k < luminance.Length; k++)
            Expect.Less(luminance[k], luminance[k - 1] - 0.01, $"luminance of band {k}");
        Expect.Less(10, (luminance[0] + 0.05) / (luminance[^1] + 0.05), "contrast of the ends");
    }

    [Theory]
    [InlineData(MapMeasure.Odds)]
    [InlineData(MapMeasure.Leeway)]
    public void A_value_has_the_colour_of_its_band_and_contours_lie_between_bands(MapMeasure measure)
    {
        IReadOnlyList<double> bands = MapScale.Bands(measure);
        for (int k = 0; k < bands.Count; k++)
        {
            string colour = MapScale.BandColour(k, bands.Count);
            Assert.Equal(colour, MapScale.Colour(measure, bands[k]));
            double next = k + 1 < bands.Count ? bands[k + 1] : 1;
            Assert.Equal(colour, MapScale.Colour(measure, 0.5 * (bands[k] + next)));
        }

        Assert.All(MapScale.Contours(measure), level => Assert.Contains(bands, band => Math.Abs(band - level) < 1e-12));
    }

    [Fact]
    public void The_contour_of_a_cone_is_a_circle()
    {
        // Straight drawing between the points of a unit grid is off by less than an eighth of the curvature of the cone
        // there, 1/(8 r).
        const double Radius = 6.3;
        double[,] cone = Surface((x, y) => Math.Sqrt(x * x + y * y));
        IReadOnlyList<(double X, double Y)> line = Assert.Single(Contours.At(cone, Radius));
        Assert.All(line, p => Expect.Near(
            Radius, Math.Sqrt((p.X - 10) * (p.X - 10) + (p.Y - 10) * (p.Y - 10)), 1 / (8 * Radius),
            "distance from the middle"));
        Expect.Near(0, line[0].X - line[^1].X + line[0].Y - line[^1].Y, 1e-9, "the line closes");
        Assert.True(line.Count > 40);
    }

    [Fact]
    public void A_saddle_has_two_lines_and_a_hole_has_none_near_it()
    {
        Assert.Equal(2, Contours.At(Surface((x, y) => x * y), 0.5).Count);
        double[,] hole = Surface((x, _) => x);
        hole[10, 10] = double.NaN;
        IReadOnlyList<(double X, double Y)>[] lines = [.. Contours.At(hole, 0.5)];
        Assert.Equal(2, lines.Length);
        Assert.All(lines.SelectMany(line => line), p => Assert.False(p.Y is > 9.001 and < 10.999));
    }

    [Fact]
    public void A_scale_holds_all_values_and_has_a_handful_of_round_ticks()
    {
        foreach (double[] values in (double[][])[[-0.1, 0.13], [0.003], [-45, -3], [], [0, 0], [1e-9, 800]])
        {
            ValueScale scale = ValueScale.Of(values);
            Assert.All(values, value => Assert.InRange(value, scale.Low, scale.High));
            double[] ticks = [.. scale.Ticks()];
            Assert.InRange(ticks.Length, 2, 10);
            Assert.Contains(ticks, tick => Math.Abs(tick) < 1e-12);
            double mantissa = scale.Step / Math.Pow(10, Math.Floor(Math.Log10(scale.Step * (1 + 1e-12))));
            Assert.Contains((double[])[1, 2, 5], digit => Math.Abs(digit - mantissa) < 1e-9);
        }
    }

    private static double[,] Surface(Func<double, double, double> value)
    {
        double[,] values = new double[21, 21];
        for (int i = 0; i < 21; i++)
        {
            for (int j = 0; j < 21; j++)
                values[i, j] = value(i - 10, j - 10);
        }

        return values;
    }

    private static double Luminance(string colour)
    {
        double Channel(int at)
        {
            double c = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return c <= 0.03928 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }

        return 0.2126 * Channel(1) + 0.7152 * Channel(3) + 0.0722 * Channel(5);
    }
}
