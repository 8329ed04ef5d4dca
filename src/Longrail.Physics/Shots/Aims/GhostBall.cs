using Longrail.Physics.Contacts;
using Longrail.Physics.Geometry;

namespace Longrail.Physics.Shots.Aims;

/// <summary>The plain geometry of a cut: where the cue ball's centre stands at the touch.</summary>
internal static class GhostBall
{
    /// <summary>The straight line from the cue ball that cuts the object ball by an angle.</summary>
    /// <param name="setup">The balls.</param>
    /// <param name="cueBall">Index of the cue ball.</param>
    /// <param name="objectBall">Index of the object ball.</param>
    /// <param name="cut">Cut angle, radians, positive to the left.</param>
    /// <returns>The direction, radians, or null if no straight line does it.</returns>
    internal static double? Aim(ShotSetup setup, int cueBall, int objectBall, double cut)
    {
        ShotBall a = setup.Balls[cueBall];
        ShotBall b = setup.Balls[objectBall];
        Vec2 between = b.Start.Position - a.Start.Position;
        double reach = BallContact.Reach(a.Radius, b.Radius);
        double offset = reach * Math.Sin(cut) / between.Length;
        // Frozen balls: the line of centres is given, only the direction of the cut is free.
        if (between.Length <= reach * (1 + 1e-9)) return between.Angle - cut;
        return Math.Abs(offset) < 1 ? between.Angle - Math.Asin(offset) : null;
    }
}
