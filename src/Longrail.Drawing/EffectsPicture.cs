using Longrail.Coaching.Effects;
using Longrail.Drawing.Sheets;

namespace Longrail.Drawing;

/// <summary>Draws an effect budget as one sheet: the causes as a flight of steps from where the plain mirror bank
/// arrives to where the shot does, over the target cushion enlarged, and both ways on the table.</summary>
public static class EffectsPicture
{
    /// <summary>The picture as SVG text, A4 across. A pure function: the same input gives the same text.</summary>
    /// <remarks>Long steps are filled and short ones hatched, and each has its number, so that the sheet also works in
    /// grey.</remarks>
    /// <param name="budget">The budget.</param>
    /// <param name="unit">The unit of the numbers.</param>
    /// <param name="tableName">What the table is called, or null.</param>
    /// <param name="date">A date to print, or null: a picture never takes one from the clock.</param>
    /// <exception cref="InvalidOperationException">Half openings where there is no pocket.</exception>
    public static string Draw(
        EffectBudget budget, EffectUnit unit = EffectUnit.Diamonds, string? tableName = null, DateOnly? date = null) =>
        EffectsSheet.Draw(budget, unit, tableName, date);

    /// <summary>The steps alone, for a small screen or a page that has its own words around them: no frame, no table,
    /// no title block.</summary>
    /// <param name="budget">The budget.</param>
    /// <param name="unit">The unit of the numbers.</param>
    /// <exception cref="InvalidOperationException">Half openings where there is no pocket.</exception>
    public static string DrawSteps(EffectBudget budget, EffectUnit unit = EffectUnit.Diamonds) =>
        EffectsSheet.DrawSteps(budget, unit);
}
