using Longrail.Coaching.Statistics;
using Longrail.Coaching.Trials;
using Longrail.Drawing.Svg;
using static System.FormattableString;

namespace Longrail.Drawing.Trials;

/// <summary>The differences of a trial with their intervals: as they stand, at the same speed, and what the physics
/// expected.</summary>
internal static class TrialDifferencePlot
{
    private const double AxisHeight = 96;

    private sealed record Row(string Name, double Value, Interval? Within, string P, bool IsDecisive);

    internal static void Draw(SvgWriter svg, TrialResult result, double x, double y, double width, double height)
    {
        List<(string? Heading, Row? Row)> lines = [.. Lines(result)];
        Row[] rows = [.. lines.Select(line => line.Row).OfType<Row>()];
        if (rows.Length == 0) return;
        svg.Begin("differences");
        double bottom = y + height - AxisHeight;
        var axis = new PlotAxis(
            rows.SelectMany(row => (double?[])[0, row.Value, row.Within?.Low, row.Within?.High]).OfType<double>(),
            x + 10, x + width - 10);
        DrawAxis(svg, result, axis, x, x + width, y + 20, bottom);
        double step = Math.Min(150, (bottom - y - 40) / lines.Count);
        double at = y + 40;
        foreach ((string? heading, Row? row) in lines)
        {
            if (heading is not null)
                OnPaper(
                    svg, new SvgPoint(x, at + 34), TextWidth.Fit(SvgText.Clean(heading), width, 30, bold: true),
                    new TextStyle(30, Ink.Graphite, Bold: true));
            else if (row is not null)
                DrawRow(svg, axis, row, x, at, step, width);
            at += step;
        }

        svg.End();
    }

    private static IEnumerable<(string? Heading, Row? Row)> Lines(TrialResult result)
    {
        bool isMade = result.Measure == TrialMeasure.Made;
        double unit = isMade ? 100 : 1000;
        foreach (WeighedComparison c in result.Comparisons)
        {
            WeighedCondition other = result.Conditions[c.Condition];
            WeighedCondition first = result.Conditions[0];
            yield return ($"{other.Label} ({other.Value}) less {first.Label} ({first.Value})", null);
            if (isMade)
            {
                if (c.Made is { } made) yield return (null, Of("makes", made, unit, true));
            }
            else
            {
                if (c.Unadjusted is { } raw) yield return (null, Of("as it stands", raw, unit, !result.UsesSpeed));
                if (c.Adjusted is { } adjusted)
                    yield return (null, Of("at the same speed", adjusted, unit, result.UsesSpeed));
            }

            if (c.Expected is { } expected)
                yield return (null, new Row("expected by the physics", unit * expected, null, "", false));
        }
    }

    private static Row Of(string name, WeighedDifference d, double unit, bool isDecisive) => new(
        name, unit * d.Value, new Interval(unit * d.Within.Low, unit * d.Within.High),
        d.P < 0.0005 ? "p < 0.001" : Invariant($"p {d.P:0.000}"), isDecisive);

    private static void DrawAxis(
        SvgWriter svg, TrialResult result, PlotAxis axis, double left, double right, double top, double bottom)
    {
        var grid = new SvgPath();
        foreach ((double value, string text) in axis.Ticks())
        {
            double at = axis.At(value);
            grid.Move(new SvgPoint(at, top)).Line(new SvgPoint(at, bottom));
            svg.Text(
                new SvgPoint(at, bottom + 38), text, new TextStyle(Ink.Small, Ink.Graphite, Anchor: TextAnchor.Middle));
        }

        svg.Path(grid, null, new Pen(Ink.Ghost, Ink.Fine));
        double zero = axis.At(0);
        svg.Line(new SvgPoint(zero, top), new SvgPoint(zero, bottom), new Pen(Ink.Graphite, Ink.Thin));
        string unit = result.Measure == TrialMeasure.Made
            ? "difference, makes in 100"
            : "difference, mm";
        string words = Invariant($"{unit}, with {100 * result.Confidence:0.#} % intervals");
        svg.Text(
            new SvgPoint((left + right) / 2, bottom + 82), words,
            new TextStyle(Ink.Body, Ink.Graphite, Anchor: TextAnchor.Middle));
    }

    // Words over the grid: the paper shows between them and its lines.
    private static void OnPaper(SvgWriter svg, SvgPoint at, string text, TextStyle style)
    {
        double width = TextWidth.Of(text, style.Size, style.Bold);
        svg.Rectangle(at.X - 6, at.Y - style.Size, width + 12, 1.3 * style.Size, Ink.Paper);
        svg.Text(at, text, style);
    }

    private static void DrawRow(SvgWriter svg, PlotAxis axis, Row row, double x, double y, double step, double width)
    {
        double line = y + 30;
        double middle = y + Math.Min(step - 20, 78);
        OnPaper(svg, new SvgPoint(x, line), row.Name, new TextStyle(Ink.Body, Ink.Graphite, row.IsDecisive));
        svg.Text(new SvgPoint(x + width, line), row.P, new TextStyle(Ink.Small, Ink.Soft, Anchor: TextAnchor.End));
        double at = axis.At(row.Value);
        if (row.Within is not { } within)
        {
            svg.Path(
                new SvgPath().Move(new SvgPoint(at, middle - 20)).Line(new SvgPoint(at + 14, middle))
                    .Line(new SvgPoint(at, middle + 20)).Line(new SvgPoint(at - 14, middle)).Close(),
                "#ffffff", new Pen(Ink.Graphite, Ink.Medium));
            return;
        }

        string colour = row.IsDecisive ? Ink.Graphite : Ink.Soft;
        var pen = new Pen(colour, row.IsDecisive ? 7 : Ink.Medium);
        (double low, double high) = (axis.At(within.Low), axis.At(within.High));
        svg.Path(
            new SvgPath().Move(new SvgPoint(low, middle)).Line(new SvgPoint(high, middle))
                .Move(new SvgPoint(low, middle - 14)).Line(new SvgPoint(low, middle + 14))
                .Move(new SvgPoint(high, middle - 14)).Line(new SvgPoint(high, middle + 14)),
            null, pen);
        svg.Circle(new SvgPoint(at, middle), row.IsDecisive ? 14 : 11, colour, new Pen("#ffffff", Ink.Fine));
    }
}
