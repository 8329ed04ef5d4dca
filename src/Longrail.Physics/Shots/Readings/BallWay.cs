using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots.Readings;

/// <summary>Roll and side of a moving ball relative to its way.</summary>
/// <param name="Speed">Speed, m/s.</param>
/// <param name="RollRatio">R w / v along the way: 1 rolling, 0 a skid without spin; 0 for a ball that stands.</param>
/// <param name="SideRatio">R w_z / v, positive for right side; 0 for a ball that stands.</param>
internal readonly record struct BallWay(double Speed, double RollRatio, double SideRatio)
{
    /// <summary>Side ratio to tip offset: R w/v = 5/2 b/R.</summary>
    internal const double OffsetOfSide = 0.4;

    internal static BallWay Of(BallState state, double radius)
    {
        double speed = state.Velocity.Length;
        if (!(speed > 0)) return default;
        Vec2 rolling = FreeMotion.RollingVelocity(state.Spin, radius);
        return new BallWay(speed, rolling.Dot(state.Velocity) / (speed * speed), radius * state.Spin.Z / speed);
    }

    /// <summary>The side as a tip offset b/R, positive right.</summary>
    internal double SideOffset => OffsetOfSide * SideRatio;
}
