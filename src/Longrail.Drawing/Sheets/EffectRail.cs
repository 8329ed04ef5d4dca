using System.Globalization;
using Longrail.Coaching.Effects;
using Longrail.Drawing.Svg;
using Longrail.Drawing.Tables;
using Longrail.Physics.Geometry;
using Longrail.Scenes;

namespace Longrail.Drawing.Sheets;

/// <summary>The target line under the steps: rubber hatched, mouths open, its diamonds or millimetres.</summary>
internal static class EffectRail
{
    private const double Band = 40;

    /// <summary>Draws it.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="left">Left end, sheet units.</param>
    /// <param name="right">Right end, sheet units.</param>
    /// <param name="nose">Height of the nose line on the sheet.</param>
    /// <param name="budget">The budget.</param>
    /// <param name="place">Where an amount stands on the sheet.</param>
    /// <param name="from">Smallest amount shown, metres, positive long.</param>
    /// <param name="to">Largest amount shown.</param>
    internal static void Draw(
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
            // Adding zero turns a negative zero into a plain one.
            string number = (Math.Round(k * step, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
            svg.Text(new SvgPoint(at, nose + Band + 34), number, style);
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

    private static string RailWords(EffectBudget budget)
    {
        EffectTarget target = budget.Target;
        string cushion = target.Cushion is { } name ? $"{TableWords.Of(name)} cushion" : "";
        return target.Kind switch
        {
            EffectTargetKind.Cushion => $"{cushion}, diamonds of the ball's centre, counted at the nose",
            EffectTargetKind.Ball => $"diamonds beside {budget.Names[target.Met!.Value]}, along the {cushion}",
            _ => $"mouth of {TableWords.Of(target.Pocket!.Value)}, mm from its middle, as the ball sees it",
        };
    }

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
