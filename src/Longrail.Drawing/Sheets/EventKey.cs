using System.Globalization;
using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>The numbered circles on a drawing and the small table that explains them.</summary>
internal static class EventKey
{
    internal const double CircleRadius = 17;

    private const double RowHeight = 36;

    /// <summary>Puts a numbered circle near each place, joined to it by a thin line.</summary>
    internal static void DrawCircles(SvgWriter svg, Viewport view, IReadOnlyList<KeyRow> rows, double ballRadius, Occupancy taken)
    {
        svg.Begin("events");
        foreach (KeyRow row in rows)
        {
            SvgPoint anchor = view.ToSheet(row.At);
            SvgPoint at = taken.Place(anchor, ballRadius + CircleRadius + 8, CircleRadius, row.Beside);
            double distance = anchor.DistanceTo(at);
            SvgPoint d = new((at.X - anchor.X) / distance, (at.Y - anchor.Y) / distance);
            svg.Line(anchor, at.Moved(-d.X * CircleRadius, -d.Y * CircleRadius), new Pen(Ink.Soft, Ink.Fine));
            svg.Circle(anchor, 3.2, Ink.Graphite);
            svg.Circle(at, CircleRadius, Ink.Paper, new Pen(Ink.Graphite, Ink.Thin));
            svg.Text(
                at.Moved(0, Ink.Small * Ink.HalfCapital), Number(row.Number),
                new TextStyle(Ink.Small, Ink.Graphite, Bold: true, TextAnchor.Middle));
        }

        svg.End();
    }

    /// <summary>The table of what happened; what has no room is counted in its last line.</summary>
    internal static void DrawTable(SvgWriter svg, double x, double y, double width, double height, IReadOnlyList<KeyRow> rows)
    {
        svg.Begin("key");
        int room = (int)Math.Floor(height / RowHeight);
        int shown = rows.Count <= room ? rows.Count : Math.Max(room - 1, 0);
        double what = Math.Min(shown == 0 ? 0 : rows.Take(shown).Max(row => TextWidth.Of(row.What, Ink.Small)), 0.3 * width);
        double timeEnd = x + 120;
        double whatStart = timeEnd + 22;
        double readingStart = whatStart + what + 26;
        for (int k = 0; k < shown; k++)
        {
            double middle = y + (k + 0.5) * RowHeight;
            double line = middle + Ink.Small * Ink.HalfCapital;
            KeyRow row = rows[k];
            svg.Circle(new SvgPoint(x + 15, middle), 15, null, new Pen(Ink.Graphite, Ink.Fine));
            svg.Text(
                new SvgPoint(x + 15, middle + 20 * Ink.HalfCapital), Number(row.Number),
                new TextStyle(20, Ink.Graphite, Bold: true, TextAnchor.Middle));
            svg.Text(
                new SvgPoint(timeEnd, line), row.Time.ToString("0.00 s", CultureInfo.InvariantCulture),
                new TextStyle(Ink.Small, Ink.Soft, false, TextAnchor.End));
            svg.Text(
                new SvgPoint(whatStart, line), TextWidth.Fit(row.What, what + 1, Ink.Small), new TextStyle(Ink.Small, Ink.Graphite));
            svg.Text(
                new SvgPoint(readingStart, line), TextWidth.Fit(row.Reading, x + width - readingStart, Ink.Small),
                new TextStyle(Ink.Small, Ink.Soft));
        }

        if (shown < rows.Count)
        {
            string more = string.Create(CultureInfo.InvariantCulture, $"and {rows.Count - shown} more, not numbered here");
            double line = y + (shown + 0.5) * RowHeight + Ink.Small * Ink.HalfCapital;
            svg.Text(new SvgPoint(whatStart, line), more, new TextStyle(Ink.Small, Ink.Soft));
        }

        svg.End();
    }

    /// <summary>How many rows of the key get a number on the drawing.</summary>
    internal static int Room(double height, int rows)
    {
        int room = (int)Math.Floor(height / RowHeight);
        return rows <= room ? rows : Math.Max(room - 1, 0);
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
