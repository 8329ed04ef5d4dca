using Longrail.Coaching.Statistics;
using Longrail.Scenes.Trials;
using static System.FormattableString;

namespace Longrail.Coaching.Trials;

/// <summary>What must be said beside a weighed trial.</summary>
internal static class TrialNotes
{
    private const double Doubt = 0.05;

    internal static IReadOnlyList<string> Of(TrialResult result, TrialTable table)
    {
        var notes = new List<string>();
        AddLooks(notes, result, table);
        AddSpeed(notes, result);
        AddLost(notes, result);
        if (result.Measure == TrialMeasure.Made && result.Shots.Count < 2 * TrialPlanner.FewestMakes)
            notes.Add("Makes of fewer than twenty shots each say next to nothing.");
        if (result.Comparisons.Count > 1)
            notes.Add(Invariant($"{result.Comparisons.Count} comparisons share the false alarms: ")
                + "their intervals are wider.");
        return notes;
    }

    private static void AddLooks(List<string> notes, TrialResult result, TrialTable table)
    {
        if (result.Plan is not { } plan) return;
        if (plan.Looks.Count > 1)
            notes.Add(Invariant($"Look {result.Look} of {plan.Looks.Count}, limits by {RuleName(plan.Rule)}: ")
                + Invariant($"all looks together keep to {100 * plan.Level:0.#} % of false alarms."));
        int left = table.Shots.Count - result.Shots.Count;
        if (left > 0)
            notes.Add(Invariant(
                $"{left} shots beyond the planned number are left out: going on until it fits is peeking too."));

        IReadOnlyList<TrialTurn> turns = TrialSchedule.Of(plan);
        int other = result.Shots.Count(
            shot => shot.Number > turns.Count || turns[shot.Number - 1].Condition != shot.Condition);
        if (other > 0)
            notes.Add(Invariant(
                $"{other} shots were not played in the order of the sheet: the lot no longer answers for them."));
    }

    private static void AddSpeed(List<string> notes, TrialResult result)
    {
        foreach (WeighedComparison comparison in result.Comparisons)
        {
            WeighedCondition other = result.Conditions[comparison.Condition];
            if (comparison.EqualSlopes < Doubt)
                notes.Add(Invariant($"Speed does not move {result.Conditions[0].Label} and {other.Label} alike ")
                    + Invariant($"(p {comparison.EqualSlopes:0.000}): ")
                    + "one adjusted difference does not hold at every speed.");
            if (result.Conditions[0].Speed is { Deviation: > 0 } a && other.Speed is { Deviation: > 0 } b
                && MeanDifference.Welch(b, a) is { P: < Doubt } drift)
            {
                string unit = result.SpeedIsRollOut ? "m of roll-out" : "m/s";
                notes.Add(Invariant($"{other.Label} was played {Math.Abs(drift.Difference):0.00} {unit} ")
                    + (drift.Difference > 0 ? "harder" : "softer")
                    + Invariant($" than {result.Conditions[0].Label} (p {drift.P:0.000})")
                    + (result.UsesSpeed
                        ? ": that is why the adjusted figure differs."
                        : ": that may be all the difference."));
            }
        }
    }

    private static void AddLost(List<string> notes, TrialResult result)
    {
        if (result.Measure != TrialMeasure.Landing) return;
        int lost = result.Shots.Count(shot => shot.Landing is null || (result.UsesSpeed && shot.Speed is null));
        if (lost > 0)
            notes.Add(Invariant($"{lost} of {result.Shots.Count} shots have no landing")
                + (result.UsesSpeed ? " or no speed" : "") + " and do not count.");
    }

    private static string RuleName(StoppingRule rule) => rule == StoppingRule.Pocock ? "Pocock" : "O'Brien and Fleming";
}
