using Longrail.Physics.Contacts;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Charts.Solving;

/// <summary>What a stroke gives the banked ball, seen along the line from the cue ball to it (for a kick along the way
/// of the cue ball): the same wherever on the cloth it is played.</summary>
/// <param name="Failure">None, or why there is no such stroke.</param>
/// <param name="Stroke">The stroke; its aim is the stick's direction against that line, radians.</param>
/// <param name="Velocity">Velocity of the banked ball, m/s.</param>
/// <param name="Spin">Its spin, rad/s.</param>
internal readonly record struct Launch(NoBank Failure, Stroke Stroke, Vec2 Velocity, Vec3 Spin)
{
    internal static Launch Failed(NoBank failure) => new(failure, default, default, default);

    /// <summary>The spin when the line points in a direction.</summary>
    internal Vec3 SpinAt(double direction)
    {
        Vec2 flat = new Vec2(Spin.X, Spin.Y).Rotated(direction);
        return new Vec3(flat.X, flat.Y, Spin.Z);
    }
}
