using Longrail.Coaching.Statistics;
using Longrail.Scenes.Trials;

namespace Longrail.Coaching.Trials;

/// <summary>The numbers of a trial: summaries of its conditions, and the comparisons.</summary>
internal sealed class TrialFigures
{
    private readonly TrialTable _table;
    private readonly IReadOnlyList<TrialShot> _shots;
    private readonly TrialPlan? _plan;
    private readonly double _level;
    private readonly TrialMeasure _measure;
    private readonly bool _usesSpeed;

    internal TrialFigures(
        TrialTable table, IReadOnlyList<TrialShot> shots, TrialPlan? plan, double level, TrialMeasure measure,
        bool usesSpeed)
    {
        _table = table;
        _shots = shots;
        _plan = plan;
        _level = level;
        _measure = measure;
        _usesSpeed = usesSpeed;
        Covariance = usesSpeed ? CovarianceOf([.. Enumerable.Range(0, table.Conditions.Count)]) : null;
    }

    /// <summary>Landing against speed in all conditions; null where that cannot be made.</summary>
    internal Ancova? Covariance { get; }

    internal WeighedCondition Condition(int k)
    {
        TrialShot[] own = Own(k);
        bool hasMade = own.Any(shot => shot.Made is not null);
        return new WeighedCondition(
            _plan?.Conditions[k].Label ?? Contrasts.VariantLetter.Of(k), _table.Conditions[k], own.Length,
            Summary(own.Select(shot => shot.Landing)), Covariance?.AdjustedMean(k),
            Summary(own.Select(shot => shot.Speed)),
            hasMade ? Odds.Of(own.Count(shot => shot.Made == true), own.Count(shot => shot.Made is not null)) : null);
    }

    internal WeighedComparison Comparison(int k, int look)
    {
        WeighedCondition first = Condition(0);
        WeighedCondition other = Condition(k);
        WeighedDifference? unadjusted = Unadjusted(first, other);
        WeighedDifference? adjusted = Covariance is null ? null : Of(Covariance.Difference(k, 0));
        WeighedDifference? made = Made(first.Made, other.Made);
        double? expected = _plan?.Needs.FirstOrDefault(n =>
            n.Condition == other.Label && n.Measure == _measure
                && n.UsesSpeed == (_usesSpeed && _plan.UsesSpeed))?.Effect;
        WeighedDifference? decisive = _measure == TrialMeasure.Made ? made : _usesSpeed ? adjusted : unadjusted;
        return new WeighedComparison(
            k, unadjusted, adjusted, Covariance is null ? null : CovarianceOf([0, k])?.EqualSlopes?.P,
            Permutation(k), made, expected, Verdict(decisive, look));
    }

    private TrialVerdict Verdict(WeighedDifference? decisive, int look)
    {
        if (decisive is null || _shots.Count < TrialWeigher.FewestShots) return TrialVerdict.TooFew;
        if (_plan is null) return TrialVerdict.NoPlan;
        // Newcombe's interval and Fisher's test may differ at the edge; what is shown is the interval.
        if (!decisive.Within.Holds(0)) return TrialVerdict.Differs;
        return look < _plan.Looks.Count - 1 ? TrialVerdict.PlayOn : TrialVerdict.CannotTell;
    }

    private WeighedDifference? Unadjusted(WeighedCondition first, WeighedCondition other)
    {
        if (first.Landing is not { } a || other.Landing is not { } b) return null;
        if (a.Deviation == 0 && b.Deviation == 0) return null;
        return Of(MeanDifference.Welch(b, a));
    }

    private WeighedDifference Of(MeanDifference difference) =>
        new(difference.Difference, difference.Within(1 - _level), difference.P);

    private WeighedDifference? Made(Odds? first, Odds? other)
    {
        if (first is not { Trials: > 0 } a || other is not { Trials: > 0 } b) return null;
        return new WeighedDifference(
            b.Share - a.Share, ProportionDifference.Newcombe(b.Made, b.Trials, a.Made, a.Trials, 1 - _level),
            FisherExact.TwoSided(b.Made, b.Trials, a.Made, a.Trials));
    }

    private Ancova? CovarianceOf(int[] conditions)
    {
        CovariatePair[][] groups =
        [
            .. conditions.Select(k => Own(k)
                .Where(shot => shot is { Landing: not null, Speed: not null })
                .Select(shot => new CovariatePair(shot.Speed!.Value, shot.Landing!.Value)).ToArray()),
        ];
        return groups.Any(group => group.Length == 0) ? null : Ancova.Of(groups);
    }

    // The two conditions are dealt out again within the blocks of the sheet. Without a plan nothing is known of blocks.
    private PermutationTest? Permutation(int k)
    {
        bool isAdjusted = Covariance is not null;
        TrialShot[] own =
        [
            .. _shots.Where(shot => (shot.Condition == 0 || shot.Condition == k) && shot.Landing is not null
                && (!isAdjusted || shot.Speed is not null)),
        ];
        if (own.Select(shot => shot.Condition).Distinct().Count() < 2 || own.Length < 4) return null;
        CovariatePair[] pairs =
            [.. own.Select(shot => new CovariatePair(isAdjusted ? shot.Speed!.Value : 0, shot.Landing!.Value))];
        int[] groups = [.. own.Select(shot => shot.Condition == k ? 1 : 0)];
        int[]? blocks = _plan is null
            ? null
            : [.. own.Select(shot => TrialSchedule.BlockOf(shot.Number, _plan.Conditions.Count))];
        return PermutationTest.Of(pairs, groups, blocks, _plan?.Seed ?? 1);
    }

    private TrialShot[] Own(int condition) => [.. _shots.Where(shot => shot.Condition == condition)];

    private static SampleSummary? Summary(IEnumerable<double?> values)
    {
        double[] read = [.. values.OfType<double>()];
        return read.Length < 2 ? null : SampleSummary.Of(read);
    }
}
