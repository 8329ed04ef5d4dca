using Longrail.Scenes;

namespace Longrail.Coaching.Effects;

/// <summary>What came of a budget: the budget, or why there is none.</summary>
/// <param name="Budget">The budget; null if there is none.</param>
/// <param name="Errors">Why; empty if there is one.</param>
/// <param name="IsUnreachable">Whether the question is in order but the shot has no such budget, as when no ball comes
/// to a cushion.</param>
public sealed record EffectsAnswer(EffectBudget? Budget, IReadOnlyList<SceneError> Errors, bool IsUnreachable = false);
