using Longrail.Coaching.Effects;
using Longrail.Drawing.Balls;
using Longrail.Drawing.Paths;
using Longrail.Drawing.Svg;
using Longrail.Drawing.Tables;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.Scenes;

namespace Longrail.Drawing.Sheets;

/// <summary>Lays out and draws the sheet of an effect budget.</summary>
internal static class EffectsSheet
{
    private const double Left = Sheet.Frame + 40;
    private const double StepsWidth = 1760;
    private const double PlanLeft = 1990;
    private const double PlanWidth = 870;
    private const double BlockTop = 1500;
    private const double BlockLeft = 1960;
    private const double LineHeight = 34;
    private const int MostNotes = 4;
    private const string MirrorDash = "16 10";

    internal static string Draw(EffectBudget budget, EffectUnit unit, string? tableName, DateOnly? date)
    {
        SvgWriter svg = Sheet.Begin(Title(budget), Description(budget, unit));
        double y = DrawSentence(svg, Left, Sheet.Frame + 40, StepsWidth, budget, unit, Ink.Heading);
        double notesTop = DrawNotes(svg, budget);
        EffectSteps.Draw(svg, Left, y + 30, StepsWidth, notesTop - y - 40, budget, unit);

        Viewport view = DrawPlan(svg, budget);
        List<(string Name, string Value)> rows = EquipmentWords.Rows(
            budget.Trace.Setup.Equipment, tableName, view.Reduction, date);
        TitleBlock.Draw(
            svg, BlockLeft, BlockTop, Sheet.Width - Sheet.Frame - BlockLeft, Sheet.Height - Sheet.Frame - BlockTop,
            Title(budget), rows);
        return svg.Finish();
    }

    internal static string DrawSteps(EffectBudget budget, EffectUnit unit)
    {
        const double Margin = 30;
        double height = 420 + 72 * (budget.Effects.Count + 3);
        var svg = new SvgWriter(StepsWidth + 2 * Margin, height, Title(budget), Description(budget, unit));
        svg.Rectangle(0, 0, StepsWidth + 2 * Margin, height, Ink.Paper);
        EffectSteps.Draw(svg, Margin, Margin, StepsWidth, height - 2 * Margin, budget, unit);
        return svg.Finish();
    }

    private static double DrawSentence(
        SvgWriter svg, double x, double y, double width, EffectBudget budget, EffectUnit unit, double size)
    {
        svg.Begin("sentence");
        string text = SvgText.Clean(EffectSentence.Of(budget, unit));
        foreach (string line in TextWidth.Wrap(text, width, size, 4, bold: true))
        {
            y += 1.25 * size;
            svg.Text(new SvgPoint(x, y), line, new TextStyle(size, Ink.Graphite, Bold: true));
        }

        svg.End();
        return y;
    }

    // Notes stand at the bottom of the sheet; where the first one begins is returned.
    private static double DrawNotes(SvgWriter svg, EffectBudget budget)
    {
        string[] lines =
        [
            .. budget.Notes.Take(MostNotes).Append(
                "A step is what a cause adds, averaged over all orders in which the causes can be switched on. "
                + "Switched off alone, two causes that need each other both count in full.")
                .SelectMany(note => TextWidth.Wrap(SvgText.Clean(note), StepsWidth, Ink.Small, 2)),
        ];
        double top = Sheet.Height - Sheet.Frame - 24 - LineHeight * lines.Length;
        svg.Begin("notes");
        for (int k = 0; k < lines.Length; k++)
            svg.Text(new SvgPoint(Left, top + LineHeight * (k + 1)), lines[k], new TextStyle(Ink.Small, Ink.Soft));
        svg.End();
        return top;
    }

    private static Viewport DrawPlan(SvgWriter svg, EffectBudget budget)
    {
        var table = budget.Trace.Setup.Equipment.Table;
        double scale = (PlanWidth - 110) / (table.Length + 2 * TablePlan.RailWidth);
        double reduction = Math.Ceiling(Viewport.UnitsPerMetre / scale);
        scale = Viewport.UnitsPerMetre / reduction;
        double left = PlanLeft + (PlanWidth - scale * table.Length) / 2;
        double bottom = Sheet.Frame + 110 + scale * (table.Width + TablePlan.RailWidth);
        var view = new Viewport(left, bottom, scale);
        TablePlan.Draw(svg, view, table, dimensions: false);
        DrawWays(svg, view, budget);
        double y = DrawKey(svg, PlanLeft + 20, bottom + scale * TablePlan.RailWidth + 90, budget);
        DrawMeanings(svg, PlanLeft + 20, y + 76, budget);
        return view;
    }

