using Longrail.Drawing.Svg;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Balls;

/// <summary>Draws a ball as it looks from above.</summary>
internal static class BallFace
{
    /// <summary>A ball with its stripe where its axis puts it; without an axis a plain one.</summary>
    internal static void Draw(
        SvgWriter svg, SvgPoint centre, double radius, Vec3? stripeAxis, string colour, double outline,
        string? stripeColour = null)
    {
        svg.Circle(centre, radius, "#ffffff");
        if (stripeAxis is { } axis)
            svg.Path(StripeProjection.Outline(axis, centre, radius), stripeColour ?? colour, null, evenOdd: true);
        svg.Circle(centre, radius, null, new Pen(colour, outline));
    }

    /// <summary>Where a ball is or was, without its face.</summary>
    internal static void Ghost(SvgWriter svg, SvgPoint centre, double radius, string colour) =>
        svg.Circle(centre, radius, null, new Pen(colour, Ink.Thin, "8 6"));
}
