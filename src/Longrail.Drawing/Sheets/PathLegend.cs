using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>One line that says how to read the paths: "double: skid; single: roll; a tick every 0.1 s".</summary>
internal static class PathLegend
{
    private const double Sample = 90;

    internal static void Draw(SvgWriter svg, double x, double y)
    {
        svg.Begin("legend");
        var style = new TextStyle(Ink.Small, Ink.Soft);
        double line = y + Ink.Small * Ink.HalfCapital;
        var twin = new SvgPath()
            .Move(new SvgPoint(x, y - 3.4)).Line(new SvgPoint(x + Sample, y - 3.4))
            .Move(new SvgPoint(x, y + 3.4)).Line(new SvgPoint(x + Sample, y + 3.4));
        svg.Path(twin, null, new Pen(Ink.Graphite, 1.9));
        x = Word(svg, x + Sample + 14, line, "skidding", style);
        svg.Line(new SvgPoint(x, y), new SvgPoint(x + Sample, y), new Pen(Ink.Graphite, Ink.Medium));
        x = Word(svg, x + Sample + 14, line, "rolling", style);
        svg.Line(new SvgPoint(x, y), new SvgPoint(x + Sample, y), new Pen(Ink.Graphite, Ink.Medium));
        var ticks = new SvgPath();
        for (int k = 0; k < 3; k++)
            ticks.Move(new SvgPoint(x + 15 + 30 * k, y - 8)).Line(new SvgPoint(x + 15 + 30 * k, y + 8));
        svg.Path(ticks, null, new Pen(Ink.Graphite, 1.7));
        x = Word(svg, x + Sample + 14, line, "a tick every 0.1 s", style);
        Word(svg, x, line, "long, short: against the mirror line", style);
        svg.End();
    }

    private static double Word(SvgWriter svg, double x, double line, string text, TextStyle style)
    {
        svg.Text(new SvgPoint(x, line), text, style);
        return x + TextWidth.Of(text, style.Size) + 50;
    }
}
