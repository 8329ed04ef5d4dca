namespace Longrail.Coaching.Effects;

/// <summary>A budget in one plain sentence.</summary>
public static class EffectSentence
{
    private const int MostNamed = 4;

    /// <summary>The sentence.</summary>
    /// <remarks>The largest causes are named until what is left is less than a tenth of them all; the amounts in the
    /// sentence add up to its first number as they are printed.</remarks>
    /// <param name="budget">The budget.</param>
    /// <param name="unit">The unit.</param>
    public static string Of(EffectBudget budget, EffectUnit unit = EffectUnit.Diamonds)
    {
        // In whole steps of the last decimal shown, so that the printed numbers add up.
        double step = Math.Pow(10, -EffectNames.Decimals(unit));
        int Steps(double metres) => (int)Math.Round(budget.Target.In(unit, metres) / step);
        int total = Steps(budget.Total);
        string plural = Math.Abs(total * step) > 1 ? "s" : "";
        string unitWord = unit switch
        {
            EffectUnit.Diamonds => $" diamond{plural}",
            EffectUnit.Millimetres => " mm",
            _ => $" half opening{plural}",
        };

        string subject = $"The {budget.Names[budget.Ball]} comes";
        string head = total == 0
            ? $"{subject} where {Mirror(budget)} does"
            : $"{subject} {EffectNames.Size(total * step, unit)}{unitWord} "
                + $"{(total > 0 ? budget.Target.PositiveWord : budget.Target.NegativeWord)} of {Mirror(budget)}";
        return $"{head}: {Parts(budget, total, unit, step, Steps)}.";
    }

    /// <summary>What a shot is compared with.</summary>
    internal static string Mirror(EffectBudget budget) => budget.Target.Kind switch
    {
        EffectTargetKind.Mouth => "the line of centres",
        _ when budget.Striker is null => "its plain mirror line",
        _ => "its plain mirror bank",
    };

    private static string Parts(EffectBudget budget, int total, EffectUnit unit, double step, Func<double, int> steps)
    {
        (string Name, double Metres)[] causes =
        [
            .. budget.Effects.Select(e => (EffectNames.Of(e.Kind, budget), e.Metres))
                .Append(("what the parts leave out", budget.Remainder))
                .Where(cause => steps(cause.Item2) != 0)
                .OrderByDescending(cause => Math.Abs(cause.Item2)),
        ];
        if (causes.Length == 0)
            return "nothing turns it";
        double all = causes.Sum(cause => Math.Abs(cause.Metres));
        int named = 0;
        double left = all;
        while (named < causes.Length && (named == 0 || (left > 0.1 * all && named < MostNamed)))
            left -= Math.Abs(causes[named++].Metres);

        int rest = total;
        var parts = new List<string>();
        foreach ((string name, double metres) in causes[..named])
        {
            int amount = steps(metres);
            rest -= amount;
            parts.Add(Part(amount, name, unit, step));
        }

        if (rest != 0)
            parts.Add(Part(rest, "the rest", unit, step));
        if (parts.Count == 1)
            return parts[0];
        string joint = parts[^1].StartsWith("minus", StringComparison.Ordinal) ? ", " : " and ";
        return string.Join(", ", parts[..^1]) + joint + parts[^1];
    }

    private static string Part(int amount, string name, EffectUnit unit, double step) =>
        $"{(amount < 0 ? "minus " : "")}{EffectNames.Size(amount * step, unit)} from {name}";
}
