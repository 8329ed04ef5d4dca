using Longrail.Scenes;

namespace Longrail.Coaching.Charts;

/// <summary>What came of reading a question: a chart or a map to compute, or what is wrong.</summary>
/// <param name="Chart">The chart that is asked for, or null.</param>
/// <param name="Map">The map that is asked for, or null.</param>
/// <param name="Errors">What is wrong; empty if one of the two is there.</param>
public sealed record ChartReading(ChartRequest? Chart, MapRequest? Map, IReadOnlyList<SceneError> Errors);
