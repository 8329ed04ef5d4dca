using Longrail.Coaching.Charts;
using Longrail.Drawing.Svg;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Charts;

/// <summary>Small multiples of a chart over a grid of places: the mapped part of the bed for each tip and speed, with
/// the correction standing where the ball lies.</summary>
internal static class GridPanels
{
    private const double HeadHeight = 44;
    private const double FootHeight = 44;
    private const double AxisWidth = 62;
    private const double Gap = 30;

    internal static void Draw(SvgWriter svg, BankChart chart, double x, double y, double width, double height)
    {
        ChartRequest request = chart.Request;
        int panels = request.Speeds.Count * request.Tips.Count;
        Vec2 span = Span(chart, out _);
        // A row for each tip; where there is one tip or one speed only, as many in a row as makes them largest.
        IEnumerable<int> rows = Math.Min(request.Speeds.Count, request.Tips.Count) > 1
            ? [request.Speeds.Count]
            : Enumerable.Range(1, panels);
        int across = rows.MaxBy(Scale);
        double scale = Scale(across);
        for (int k = 0; k < panels; k++)
        {
            double left = x + AxisWidth + k % across * (scale * span.X + AxisWidth + Gap);
            double top = y + k / across * (scale * span.Y + HeadHeight + FootHeight + Gap) + HeadHeight;
            new GridPanel(svg, chart, left, top, scale).Draw(k / request.Speeds.Count, k % request.Speeds.Count);
        }

        double Scale(int columns)
        {
            int down = (panels + columns - 1) / columns;
            double panelWidth = (width - (columns - 1) * Gap) / columns - AxisWidth;
            double panelHeight = (height - (down - 1) * Gap) / down - HeadHeight - FootHeight;
            return Math.Min(panelWidth / span.X, panelHeight / span.Y);
        }
    }

    /// <summary>The part of the bed that is shown, metres: the places with half a step around them.</summary>
    /// <param name="chart">The chart.</param>
    /// <param name="corner">Its corner nearest head and right.</param>
    internal static Vec2 Span(BankChart chart, out Vec2 corner)
    {
        var table = chart.Request.Equipment.Table;
        ChartPlaces places = chart.Request.Places;
        Vec2 first = Metres(places.Diamonds[0]);
        Vec2 last = Metres(places.Diamonds[^1]);
        double room = 0.25 * table.DiamondAlong;
        double stepX = places.Columns > 1 ? (last.X - first.X) / (places.Columns - 1) : 2 * room;
        double stepY = places.Rows > 1 ? (last.Y - first.Y) / (places.Rows - 1) : 2 * room;
        // Steps of a narrow grid may be small, and numbers need air.
        var margin = new Vec2(Math.Max(0.6 * stepX, 0.02), Math.Max(0.5 * Math.Min(stepY, 2 * room), 0.02));
        corner = first - margin;
        return last + margin - corner;

        Vec2 Metres(Vec2 p) => new(p.X * table.DiamondAlong, p.Y * table.DiamondAcross);
    }
}
