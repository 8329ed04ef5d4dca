using Longrail.Scenes;

namespace Longrail.Coaching.Contrasts;

/// <summary>What came of a comparison: the comparison, or what is wrong with the question.</summary>
/// <param name="Contrast">The comparison; null if anything is wrong.</param>
/// <param name="Errors">What is wrong, each with the level that it belongs to; empty if nothing is.</param>
/// <param name="IsUnreachable">Whether the question is in order but some level asks for what cannot be computed, as an
/// aim that does not exist.</param>
public sealed record ContrastAnswer(Contrast? Contrast, IReadOnlyList<SceneError> Errors, bool IsUnreachable = false);
