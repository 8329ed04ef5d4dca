using Longrail.Physics.Geometry;

namespace Longrail.Physics.Motion;

/// <summary>Where a ball is and how it moves at one instant.</summary>
/// <param name="Position">Centre of the ball seen from above, metres.</param>
/// <param name="Velocity">Velocity of the centre, m/s. A ball stays on the bed: there is no vertical part.</param>
/// <param name="Spin">Angular velocity, rad/s. Rolling along +x means Spin.Y = speed / radius.</param>
public readonly record struct BallState(Vec2 Position, Vec2 Velocity, Vec3 Spin)
{
    /// <summary>The ball at rest at a point.</summary>
    public static BallState AtRest(Vec2 position) => new(position, Vec2.Zero, Vec3.Zero);
}
