using System.Globalization;
using Longrail.Coaching.Effects.Stages;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Effects;

/// <summary>What must be said beside a budget's numbers.</summary>
internal static class EffectNotes
{
    // Half of the last digit that is printed.
    private const double Nothing = 0.05e-3;

    /// <summary>The notes, each a whole sentence; the most important first.</summary>
    internal static IReadOnlyList<string> Of(EffectBudget budget, ShotChain chain)
    {
        var notes = new List<string>();
        Trace trace = budget.Trace;
        string name = budget.Names[budget.Ball];
        string[] between = [.. LeftOut(budget, chain)];
        if (Math.Abs(budget.Remainder) >= Nothing)
        {
            notes.Add(between.Length > 0
                ? $"The remainder is what the parts do not hold: {string.Join("; ", between)}."
                : "The remainder has no cause that could be named; do not read more than its size into the parts.");
        }

        if (chain.Hit is { } hit && chain.Cushions.Count > 0
            && trace.Events[chain.Cushions[0].Event].Time - trace.Events[hit].Time < 1e-6)
        {
            notes.Add($"Ball {name} lies on the cushion: it has no way on which to gain roll or lose speed, and it is "
                + "pinched between the ball that hits it and the rubber; a second touch counts in the remainder.");
        }

        notes.AddRange(budget.AlwaysOn.Select(kind =>
            $"{Capital(EffectNames.Of(kind, budget))} cannot be switched off: without it the ball would not come to "
            + "the target at all. It is at work in the mirror bank too."));
        string[] whole =
        [
            .. budget.Effects.Where(e => e.PerCushionMetres.Count == 0 && Switches.ActsAtCushion(e.Kind))
                .Select(e => EffectNames.Of(e.Kind, budget)),
        ];
        if (budget.Cushions.Count > 1 && whole.Length > 0)
        {
            notes.Add($"Not split over the cushions: {string.Join(", ", whole)}. At work at some of them only, the "
                + "ball would not come to the target.");
        }

        if (!chain.SetsOutFree)
        {
            notes.Add($"Ball {budget.Names[chain.FirstMover]} had touched something before: its squirt and swerve are "
                + "taken as they were, in the mirror bank too.");
        }

        ShotEvent last = trace.Events[chain.LastContact];
        if (chain.Next is { } next && next.Time > last.Time + last.Duration
            && budget.Target.Kind != EffectTargetKind.Ball && Interrupts(next))
        {
            string met = next.Kind == ShotEventKind.Stops
                ? "stops before"
                : $"meets {Other(budget, next)} at {At(next)}";
            notes.Add($"Ball {name} {met}; its last direction is drawn on to the target.");
        }

        return notes;
    }

    private static bool Interrupts(ShotEvent next) => next.Kind is ShotEventKind.Stops or ShotEventKind.BallsMeet;

    // What happens to the measured ball between the hit and its last cushion that no part stands for.
    private static IEnumerable<string> LeftOut(EffectBudget budget, ShotChain chain)
    {
        Trace trace = budget.Trace;
        ShotEvent last = trace.Events[chain.LastContact];
        for (int k = 0; k < trace.Events.Count; k++)
        {
            ShotEvent e = trace.Events[k];
            if (k == chain.Hit || (e.BallA != budget.Ball && e.BallB != budget.Ball))
                continue;
            if (e.Kind == ShotEventKind.BallsMeet && e.Time <= last.Time + last.Duration)
                yield return $"ball {budget.Names[budget.Ball]} touches {Other(budget, e)} at {At(e)}";
        }
    }

    private static string Other(EffectBudget budget, ShotEvent e) =>
        budget.Names[e.BallA == budget.Ball ? e.BallB!.Value : e.BallA];

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string At(ShotEvent e) => e.Time.ToString("0.000", CultureInfo.InvariantCulture) + " s";
}
