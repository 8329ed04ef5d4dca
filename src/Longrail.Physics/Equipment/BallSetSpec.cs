namespace Longrail.Physics.Equipment;

/// <summary>A set of balls: size, mass, and what happens when two of them touch.</summary>
/// <param name="Diameter">Ball diameter, metres, positive.</param>
/// <param name="Mass">Ball mass, kilograms, positive.</param>
/// <param name="Restitution">Ratio of separating to closing speed along the line of centres, in [0, 1].</param>
/// <param name="Friction">Friction between two balls as a function of slip speed.</param>
public sealed record BallSetSpec(double Diameter, double Mass, double Restitution, BallFriction Friction);
