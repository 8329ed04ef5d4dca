using Longrail.Coaching.Statistics;
using Longrail.Scenes.Trials;
using static System.FormattableString;

namespace Longrail.Coaching.Trials;

/// <summary>Whether a trial may be looked at now.</summary>
internal static class TrialPeeking
{
    /// <summary>The look that the results have come to, from 0; or why they are not to be looked at.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="shots">All shots that were written down.</param>
    /// <param name="weighed">Those that count: as many of each condition as the look has.</param>
    internal static (int Look, string? Refusal) LookOf(
        TrialPlan plan, IReadOnlyList<TrialShot> shots, out IReadOnlyList<TrialShot> weighed)
    {
        int[] counts = [.. plan.Conditions.Select((_, k) => shots.Count(shot => shot.Condition == k))];
        int least = counts.Min();
        weighed = [];
        if (!plan.IsAffordable)
            return (-1, "the plan found no affordable number of shots, so there is none at which to weigh");
        int look = plan.Looks.ToList().FindLastIndex(n => n <= least);
        bool isOver = least >= plan.Shots;
        bool isAtLook = look >= 0 && counts.All(n => n == plan.Looks[look]);
        if (!isOver && !isAtLook) return (-1, Refusal(plan, counts));

        int take = plan.Looks[look];
        weighed =
        [
            .. plan.Conditions.SelectMany((_, k) => shots.Where(shot => shot.Condition == k).Take(take))
                .OrderBy(shot => shot.Line),
        ];
        return (look, null);
    }

    private static string Refusal(TrialPlan plan, int[] counts)
    {
        string have = string.Join(", ", plan.Conditions.Select((c, k) => Invariant($"{counts[k]} of {c.Label}")));
        int next = plan.Looks.First(n => n > counts.Min());
        string planned = plan.Looks.Count == 1
            ? Invariant($"the plan is {plan.Shots} of each and has no look before")
            : $"the plan looks at {string.Join(", ", plan.Looks.Select(n => Invariant($"{n}")))} of each";
        double alarms = GroupSequential.FalseAlarmsOfPeeking(10, plan.Level);
        return $"{have}: {planned}; the next is at {next}. Looking whenever one likes makes false alarms: "
            + Invariant(
                $"ten looks raise {100 * plan.Level:0.#} % to {100 * alarms:0} %. Play on, or plan with --looks");
    }
}
