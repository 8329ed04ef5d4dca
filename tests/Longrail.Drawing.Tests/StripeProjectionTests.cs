using CsCheck;
using Longrail.Drawing.Balls;
using Longrail.Drawing.Svg;
using Longrail.Physics.Geometry;
using SkiaSharp;

namespace Longrail.Drawing.Tests;

public class StripeProjectionTests
{
    private const double Radius = 1000;
    private static readonly double _rho = Math.Sqrt(1 - StripeProjection.HalfWidth * StripeProjection.HalfWidth);

    [Fact]
    public void An_upright_axis_shows_a_ring_around_a_round_cap()
    {
        SvgPath path = StripeProjection.Outline(new Vec3(0, 0, 1), new SvgPoint(0, 0), Radius);

        // Closed form: the cap |z| > w has the plan radius sqrt(1 - w^2).
        SvgPath expected = new SvgPath().Circle(new SvgPoint(0, 0), Radius).Circle(new SvgPoint(0, 0), _rho * Radius);
        Assert.Equal(expected.ToString(), path.ToString());
    }

    [Fact]
    public void A_level_axis_shows_a_straight_band_across()
    {
        SvgPath path = StripeProjection.Outline(new Vec3(1, 0, 0), new SvgPoint(0, 0), Radius);

        // Closed form: the band |x| <= w between two straight edges that reach the outline at y = +-sqrt(1 - w^2).
        Assert.Equal(
            "M500,-866.025 L500,866.025 A1000 1000 0 0 1 -500,866.025 L-500,-866.025 A1000 1000 0 0 1 500,-866.025 Z",
            path.ToString());
    }

    [Fact]
    public void At_45_degrees_the_upper_edge_crosses_the_middle_line_where_the_sphere_says()
    {
        double h = Math.Sqrt(0.5);
        using SKPath path = Parse(StripeProjection.Outline(new Vec3(h, 0, h), new SvgPoint(0, 0), Radius));

        // In the plane y = 0 the axis stands at 45 degrees and the edges at 45 +- 60 degrees: x = cos 105 deg and
        // cos(-15 deg), of which the second lies below the middle and is hidden; the other edges at 135 +- 30 degrees.
        double far = Math.Cos(105 * Math.PI / 180) * Radius;
        Assert.False(path.Contains((float)(far + 2), 0));
        Assert.True(path.Contains((float)(far - 2), 0));
        double hidden = Math.Cos(165 * Math.PI / 180) * Radius;
        Assert.True(path.Contains((float)(hidden + 2), 0));
        Assert.False(path.Contains((float)(hidden - 2), 0));
    }

    // Independent route: each point of the disc is lifted to the sphere and asked whether it lies in the band.
    [Fact]
    public void Every_point_of_the_face_is_striped_exactly_where_the_sphere_is() =>
        (from x in Gen.Double[-1, 1] from y in Gen.Double[-1, 1] from z in Gen.Double[-1, 1] select new Vec3(x, y, z))
        .Where(axis => axis.Length is > 0.1 and < 1)
        .Sample(
            axis =>
            {
                using SKPath path = Parse(StripeProjection.Outline(axis, new SvgPoint(0, 0), Radius));
                Vec3 unit = axis * (1 / axis.Length);
                // Off the lines on which the outline's own corners lie, where the renderer's test of "inside" counts
                // one twice.
                for (int i = -9; i <= 9; i++)
                {
                    for (int k = -9; k <= 9; k++)
                        CheckPoint(path, unit, (i + 0.013) / 9.7, (k + 0.017) / 9.7);
                }
            },
            iter: 300);

    [Fact]
    public void Both_directions_of_the_axis_give_the_same_stripe()
    {
        var axis = new Vec3(0.3, -0.5, 0.7);
        Assert.Equal(
            StripeProjection.Outline(axis, new SvgPoint(5, 6), 20).ToString(),
            StripeProjection.Outline(-axis, new SvgPoint(5, 6), 20).ToString());
    }

    private static void CheckPoint(SKPath path, Vec3 axis, double x, double y)
    {
        double inside = 1 - x * x - y * y;
        if (inside < 0.02)
            return;
        double height = Math.Abs(axis.Dot(new Vec3(x, y, Math.Sqrt(inside))));
        // Three decimals on the sheet and the renderer's single precision leave a thousandth of the radius undecided.
        if (Math.Abs(height - StripeProjection.HalfWidth) < 2e-3)
            return;
        bool striped = height < StripeProjection.HalfWidth;
        bool drawn = path.Contains((float)(x * Radius), (float)(-y * Radius));
        Assert.True(striped == drawn, $"axis {axis}, point ({x}, {y}): |a.p| = {height}, drawn {drawn}");
    }

    private static SKPath Parse(SvgPath data)
    {
        SKPath path = SKPath.ParseSvgPathData(data.ToString());
        path.FillType = SKPathFillType.EvenOdd;
        return path;
    }
}
