using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Tables;

/// <summary>A thin line between two arrow heads with a measure on it, as on a draughtsman's sheet.</summary>
internal static class DimensionLine
{
    private const double Arrow = 16;
    private const double HalfArrow = 3.2;

    /// <summary>A measure from left to right.</summary>
    internal static void Horizontal(
        SvgWriter svg, double x0, double x1, double y, string text, string colour = Ink.Soft)
    {
        double gap = TextWidth.Of(text, Ink.Small) / 2 + 10;
        double middle = (x0 + x1) / 2;
        var line = new SvgPath()
            .Move(new SvgPoint(x0, y)).Line(new SvgPoint(middle - gap, y))
            .Move(new SvgPoint(middle + gap, y)).Line(new SvgPoint(x1, y))
            .Move(new SvgPoint(x0, y - 10)).Line(new SvgPoint(x0, y + 10))
            .Move(new SvgPoint(x1, y - 10)).Line(new SvgPoint(x1, y + 10));
        svg.Path(line, null, new Pen(colour, Ink.Fine));
        svg.Path(Head(new SvgPoint(x0, y), 1, 0).ContinueWith(Head(new SvgPoint(x1, y), -1, 0)), colour);
        svg.Text(
            new SvgPoint(middle, y + Ink.Small * Ink.HalfCapital), text,
            new TextStyle(Ink.Small, colour, false, TextAnchor.Middle));
    }

    /// <summary>A measure from below to above.</summary>
    internal static void Vertical(SvgWriter svg, double x, double y0, double y1, string text)
    {
        double gap = TextWidth.Of(text, Ink.Small) / 2 + 10;
        double middle = (y0 + y1) / 2;
        var line = new SvgPath()
            .Move(new SvgPoint(x, y0)).Line(new SvgPoint(x, middle + gap))
            .Move(new SvgPoint(x, middle - gap)).Line(new SvgPoint(x, y1))
            .Move(new SvgPoint(x - 10, y0)).Line(new SvgPoint(x + 10, y0))
            .Move(new SvgPoint(x - 10, y1)).Line(new SvgPoint(x + 10, y1));
        svg.Path(line, null, new Pen(Ink.Soft, Ink.Fine));
        svg.Path(Head(new SvgPoint(x, y0), 0, -1).ContinueWith(Head(new SvgPoint(x, y1), 0, 1)), Ink.Soft);
        svg.Text(
            new SvgPoint(x + Ink.Small * Ink.HalfCapital, middle), text,
            new TextStyle(Ink.Small, Ink.Soft, false, TextAnchor.Middle), turned: true);
    }

    /// <summary>An arrow head with its tip at a point, its body lying in the direction (dx, dy) from it.</summary>
    internal static SvgPath Head(SvgPoint tip, double dx, double dy) => new SvgPath()
        .Move(tip)
        .Line(tip.Moved(Arrow * dx - HalfArrow * dy, Arrow * dy + HalfArrow * dx))
        .Line(tip.Moved(Arrow * dx + HalfArrow * dy, Arrow * dy - HalfArrow * dx))
        .Close();
}
