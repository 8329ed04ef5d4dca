using Longrail.Scenes;

namespace Longrail.Coaching.Trials;

/// <summary>What came of planning a trial: the plan, or what is wrong with the question.</summary>
/// <param name="Plan">The plan; null if anything is wrong.</param>
/// <param name="Errors">What is wrong; empty if nothing is.</param>
/// <param name="IsUnreachable">Whether the question is in order but asks for what cannot be computed.</param>
public sealed record TrialPlanAnswer(TrialPlan? Plan, IReadOnlyList<SceneError> Errors, bool IsUnreachable = false);
