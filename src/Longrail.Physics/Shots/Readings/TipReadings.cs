using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;

namespace Longrail.Physics.Shots.Readings;

/// <summary>Takes the reading of a stroke.</summary>
internal static class TipReadings
{
    internal static TipReading Of(Trace trace, ShotEvent e)
    {
        StrokeRecord record = trace.Setup.Stroke!;
        CueSpec cue = trace.Setup.Equipment.Cue;
        ShotBall ball = trace.Setup.Balls[e.BallA];
        double radius = ball.Radius;
        Stroke stroke = record.Stroke;
        double ShaftTips(double offset) => TipContact.ShaftOffset(offset, radius, cue) / cue.TipDiameter;
        BallWay way = BallWay.Of(e.AfterA, radius);
        return new TipReading(
            Angles.Degrees(stroke.Aim), Angles.Degrees(e.AfterA.Velocity.Angle), Angles.Degrees(record.Result.Squirt),
            record.Result.CueSpeed, e.AfterA.Velocity.Length,
            stroke.OffsetRight / radius, stroke.OffsetAbove / radius,
            ShaftTips(stroke.OffsetRight), ShaftTips(stroke.OffsetAbove), record.Result.MiscueLimit / radius,
            way.RollRatio, way.SideRatio);
    }
}
