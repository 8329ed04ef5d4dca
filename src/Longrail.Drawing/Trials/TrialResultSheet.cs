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
        TrialDifferencePlot.Draw(svg, result, Middle + 20, Top, Sheet.Width - Sheet.Frame - 40 - Middle - 20, PlotBottom - Top);
        svg.Line(
            new SvgPoint(Sheet.Frame, Sheet.StripTop - 60), new SvgPoint(Sheet.Width - Sheet.Frame, Sheet.StripTop - 60),
            new Pen(Ink.Graphite, Ink.Thin));
        DrawWords(svg, result);
        TitleBlock.Draw(
            svg, Sheet.BlockLeft, Sheet.StripTop - 60, Sheet.Width - Sheet.Frame - Sheet.BlockLeft,
            Sheet.StripBottom - Sheet.StripTop + 60, title, Rows(result));
        return svg.Finish();
    }

    private static void DrawWords(SvgWriter svg, TrialResult result)
    {
        const double Width = Sheet.BlockLeft - 50 - Left;
        svg.Begin("words");
        double y = Sheet.StripTop - 40;
        foreach (string sentence in result.Sentences.Take(3))
            y = Paragraph(svg, sentence, y, Width, 30, bold: true, 3) + 10;
        foreach (string note in result.Notes)
        {
            if (y > Sheet.StripBottom - 50) break;
            y = Paragraph(svg, note, y, Width, Ink.Body, bold: false, 2) + 4;
        }

        svg.End();
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
