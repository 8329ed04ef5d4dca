using Longrail.Coaching.Effects;
using Longrail.Drawing.Svg;
using Longrail.Drawing.Tables;

namespace Longrail.Drawing.Sheets;

/// <summary>The flight of steps from the mirror's arrival to the shot's, standing on the target line
/// enlarged.</summary>
internal static class EffectSteps
{
    private const double NameWidth = 420;
    private const double BesideWidth = 150;
    private const double BarPart = 0.56;
    private const double FootRoom = 150;

    /// <summary>The colours of long and short: two that stay apart for all kinds of colour vision.</summary>
    private static string LongColour => Ink.Colours[0];

    private static string ShortColour => Ink.Colours[1];

    internal static void Draw(
        SvgWriter svg, double x, double y, double width, double height, EffectBudget budget, EffectUnit unit)
    {
        IReadOnlyList<EffectStep> steps = EffectStep.Of(budget, unit);
        double low = Math.Min(0, steps.Min(step => Math.Min(step.From, step.To)));
        double high = Math.Max(0, steps.Max(step => Math.Max(step.From, step.To)));
        // Never less than a ball's radius, or rounding would look like an effect.
        double radius = budget.Trace.Setup.Balls[budget.Ball].Radius;
        double span = Math.Max(1.1 * (high - low), radius);
        double middle = (low + high) / 2;
        double left = x + NameWidth;
        double room = width - NameWidth - BesideWidth - 90;
        double scale = room / span;
        double X(double metres) => left + 45 + room / 2 + (metres - middle) * scale;

        double top = y + 96;
        double nose = y + height - FootRoom;
        double row = (nose - top - 14) / (steps.Count + 2);
        svg.Begin("steps");
        DrawHead(svg, x, y, width, budget, unit, X(0));
        EffectRail.Draw(svg, left, left + room + 90, nose, budget, X, middle - span / 2, middle + span / 2);
        DrawVerticals(svg, X(0), X(budget.Total), top, row, nose, steps.Count);
        DrawEnd(svg, x, top + 0.5 * row, Mirror(budget), X(0), "0");
        for (int k = 0; k < steps.Count; k++)
            DrawStep(svg, x, x + width, top + (k + 1.5) * row, row, steps[k], X);
        DrawTotal(svg, x, top + (steps.Count + 1.5) * row, row, budget, unit, X);
        svg.End();
    }

    private static string Mirror(EffectBudget budget) => budget.Target.Kind switch
    {
        EffectTargetKind.Mouth => "line of centres",
        _ => budget.Striker is null ? "plain mirror line" : "plain mirror bank",
    };

    private static void DrawHead(
        SvgWriter svg, double x, double y, double width, EffectBudget budget, EffectUnit unit, double zero)
    {
        var soft = new TextStyle(Ink.Small, Ink.Soft);
        svg.Text(new SvgPoint(x, y + 60), "cause", soft);
        svg.Text(new SvgPoint(x + width, y + 30), "if this alone", soft with { Anchor = TextAnchor.End });
        svg.Text(new SvgPoint(x + width, y + 60), "were off", soft with { Anchor = TextAnchor.End });
        string unitName = EffectNames.Of(unit);
        // Positive is to the right whatever the diamonds do.
        svg.Text(new SvgPoint(zero + 26, y + 60), $"{unitName} {budget.Target.PositiveWord}", soft);
        svg.Text(new SvgPoint(zero - 26, y + 60), budget.Target.NegativeWord, soft with { Anchor = TextAnchor.End });
        double line = y + 60 - Ink.Small * Ink.HalfCapital;
        svg.Path(DimensionLine.Head(new SvgPoint(zero + 20, line), -1, 0).ContinueWith(
            DimensionLine.Head(new SvgPoint(zero - 20, line), 1, 0)), Ink.Soft);
        svg.Line(new SvgPoint(x, y + 80), new SvgPoint(x + width, y + 80), new Pen(Ink.Soft, Ink.Fine));
    }

    private static void DrawVerticals(
        SvgWriter svg, double zero, double total, double top, double row, double nose, int steps)
    {
        svg.Line(new SvgPoint(zero, top), new SvgPoint(zero, nose), new Pen(Ink.Soft, Ink.Thin, "14 9"));
        double from = top + (steps + 1) * row;
        svg.Line(new SvgPoint(total, from), new SvgPoint(total, nose), new Pen(Ink.Graphite, Ink.Medium));
    }

