using Longrail.Coaching.Statistics;
using Longrail.Coaching.Trials;
using Longrail.Drawing.Svg;
using static System.FormattableString;

namespace Longrail.Drawing.Trials;

/// <summary>Makes of each condition, with their intervals.</summary>
internal static class TrialMakesPlot
{
    internal static void Draw(SvgWriter svg, TrialResult result, double x, double y, double width, double height)
    {
        svg.Begin("makes");
        double left = x + Math.Min(340, 0.3 * width);
        double bottom = y + height - 96;
        var axis = new PlotAxis([5.3, 94.7], left, x + width, 10);
        var grid = new SvgPath();
        foreach ((double value, string text) in axis.Ticks())
        {
            grid.Move(new SvgPoint(axis.At(value), y + 30)).Line(new SvgPoint(axis.At(value), bottom));
            svg.Text(
                new SvgPoint(axis.At(value), bottom + 38), text,
                new TextStyle(Ink.Small, Ink.Graphite, Anchor: TextAnchor.Middle));
        }

        svg.Path(grid, null, new Pen(Ink.Ghost, Ink.Fine));
        svg.Text(
            new SvgPoint((left + x + width) / 2, bottom + 82), "made, %, with 95 % intervals",
            new TextStyle(Ink.Body, Ink.Graphite, Anchor: TextAnchor.Middle));
        double step = (bottom - y - 30) / result.Conditions.Count;
        for (int k = 0; k < result.Conditions.Count; k++)
        {
            WeighedCondition condition = result.Conditions[k];
            double middle = y + 30 + (k + 0.5) * step;
            string words = SvgText.Clean($"{condition.Label}  {condition.Value}");
            string name = TextWidth.Fit(words, left - x - 20, Ink.Body, bold: true);
            svg.Text(new SvgPoint(x, middle - 6), name, new TextStyle(Ink.Body, Ink.Graphite, Bold: true));
            if (condition.Made is not { } made) continue;
            svg.Text(
                new SvgPoint(x, middle + 34), Invariant($"{made.Made} of {made.Trials}"),
                new TextStyle(Ink.Body, Ink.Graphite));
            DrawInterval(svg, axis, made, middle, k);
        }

        svg.End();
    }

    private static void DrawInterval(SvgWriter svg, PlotAxis axis, Odds made, double middle, int condition)
    {
        double low = axis.At(100 * made.Low);
        double high = axis.At(100 * made.High);
        var pen = new Pen(VariantMark.Of(condition).Colour, Ink.Wide);
        svg.Path(
            new SvgPath().Move(new SvgPoint(low, middle)).Line(new SvgPoint(high, middle))
                .Move(new SvgPoint(low, middle - 14)).Line(new SvgPoint(low, middle + 14))
                .Move(new SvgPoint(high, middle - 14)).Line(new SvgPoint(high, middle + 14)),
            null, pen);
        ShotMark.Draw(svg, new SvgPoint(axis.At(100 * made.Share), middle), condition);
    }
}
