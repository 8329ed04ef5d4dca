using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Trials;

/// <summary>The mark of a shot: another shape for each condition, so that grey will do.</summary>
internal static class ShotMark
{
    private const double Size = 11;

    internal static void Draw(SvgWriter svg, SvgPoint at, int condition)
    {
        string colour = VariantMark.Of(condition).Colour;
        var pen = new Pen(colour, Ink.Medium);
        switch (condition % 4)
        {
            case 0:
                svg.Circle(at, Size, colour, new Pen("#ffffff", Ink.Fine));
                break;
            case 1:
                svg.Rectangle(at.X - Size, at.Y - Size, 2 * Size, 2 * Size, "#ffffff", pen);
                break;
            case 2:
                svg.Path(
                    new SvgPath().Move(at.Moved(0, -1.3 * Size)).Line(at.Moved(1.2 * Size, 0.9 * Size))
                        .Line(at.Moved(-1.2 * Size, 0.9 * Size)).Close(),
                    "#ffffff", pen);
                break;
            default:
                svg.Path(
                    new SvgPath().Move(at.Moved(-Size, -Size)).Line(at.Moved(Size, Size))
                        .Move(at.Moved(-Size, Size)).Line(at.Moved(Size, -Size)),
                    null, pen);
                break;
        }
    }
}
