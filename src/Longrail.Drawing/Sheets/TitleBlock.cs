using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>The block in the lower right corner of a sheet: title, and a list of what was assumed.</summary>
internal static class TitleBlock
{
    private const double Pad = 14;
    private const double Label = 17;

    internal static void Draw(
        SvgWriter svg, double x, double y, double width, double height, string title, IReadOnlyList<(string Name, string Value)> rows)
    {
        svg.Begin("title-block");
        svg.Rectangle(x, y, width, height, Ink.Paper, new Pen(Ink.Graphite, Ink.Medium));

        IReadOnlyList<string> lines = TextWidth.Wrap(SvgText.Clean(title), width - 2 * Pad, Ink.Heading, 2, bold: true);
        double line = y + Pad;
        foreach (string text in lines)
        {
            line += 1.12 * Ink.Heading;
            svg.Text(new SvgPoint(x + Pad, line - 4), text, new TextStyle(Ink.Heading, Ink.Graphite, Bold: true));
        }

        double top = line + Pad;
        double step = (y + height - top) / Math.Max(rows.Count, 1);
        double column = rows.Count == 0 ? 0 : rows.Max(row => TextWidth.Of(row.Name, Label)) + 2 * Pad;
        var rules = new SvgPath();
        for (int k = 0; k < rows.Count; k++)
        {
            double upper = top + k * step;
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
