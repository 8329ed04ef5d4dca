namespace Longrail.Scenes.Compiling;

/// <summary>What came of solving an aim.</summary>
/// <param name="Aim">The direction of the stick, radians; null if there is none.</param>
/// <param name="Reason">Why there is none; empty if there is one.</param>
internal readonly record struct AimAnswer(double? Aim, string Reason);
