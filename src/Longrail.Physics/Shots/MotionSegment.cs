using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <summary>A stretch of one ball's way over which its acceleration is constant.</summary>
/// <remarks>Position at t: Start.Position + Start.Velocity s + Acceleration s^2 / 2 with s = t - StartTime. A contact
/// with yielding rubber is a row of short stretches, each a parabola through both its ends.</remarks>
/// <param name="StartTime">When it begins, seconds; it lasts until the next segment of the same ball begins.</param>
/// <param name="Phase">How the ball moves.</param>
/// <param name="Start">State at its beginning.</param>
/// <param name="Acceleration">Acceleration of the centre, m/s^2.</param>
/// <param name="SpinRate">Rate of change of the horizontal spin, rad/s^2.</param>
/// <param name="VerticalSpinRate">Rate of change of the spin about the vertical axis, rad/s^2; on the cloth it acts
/// until that spin is zero.</param>
public readonly record struct MotionSegment(
    double StartTime,
    MotionPhase Phase,
    BallState Start,
    Vec2 Acceleration,
    Vec2 SpinRate,
    double VerticalSpinRate)
{
    private bool SpinStopsAtZero => Phase != MotionPhase.InRubber;

    /// <summary>The state at a time within the stretch.</summary>
    /// <param name="time">Time, seconds, not before <see cref="StartTime"/>.</param>
    public BallState At(double time)
    {
        if (Phase == MotionPhase.Pocketed) return Start;
        double s = time - StartTime;
        double vertical = SpinStopsAtZero
            ? FreeMotion.DecayedSpin(Start.Spin.Z, VerticalSpinRate, s)
            : Start.Spin.Z + s * VerticalSpinRate;
        return new BallState(
            Start.Position + s * (Start.Velocity + (0.5 * s) * Acceleration),
            Start.Velocity + s * Acceleration,
            new Vec3(Start.Spin.X + s * SpinRate.X, Start.Spin.Y + s * SpinRate.Y, vertical));
    }

    /// <summary>How the ball turns from the start of the stretch to a time within it.</summary>
    /// <param name="time">Time, seconds, not before <see cref="StartTime"/>.</param>
    public Rotation TurnUntil(double time)
    {
        if (Phase is MotionPhase.Pocketed or MotionPhase.AtRest) return Rotation.Identity;
        return Turning.Over(
            Start.Spin, new Vec3(SpinRate.X, SpinRate.Y, VerticalSpinRate), time - StartTime, SpinStopsAtZero);
    }
}
