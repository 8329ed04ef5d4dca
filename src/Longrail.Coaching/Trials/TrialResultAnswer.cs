using Longrail.Scenes;

namespace Longrail.Coaching.Trials;

/// <summary>What came of weighing a trial: the result, or why there is none.</summary>
/// <param name="Result">The result; null if there is none.</param>
/// <param name="Errors">What is wrong with the results as they were written down; empty if nothing is.</param>
/// <param name="Refusal">Why a trial that is in order is not weighed now; null if it is.</param>
public sealed record TrialResultAnswer(TrialResult? Result, IReadOnlyList<SceneError> Errors, string? Refusal = null);
