using Longrail.Coaching.Trials;
using Longrail.Drawing.Svg;
using Longrail.Scenes.Trials;

namespace Longrail.Drawing.Trials;

/// <summary>Every shot of a trial: where it landed against how fast it was struck, or against its turn where speeds
/// were not evened out.</summary>
internal static class TrialShotPlot
{
    private const double AxisWidth = 120;
    private const double AxisHeight = 96;

    internal static void Draw(SvgWriter svg, TrialResult result, double x, double y, double width, double height)
    {
        TrialShot[] shots =
            [.. result.Shots.Where(s => s.Landing is not null && (!result.UsesSpeed || s.Speed is not null))];
        if (shots.Length == 0) return;
        double left = x + AxisWidth;
        double bottom = y + height - AxisHeight;
        var across = new PlotAxis(shots.Select(shot => Across(result, shot)), left, x + width);
        var up = new PlotAxis(shots.Select(shot => 1000 * shot.Landing!.Value), bottom, y + 50, 7);
        svg.Begin("shots");
        DrawAxes(svg, result, across, up, left, x + width, y, bottom);
        DrawLines(svg, result, across, up, left, x + width);
        foreach (TrialShot shot in shots)
        {
            var at = new SvgPoint(across.At(Across(result, shot)), up.At(1000 * shot.Landing!.Value));
            ShotMark.Draw(svg, at, shot.Condition);
        }


        DrawLegend(svg, result, left, y + 18);
        svg.End();
    }

    private static double Across(TrialResult result, TrialShot shot) =>
        result.UsesSpeed ? shot.Speed!.Value : shot.Number;

    private static void DrawAxes(
        SvgWriter svg, TrialResult result, PlotAxis across, PlotAxis up, double left, double right, double top,
        double bottom)
    {
        var grid = new SvgPath();
        foreach ((double value, string text) in up.Ticks())
        {
            double at = up.At(value);
            grid.Move(new SvgPoint(left, at)).Line(new SvgPoint(right, at));
            svg.Text(
                new SvgPoint(left - 14, at + Ink.Small * Ink.HalfCapital), text,
                new TextStyle(Ink.Small, Ink.Graphite, Anchor: TextAnchor.End));
        }

        var ticks = new SvgPath();
        foreach ((double value, string text) in across.Ticks())
        {
            double at = across.At(value);
            ticks.Move(new SvgPoint(at, bottom)).Line(new SvgPoint(at, bottom + 10));
            svg.Text(
                new SvgPoint(at, bottom + 38), text, new TextStyle(Ink.Small, Ink.Graphite, Anchor: TextAnchor.Middle));
        }

        svg.Path(grid, null, new Pen(Ink.Ghost, Ink.Fine));
        svg.Path(ticks, null, new Pen(Ink.Graphite, Ink.Thin));
        svg.Line(new SvgPoint(left, bottom), new SvgPoint(right, bottom), new Pen(Ink.Graphite, Ink.Thin));
        string below = (result.UsesSpeed, result.SpeedIsRollOut) switch
        {
            (false, _) => "number of the shot",
            (true, true) => "roll-out, m",
            _ => "speed of the stroke, m/s",
        };
        svg.Text(
            new SvgPoint((left + right) / 2, bottom + 82), below,
            new TextStyle(Ink.Body, Ink.Graphite, Anchor: TextAnchor.Middle));
        string origin = TrialOrigin.Of(result);
        svg.Text(
            new SvgPoint(left - AxisWidth + 30, (top + bottom) / 2), $"landing, mm from the {origin}",
            new TextStyle(Ink.Body, Ink.Graphite, Anchor: TextAnchor.Middle), turned: true);
    }

    // What the analysis took for true: one slope for all, or level means.
    private static void DrawLines(
        SvgWriter svg, TrialResult result, PlotAxis across, PlotAxis up, double left, double right)
    {
        for (int k = 0; k < result.Conditions.Count; k++)
        {
            VariantMark mark = VariantMark.Of(k);
            double? at = result.UsesSpeed ? result.Conditions[k].Adjusted : result.Conditions[k].Landing?.Mean;
            if (at is not { } height) continue;
            double slope = result.UsesSpeed ? result.Slope ?? 0 : 0;
            double common = result.CommonSpeed ?? 0;
            double from = across.Low;
            double to = across.High;
            // Clipped to the plot: a steep line would run over the words around it.
            (from, to) = Clip(1000 * height, 1000 * slope, common, up, from, to);
            if (!(to > from)) continue;
            SvgPoint Point(double x) => new(across.At(x), up.At(1000 * (height + slope * (x - common))));
            svg.Line(Point(from), Point(to), new Pen(mark.Colour, Ink.Medium, mark.Dash));
            svg.Text(
                Point(to).Moved(-30, -14), result.Conditions[k].Label,
                new TextStyle(Ink.Body, mark.Colour, Bold: true));
        }
    }

    private static (double From, double To) Clip(
        double height, double slope, double common, PlotAxis up, double from, double to)
    {
        if (slope == 0) return (from, to);
        double a = common + (up.Low - height) / slope;
        double b = common + (up.High - height) / slope;
        return (Math.Max(from, Math.Min(a, b)), Math.Min(to, Math.Max(a, b)));
    }

    private static void DrawLegend(SvgWriter svg, TrialResult result, double x, double y)
    {
        for (int k = 0; k < result.Conditions.Count; k++)
        {
            WeighedCondition condition = result.Conditions[k];
            string text = TextWidth.Fit(SvgText.Clean($"{condition.Label}  {condition.Value}"), 420, Ink.Body);
            ShotMark.Draw(svg, new SvgPoint(x + 14, y), k);
            svg.Text(
                new SvgPoint(x + 36, y + Ink.Body * Ink.HalfCapital), text, new TextStyle(Ink.Body, Ink.Graphite));
            x += 36 + TextWidth.Of(text, Ink.Body) + 60;
        }
    }
}
