using System.Globalization;
using Longrail.Coaching.Effects;
using Longrail.Drawing.Svg;
using Longrail.Drawing.Tables;
using Longrail.Physics.Geometry;
using Longrail.Scenes;

namespace Longrail.Drawing.Sheets;

/// <summary>The flight of steps from the mirror's arrival to the shot's, standing on the target line enlarged.</summary>
internal static class EffectSteps
{
    private const double NameWidth = 420;
    private const double BesideWidth = 150;
    private const double Band = 40;
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
        DrawRail(svg, left, left + room + 90, nose, budget, X, middle - span / 2, middle + span / 2);
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

    /// <summary>The target line under the steps: rubber hatched, mouths open, its diamonds or millimetres.</summary>
    private static void DrawRail(
        SvgWriter svg, double left, double right, double nose, EffectBudget budget, Func<double, double> place,
        double from, double to)
    {
        EffectTarget target = budget.Target;
        double Sheet(double along) => place(target.Sense * (along - budget.MirrorPlace));
        double a = budget.MirrorPlace + target.Sense * from;
        double b = budget.MirrorPlace + target.Sense * to;
        foreach ((double start, double end) in Rubber(budget, Math.Min(a, b), Math.Max(a, b)))
        {
            double low = Math.Clamp(Math.Min(Sheet(start), Sheet(end)), left, right);
            double high = Math.Clamp(Math.Max(Sheet(start), Sheet(end)), left, right);
            SvgPoint[] corners = [new(low, nose), new(high, nose), new(high, nose + Band), new(low, nose + Band)];
            svg.Path(Hatching.Of(corners, 11), null, new Pen(Ink.Faint, Ink.Fine));
            svg.Line(corners[0], corners[1], new Pen(Ink.Graphite, Ink.Medium));
        }

        DrawPocket(svg, nose, budget, Sheet, left, right);
        bool inDiamonds = target.Kind != EffectTargetKind.Mouth;
        double unit = inDiamonds ? target.Diamond : 0.001;
        double step = NiceStep(Math.Abs(b - a) / unit);
        var ticks = new SvgPath();
        var style = new TextStyle(Ink.Small, Ink.Soft, false, TextAnchor.Middle);
        for (double k = Math.Ceiling(Math.Min(a, b) / unit / step); k * step <= Math.Max(a, b) / unit; k++)
        {
            double at = Sheet(k * step * unit);
            ticks.Move(new SvgPoint(at, nose + Band)).Line(new SvgPoint(at, nose + Band + 10));
            string number = (k * step).ToString("0.##", CultureInfo.InvariantCulture).Replace("-0", "0", StringComparison.Ordinal);
            svg.Text(new SvgPoint(at, nose + Band + 34), inDiamonds ? number : (k * step).ToString("0", CultureInfo.InvariantCulture), style);
        }

        svg.Path(ticks, null, new Pen(Ink.Soft, Ink.Fine));
        svg.Text(
            new SvgPoint((left + right) / 2, nose + Band + 68), RailWords(budget),
            new TextStyle(Ink.Small, Ink.Soft, false, TextAnchor.Middle));
    }

    // The pocket's name in its mouth, and a mark at its middle, where the steps reach so far.
    private static void DrawPocket(
        SvgWriter svg, double nose, EffectBudget budget, Func<double, double> sheet, double left, double right)
    {
        EffectTarget target = budget.Target;
        if (target.Pocket is not { } name)
            return;
        PocketOutline pocket = new TableOutline(budget.Trace.Setup.Equipment.Table).Pockets[(int)name];
        double a = sheet(target.PlaceOf(pocket.JawA.Corner));
        double b = sheet(target.PlaceOf(pocket.JawB.Corner));
        double low = Math.Max(Math.Min(a, b), left);
        double high = Math.Min(Math.Max(a, b), right);
        string word = TableWords.Of(name);
        if (high - low > TextWidth.Of(word, Ink.Small) + 20)
        {
            svg.Text(
                new SvgPoint((low + high) / 2, nose + Band - 12), word,
                new TextStyle(Ink.Small, Ink.Graphite, false, TextAnchor.Middle));
        }

        double middle = (a + b) / 2;
        if (middle > left && middle < right && target.Kind != EffectTargetKind.Ball)
            svg.Line(new SvgPoint(middle, nose - 14), new SvgPoint(middle, nose + 8), new Pen(Ink.Soft, Ink.Thin));
    }

    private static string RailWords(EffectBudget budget) => budget.Target.Kind switch
    {
        EffectTargetKind.Cushion =>
            $"{TableWords.Of(budget.Target.Cushion!.Value)} cushion, diamonds of the ball's centre, counted at the nose",
        EffectTargetKind.Ball =>
            $"diamonds beside {budget.Names[budget.Target.Met!.Value]}, along the {TableWords.Of(budget.Target.Cushion!.Value)} cushion",
        _ => $"mouth of {TableWords.Of(budget.Target.Pocket!.Value)}, mm from its middle",
    };

    // The stretches of rubber along the target between two places.
    private static IEnumerable<(double From, double To)> Rubber(EffectBudget budget, double low, double high)
    {
        EffectTarget target = budget.Target;
        var outline = new TableOutline(budget.Trace.Setup.Equipment.Table);
        if (target.Kind == EffectTargetKind.Ball)
            yield break;
        if (target.Kind == EffectTargetKind.Mouth)
        {
            double half = outline.Pockets[(int)target.Pocket!.Value].Mouth / 2;
            if (low < -half)
                yield return (low, Math.Min(high, -half));
            if (high > half)
                yield return (Math.Max(low, half), high);
            yield break;
        }

        foreach (RubberPiece piece in outline.Pieces.Where(piece => piece.Cushion == target.Cushion))
        {
            double start = target.PlaceOf(piece.Start);
            double from = piece.HasJaws ? start : double.NegativeInfinity;
            double to = piece.HasJaws ? start + piece.Length : double.PositiveInfinity;
            if (to > low && from < high)
                yield return (Math.Max(from, low), Math.Min(to, high));
        }
    }

    private static double NiceStep(double span)
    {
        double[] steps = [0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500];
        return steps.First(step => span / step <= 9 || step == 500);
    }
}