    private static void DrawWays(SvgWriter svg, Viewport view, EffectBudget budget)
    {
        Trace trace = budget.Trace;
        svg.Begin("mirror");
        foreach (IReadOnlyList<Vec2> way in (IReadOnlyList<Vec2>[])[budget.MirrorPath.Striker, budget.MirrorPath.Ball])
        {
            svg.Path(
                new SvgPath().Polyline(way.Select(point => view.ToSheet(TablePoint.From(point)))), null,
                new Pen(Ink.Colours[0], Ink.Thin, MirrorDash));
        }

        svg.End();
        svg.Begin("path");
        BallTrack track = BallTrack.Of(trace, budget.Ball).Until(EndOf(budget));
        TrackDrawing.DrawLines(svg, view, track, new TrackStyle(Ink.Graphite, null, Ink.Medium));
        if (budget.Striker is { } striker)
        {
            double meets = HitTime(budget, striker);
            TrackDrawing.DrawLines(
                svg, view, BallTrack.Of(trace, striker).Until(meets), new TrackStyle(Ink.Soft, null, Ink.Thin));
        }

        svg.End();
        var taken = new Occupancy();
        taken.TakeLine(TrackDrawing.Points(view, track));
        svg.Begin("balls");
        for (int ball = 0; ball < budget.Names.Count; ball++)
        {
            SvgPoint at = view.ToSheet(TablePoint.From(trace.Setup.Balls[ball].Start.Position));
            double radius = view.ToSheet(trace.Setup.Balls[ball].Radius);
            BallFace.Draw(svg, at, radius, null, Ink.Graphite, Ink.Thin);
            BallName.Draw(svg, at, radius, budget.Names[ball], striped: false, Ink.Graphite, taken);
        }

        svg.End();
    }

    private static double HitTime(EffectBudget budget, int striker) =>
        budget.Trace.Events.First(e => e.Kind == ShotEventKind.BallsMeet
            && (e.BallA == budget.Ball || e.BallB == budget.Ball) && (e.BallA == striker || e.BallB == striker)).Time;

    // The measured ball's way up to what ends it: the next thing that it touches, or where it stops.
    private static double EndOf(EffectBudget budget) =>
        budget.Trace.Events.Skip(budget.LastContact + 1).FirstOrDefault(
            e => (e.BallA == budget.Ball || e.BallB == budget.Ball) && e.Kind != ShotEventKind.SlideEnds)?.Time
        ?? budget.Trace.Duration;

    /// <summary>What each cause is, by what happens without it, as far as there is room.</summary>
    private static void DrawMeanings(SvgWriter svg, double x, double y, EffectBudget budget)
    {
        const double Size = 21;
        const double Step = 28;
        svg.Begin("meanings");
        svg.Text(new SvgPoint(x, y), "switched off", new TextStyle(Ink.Small, Ink.Soft));
        svg.Line(new SvgPoint(x, y + 14), new SvgPoint(x + PlanWidth - 20, y + 14), new Pen(Ink.Soft, Ink.Fine));
        y += 14;
        foreach (EffectShare effect in budget.Effects)
        {
            string text = EffectNames.Meaning(effect.Kind).Replace("Off: ", "", StringComparison.Ordinal);
            string name = EffectNames.Of(effect.Kind, budget) + ": ";
            IReadOnlyList<string> lines = TextWidth.Wrap(name + text, PlanWidth - 20, Size, 2);
            if (y + 14 + Step * lines.Count > BlockTop - 10)
                break;
            y += 14;
            foreach (string line in lines)
            {
                y += Step;
                svg.Text(new SvgPoint(x, y), line, new TextStyle(Size, Ink.Graphite));
            }
        }

        svg.End();
    }

    private static double DrawKey(SvgWriter svg, double x, double y, EffectBudget budget)
    {
        svg.Begin("key");
        var style = new TextStyle(Ink.Small, Ink.Graphite);
        string mirror = budget.Cushions.Count == 0 ? "line of centres" : "plain mirror";
        (string Text, Pen Pen)[] rows =
        [
            ($"{mirror}: {EffectTable.PlaceText(budget, budget.MirrorPlace)}",
                new Pen(Ink.Colours[0], Ink.Thin, MirrorDash)),
            ($"the shot: {EffectTable.PlaceText(budget, budget.Place)}", new Pen(Ink.Graphite, Ink.Medium)),
        ];
        foreach ((string text, Pen pen) in rows)
        {
            svg.Line(new SvgPoint(x, y), new SvgPoint(x + 90, y), pen);
            svg.Text(
                new SvgPoint(x + 110, y + Ink.Small * Ink.HalfCapital),
                TextWidth.Fit(SvgText.Clean(text), PlanWidth - 130, Ink.Small), style);
            y += 40;
        }

        string off = budget.Cushions.Count == 0
            ? "no cushion"
            : "off " + string.Join(", then ", budget.Cushions.Select(TableWords.Of));
        string measured = $"measured: {budget.Names[budget.Ball]}, {off}";
        svg.Text(
            new SvgPoint(x, y + 10), TextWidth.Fit(SvgText.Clean(measured), PlanWidth - 20, Ink.Small),
            new TextStyle(Ink.Small, Ink.Soft));
        svg.End();
        return y + 10;
    }

    private static string Title(EffectBudget budget) =>
        string.IsNullOrWhiteSpace(budget.Title) ? "Why it goes there" : budget.Title;

    private static string Description(EffectBudget budget, EffectUnit unit) =>
        $"An effect budget. {EffectSentence.Of(budget, unit)} "
        + string.Join(
            " ", EffectStep.Of(budget, unit).Select(step => $"{step.Name}: {step.Number}."));
}
