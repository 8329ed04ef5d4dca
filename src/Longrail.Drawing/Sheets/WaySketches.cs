using System.Globalization;
using Longrail.Drawing.Paths;
using Longrail.Drawing.Svg;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Sheets;

/// <summary>The ways after the first, each on a small table of its own, all in one scale.</summary>
internal static class WaySketches
{
    private const int Columns = 2;
    private const double Gap = 20;
    private const double CaptionHeight = 58;
    private const double Caption = 18;

    // Room for the rails around the bed, metres: narrower than on the large drawing.
    private const double Rim = 0.07;

    /// <summary>Draws as many as there is room for.</summary>
    /// <returns>Where the room below them begins.</returns>
    internal static double Draw(SvgWriter svg, double x, double y, double width, double bottom, WaysDrawing ways)
    {
        TableSpec table = ways.Equipment.Table;
        double cell = (width - (Columns - 1) * Gap) / Columns;
        double scale = cell / (table.Length + 2 * Rim);
        double height = scale * (table.Width + 2 * Rim) + CaptionHeight;
        int rows = (int)Math.Floor((bottom - y) / height);
        int shown = Math.Min(rows * Columns, ways.Ways.Count - 1);
        for (int k = 0; k < shown; k++)
        {
            double left = x + k % Columns * (cell + Gap);
            double top = y + k / Columns * height;
            DrawOne(svg, new SvgPoint(left, top), cell, scale, ways, ways.Ways[k + 1]);
        }

        double below = y + (shown + Columns - 1) / Columns * height;
        if (ways.MoreWays == 0)
            return below;
        string more = string.Create(CultureInfo.InvariantCulture, $"and {ways.MoreWays} more ways, less good");
        svg.Text(new SvgPoint(x, below + Caption), more, new TextStyle(Caption, Ink.Soft));
        return below + 1.5 * Caption;
    }

    private static void DrawOne(
        SvgWriter svg, SvgPoint at, double width, double scale, WaysDrawing ways, WayDrawing way)
    {
        TableSpec table = ways.Equipment.Table;
        var view = new Viewport(at.X + scale * Rim, at.Y + scale * (Rim + table.Width), scale);
        svg.Begin("sketch");
        DrawTable(svg, view, table);
        DrawPath(svg, view, way.Cue.Until(way.Meets), new Pen(Ink.Graphite, 1.6));
        DrawPath(svg, view, way.Cue.From(way.Meets), new Pen(Ink.Faint, 1.3));
        DrawPath(svg, view, way.Ball, new Pen(way.Mark.Colour, 2.6, way.Mark.Dash));
        for (int ball = 0; ball < ways.Names.Count; ball++)
            DrawBall(svg, view, ways, way, ball);
        double line = at.Y + scale * (table.Width + 2 * Rim) + Caption + 4;
        svg.Text(
            new SvgPoint(at.X, line), $"{way.Mark.Letter}  {way.Odds}",
            new TextStyle(Caption + 2, Ink.Graphite, Bold: true));
        double words = TextWidth.Of($"{way.Mark.Letter}  {way.Odds}", Caption + 2, bold: true) + 14;
        IReadOnlyList<string> lines = TextWidth.Wrap(SvgText.Clean(way.Words), width - words, Caption - 2, 2);
        var style = new TextStyle(Caption - 2, Ink.Graphite);
        for (int k = 0; k < lines.Count; k++)
            svg.Text(new SvgPoint(at.X + words, line + k * Caption), lines[k], style);
        svg.End();
    }

    private static void DrawBall(SvgWriter svg, Viewport view, WaysDrawing ways, WayDrawing way, int ball)
    {
        SvgPoint centre = view.ToSheet(ways.Starts[ball]);
        double radius = Math.Max(view.ToSheet(ways.Radii[ball]), 4);
        if (ball == ways.CueBall)
            svg.Circle(centre, radius, "#ffffff", new Pen(Ink.Graphite, 1.4));
        else
            svg.Circle(centre, radius, ball == ways.ObjectBall ? way.Mark.Colour : Ink.Faint);
    }

    private static void DrawTable(SvgWriter svg, Viewport view, TableSpec table)
    {
        SvgPoint corner = view.ToSheet(new TablePoint(0, table.Width));
        svg.Rectangle(
            corner.X, corner.Y, view.ToSheet(table.Length), view.ToSheet(table.Width), Ink.Bed, new Pen(Ink.Soft, 1.4));
        foreach (PocketOutline pocket in new TableOutline(table).Pockets)
        {
            svg.Circle(
                view.ToSheet(TablePoint.From(pocket.DropCentre)), view.ToSheet(pocket.DropRadius), Ink.Hole,
                new Pen(Ink.Soft, 1));
        }
    }

    private static void DrawPath(SvgWriter svg, Viewport view, BallTrack track, Pen pen) =>
        TrackDrawing.DrawCentre(svg, view, track, pen);
}
