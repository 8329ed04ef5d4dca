using Longrail.Coaching.Charts;
using Longrail.Drawing.Svg;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Charts;

/// <summary>Small multiples of a chart over a grid of places: a small table for each tip and speed, with the correction
/// standing where the ball lies.</summary>
internal static class GridPanels
{
    private const double HeadHeight = 40;
    private const double Gap = 30;

    internal static void Draw(SvgWriter svg, BankChart chart, double x, double y, double width, double height)
    {
        ChartRequest request = chart.Request;
        TableSpec table = request.Equipment.Table;
        int across = request.Speeds.Count;
        int down = request.Tips.Count;
        double panelWidth = (width - (across - 1) * Gap) / across;
        double panelHeight = (height - (down - 1) * Gap) / down - HeadHeight;
        double scale = Math.Min(panelWidth / table.Length, panelHeight / table.Width);
        for (int tip = 0; tip < down; tip++)
        {
            for (int speed = 0; speed < across; speed++)
            {
                double left = x + speed * (scale * table.Length + Gap);
                double top = y + tip * (scale * table.Width + HeadHeight + Gap) + HeadHeight;
                DrawPanel(svg, chart, tip, speed, new Viewport(left, top + scale * table.Width, scale));
            }
        }
    }

    private static void DrawPanel(SvgWriter svg, BankChart chart, int tip, int speed, Viewport view)
    {
        ChartRequest request = chart.Request;
        TableSpec table = request.Equipment.Table;
        SvgPoint corner = view.ToSheet(new TablePoint(0, table.Width));
        svg.Begin("panel");
        svg.Text(
            corner.Moved(2, -12), $"{ChartNumbers.Speed(request.Speeds[speed])}, tip {ChartNumbers.Tip(request.Tips[tip])}",
            new TextStyle(Ink.Small, Ink.Graphite, Bold: true));
        svg.Rectangle(
            corner.X, corner.Y, view.ToSheet(table.Length), view.ToSheet(table.Width), Ink.Bed,
            new Pen(Ink.Graphite, Ink.Thin));
        svg.Circle(view.ToSheet(TablePoint.From(request.Route.Target)), 10, null, new Pen(Ink.Colours[1], Ink.Medium));
        double size = TypeSize(chart, view);
        for (int k = 0; k < chart.Rows.Count; k++)
        {
            ChartCell cell = chart[k, tip, speed];
            Vec2 place = chart.Rows[k].Place;
            SvgPoint at = view.ToSheet(new TablePoint(place.X * table.DiamondAlong, place.Y * table.DiamondAcross));
            bool answered = cell.Failure == NoBank.None;
            svg.Text(
                at.Moved(0, size * Ink.HalfCapital), ChartNumbers.Text(request, cell),
                new TextStyle(size, answered ? Ink.Graphite : Ink.Soft, false, TextAnchor.Middle));
        }

        svg.End();
    }

    // So large that neighbours keep apart.
    private static double TypeSize(BankChart chart, Viewport view)
    {
        ChartPlaces places = chart.Request.Places;
        if (places.Columns < 2)
            return Ink.Small;
        TableSpec table = chart.Request.Equipment.Table;
        double step = view.ToSheet((places.Diamonds[1].X - places.Diamonds[0].X) * table.DiamondAlong);
        double widest = chart.Rows.SelectMany(row => row.Cells).Max(cell => TextWidth.Of(ChartNumbers.Text(chart.Request, cell), 1));
        return Math.Clamp(0.9 * step / Math.Max(widest, 1), 9, Ink.Small);
    }
}
