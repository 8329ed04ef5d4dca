using System.Globalization;
using Longrail.Drawing.Svg;
using Longrail.Drawing.Tables;
using Longrail.Physics.Equipment;

namespace Longrail.Drawing.Sheets;

/// <summary>A piece of the target cushion, enlarged: where each variant lands, and how far from the base.</summary>
internal static class TargetInset
{
    private const double Band = 34;
    private const double RowHeight = 38;
    private const double LeastSpan = 0.4;
    private const double Size = 20;

    internal static void Draw(SvgWriter svg, double x, double y, double width, double height, ContrastDrawing contrast)
    {
        VariantDrawing[] landed = [.. contrast.Variants.Where(v => v.Landing is not null)];
        if (contrast.Target is not { } target || landed.Length == 0)
            return;

        TableSpec table = contrast.Equipment.Table;
        double diamond = target is CushionName.Left or CushionName.Right ? table.DiamondAlong : table.DiamondAcross;
        double[] at = [.. landed.Select(v => v.Landing!.Value / diamond)];
        (double from, double to) = Range(at);
        // The words stand in a column of their own, so that no line runs through them.
        double words = landed.Max(v => TextWidth.Of(Words(v), Size)) + 14;
        double band = width - words;
        double scale = band / (to - from);
        double X(double diamonds) => x + (diamonds - from) * scale;

        svg.Begin("target");
        string heading = $"where it lands on the {EventWords.Name(target)} cushion, diamonds";
        svg.Text(new SvgPoint(x, y + Ink.Small), heading, new TextStyle(Ink.Small, Ink.Soft));
        double nose = y + 70 + Band;
        DrawBand(svg, x, nose, band, from, to, X);
        DrawMarks(svg, nose, y + height, landed, v => X(v.Landing!.Value / diamond), x + band + 14);
        svg.End();
    }

    // All landings with some room on both sides, never less than a few tenths of a diamond.
    private static (double From, double To) Range(double[] at)
    {
        double middle = (at.Min() + at.Max()) / 2;
        double span = Math.Max(1.25 * (at.Max() - at.Min()), LeastSpan);
        return (middle - span / 2, middle + span / 2);
    }

    private static void DrawBand(
        SvgWriter svg, double x, double nose, double width, double from, double to, Func<double, double> place)
    {
        SvgPoint[] corners =
        [
            new(x, nose - Band), new(x + width, nose - Band), new(x + width, nose), new(x, nose),
        ];
        svg.Path(Hatching.Of(corners, 11), null, new Pen(Ink.Faint, Ink.Fine));
        svg.Line(corners[3], corners[2], new Pen(Ink.Graphite, Ink.Medium));

        double step = Step(to - from);
        var ticks = new SvgPath();
        var style = new TextStyle(Size, Ink.Soft, false, TextAnchor.Middle);
        for (int k = (int)Math.Ceiling(from / step); k * step <= to; k++)
        {
            double at = place(k * step);
            ticks.Move(new SvgPoint(at, nose - Band)).Line(new SvgPoint(at, nose - Band - 8));
            if (at > x + 15 && at < x + width - 15)
            {
                string number = (k * step).ToString("0.##", CultureInfo.InvariantCulture);
                svg.Text(new SvgPoint(at, nose - Band - 13), number, style);
            }
        }

        svg.Path(ticks, null, new Pen(Ink.Soft, Ink.Fine));
    }

    private static double Step(double span)
    {
        double[] steps = [0.05, 0.1, 0.2, 0.5, 1];
        return steps.First(step => span / step <= 8 || step == 1);
    }

    private static void DrawMarks(
        SvgWriter svg, double nose, double bottom, VariantDrawing[] landed, Func<VariantDrawing, double> place,
        double words)
    {
        double basis = place(landed[0]);
        bool hasBase = landed[0].Mark is null;
        int rows = landed.Count(v => v.Mark is not null);
        double row = Math.Min(RowHeight, (bottom - nose - 20) / Math.Max(rows, 1));
        if (hasBase)
        {
            svg.Line(new SvgPoint(basis, nose), new SvgPoint(basis, nose + 16 + rows * row), new Pen(Ink.Ghost, 7));
            svg.Text(
                new SvgPoint(basis, nose + 16 + rows * row + 20), "base",
                new TextStyle(Size, Ink.Soft, false, TextAnchor.Middle));
        }

        double y = nose;
        foreach (VariantDrawing variant in landed.Where(v => v.Mark is not null))
        {
            VariantMark mark = variant.Mark!.Value;
            double at = place(variant);
            y += row;
            svg.Line(new SvgPoint(at, nose), new SvgPoint(at, y + 8), new Pen(mark.Colour, Ink.Thin, mark.Dash));
            if (hasBase)
                Measure(svg, basis, at, y, mark.Colour);
            svg.Text(
                new SvgPoint(words, y + Size * Ink.HalfCapital), Words(variant), new TextStyle(Size, Ink.Graphite));
        }
    }

    private static void Measure(SvgWriter svg, double from, double to, double y, string colour)
    {
        double length = Math.Abs(to - from);
        svg.Line(new SvgPoint(from, y), new SvgPoint(to, y), new Pen(colour, Ink.Fine));
        if (length < 40)
            return;
        double way = Math.Sign(to - from);
        SvgPath heads = DimensionLine.Head(new SvgPoint(to, y), -way, 0)
            .ContinueWith(DimensionLine.Head(new SvgPoint(from, y), way, 0));
        svg.Path(heads, colour);
    }

    private static string Words(VariantDrawing variant) => $"{variant.Label}  {variant.Difference}".TrimEnd();
}
