using Longrail.Coaching.Trials;
using Longrail.Drawing.Sheets;
using Longrail.Drawing.Svg;
using static System.FormattableString;

namespace Longrail.Drawing.Trials;

/// <summary>Lays out the sheet of a weighed trial.</summary>
internal static class TrialResultSheet
{
    private const double Left = Sheet.Frame + 40;
    private const double Top = Sheet.Frame + 40;
    private const double Middle = 1640;
    private const double PlotBottom = 1440;

    internal static string Draw(TrialResult result)
    {
        string title = result.Title.Length > 0 ? result.Title : "Trial";
        SvgWriter svg = Sheet.Begin(title, string.Join(" ", result.Sentences));
        if (result.Measure == TrialMeasure.Landing)
            TrialShotPlot.Draw(svg, result, Left, Top, Middle - 60 - Left, PlotBottom - Top);
        else
            TrialMakesPlot.Draw(svg, result, Left, Top, Middle - 60 - Left, PlotBottom - Top);
        DrawDifferences(svg, result);
        svg.Line(
            new SvgPoint(Sheet.Frame, Sheet.StripTop - 60),
            new SvgPoint(Sheet.Width - Sheet.Frame, Sheet.StripTop - 60),
            new Pen(Ink.Graphite, Ink.Thin));
        DrawWords(svg, result);
        TitleBlock.Draw(
            svg, Sheet.BlockLeft, Sheet.StripTop - 60, Sheet.Width - Sheet.Frame - Sheet.BlockLeft,
            Sheet.StripBottom - Sheet.StripTop + 60, title, Rows(result));
        return svg.Finish();
    }

    // Where landings were measured and makes counted too, these have the lower part of the right half.
    private static void DrawDifferences(SvgWriter svg, TrialResult result)
    {
        const double X = Middle + 20;
        const double Width = Sheet.Width - Sheet.Frame - 40 - X;
        bool hasMakes = result.Measure == TrialMeasure.Landing && result.Conditions.All(c => c.Made is not null)
            && result.Comparisons.Count == 1;
        double bottom = hasMakes ? PlotBottom - 480 : PlotBottom;
        TrialDifferencePlot.Draw(svg, result, X, Top, Width, bottom - Top);
        if (hasMakes) TrialMakesPlot.Draw(svg, result, X, bottom + 40, Width, PlotBottom - bottom - 40);
    }

    private static void DrawWords(SvgWriter svg, TrialResult result)
    {
        const double Width = Sheet.BlockLeft - 50 - Left;
        svg.Begin("words");
        double y = Sheet.StripTop - 40;
        foreach (string sentence in result.Sentences.Take(3))
            y = Paragraph(svg, sentence, y, Width, 30, bold: true, 3) + 10;
        foreach (string note in Checks(result).Concat(result.Notes))
        {
            if (y > Sheet.StripBottom - 50) break;
            y = Paragraph(svg, note, y, Width, Ink.Body, bold: false, 2) + 4;
        }

        svg.End();
    }

    // The analyses that stand beside the main one.
    private static IEnumerable<string> Checks(TrialResult result)
    {
        foreach (WeighedComparison comparison in result.Comparisons)
        {
            string name = $"{result.Conditions[comparison.Condition].Label} against {result.Conditions[0].Label}";
            if (result.Measure == TrialMeasure.Landing && comparison.Permutation is { } dealt)
            {
                string all = dealt.IsExact ? "all " : "";
                yield return Invariant($"{name}: of {all}{dealt.Dealings} ways to deal out the conditions again, ")
                    + Invariant($"{100 * dealt.P:0.##} % part them as much.");
            }

            if (result.UsesSpeed && comparison.EqualSlopes is { } slopes)
                yield return $"{name}: one slope for both; slopes as unlike as seen come in "
                    + Invariant($"{100 * slopes:0} % of trials by chance.");
        }

        if (result is { UsesSpeed: true, Slope: { } slope, CommonSpeed: { } common })
        {
            string unit = result.SpeedIsRollOut ? "m of roll-out" : "m/s";
            yield return Invariant($"Speed moves the landing by {1000 * slope:+0;-0;0} mm for 1 {unit}; ")
                + Invariant($"compared at {common:0.00} {unit}.");
        }
    }

    private static double Paragraph(
        SvgWriter svg, string text, double y, double width, double size, bool bold, int lines)
    {
        foreach (string part in TextWidth.Wrap(SvgText.Clean(text), width, size, lines, bold))
        {
            y += 1.3 * size;
            svg.Text(new SvgPoint(Left, y), part, new TextStyle(size, Ink.Graphite, bold));
        }

        return y;
    }

    private static List<(string Name, string Value)> Rows(TrialResult result)
    {
        var rows = new List<(string Name, string Value)>();
        foreach (WeighedCondition condition in result.Conditions)
            rows.Add((condition.Label, Invariant($"{condition.Value}, {condition.Shots} shots{Made(condition)}")));
        if (result.Plan is { } plan)
        {
            rows.Add(("COMPARED", plan.Path));
            rows.Add(("PLAYER", plan.Player.Name));
            rows.Add(("LOOK", Invariant($"{result.Look} of {plan.Looks.Count}, planned before the first shot")));
        }
        else
        {
            rows.Add(("LOOK", "not planned: an estimate, no verdict"));
        }

        rows.Add(("INTERVALS", Invariant($"{100 * result.Confidence:0.#} %")));
        return rows;
    }

    private static string Made(WeighedCondition condition) => condition.Made is { } made
        ? Invariant($", {made.Made} of {made.Trials} in ({100 * made.Low:0} to {100 * made.High:0} %)")
        : "";
}
