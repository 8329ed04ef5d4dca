using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Trials;

/// <summary>After how many shots of each condition a trial is looked at.</summary>
internal static class TrialLooks
{
    /// <summary>The looks, the end included; empty where more shots are needed than anyone will play.</summary>
    internal static IReadOnlyList<int> Of(
        TrialRequest request, IReadOnlyList<TrialNeed> needs, TrialMeasure measure, bool usesSpeed)
    {
        TrialNeed[] own = [.. needs.Where(need => need.Measure == measure && need.UsesSpeed == usesSpeed)];
        if (own.Length == 0) return [];
        int single = own.Max(need => need.Shots);
        double level = request.Level / own.Length;
        double inflation = request.Looks == 1
            ? 1
            : GroupSequential.Equal(request.Rule, request.Looks, level).Inflation(request.Power);
        double wanted = single * inflation;
        if (wanted > request.MostShots) return [];
        int all = Even(wanted);
        int[] looks =
            [.. Enumerable.Range(1, request.Looks).Select(k => Even((double)all * k / request.Looks)).Distinct()];
        return looks;
    }

    /// <summary>The limits of a plan's looks.</summary>
    internal static GroupSequential Limits(TrialPlan plan, double level) =>
        GroupSequential.Of(
            plan.Rule, [.. plan.Looks.Select(n => n == plan.Shots ? 1 : (double)n / plan.Shots)], level);

    // Every turn of the order plays each condition twice.
    private static int Even(double shots) => 2 * (int)Math.Ceiling(shots / 2 - 1e-9);
}
