using Longrail.Physics.Contacts;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots.Readings;

/// <summary>Takes the reading of two balls meeting.</summary>
internal static class MeetReadings
{
    /// <summary>Slip left over below this part of the slip on arrival counts as none.</summary>
    private const double SlipGone = 1e-6;

    internal static MeetReading Of(Trace trace, ShotEvent e)
    {
        ShotBall striker = trace.Setup.Balls[e.BallA];
        ShotBall struck = trace.Setup.Balls[e.BallB!.Value];
        BallState a = e.BeforeA;
        BallState b = e.BeforeB!.Value;
        BallState aAfter = e.AfterA;
        BallState bAfter = e.AfterB!.Value;
        Vec2 normal = (b.Position - a.Position).Normalized();
        Vec2 approach = a.Velocity - b.Velocity;
        double cut = Math.Atan2(approach.Cross(normal), approach.Dot(normal));
        Vec2 push = bAfter.Velocity - b.Velocity;
        double thrown = push.LengthSquared > 0 ? Math.Atan2(normal.Cross(push), normal.Dot(push)) : 0;
        double slip = Slip(a, b, normal, striker.Radius, struck.Radius);
        double slipAfter = Slip(aAfter, bAfter, normal, striker.Radius, struck.Radius);
        BallWay arrival = BallWay.Of(a, striker.Radius);
        double struckSpeed = bAfter.Velocity.Length;
        double handed = struckSpeed > 0
            ? BallWay.OffsetOfSide * struck.Radius * (bAfter.Spin.Z - b.Spin.Z) / struckSpeed
            : 0;
        return new MeetReading(
            Angles.Degrees(cut), 1 - Math.Abs(Math.Sin(cut)), Angles.Degrees(thrown), approach.Dot(normal), slip,
            slipAfter <= SlipGone * slip, arrival.RollRatio, arrival.SideOffset, handed, struckSpeed, aAfter.Velocity.Length);
    }

    private static double Slip(BallState a, BallState b, Vec2 normal, double radiusA, double radiusB)
    {
        BallContact.Slip(a, radiusA, b, radiusB, normal, out double across, out double up);
        return Math.Sqrt(across * across + up * up);
    }
}
