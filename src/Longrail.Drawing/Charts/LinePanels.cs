using Longrail.Coaching.Charts;
using Longrail.Drawing.Svg;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Charts;

/// <summary>Small multiples of a chart over a line of places: a panel for each tip, a line for each speed, one scale
/// for all.</summary>
internal static class LinePanels
{
    private const int MostAcross = 4;
    private const double AxisWidth = 96;
    private const double HeadHeight = 88;
    private const double FootHeight = 96;
    private const double Gap = 34;
    private const double SignRow = 27;

    internal static void Draw(SvgWriter svg, BankChart chart, double x, double y, double width, double height)
    {
        ChartRequest request = chart.Request;
        int across = Math.Min(request.Tips.Count, MostAcross);
        int down = (request.Tips.Count + across - 1) / across;
        ValueScale scale = ValueScale.Of(
            chart.Rows.SelectMany(row => row.Cells)
                .Select(cell => ChartNumbers.Correction(request, cell)).OfType<double>());
        double panelWidth = (width - AxisWidth - (across - 1) * Gap) / across;
        double panelHeight = height / down - HeadHeight - FootHeight;
        bool hasSigns = chart.Failures.Count > 0;
        double signs = hasSigns ? SignRow * request.Speeds.Count + 10 : 0;
        for (int tip = 0; tip < request.Tips.Count; tip++)
        {
            double left = x + AxisWidth + tip % across * (panelWidth + Gap);
            double top = y + HeadHeight + tip / across * (panelHeight + HeadHeight + FootHeight);
            var panel = new LinePanel(svg, chart, tip, scale, left, top, panelWidth, panelHeight - signs);
            panel.Draw(isFirst: tip % across == 0, signs);
        }

        string unit = $"correction, {ChartNumbers.UnitWords(request)}";
        svg.Text(new SvgPoint(x, y + Ink.Small), unit, new TextStyle(Ink.Small, Ink.Soft));
    }

    /// <summary>Along which coordinate the places spread: true for along the table.</summary>
    internal static bool SpreadsAlong(ChartPlaces places)
    {
        Vec2 way = places.Diamonds[^1] - places.Diamonds[0];
        return Math.Abs(way.X) >= Math.Abs(way.Y);
    }
}
