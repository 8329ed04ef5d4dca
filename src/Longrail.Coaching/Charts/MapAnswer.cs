using Longrail.Scenes;

namespace Longrail.Coaching.Charts;

/// <summary>What came of the question for a map.</summary>
/// <param name="Map">The map; null if anything is wrong.</param>
/// <param name="Errors">What is wrong with the question; empty if nothing is.</param>
public sealed record MapAnswer(OddsMap? Map, IReadOnlyList<SceneError> Errors);
