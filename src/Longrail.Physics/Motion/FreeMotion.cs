using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Physics.Motion;

/// <summary>One ball on the cloth between two contacts, in closed form.</summary>
/// <remarks>
/// Coulomb friction at the lowest point (Coriolis 1835): with q = R (w_y, -w_x), the speed the ball would have if it
/// rolled with its present spin, the slip is u = v - q. While u is not zero, dv/dt = -mu g u/|u| and dq/dt = +5/2 mu g
/// u/|u|: the direction of u stays, the path is a parabola, and after 2|u|/(7 mu g) the ball rolls at (5 v + 2 q)/7.
/// See docs/physics.md.
/// </remarks>
public readonly struct FreeMotion
{
    /// <summary>Slip below which a ball rolls, m/s. Rounding leaves about 1e-16; nothing one can see is near
    /// 1e-9.</summary>
    private const double NoSlip = 1e-9;

    private FreeMotion(MotionPhase phase, BallState start, Vec2 acceleration, Vec2 spinRate, double verticalRate, double duration)
    {
        Phase = phase;
        Start = start;
        Acceleration = acceleration;
        SpinRate = spinRate;
        VerticalSpinRate = verticalRate;
        Duration = duration;
    }

    /// <summary>How the ball moves.</summary>
    public MotionPhase Phase { get; }

    /// <summary>The state it starts from.</summary>
    public BallState Start { get; }

    /// <summary>Acceleration of the centre, m/s^2, constant.</summary>
    public Vec2 Acceleration { get; }

    /// <summary>Rate of change of the horizontal spin, rad/s^2, constant.</summary>
    public Vec2 SpinRate { get; }

    /// <summary>Rate of change of the vertical spin until it is zero, rad/s^2.</summary>
    public double VerticalSpinRate { get; }

    /// <summary>How long this phase lasts if nothing is met, seconds; infinite at rest.</summary>
    public double Duration { get; }

    /// <summary>The motion that follows from a state.</summary>
    /// <param name="state">The state.</param>
    /// <param name="radius">Ball radius, metres.</param>
    /// <param name="cloth">The cloth.</param>
    /// <param name="gravity">Free fall, m/s^2.</param>
    public static FreeMotion From(BallState state, double radius, ClothSpec cloth, double gravity)
    {
        Vec2 rolling = RollingVelocity(state.Spin, radius);
        Vec2 slip = state.Velocity - rolling;
        double verticalRate = state.Spin.Z == 0 ? 0 : -Math.CopySign(cloth.SpinDecay, state.Spin.Z);
        double slipSpeed = slip.Length;
        if (slipSpeed > NoSlip)
        {
            double friction = cloth.SlidingFriction * gravity;
            Vec2 direction = slip / slipSpeed;
            Vec2 gain = direction * (2.5 * friction);
            return new FreeMotion(
                MotionPhase.Sliding, state, direction * -friction,
                SpinOf(gain, radius), verticalRate, 2.0 * slipSpeed / (7.0 * friction));
        }

        double speed = state.Velocity.Length;
        if (speed > NoSlip)
        {
            // Take the last trace of slip out, so that rolling is rolling exactly.
            Vec2 velocity = (5.0 * state.Velocity + 2.0 * rolling) / 7.0;
            double deceleration = cloth.RollingFriction * gravity;
            speed = velocity.Length;
            Vec2 acceleration = velocity * (-deceleration / speed);
            return new FreeMotion(
                MotionPhase.Rolling, Rolling(state.Position, velocity, state.Spin.Z, radius), acceleration,
                SpinOf(acceleration, radius), verticalRate, speed / deceleration);
        }

        var still = new BallState(state.Position, Vec2.Zero, new Vec3(0, 0, state.Spin.Z));
        return state.Spin.Z != 0
            ? new FreeMotion(MotionPhase.Pivoting, still, Vec2.Zero, Vec2.Zero, verticalRate, Math.Abs(state.Spin.Z) / cloth.SpinDecay)
            : new FreeMotion(MotionPhase.AtRest, still, Vec2.Zero, Vec2.Zero, 0, double.PositiveInfinity);
    }

    /// <summary>The state a time after the start, within this phase.</summary>
    /// <param name="elapsed">Seconds since the start, not negative.</param>
    public BallState At(double elapsed) => new(
        Start.Position + elapsed * (Start.Velocity + (0.5 * elapsed) * Acceleration),
        Start.Velocity + elapsed * Acceleration,
        new Vec3(
            Start.Spin.X + elapsed * SpinRate.X,
            Start.Spin.Y + elapsed * SpinRate.Y,
            DecayedSpin(Start.Spin.Z, VerticalSpinRate, elapsed)));

    /// <summary>The state at the end of a phase with the phase's own condition met exactly.</summary>
    internal static BallState Ended(MotionPhase phase, BallState start, BallState end, double radius) => phase switch
    {
        MotionPhase.Sliding => Rolling(end.Position, FinalVelocity(start, radius), end.Spin.Z, radius),
        MotionPhase.Rolling => new BallState(end.Position, Vec2.Zero, new Vec3(0, 0, end.Spin.Z)),
        _ => BallState.AtRest(end.Position),
    };

    /// <summary>The velocity at which a ball with this spin would roll, m/s.</summary>
    /// <param name="spin">Spin, rad/s.</param>
    /// <param name="radius">Ball radius, metres.</param>
    public static Vec2 RollingVelocity(Vec3 spin, double radius) => new(radius * spin.Y, -radius * spin.X);

    /// <summary>The velocity that a ball will have once it rolls: (5 v + 2 q)/7, whatever the friction.</summary>
    /// <param name="state">The state.</param>
    /// <param name="radius">Ball radius, metres.</param>
    public static Vec2 FinalVelocity(BallState state, double radius) =>
        (5.0 * state.Velocity + 2.0 * RollingVelocity(state.Spin, radius)) / 7.0;

    /// <summary>A rolling ball's state.</summary>
    /// <param name="position">Centre, metres.</param>
    /// <param name="velocity">Velocity, m/s.</param>
    /// <param name="verticalSpin">Spin about the vertical, rad/s.</param>
    /// <param name="radius">Ball radius, metres.</param>
    public static BallState Rolling(Vec2 position, Vec2 velocity, double verticalSpin, double radius)
    {
        Vec2 spin = SpinOf(velocity, radius);
        return new BallState(position, velocity, new Vec3(spin.X, spin.Y, verticalSpin));
    }

    /// <summary>A vertical spin after it has decayed at a constant rate, never past zero.</summary>
    internal static double DecayedSpin(double spin, double rate, double elapsed)
    {
        double later = spin + rate * elapsed;
        return spin > 0 == later > 0 ? later : 0.0;
    }

    private static Vec2 SpinOf(Vec2 rollingVelocity, double radius) => new(-rollingVelocity.Y / radius, rollingVelocity.X / radius);
}
