using System.Globalization;
using Longrail.Coaching.Contrasts;
using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>The table of a comparison under its drawing, each row with a sample of its line.</summary>
internal static class ContrastKey
{
    private const double Sample = 92;
    private const double Gap = 22;
    private const double HeadHeight = 64;
    private const double TallestRow = 40;
    private const double LeastRow = 27;

    // What the table of numbers has and the picture has no room for.
    private static readonly string[] _left = ["of mirror", "roll"];

    internal static void Draw(SvgWriter svg, double x, double y, double width, double height, ContrastDrawing contrast)
    {
        IEnumerable<int> all = Enumerable.Range(1, contrast.Columns.Count - 1);
        int[] columns = [.. all.Where(c => !_left.Contains(contrast.Columns[c].Name) && SaysAnything(contrast, c))];
        int room = (int)Math.Floor((height - HeadHeight) / LeastRow);
        int shown = contrast.Variants.Count <= room ? contrast.Variants.Count : room - 1;
        double size = Fitting(contrast, columns, shown, width - Sample - 60);
        double[] widths = [.. columns.Select(c => ColumnWidth(contrast, c, shown, size))];
        double row = Math.Min(TallestRow, (height - HeadHeight) / Math.Max(Math.Min(contrast.Variants.Count, room), 1));

        svg.Begin("key");
        DrawHead(svg, x + Sample + 60, y, contrast.Columns, columns, widths, size);
        double rule = y + HeadHeight - 6;
        svg.Line(new SvgPoint(x, rule), new SvgPoint(x + width, rule), new Pen(Ink.Soft, Ink.Fine));
        for (int k = 0; k < shown; k++)
        {
            double middle = y + HeadHeight + (k + 0.5) * row;
            DrawRow(svg, x, middle, contrast.Variants[k], contrast.Columns, columns, widths, size);
        }

        if (shown < contrast.Variants.Count)
        {
            string more = string.Create(
                CultureInfo.InvariantCulture, $"and {contrast.Variants.Count - shown} more, drawn but not listed");
            var at = new SvgPoint(x + Sample + 60, y + HeadHeight + (shown + 0.7) * row);
            svg.Text(at, more, new TextStyle(size, Ink.Soft));
        }

        svg.End();
    }

    private static bool SaysAnything(ContrastDrawing contrast, int column) =>
        contrast.Variants.Any(variant => variant.Cells[column] != "-");

    // The largest type size at which all columns have room.
    private static double Fitting(ContrastDrawing contrast, int[] columns, int rows, double width)
    {
        for (double size = Ink.Small; size > 15; size -= 1)
        {
            if (columns.Sum(c => ColumnWidth(contrast, c, rows, size) + Gap) <= width)
                return size;
        }

        return 15;
    }

    private static double ColumnWidth(ContrastDrawing contrast, int column, int rows, double size)
    {
        double widest = contrast.Variants.Take(rows).Max(v => TextWidth.Of(v.Cells[column], size));
        ContrastColumn head = contrast.Columns[column];
        widest = Math.Max(widest, Math.Max(TextWidth.Of(head.Name, size), TextWidth.Of(head.Unit, 0.85 * size)));
        return Math.Min(widest, 320);
    }

    private static void DrawHead(
        SvgWriter svg, double x, double y, IReadOnlyList<ContrastColumn> heads, int[] columns, double[] widths,
        double size)
    {
        for (int k = 0; k < columns.Length; k++)
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

    private static void DrawRow(
        SvgWriter svg, double x, double middle, VariantDrawing variant, IReadOnlyList<ContrastColumn> heads,
        int[] columns, double[] widths, double size)
    {
        double line = middle + size * Ink.HalfCapital;
        var pen = variant.Mark is { } mark ? new Pen(mark.Colour, Ink.Medium, mark.Dash) : new Pen(Ink.Ghost, 9);
        svg.Line(new SvgPoint(x, middle), new SvgPoint(x + Sample, middle), pen);
        bool isBase = variant.Mark is null;
        svg.Text(
            new SvgPoint(x + Sample + 12, line), isBase ? "base" : variant.Cells[0],
            new TextStyle(isBase ? 0.8 * size : size, Ink.Graphite, Bold: !isBase));
        x += Sample + 60;
        var style = new TextStyle(size, isBase ? Ink.Soft : Ink.Graphite);
        for (int k = 0; k < columns.Length; k++)
        {
            bool number = heads[columns[k]].IsNumber;
            string text = TextWidth.Fit(SvgText.Clean(variant.Cells[columns[k]]), widths[k] + 1, size);
            svg.Text(
                new SvgPoint(number ? x + widths[k] : x, line), text,
                style with { Anchor = number ? TextAnchor.End : TextAnchor.Start });
            x += widths[k] + Gap;
        }
    }
}
