using System.Globalization;
using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>The numbered circles on a drawing and the small table that explains them.</summary>
internal static class EventKey
{
    internal const double CircleRadius = 17;

    private const double RowHeight = 36;
    private const double SecondLine = 29;
    private const double Half = Ink.Small * Ink.HalfCapital;

    /// <summary>Puts a numbered circle near each place, joined to it by a thin line; where a page is to point at one
    /// of them, each in a group of its own.</summary>
    internal static void DrawCircles(
        SvgWriter svg, Viewport view, IReadOnlyList<KeyRow> rows, double ballRadius, Occupancy taken,
        bool apart = false)
    {
        svg.Begin("events");
        foreach (KeyRow row in rows)
        {
            if (apart)
                svg.Begin("event", row.Number);
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
            if (apart)
                svg.End();
        }

        svg.End();
    }

    /// <summary>The table of what happened; what has no room is counted in its last line.</summary>
    internal static void DrawTable(
        SvgWriter svg, double x, double y, double width, double height, IReadOnlyList<KeyRow> rows)
    {
        svg.Begin("key");
        int lines = (int)Math.Floor(height / RowHeight);
        int shown = Room(height, rows.Count);
        double what = Math.Min(
            shown == 0 ? 0 : rows.Take(shown).Max(row => TextWidth.Of(row.What, Ink.Small)), 0.3 * width);
        double time = x + 120;
        double start = time + 22 + what + 26;
        // Readings may take a second line as long as all of them still fit.
        int spare = lines - shown - (shown < rows.Count ? 1 : 0);
        double top = y;
        foreach (KeyRow row in rows.Take(shown))
        {
            IReadOnlyList<string> reading = TextWidth.Wrap(
                row.Reading, x + width - start, Ink.Small, spare > 0 ? 2 : 1);
            DrawRow(svg, x, time, what, start, top, row, reading);
            spare -= Math.Max(reading.Count - 1, 0);
            top += RowHeight + Math.Max(reading.Count - 1, 0) * SecondLine;
        }

        if (shown < rows.Count)
        {
            string more = string.Create(
                CultureInfo.InvariantCulture, $"and {rows.Count - shown} more, not numbered here");
            svg.Text(new SvgPoint(time + 22, top + RowHeight / 2 + Half), more, new TextStyle(Ink.Small, Ink.Soft));
        }

        svg.End();
    }

    private static void DrawRow(
        SvgWriter svg, double x, double time, double what, double start, double top, KeyRow row,
        IReadOnlyList<string> reading)
    {
        double middle = top + RowHeight / 2;
        double line = middle + Half;
        svg.Circle(new SvgPoint(x + 15, middle), 15, null, new Pen(Ink.Graphite, Ink.Fine));
        svg.Text(
            new SvgPoint(x + 15, middle + 20 * Ink.HalfCapital), Number(row.Number),
            new TextStyle(20, Ink.Graphite, Bold: true, TextAnchor.Middle));
        svg.Text(
            new SvgPoint(time, line), row.Time.ToString("0.00 s", CultureInfo.InvariantCulture),
            new TextStyle(Ink.Small, Ink.Soft, false, TextAnchor.End));
        svg.Text(
            new SvgPoint(time + 22, line), TextWidth.Fit(SvgText.Clean(row.What), what + 1, Ink.Small),
            new TextStyle(Ink.Small, Ink.Graphite));
        for (int k = 0; k < reading.Count; k++)
            svg.Text(new SvgPoint(start, line + k * SecondLine), reading[k], new TextStyle(Ink.Small, Ink.Soft));
    }

    /// <summary>How many rows of the key have room, and so get a number on the drawing.</summary>
    internal static int Room(double height, int rows)
    {
        int room = (int)Math.Floor(height / RowHeight);
        return rows <= room ? rows : Math.Max(room - 1, 0);
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
