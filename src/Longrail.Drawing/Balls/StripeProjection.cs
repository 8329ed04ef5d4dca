using Longrail.Drawing.Svg;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Balls;

/// <summary>A ball's stripe seen from straight above, without perspective.</summary>
/// <remarks>The stripe is the band of points p of the unit sphere with |axis . p| at most <see cref="HalfWidth"/>. Its
/// edges are two circles of radius rho = sqrt(1 - HalfWidth^2) about +-HalfWidth axis; seen from above they are
/// ellipses with half-axes rho and rho |axis.Z|, of which only the part above the ball's middle is seen.</remarks>
public static class StripeProjection
{
    /// <summary>Half the width of the stripe as a part of the radius: it covers the middle half of the ball (common
    /// practice, no source).</summary>
    public const double HalfWidth = 0.5;

    /// <summary>The outline of the visible part of the stripe; to be filled by the even-odd rule.</summary>
    /// <param name="axis">The unit axis about which the stripe runs, in the table's frame; either of its two
    /// directions.</param>
    /// <param name="centre">The ball's centre on the sheet.</param>
    /// <param name="radius">The ball's radius on the sheet.</param>
    public static SvgPath Outline(Vec3 axis, SvgPoint centre, double radius)
    {
        Vec3 a = (axis.Z < 0 ? -axis : axis) * (1.0 / axis.Length);
        double level = a.Horizontal.Length;
        double rho = Math.Sqrt(1 - HalfWidth * HalfWidth);

        // The axis stands so steep that the upper edge is seen all round and the lower one not at all: a ring.
        if (level <= HalfWidth)
            return Ring(a, level, rho, centre, radius);

        // Where the edges pass behind the ball's outline: sin(phi) = HalfWidth a.Z / (rho level), phi counted from u.
        double phi = Math.Asin(HalfWidth * a.Z / (rho * level));
        Vec2 u = a.Horizontal.Left / level;
        SvgPoint Edge(int side, double angle)
        {
            Vec2 inPlane = u * Math.Cos(angle) - a.Horizontal * (a.Z / level * Math.Sin(angle));
            return OnSheet(centre, radius, side * HalfWidth * a.Horizontal + rho * inPlane);
        }

        double turn = TurnOnSheet(u);
        double rx = rho * radius;
        double ry = rho * a.Z * radius;
        return new SvgPath()
            .Move(Edge(1, -phi))
            .Arc(rx, ry, turn, large: phi > 0, clockwise: false, Edge(1, Math.PI + phi))
            .Arc(radius, radius, 0, false, true, Edge(-1, Math.PI - phi))
            .Arc(rx, ry, turn, large: false, clockwise: true, Edge(-1, phi))
            .Arc(radius, radius, 0, false, true, Edge(1, -phi))
            .Close();
    }

    private static SvgPath Ring(Vec3 a, double level, double rho, SvgPoint centre, double radius)
    {
        double turn = level > 0 ? TurnOnSheet(a.Horizontal.Left) : 0;
        return new SvgPath()
            .Circle(centre, radius)
            .Ellipse(OnSheet(centre, radius, HalfWidth * a.Horizontal), rho * radius, rho * a.Z * radius, turn);
    }

    private static SvgPoint OnSheet(SvgPoint centre, double radius, Vec2 p) =>
        centre.Moved(radius * p.X, -radius * p.Y);

    private static double TurnOnSheet(Vec2 direction) => Math.Atan2(-direction.Y, direction.X) * 180.0 / Math.PI;
}
