using System.Globalization;
using Longrail.Coaching.Contrasts;
using Longrail.Scenes;

namespace Longrail.Coaching.Effects;

/// <summary>A budget as a table of words and numbers for people.</summary>
/// <param name="Columns">The columns.</param>
/// <param name="Causes">One row a cause, and one for what they do together beyond what each does alone.</param>
/// <param name="Sums">The parts together, the remainder, the total.</param>
public sealed record EffectTable(
    IReadOnlyList<ContrastColumn> Columns, IReadOnlyList<IReadOnlyList<string>> Causes,
    IReadOnlyList<IReadOnlyList<string>> Sums)
{
    /// <summary>The table of a budget.</summary>
    /// <param name="budget">The budget.</param>
    /// <param name="unit">The unit of the columns that show one unit only.</param>
    public static EffectTable Of(EffectBudget budget, EffectUnit unit = EffectUnit.Diamonds)
    {
        string unitName = EffectNames.Of(unit);
        bool perCushion = budget.Cushions.Count > 1;
        var columns = new List<ContrastColumn>
        {
            new("cause", "", false), new("share", "diamonds", true), new("share", "mm", true),
        };
        if (budget.HasHalfOpenings)
            columns.Add(new("share", "half openings", true));
        if (perCushion)
            columns.AddRange(budget.Cushions.Select(c => new ContrastColumn($"at {TableWords.Of(c)}", unitName, true)));
        columns.Add(new("off alone", unitName, true));

        double parts = budget.Total - budget.Remainder;
        return new EffectTable(
            columns,
            [
                .. budget.Effects.Select(e => Row(
                    budget, unit, EffectNames.Of(e.Kind, budget), e.Metres, e.PerCushionMetres, e.AloneMetres)),
                Row(budget, unit, "interplay", null, [], budget.Interplay),
            ],
            [
                Row(budget, unit, "parts together", parts, [], parts),
                Row(budget, unit, "remainder", budget.Remainder, [], null),
                Row(budget, unit, "total", budget.Total, [], null),
            ]);
    }

    /// <summary>The place where a way arrives, in words: "left cushion at 3.97 diamonds".</summary>
    /// <param name="budget">The budget.</param>
    /// <param name="place">Metres along its target.</param>
    public static string PlaceText(EffectBudget budget, double place)
    {
        EffectTarget target = budget.Target;
        // Adding zero turns a negative zero into a plain one.
        string diamonds = Text($"{Math.Round(place / target.Diamond, 2) + 0.0:0.00}");
        return target.Kind switch
        {
            EffectTargetKind.Cushion => $"{TableWords.Of(target.Cushion!.Value)} cushion at {diamonds}",
            EffectTargetKind.Ball => $"beside {budget.Names[target.Met!.Value]} at {diamonds}",
            _ => Text($"{Math.Abs(1000 * place):0.0} mm {(place >= 0 ? "right" : "left")} of the middle of ")
                + TableWords.Of(target.Pocket!.Value),
        };
    }

    private static List<string> Row(
        EffectBudget budget, EffectUnit unit, string name, double? metres, IReadOnlyList<double> perCushion,
        double? alone)
    {
        string In(EffectUnit wanted, double? amount) => amount is { } a
            ? EffectNames.WithSign(budget.Target.In(wanted, a), wanted)
            : "";
        var cells = new List<string> { name, In(EffectUnit.Diamonds, metres), In(EffectUnit.Millimetres, metres) };
        if (budget.HasHalfOpenings)
            cells.Add(In(EffectUnit.HalfOpenings, metres));
        if (budget.Cushions.Count > 1)
        {
            cells.AddRange(budget.Cushions.Select((_, k) =>
                k < perCushion.Count ? In(unit, perCushion[k]) : ""));
        }

        cells.Add(In(unit, alone));
        return cells;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
