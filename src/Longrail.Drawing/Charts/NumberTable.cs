using System.Globalization;
using Longrail.Coaching.Charts;
using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Charts;

/// <summary>The numbers of a chart under its drawing.</summary>
internal static class NumberTable
{
    private const double HeadHeight = 66;
    private const double TallestRow = 34;
    private const double LeastRow = 22;
    private const double PlaceColumn = 92;

    internal static void Draw(SvgWriter svg, BankChart chart, double x, double y, double width, double height)
    {
        ChartRequest request = chart.Request;
        int columns = request.Tips.Count * request.Speeds.Count;
        int room = (int)Math.Floor((height - HeadHeight - 8) / LeastRow);
        int shown = chart.Rows.Count <= room ? chart.Rows.Count : room - 1;
        double row =
            Math.Clamp((height - HeadHeight) / Math.Max(Math.Min(chart.Rows.Count, room), 1), LeastRow, TallestRow);
        double column = Math.Min((width - 3 * PlaceColumn - 20) / columns, 170);
        double size = Math.Min(Ink.Small, Math.Min(0.8 * row, column / 3.4));
        double[] edges =
        [
            .. Enumerable.Range(1, 3).Select(k => x + k * PlaceColumn - 12),
            .. Enumerable.Range(1, columns).Select(k => x + 3 * PlaceColumn + 20 + k * column - 12),
        ];

        svg.Begin("numbers");
        DrawHead(svg, request, x, y, edges, column, size);
        double rule = y + HeadHeight - 8;
        svg.Line(new SvgPoint(x, rule), new SvgPoint(edges[^1] + 12, rule), new Pen(Ink.Soft, Ink.Fine));
        for (int k = 0; k < shown; k++)
            DrawRow(svg, chart, k, y + HeadHeight + (k + 0.5) * row + size * Ink.HalfCapital, edges, size);
        if (shown < chart.Rows.Count)
        {
            string more = string.Create(
                CultureInfo.InvariantCulture, $"and {chart.Rows.Count - shown} more places, in the table of numbers");
            svg.Text(new SvgPoint(x, y + HeadHeight + (shown + 0.8) * row), more, new TextStyle(size, Ink.Soft));
        }

        svg.End();
    }

    private static void DrawHead(
        SvgWriter svg, ChartRequest request, double x, double y, double[] edges, double column, double size)
    {
        var strong = new TextStyle(size, Ink.Graphite, false, TextAnchor.Middle);
        var soft = new TextStyle(0.85 * size, Ink.Soft, false, TextAnchor.End);
        string[] names = ["along", "across", "mirror"];
        for (int k = 0; k < names.Length; k++)
            svg.Text(new SvgPoint(edges[k], y + 2.2 * size), names[k], soft);
        for (int tip = 0; tip < request.Tips.Count; tip++)
        {
            int first = 3 + tip * request.Speeds.Count;
            double left = edges[first] + 12 - column;
            double group = column * request.Speeds.Count;
            string name = TextWidth.Fit(ChartNumbers.Tip(request.Tips[tip]), group, size);
            svg.Text(new SvgPoint(left + group / 2, y + size), name, strong);
            if (tip > 0)
                svg.Line(new SvgPoint(left, y), new SvgPoint(left, y + HeadHeight - 8), new Pen(Ink.Ghost, Ink.Fine));
            for (int speed = 0; speed < request.Speeds.Count; speed++)
            {
                var at = new SvgPoint(edges[first + speed], y + 2.2 * size);
                svg.Text(at, ChartNumbers.Speed(request.Speeds[speed]), soft);
            }
        }
    }

    private static void DrawRow(SvgWriter svg, BankChart chart, int k, double line, double[] edges, double size)
    {
        ChartRow row = chart.Rows[k];
        var place = new TextStyle(size, Ink.Soft, false, TextAnchor.End);
        svg.Text(new SvgPoint(edges[0], line), ChartNumbers.Diamond(row.Place.X), place);
        svg.Text(new SvgPoint(edges[1], line), ChartNumbers.Diamond(row.Place.Y), place);
        svg.Text(new SvgPoint(edges[2], line), ChartNumbers.Number(chart.Request, row.MirrorNumber), place);
        for (int c = 0; c < row.Cells.Count; c++)
        {
            bool answered = row.Cells[c].Failure == NoBank.None;
            svg.Text(
                new SvgPoint(edges[3 + c], line), ChartNumbers.Text(chart.Request, row.Cells[c]),
                new TextStyle(size, answered ? Ink.Graphite : Ink.Soft, false, TextAnchor.End));
        }
    }
}
