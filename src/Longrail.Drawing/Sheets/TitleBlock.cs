using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>The block in the lower right corner of a sheet: title, and a list of what was assumed.</summary>
internal static class TitleBlock
{
    private const double Pad = 14;
    private const double Label = 17;

    internal static void Draw(
        SvgWriter svg, double x, double y, double width, double height, string title,
        IReadOnlyList<(string Name, string Value)> rows)
    {
        svg.Begin("title-block");
        svg.Rectangle(x, y, width, height, Ink.Paper, new Pen(Ink.Graphite, Ink.Medium));

        string clean = SvgText.Clean(title);
        bool isLong = TextWidth.Of(clean, Ink.Heading, bold: true) > 1.7 * (width - 2 * Pad);
        double size = isLong ? Ink.Body : Ink.Heading;
        double line = y + Pad;
        foreach (string text in TextWidth.Wrap(clean, width - 2 * Pad, size, isLong ? 3 : 2, bold: true))
        {
            line += 1.15 * size;
            svg.Text(new SvgPoint(x + Pad, line - 4), text, new TextStyle(size, Ink.Graphite, Bold: true));
        }

        double top = line + Pad;
        double step = (y + height - top) / Math.Max(rows.Count, 1);
        double column = rows.Count == 0 ? 0 : rows.Max(row => TextWidth.Of(row.Name, Label)) + 2 * Pad;
        var rules = new SvgPath();
        for (int k = 0; k < rows.Count; k++)
        {
            double upper = top + k * step;
            // A row without a name goes on with the one above.
            if (rows[k].Name.Length > 0)
                rules.Move(new SvgPoint(x, upper)).Line(new SvgPoint(x + width, upper));
            double baseLine = upper + step / 2 + Ink.Small * Ink.HalfCapital;
            svg.Text(new SvgPoint(x + Pad, baseLine), rows[k].Name, new TextStyle(Label, Ink.Soft));
            string value = TextWidth.Fit(SvgText.Clean(rows[k].Value), width - column - Pad, Ink.Small);
            svg.Text(new SvgPoint(x + column, baseLine), value, new TextStyle(Ink.Small, Ink.Graphite));
        }

        svg.Path(rules, null, new Pen(Ink.Soft, Ink.Fine));
        svg.End();
    }
}
