namespace Longrail.Scenes.Trials;

/// <summary>What came of reading a trial's results: the table, or what is wrong with it.</summary>
/// <param name="Table">The table; null if anything is wrong.</param>
/// <param name="Errors">What is wrong, each with line and column; empty if nothing is.</param>
public sealed record TrialTableReading(TrialTable? Table, IReadOnlyList<SceneError> Errors);
