using Longrail.Coaching.Effects;

namespace Longrail.Drawing.Sheets;

/// <summary>One step of a budget's flight: from where the causes so far bring the ball to where this one brings
/// it.</summary>
/// <param name="Name">The cause.</param>
/// <param name="From">Metres from the mirror's arrival, positive long.</param>
/// <param name="To">The same after this cause.</param>
/// <param name="Number">The amount in words.</param>
/// <param name="Beside">What switching this alone off does, in words; empty for a step that is no cause.</param>
internal sealed record EffectStep(string Name, double From, double To, string Number, string Beside)
{
    /// <summary>The steps of a budget in the order in which its causes act.</summary>
    internal static IReadOnlyList<EffectStep> Of(EffectBudget budget, EffectUnit unit)
    {
        var steps = new List<EffectStep>();
        double at = 0;
        string In(double metres) => EffectNames.WithSign(budget.Target.In(unit, metres), unit);
        foreach (EffectShare effect in budget.Effects)
        {
            steps.Add(new EffectStep(
                EffectNames.Of(effect.Kind, budget), at, at + effect.Metres, In(effect.Metres),
                In(effect.AloneMetres)));
            at += effect.Metres;
        }

        string left = In(budget.Remainder);
        if (left != "0")
            steps.Add(new EffectStep("what the parts leave out", at, budget.Total, left, ""));
        return steps;
    }
}
