using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Trials;

/// <summary>A condition held against the first: condition minus first.</summary>
/// <param name="Condition">Index of the condition.</param>
/// <param name="Unadjusted">The landings as they stand (Welch's test), metres; null where they were not written
/// down.</param>
/// <param name="Adjusted">The landings at the common speed (covariance), metres; null where the speed was not evened
/// out.</param>
/// <param name="EqualSlopes">Chance that speed moves both conditions alike, if it does; null without speeds.</param>
/// <param name="Permutation">The same question asked by dealing out the conditions again; null without
/// landings.</param>
/// <param name="Made">The chances to make it (Newcombe's interval, Fisher's test); null where makes were not written
/// down.</param>
/// <param name="Expected">What the physics expected, in the unit of the measure; null without a plan.</param>
/// <param name="Verdict">What that amounts to.</param>
public sealed record WeighedComparison(
    int Condition, WeighedDifference? Unadjusted, WeighedDifference? Adjusted, double? EqualSlopes,
    PermutationTest? Permutation, WeighedDifference? Made, double? Expected, TrialVerdict Verdict);
