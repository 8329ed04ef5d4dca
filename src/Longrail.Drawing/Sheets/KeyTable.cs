using System.Globalization;
using Longrail.Coaching.Contrasts;
using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>A table under a drawing, each row with a sample of its line. What has no room is counted in its last
/// line.</summary>
/// <param name="heads">All columns.</param>
/// <param name="columns">Those that are drawn, in order.</param>
/// <param name="rows">The rows.</param>
/// <param name="widestColumn">What is wider than this is cut, sheet units.</param>
internal sealed class KeyTable(
    IReadOnlyList<ContrastColumn> heads, IReadOnlyList<int> columns, IReadOnlyList<KeyTableRow> rows,
    double widestColumn = 320)
{
    private const double Sample = 92;
    private const double Gap = 22;
    private const double HeadHeight = 64;
    private const double TallestRow = 40;
    private const double LeastRow = 27;

    internal void Draw(SvgWriter svg, double x, double y, double width, double height)
    {
        int room = (int)Math.Floor((height - HeadHeight) / LeastRow);
        int shown = rows.Count <= room ? rows.Count : room - 1;
        double size = Fitting(shown, width - Sample - 60);
        double[] widths = [.. columns.Select(c => ColumnWidth(c, shown, size))];
        double row = Math.Min(TallestRow, (height - HeadHeight) / Math.Max(Math.Min(rows.Count, room), 1));

        svg.Begin("key");
        DrawHead(svg, x + Sample + 60, y, widths, size);
        double rule = y + HeadHeight - 6;
        svg.Line(new SvgPoint(x, rule), new SvgPoint(x + width, rule), new Pen(Ink.Soft, Ink.Fine));
        for (int k = 0; k < shown; k++)
        {
            double middle = y + HeadHeight + (k + 0.5) * row;
            DrawRow(svg, x, middle, rows[k], widths, size);
        }

        if (shown < rows.Count)
        {
            string more = string.Create(
                CultureInfo.InvariantCulture, $"and {rows.Count - shown} more, drawn but not listed");
            var at = new SvgPoint(x + Sample + 60, y + HeadHeight + (shown + 0.7) * row);
            svg.Text(at, more, new TextStyle(size, Ink.Soft));
        }

        svg.End();
    }

    // The largest type size at which all columns have room.
    private double Fitting(int shown, double width)
    {
        for (double size = Ink.Small; size > 15; size -= 1)
        {
            if (columns.Sum(c => ColumnWidth(c, shown, size) + Gap) <= width)
                return size;
        }

        return 15;
    }

    private double ColumnWidth(int column, int shown, double size)
    {
        ContrastColumn head = heads[column];
        double widest = rows.Take(shown).Max(row => TextWidth.Of(row.Cells[column], size));
        widest = Math.Max(widest, Math.Max(TextWidth.Of(head.Name, size), TextWidth.Of(head.Unit, 0.85 * size)));
        return Math.Min(widest, widestColumn);
    }

    private void DrawHead(SvgWriter svg, double x, double y, double[] widths, double size)
    {
        for (int k = 0; k < columns.Count; k++)
        {
            ContrastColumn head = heads[columns[k]];
            TextAnchor anchor = head.IsNumber ? TextAnchor.End : TextAnchor.Start;
            double at = head.IsNumber ? x + widths[k] : x;
            svg.Text(
                new SvgPoint(at, y + size), TextWidth.Fit(head.Name, widths[k] + 1, size),
                new TextStyle(size, Ink.Graphite, false, anchor));
            if (head.Unit.Length > 0)
                svg.Text(
                    new SvgPoint(at, y + 2.1 * size), head.Unit, new TextStyle(0.85 * size, Ink.Soft, false, anchor));
            x += widths[k] + Gap;
        }
    }

    private void DrawRow(
        SvgWriter svg, double x, double middle, KeyTableRow row, double[] widths, double size)
    {
        double line = middle + size * Ink.HalfCapital;
        svg.Line(new SvgPoint(x, middle), new SvgPoint(x + Sample, middle), row.Sample);
        svg.Text(
            new SvgPoint(x + Sample + 12, line), row.Label,
            new TextStyle(row.IsStrong ? size : 0.8 * size, Ink.Graphite, Bold: row.IsStrong));
        x += Sample + 60;
        var style = new TextStyle(size, row.IsStrong ? Ink.Graphite : Ink.Soft);
        for (int k = 0; k < columns.Count; k++)
        {
            bool number = heads[columns[k]].IsNumber;
            string text = TextWidth.Fit(SvgText.Clean(row.Cells[columns[k]]), widths[k] + 1, size);
            svg.Text(
                new SvgPoint(number ? x + widths[k] : x, line), text,
                style with { Anchor = number ? TextAnchor.End : TextAnchor.Start });
            x += widths[k] + Gap;
        }
    }
}
