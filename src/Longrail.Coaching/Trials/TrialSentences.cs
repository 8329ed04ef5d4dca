using Longrail.Coaching.Statistics;
using Longrail.Physics.Equipment;
using static System.FormattableString;

namespace Longrail.Coaching.Trials;

/// <summary>What a trial comes to, in a sentence that claims no more than it may.</summary>
internal static class TrialSentences
{
    internal static IReadOnlyList<string> Of(TrialResult result) =>
        [.. result.Comparisons.Select(comparison => Of(result, comparison))];

    private static string Of(TrialResult result, WeighedComparison comparison)
    {
        string first = Name(result, result.Conditions[0]);
        string other = Name(result, result.Conditions[comparison.Condition]);
        WeighedDifference? decisive = result.Measure == TrialMeasure.Made
            ? comparison.Made
            : result.UsesSpeed ? comparison.Adjusted : comparison.Unadjusted;
        if (decisive is null || comparison.Verdict == TrialVerdict.TooFew)
            return Invariant($"{other} against {first}: {result.Shots.Count} shots are too few to say anything.");

        string within = Invariant($"{100 * result.Confidence:0.#} % interval {Range(result, decisive.Within)}");
        string same = result.UsesSpeed ? "at the same speed " : "";
        string estimate = $"{same}{other} {Verb(result)} {Amount(result, decisive.Value)} {first} ({within})";
        return comparison.Verdict switch
        {
            TrialVerdict.Differs =>
                $"With this player, table and shot, {estimate}{Surprise(result, comparison, decisive)}.",
            TrialVerdict.PlayOn => $"Play on: {estimate}; the limit of this look is not crossed.",
            TrialVerdict.CannotTell => $"Cannot tell: {estimate}{Ruled(result, comparison, decisive)}.",
            _ => $"An estimate, not a verdict: {estimate}; without a plan nobody knows how often it was looked at.",
        };
    }

    private static string Name(TrialResult result, WeighedCondition condition) =>
        result.Plan is null ? condition.Value : $"{condition.Label} ({condition.Value})";

    private static string Verb(TrialResult result) =>
        result.Measure == TrialMeasure.Made ? "went in" : "landed";

    private static string Amount(TrialResult result, double value)
    {
        if (result.Measure == TrialMeasure.Made)
            return Invariant($"{100 * Math.Abs(value):0} times in 100 {(value < 0 ? "less" : "more")} often than");
        string way = value < 0 ? "nearer to" : "farther from";
        return Invariant($"{1000 * Math.Abs(value):0} mm {way} the {Origin(result)} than");
    }

    private static string Range(TrialResult result, Interval within) => result.Measure == TrialMeasure.Made
        ? Invariant($"{100 * within.Low:+0;-0;0} to {100 * within.High:+0;-0;0} in 100")
        : Invariant($"{1000 * within.Low:+0;-0;0} to {1000 * within.High:+0;-0;0} mm");

    // What is compared with the physics is the interval, not the estimate.
    private static string Surprise(TrialResult result, WeighedComparison comparison, WeighedDifference decisive)
    {
        if (comparison.Expected is not { } expected) return "";
        string size = Size(result, expected);
        if (decisive.Within.Holds(expected)) return $"; that agrees with the {size} that the physics expects";
        if (Math.Sign(expected) != Math.Sign(decisive.Value)) return $"; the physics expects the other way, {size}";
        return Math.Abs(decisive.Value) < Math.Abs(expected)
            ? $"; that is less than the {size} that the physics expects"
            : $"; that is more than the {size} that the physics expects";
    }

    private static string Ruled(TrialResult result, WeighedComparison comparison, WeighedDifference decisive)
    {
        if (comparison.Expected is not { } expected) return "; it may be none";
        string size = Size(result, expected);
        return decisive.Within.Holds(expected)
            ? $"; it may be none, and it may be the {size} that the physics expects"
            : $"; it may be none, but the {size} that the physics expects is ruled out";
    }

    private static string Size(TrialResult result, double value) => result.Measure == TrialMeasure.Made
        ? Invariant($"{100 * value:+0;-0;0} in 100")
        : Invariant($"{1000 * value:+0;-0;0} mm");

    private static string Origin(TrialResult result) =>
        result.Plan?.Target is CushionName.Head or CushionName.Foot ? "right" : "head";
}
