using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Coaching.Effects.Stages;

/// <summary>A rebound with its causes on or off.</summary>
/// <remarks>
/// With C the rebound of the ball as it arrives and B that of the same ball sliding in without spin: the rubber's give
/// is B against the mirror, and what spin does is C - B. Without the rubber's give the ball leaves at the mirror's
/// angle with B's speed, plus C - B; so switching it off leaves the work of roll and side as it was.
/// </remarks>
internal static class SwitchedRebound
{
    /// <summary>The ball after a rebound.</summary>
    /// <param name="bench">The cushion.</param>
    /// <param name="arrival">The ball at the touch.</param>
    /// <param name="into">Unit vector into the cushion.</param>
    /// <param name="radius">Ball radius, metres.</param>
    /// <param name="on">What is at work.</param>
    /// <param name="cushion">Which of the counted cushions it is.</param>
    /// <returns>The ball as it leaves, or null if it does not come off.</returns>
    internal static BallState? Of(
        RailBench bench, in BallState arrival, Vec2 into, double radius, Switches on, int cushion)
    {
        Vec3 spin = on.Has(EffectKind.Roll, cushion) ? arrival.Spin : new Vec3(0, 0, arrival.Spin.Z);
        if (bench.Rebound(arrival.Velocity, spin, into) is not { } spun)
            return null;
        BallState after = spun;
        if (!on.Has(EffectKind.Rubber, cushion))
        {
            if (bench.Rebound(arrival.Velocity, Vec3.Zero, into) is not { } plain)
                return null;
            Vec2 mirror = arrival.Velocity - 2 * arrival.Velocity.Dot(into) * into;
            after = new BallState(
                spun.Position - plain.Position,
                plain.Velocity.Length / mirror.Length * mirror + (spun.Velocity - plain.Velocity),
                spun.Spin - plain.Spin);
            if (!(after.Velocity.Dot(into) < 0))
                return null;
        }

        if (!on.Has(EffectKind.Curve, cushion))
            after = after with { Spin = AlongTheWay(after, radius) };
        return after with { Position = arrival.Position + after.Position };
    }

    /// <summary>The spin of which only the part stays that rolls the ball along its way or against it: it changes its
    /// speed but does not bend it.</summary>
    internal static Vec3 AlongTheWay(in BallState ball, double radius)
    {
        Vec2 way = ball.Velocity.Normalized();
        double roll = FreeMotion.RollingVelocity(ball.Spin, radius).Dot(way) / radius;
        return new Vec3(-roll * way.Y, roll * way.X, ball.Spin.Z);
    }
}
