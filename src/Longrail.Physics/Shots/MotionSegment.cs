using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <summary>A stretch of one ball's way over which its acceleration is constant.</summary>
/// <remarks>Position at t: Start.Position + Start.Velocity s + Acceleration s^2 / 2 with s = t - StartTime.</remarks>
/// <param name="StartTime">When it begins, seconds; it lasts until the next segment of the same ball begins.</param>
/// <param name="Phase">How the ball moves.</param>
/// <param name="Start">State at its beginning.</param>
/// <param name="Acceleration">Acceleration of the centre, m/s^2.</param>
/// <param name="SpinRate">Rate of change of the horizontal spin, rad/s^2.</param>
/// <param name="VerticalSpinRate">Rate of change of the spin about the vertical axis until that spin is zero, rad/s^2.</param>
public readonly record struct MotionSegment(
    double StartTime,
    MotionPhase Phase,
    BallState Start,
    Vec2 Acceleration,
    Vec2 SpinRate,
    double VerticalSpinRate);