    private static void DrawEnd(SvgWriter svg, double x, double middle, string name, double at, string number)
    {
        double line = middle + Ink.Body * Ink.HalfCapital;
        svg.Text(new SvgPoint(x, line), name, new TextStyle(Ink.Body, Ink.Graphite));
        svg.Circle(new SvgPoint(at, middle), 7, Ink.Paper, new Pen(Ink.Graphite, Ink.Thin));
        svg.Text(new SvgPoint(at + 18, line), number, new TextStyle(Ink.Body, Ink.Soft));
    }

    private static void DrawStep(
        SvgWriter svg, double x, double right, double middle, double row, EffectStep step, Func<double, double> place)
    {
        double from = place(step.From);
        double to = place(step.To);
        bool isNothing = step.Number == "0";
        double line = middle + Ink.Body * Ink.HalfCapital;
        string ink = isNothing ? Ink.Soft : Ink.Graphite;
        svg.Text(
            new SvgPoint(x, line), TextWidth.Fit(step.Name, NameWidth - 20, Ink.Body), new TextStyle(Ink.Body, ink));
        if (step.Beside.Length > 0)
            svg.Text(new SvgPoint(right, line), step.Beside, new TextStyle(Ink.Small, Ink.Soft, false, TextAnchor.End));

        double half = BarPart * row / 2;
        // From the foot of the step before to the head of this one.
        svg.Line(
            new SvgPoint(from, middle - row + half), new SvgPoint(from, middle + (isNothing ? half : -half)),
            new Pen(Ink.Faint, Ink.Thin));
        if (isNothing)
        {
            svg.Text(new SvgPoint(from + 14, line), "0", new TextStyle(Ink.Body, Ink.Soft));
            return;
        }

        Bar(svg, from, to, middle, half);
        bool rightwards = to > from;
        svg.Text(
            new SvgPoint(to + (rightwards ? 14 : -14), line), step.Number,
            new TextStyle(Ink.Body, Ink.Graphite, true, rightwards ? TextAnchor.Start : TextAnchor.End));
    }

    // Long is filled, short is hatched; the end towards which it goes is the thick one.
    private static void Bar(SvgWriter svg, double from, double to, double middle, double half)
    {
        bool isLong = to > from;
        string colour = isLong ? LongColour : ShortColour;
        double low = Math.Min(from, to);
        double wide = Math.Abs(to - from);
        svg.Rectangle(
            low, middle - half, wide, 2 * half, isLong ? Tint.Of(colour, 0.4) : Ink.Bed, new Pen(colour, Ink.Thin));
        if (!isLong)
        {
            SvgPoint[] corners =
            [
                new(low, middle - half), new(low + wide, middle - half), new(low + wide, middle + half),
                new(low, middle + half),
            ];
            svg.Path(Hatching.Of(corners, 9), null, new Pen(colour, 1.6));
        }

        svg.Line(new SvgPoint(to, middle - half), new SvgPoint(to, middle + half), new Pen(colour, 7));
    }

    private static void DrawTotal(
        SvgWriter svg, double x, double middle, double row, EffectBudget budget, EffectUnit unit,
        Func<double, double> place)
    {
        double line = middle + Ink.Body * Ink.HalfCapital;
        svg.Text(new SvgPoint(x, line), "the shot", new TextStyle(Ink.Body, Ink.Graphite, Bold: true));
        double total = place(budget.Total);
        double half = BarPart * row / 2;
        string number = EffectNames.WithSign(budget.Target.In(unit, budget.Total), unit);
        double from = Math.Min(place(0), total);
        svg.Rectangle(
            from, middle - half, Math.Abs(total - place(0)), 2 * half, Ink.Bed, new Pen(Ink.Graphite, Ink.Medium));
        bool rightwards = budget.Total >= 0;
        svg.Text(
            new SvgPoint(total + (rightwards ? 16 : -16), line), number,
            new TextStyle(Ink.Heading, Ink.Graphite, true, rightwards ? TextAnchor.Start : TextAnchor.End));
    }
}
