using Longrail.Scenes;

namespace Longrail.Coaching.Charts;

/// <summary>What came of the question for a chart.</summary>
/// <param name="Chart">The chart; null if anything is wrong.</param>
/// <param name="Errors">What is wrong with the question; empty if nothing is.</param>
public sealed record ChartAnswer(BankChart? Chart, IReadOnlyList<SceneError> Errors);
