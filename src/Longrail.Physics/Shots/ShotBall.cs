using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <summary>One ball of a shot: its size and its state at the start.</summary>
/// <param name="Radius">Radius, metres, positive.</param>
/// <param name="Mass">Mass, kilograms, positive.</param>
/// <param name="Start">State at time 0, after the tip has left the ball.</param>
public readonly record struct ShotBall(double Radius, double Mass, BallState Start);
