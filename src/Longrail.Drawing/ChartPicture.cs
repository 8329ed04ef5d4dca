using Longrail.Coaching.Charts;
using Longrail.Drawing.Charts;

namespace Longrail.Drawing;

/// <summary>Draws a bank chart as one sheet to be printed: where the ball lies, the corrections as small multiples on
/// one scale, and the numbers.</summary>
public static class ChartPicture
{
    /// <summary>The picture as SVG text, A4 across. A pure function: the same input gives the same text.</summary>
    /// <remarks>Speeds are told apart by colour, dash and a word at the end of their line, so that it reads in
    /// grey.</remarks>
    /// <param name="chart">The chart.</param>
    /// <param name="date">A date to print, or null: a picture never takes one from the clock.</param>
    public static string Draw(BankChart chart, DateOnly? date = null) => ChartSheet.Draw(chart, date);

    /// <summary>The panels alone, for a small screen or a page that has its own words around it.</summary>
    /// <param name="chart">The chart.</param>
    public static string DrawPanels(BankChart chart) => ChartSheet.DrawPanels(chart);
}
