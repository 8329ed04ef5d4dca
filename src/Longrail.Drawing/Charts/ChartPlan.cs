using Longrail.Coaching.Charts;
using Longrail.Drawing.Svg;
using Longrail.Drawing.Tables;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Charts;

/// <summary>The table of a chart in plan: where the ball lies, the mirror lines, and where they go.</summary>
internal static class ChartPlan
{
    /// <summary>More mirror lines than these only make a web.</summary>
    private const int MostLines = 9;

    internal static Viewport Draw(SvgWriter svg, BankChart chart, double x, double y, double right)
    {
        TableSpec table = chart.Request.Equipment.Table;
        double room = right - x - 2 * TablePlan.Margin;
        double exact = Viewport.UnitsPerMetre * (table.Length + 2 * TablePlan.RailWidth) / room;
        double scale = Viewport.UnitsPerMetre / Math.Ceiling(exact);
        double left = x + (right - x - scale * table.Length) / 2;
        var view = new Viewport(left, y + 50 + scale * (table.Width + TablePlan.RailWidth), scale);
        TablePlan.Draw(svg, view, table);
        DrawRoute(svg, view, chart);
        DrawPlaces(svg, view, chart);
        DrawCueBall(svg, view, chart);
        return view;
    }

    private static void DrawRoute(SvgWriter svg, Viewport view, BankChart chart)
    {
        svg.Begin("mirror");
        SvgPoint target = view.ToSheet(TablePoint.From(chart.Request.Route.Target));
        var path = new SvgPath();
        int skip = Math.Max(1, (chart.Rows.Count + MostLines - 1) / MostLines);
        for (int k = 0; k < chart.Rows.Count; k += skip)
        {
            if (chart.Rows[k].MirrorTouch is { } touch)
                path.Move(Place(view, chart, k)).Line(view.ToSheet(TablePoint.From(touch))).Line(target);
        }

        svg.Path(path, null, new Pen(Ink.Soft, Ink.Fine, "14 6"));
        svg.Circle(target, 11, null, new Pen(Ink.Colours[1], Ink.Medium));
        svg.End();
    }

    private static void DrawPlaces(SvgWriter svg, Viewport view, BankChart chart)
    {
        svg.Begin("places");
        double radius = view.ToSheet(0.5 * chart.Request.Equipment.BallSet.Diameter);
        for (int k = 0; k < chart.Rows.Count; k++)
            svg.Circle(Place(view, chart, k), radius, "#ffffff", new Pen(Ink.Graphite, Ink.Thin));
        svg.End();
    }

    // One cue ball as an example of where all of them stand.
    private static void DrawCueBall(SvgWriter svg, Viewport view, BankChart chart)
    {
        ChartRequest request = chart.Request;
        int middle = chart.Rows.Count / 2;
        if (request.Route.IsKick || chart.Rows[middle].MirrorTouch is not { } touch)
            return;
        TableSpec table = request.Equipment.Table;
        Vec2 diamonds = chart.Rows[middle].Place;
        var ball = new Vec2(diamonds.X * table.DiamondAlong, diamonds.Y * table.DiamondAcross);
        SvgPoint cue = view.ToSheet(TablePoint.From(ball - request.Distance * (touch - ball).Normalized()));
        double radius = view.ToSheet(0.5 * request.Equipment.BallSet.Diameter);
        svg.Begin("balls");
        svg.Line(cue, Place(view, chart, middle), new Pen(Ink.Graphite, Ink.Fine));
        svg.Circle(cue, radius, Ink.Graphite);
        svg.Text(
            cue.Moved(0, -radius - 8), "cue ball",
            new TextStyle(Ink.Small - 4, Ink.Graphite, false, TextAnchor.Middle));
        svg.End();
    }

    private static SvgPoint Place(Viewport view, BankChart chart, int row)
    {
        TableSpec table = chart.Request.Equipment.Table;
        Vec2 diamonds = chart.Rows[row].Place;
        return view.ToSheet(new TablePoint(diamonds.X * table.DiamondAlong, diamonds.Y * table.DiamondAcross));
    }
}
