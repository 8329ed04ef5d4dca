using Longrail.Coaching.Charts;
using Longrail.Drawing.Sheets;
using Longrail.Drawing.Svg;
using Longrail.Scenes;

namespace Longrail.Drawing.Charts;

/// <summary>Lays out and draws the sheet of a bank chart.</summary>
internal static class ChartSheet
{
    private const double Left = Sheet.Frame + 30;
    private const double Top = Sheet.Frame + 40;
    private const double PlanRight = 1120;
    private const double NotesTop = 745;
    private const double PanelsLeft = 1190;
    private const double PanelsBottom = Sheet.StripTop - 30;
    private const double Right = Sheet.Width - Sheet.Frame - 30;

    internal static string Draw(BankChart chart, DateOnly? date)
    {
        string title = Title(chart);
        SvgWriter svg = Sheet.Begin(title, Description(chart));
        Viewport plan = ChartPlan.Draw(svg, chart, Left, Top, PlanRight);
        DrawNotes(svg, chart);
        DrawPanels(svg, chart, PanelsLeft, Top, Right - PanelsLeft, PanelsBottom - Top);
        DrawStrip(svg, chart);
        TitleBlock.Draw(
            svg, Sheet.BlockLeft, Sheet.StripTop, Sheet.Width - Sheet.Frame - Sheet.BlockLeft,
            Sheet.StripBottom - Sheet.StripTop, title,
            ChartFrame.Rows(
                chart.Request.Equipment, chart.Request.Names, plan.Reduction, date, chart.Request.Numbering));
        return svg.Finish();
    }

    internal static string DrawPanels(BankChart chart)
    {
        const double Height = 720;
        const double Margin = 20;
        var svg = new SvgWriter(Sheet.PlanWidth, Height, Title(chart), Description(chart));
        svg.Rectangle(0, 0, Sheet.PlanWidth, Height, Ink.Paper);
        DrawPanels(svg, chart, Margin, Margin, Sheet.PlanWidth - 2 * Margin, Height - 2 * Margin);
        return svg.Finish();
    }

    private static void DrawPanels(SvgWriter svg, BankChart chart, double x, double y, double width, double height)
    {
        if (chart.Request.Places.IsLine)
            LinePanels.Draw(svg, chart, x, y, width, height);
        else
            GridPanels.Draw(svg, chart, x, y, width, height);
    }

    private static void DrawNotes(SvgWriter svg, BankChart chart)
    {
        ChartRequest request = chart.Request;
        var notes = new List<string> { ChartSentences.Played(request), ChartSentences.Sense(chart) };
        if (ChartSentences.Example(chart) is { } example)
            notes.Add(example);
        notes.Add(ChartSentences.Speeds(request.Speeds));
        notes.Add(ChartSentences.Places(request));
        IReadOnlyList<string> signs = ChartSentences.Signs(chart.Failures);
        if (signs.Count > 0)
            notes.Add($"No number: {string.Join("; ", signs)}.");
        NoteList.Draw(svg, notes, Left, NotesTop, PlanRight - Left, Sheet.StripTop - 20 - NotesTop);
    }

    private static void DrawStrip(SvgWriter svg, BankChart chart)
    {
        double width = Sheet.BlockLeft - 40 - Left;
        double height = Sheet.StripBottom - 14 - Sheet.StripTop;
        NumberTable.Draw(svg, chart, Left, Sheet.StripTop + 6, width, height);
    }

    private static string Title(BankChart chart) => ChartFrame.Capital(chart.Request.Route.Words);

    private static string Description(BankChart chart) =>
        $"A bank chart: {chart.Request.Route.Words}. Correction to the mirror point on the "
        + $"{TableWords.Of(chart.Request.Route.Off)} cushion, in {ChartNumbers.UnitWords(chart.Request)}. "
        + $"{ChartSentences.Sense(chart)} {ChartSentences.Example(chart)}";
}
