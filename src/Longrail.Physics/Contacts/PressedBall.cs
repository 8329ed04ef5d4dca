using Longrail.Physics.Geometry;

namespace Longrail.Physics.Contacts;

/// <summary>The motion of a ball in the rubber: position, velocity, and surface speeds R w.</summary>
internal readonly record struct PressedBall(Vec2 Position, Vec2 Velocity, Vec3 Surface)
{
    internal PressedBall Plus(in PressedBall rate, double h) =>
        new(Position + h * rate.Position, Velocity + h * rate.Velocity, Surface + h * rate.Surface);

    internal LocalMotion Seen(Vec2 into)
    {
        Vec2 along = into.Right;
        Vec2 surface = Surface.Horizontal;
        return new LocalMotion(Velocity.Dot(along), Velocity.Dot(into), surface.Dot(along), surface.Dot(into), Surface.Z);
    }

    /// <summary>The same ball with its motion given in a cushion's frame.</summary>
    internal PressedBall Moving(in LocalMotion u, Vec2 into) => Rate(Vec2.Zero, u, into) with { Position = Position };

    internal static PressedBall Rate(Vec2 velocity, in LocalMotion rates, Vec2 into)
    {
        Vec2 along = into.Right;
        Vec2 surface = rates.Ax * along + rates.Ay * into;
        return new PressedBall(velocity, rates.Vx * along + rates.Vy * into, new Vec3(surface.X, surface.Y, rates.Az));
    }
}
