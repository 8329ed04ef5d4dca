namespace Longrail.Scenes.Trials;

/// <summary>What one comparison of a trial's plan needs, measured in one way.</summary>
/// <param name="Condition">The letter of the condition that is held against the first.</param>
/// <param name="Measure">"landing" or "made".</param>
/// <param name="UsesSpeed">Whether the speed is evened out.</param>
/// <param name="Effect">Expected difference, metres or chance.</param>
/// <param name="Spread">Standard deviation within a condition, metres, or null.</param>
/// <param name="Shots">Shots of each condition.</param>
/// <param name="SeenWithMost">What the most shots allowed would see, metres, or null.</param>
public sealed record TrialPlanNeed(
    string Condition, string Measure, bool UsesSpeed, double Effect, double? Spread, int Shots, double? SeenWithMost);
