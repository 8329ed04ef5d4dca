namespace Longrail.Physics.Equipment;

/// <summary>How clean the balls are.</summary>
/// <param name="Name">The name by which a scene asks for it.</param>
/// <param name="Friction">The friction between two such balls.</param>
public sealed record BallCondition(string Name, BallFriction Friction);
