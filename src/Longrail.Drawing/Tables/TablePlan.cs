using System.Globalization;
using Longrail.Drawing.Svg;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Tables;

/// <summary>Draws a table in plan: wood, pockets, bed, hatched cushions, sights with their numbers,
/// dimensions.</summary>
internal static class TablePlan
{
    /// <summary>Width of the rails as drawn, nose line to outer edge, metres (common practice, no source; it touches
    /// nothing).</summary>
    internal const double RailWidth = 0.14;

    /// <summary>Room that numbers and dimensions take outside the rails, sheet units.</summary>
    internal const double Margin = 105;

    private const double NumberGap = 14;
    private const double DimensionGap = 66;

    internal static void Draw(
        SvgWriter svg, Viewport view, TableSpec table, bool dimensions = true, Action? onBed = null)
    {
        var outline = new TableOutline(table);
        svg.Begin("table");
        DrawWood(svg, view, table);
        onBed?.Invoke();
        DrawPockets(svg, view, outline);
        DrawCushions(svg, view, outline);
        DrawSights(svg, view, table);
        DrawNumbers(svg, view, table);
        if (dimensions)
            DrawDimensions(svg, view, table);
        svg.End();
    }

    private static void DrawWood(SvgWriter svg, Viewport view, TableSpec table)
    {
        Rectangle(svg, view, table, RailWidth, Ink.Rail, new Pen(Ink.Graphite, Ink.Thin), view.ToSheet(0.045));
        Rectangle(svg, view, table, CushionOutline.Depth, Ink.Bed, null, 0);
    }

    private static void DrawPockets(SvgWriter svg, Viewport view, TableOutline outline)
    {
        foreach (PocketOutline pocket in outline.Pockets)
        {
            SvgPoint centre = view.ToSheet(TablePoint.From(pocket.DropCentre));
            svg.Circle(centre, view.ToSheet(pocket.DropRadius), Ink.Hole, new Pen(Ink.Graphite, Ink.Thin));
        }
    }

    private static void DrawCushions(SvgWriter svg, Viewport view, TableOutline outline)
    {
        foreach (CushionOutline piece in outline.Pieces.Select(CushionOutline.Of))
        {
            SvgPoint[] closed = [.. piece.Closed.Select(view.ToSheet)];
            svg.Path(new SvgPath().Polyline(closed).Close(), Ink.Paper, new Pen(Ink.Soft, Ink.Fine));
            svg.Path(Hatching.Of(closed, 11), null, new Pen(Ink.Faint, Ink.Fine));
            svg.Path(new SvgPath().Polyline(piece.Nose.Select(view.ToSheet)), null, new Pen(Ink.Graphite, Ink.Medium));
        }
    }

    private static void DrawSights(SvgWriter svg, Viewport view, TableSpec table)
    {
        var path = new SvgPath();
        double back = table.SightSetback;
        for (int k = 1; k < 8; k++)
        {
            // A side pocket takes the place of the middle sight.
            if (k == 4 && table.Side is not null)
                continue;
            Sight(path, view, new TablePoint(k * table.DiamondAlong, -back));
            Sight(path, view, new TablePoint(k * table.DiamondAlong, table.Width + back));
        }

        for (int k = 1; k < 4; k++)
        {
            Sight(path, view, new TablePoint(-back, k * table.DiamondAcross));
            Sight(path, view, new TablePoint(table.Length + back, k * table.DiamondAcross));
        }

        svg.Path(path, "#ffffff", new Pen(Ink.Graphite, 1.6));
    }

    private static void Sight(SvgPath path, Viewport view, TablePoint at)
    {
        SvgPoint p = view.ToSheet(at);
        path.Move(p.Moved(-7, 0)).Line(p.Moved(0, -11)).Line(p.Moved(7, 0)).Line(p.Moved(0, 11)).Close();
    }

    private static void DrawNumbers(SvgWriter svg, Viewport view, TableSpec table)
    {
        var style = new TextStyle(Ink.Small, Ink.Soft, false, TextAnchor.Middle);
        double half = Ink.Small * Ink.HalfCapital;
        var ticks = new SvgPath();
        for (int k = 0; k <= 8; k++)
        {
            SvgPoint low = view.ToSheet(new TablePoint(k * table.DiamondAlong, -RailWidth));
            SvgPoint high = view.ToSheet(new TablePoint(k * table.DiamondAlong, table.Width + RailWidth));
            ticks.Move(low).Line(low.Moved(0, NumberGap - 4)).Move(high).Line(high.Moved(0, 4 - NumberGap));
            svg.Text(low.Moved(0, NumberGap + 2 * half), Number(k), style);
            svg.Text(high.Moved(0, -NumberGap), Number(k), style);
        }

        for (int k = 0; k <= 4; k++)
        {
            SvgPoint head = view.ToSheet(new TablePoint(-RailWidth, k * table.DiamondAcross));
            SvgPoint foot = view.ToSheet(new TablePoint(table.Length + RailWidth, k * table.DiamondAcross));
            ticks.Move(head).Line(head.Moved(4 - NumberGap, 0)).Move(foot).Line(foot.Moved(NumberGap - 4, 0));
            svg.Text(head.Moved(-NumberGap, half), Number(k), style with { Anchor = TextAnchor.End });
            svg.Text(foot.Moved(NumberGap, half), Number(k), style with { Anchor = TextAnchor.Start });
        }

        svg.Path(ticks, null, new Pen(Ink.Soft, Ink.Fine));
    }

    private static void DrawDimensions(SvgWriter svg, Viewport view, TableSpec table)
    {
        SvgPoint origin = view.ToSheet(new TablePoint(-RailWidth, -RailWidth));
        double y = origin.Y + DimensionGap;
        double x0 = view.ToSheet(new TablePoint(0, 0)).X;
        double x1 = view.ToSheet(new TablePoint(table.Length, 0)).X;
        DimensionLine.Horizontal(svg, x0, x1, y, Millimetres(table.Length));

        double x = view.ToSheet(new TablePoint(table.Length + RailWidth, 0)).X + DimensionGap;
        double y0 = view.ToSheet(new TablePoint(0, 0)).Y;
        double y1 = view.ToSheet(new TablePoint(0, table.Width)).Y;
        DimensionLine.Vertical(svg, x, y0, y1, Millimetres(table.Width));
    }

    private static void Rectangle(
        SvgWriter svg, Viewport view, TableSpec table, double beyond, string fill, Pen? pen, double corner)
    {
        SvgPoint at = view.ToSheet(new TablePoint(-beyond, table.Width + beyond));
        svg.Rectangle(
            at.X, at.Y, view.ToSheet(table.Length + 2 * beyond), view.ToSheet(table.Width + 2 * beyond), fill,
            pen, corner);
    }

    private static string Number(int k) => k.ToString(CultureInfo.InvariantCulture);

    private static string Millimetres(double metres) =>
        string.Create(CultureInfo.InvariantCulture, $"{1000 * metres:0.#} mm");
}
