using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Statistics;
using static System.FormattableString;

namespace Longrail.Coaching.Trials;

/// <summary>What must be said beside a plan.</summary>
internal static class TrialAdvice
{
    // Losing more than this is worth a word.
    private const double MuchLost = 0.1;

    internal static IReadOnlyList<string> Of(TrialPlan plan, IReadOnlyList<ContrastRow> rows)
    {
        var advice = new List<string>();
        TrialNeed[] own = [.. plan.Needs.Where(n => n.Measure == plan.Measure && n.UsesSpeed == plan.UsesSpeed)];
        if (!plan.IsAffordable) AddInstead(advice, plan, rows, own);
        if (plan.Path is "stroke.speed" or "stroke.cueSpeed")
            advice.Add(
                "The speed is what differs, so it cannot be evened out; measure it all the same, to see that the "
                + "conditions were kept.");
        else if (plan.UsesSpeed)
            advice.Add(
                "Measure the speed of every stroke in the same way in all conditions: frames between two marks, or "
                + "the roll-out of a ball.");
        if (plan.Measure == TrialMeasure.Landing
            && plan.Conditions.Max(condition => condition.Lost) is > MuchLost and var lost)
            advice.Add(Invariant(
                $"Up to {100 * lost:0} % of the strokes give no landing (a miscue, a missed ball, another cushion); ")
                + "write them down all the same, with the place left empty.");
        if (plan.Comparisons > 1)
            advice.Add(
                Invariant($"{plan.Comparisons} comparisons share the {100 * plan.Level:0.#} % of false alarms."));
        return advice;
    }

    private static void AddInstead(
        List<string> advice, TrialPlan plan, IReadOnlyList<ContrastRow> rows, IReadOnlyList<TrialNeed> own)
    {
        TrialNeed? worst = own.MaxBy(need => need.Shots);
        if (worst is not null)
        {
            advice.Add(worst.Shots <= plan.MostShots
                ? Invariant(
                    $"{plan.MostShots} shots of each will not do: {worst.Shots} would, but not with that many looks.")
                : Invariant($"{plan.MostShots} shots of each will not do: it takes {Number(worst.Shots)} to see ")
                    + $"{Effect(worst)}, in {Invariant($"{100 * plan.Power:0}")} trials of 100.");
        }

        if (worst?.SeenWithMost is { } seen)
            advice.Add(
                Invariant($"With {plan.MostShots} of each a difference of {1000 * seen:0} mm or more would be seen."));
        IEnumerable<IGrouping<(TrialMeasure, bool), TrialNeed>> others = plan.Needs
            .Where(need => !own.Contains(need)).GroupBy(need => (need.Measure, need.UsesSpeed));
        foreach (IGrouping<(TrialMeasure Measure, bool UsesSpeed), TrialNeed> other in others)
        {
            int shots = other.Max(need => need.Shots);
            if (shots < (worst?.Shots ?? int.MaxValue) && shots <= plan.MostShots)
                advice.Add($"Measure {Words(other.Key.Measure, other.Key.UsesSpeed)} instead: "
                    + Invariant($"{shots} shots of each will do."));
        }

        if (ByRamp(plan, rows) is { } ramp)
            advice.Add(Invariant($"Roll the cue ball from a ramp instead of striking it: only the reading error of ")
                + Invariant($"{1000 * plan.LandingReading:0} mm is then left, and {ramp} shots of each will do."));
        advice.Add("Or choose a shot on which more is expected: compare candidates with longrail contrast.");
    }

    // With every stroke alike the difference is the contrast's own, and the scatter that of reading it off.
    private static int? ByRamp(TrialPlan plan, IReadOnlyList<ContrastRow> rows)
    {
        if (plan.Target is null || rows[0].Bank?.LandingMetres is not { } first) return null;
        double least = rows.Skip(1).Min(row => Math.Abs((row.Bank?.LandingMetres ?? first) - first));
        int shots = ShotsNeeded.ForMeans(least / plan.LandingReading, plan.Power, plan.Level / plan.Comparisons);
        shots = Math.Max(shots, TrialPlanner.FewestLandings);
        return shots <= plan.MostShots ? shots : null;
    }

    private static string Words(TrialMeasure measure, bool usesSpeed) => measure == TrialMeasure.Made
        ? "makes and misses"
        : usesSpeed ? "where the ball lands and the speed of every stroke" : "where the ball lands";

    private static string Effect(TrialNeed need) => need.Measure == TrialMeasure.Made
        ? Invariant($"a difference of {100 * Math.Abs(need.Effect):0.#} makes in 100")
        : Invariant($"a difference of {1000 * Math.Abs(need.Effect):0} mm");

    private static string Number(int shots) =>
        shots >= ShotsNeeded.Most ? "more than a million" : Invariant($"{shots}");
}
