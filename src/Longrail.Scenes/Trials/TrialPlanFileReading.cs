namespace Longrail.Scenes.Trials;

/// <summary>What came of reading a trial's plan: what it says with its scene, or what is wrong with it.</summary>
/// <param name="Plan">What it says; null if anything is wrong.</param>
/// <param name="Scene">Its scene; null with <paramref name="Plan"/>.</param>
/// <param name="Errors">What is wrong; empty if nothing is.</param>
public sealed record TrialPlanFileReading(TrialPlanFile? Plan, Scene? Scene, IReadOnlyList<SceneError> Errors);
