using Longrail.Scenes;
using Longrail.Scenes.Trials;

namespace Longrail.Coaching.Trials;

/// <summary>Weighs the results of a trial.</summary>
public static class TrialWeigher
{
    /// <summary>Below so many shots in all no verdict is given.</summary>
    public const int FewestShots = 20;

    private const double UsualLevel = 0.05;

    /// <summary>Reads results and weighs them.</summary>
    /// <param name="utf8">The table in UTF-8.</param>
    /// <param name="plan">The plan, or null: then there are estimates and no verdict.</param>
    public static TrialResultAnswer Weigh(ReadOnlySpan<byte> utf8, TrialPlan? plan)
    {
        TrialTableReading reading = TrialTableReader.Read(utf8, TrialNeedsOf(plan));
        return reading.Table is { } table
            ? Weigh(table, plan)
            : new TrialResultAnswer(null, reading.Errors);
    }

    /// <summary>Weighs results.</summary>
    /// <param name="table">The results; with a plan its conditions are the plan's.</param>
    /// <param name="plan">The plan, or null.</param>
    public static TrialResultAnswer Weigh(TrialTable table, TrialPlan? plan)
    {
        ArgumentNullException.ThrowIfNull(table);
        if (FaultOf(table, plan) is { } fault) return new TrialResultAnswer(null, [fault]);
        IReadOnlyList<TrialShot> shots = table.Shots;
        int look = -1;
        if (plan is not null)
        {
            (look, string? refusal) = TrialPeeking.LookOf(plan, table.Shots, out shots);
            if (refusal is not null) return new TrialResultAnswer(null, [], refusal);
        }

        int comparisons = table.Conditions.Count - 1;
        double level = (plan?.Level ?? UsualLevel) / comparisons;
        if (plan is { Looks.Count: > 1 }) level = TrialLooks.Limits(plan, level).NominalLevel(look);
        var measure = plan?.Measure ?? (table.HasLanding ? TrialMeasure.Landing : TrialMeasure.Made);
        bool usesSpeed = measure == TrialMeasure.Landing && (plan?.UsesSpeed ?? table.HasSpeed);
        var figures = new TrialFigures(table, shots, plan, level, measure, usesSpeed);
        var result = new TrialResult
        {
            Plan = plan,
            Shots = shots,
            SpeedIsRollOut = table.SpeedIsRollOut,
            Measure = measure,
            UsesSpeed = usesSpeed && figures.Covariance is not null,
            Conditions = [.. Enumerable.Range(0, table.Conditions.Count).Select(figures.Condition)],
            Comparisons = [.. Enumerable.Range(1, comparisons).Select(k => figures.Comparison(k, look))],
            Confidence = 1 - level,
            Look = look + 1,
            Slope = figures.Covariance?.Slope,
            CommonSpeed = figures.Covariance?.GrandCovariate,
            Sentences = [],
            Notes = [],
        };
        return new TrialResultAnswer(
            result with { Sentences = TrialSentences.Of(result), Notes = TrialNotes.Of(result, table) }, []);
    }

    private static TrialTableNeeds TrialNeedsOf(TrialPlan? plan) => plan is null
        ? new TrialTableNeeds()
        : new TrialTableNeeds(
            [.. plan.Conditions.Select(c => (c.Label, c.Value))], plan.Diamond,
            plan is { Diamond: { } diamond, Target: { } target }
                ? diamond * (Physics.Shots.Readings.Diamonds.IsLong(target) ? 8 : 4)
                : null);

    private static SceneError? FaultOf(TrialTable table, TrialPlan? plan)
    {
        if (table.Conditions.Count < 2)
            return new SceneError("condition", "all shots are of one condition", "two conditions or more");
        if (plan?.Measure == TrialMeasure.Landing && !table.HasLanding)
            return new SceneError("landing_mm", "there is no such column, and the plan measures landings",
                "landing_mm, _cm, _m, _in or _diamonds");
        if (plan?.Measure == TrialMeasure.Made && !table.HasMade)
            return new SceneError("made", "there is no such column, and the plan counts makes", "a column made");
        if (plan is { UsesSpeed: true } && !table.HasSpeed)
            return new SceneError("speed_mps", "there is no such column, and the plan evens the speeds out",
                "speed_mps, _mph, _kmh, _ftps, or rollout_m, _cm, _mm, _in, _ft");
        return null;
    }
}
