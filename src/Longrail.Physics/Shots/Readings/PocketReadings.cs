using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots.Readings;

/// <summary>Takes the reading of a ball going down.</summary>
internal static class PocketReadings
{
    internal static PocketReading Of(Trace trace, TableOutline outline, int index)
    {
        ShotEvent e = trace.Events[index];
        PocketOutline pocket = outline.Pockets[(int)e.Pocket!.Value];
        double radius = trace.Setup.Balls[e.BallA].Radius;
        double reach = TableOutline.Reach(radius, trace.Setup.Equipment.Cushion.NoseHeight);
        BallState entry = AtMouth(trace, e, pocket);
        Vec2 way = entry.Velocity.Normalized();
        double angle = Math.Atan2(pocket.Axis.Cross(way), pocket.Axis.Dot(way));
        double offset = (entry.Position - pocket.MouthCentre).Dot(pocket.Axis.Right);
        double Clear(Vec2 jaw) => Math.Abs((jaw - entry.Position).Cross(way)) - reach;
        double margin = Math.Min(Clear(pocket.JawA.Corner), Clear(pocket.JawB.Corner));
        return new PocketReading(
            Angles.Degrees(angle), 1000 * offset, 1000 * margin, e.BeforeA.Velocity.Length, JawTouches(trace, index));
    }

    /// <summary>The ball as its centre last crossed the mouth line; as it dropped if it never did (the drop may stand
    /// before the line).</summary>
    private static BallState AtMouth(Trace trace, ShotEvent e, in PocketOutline pocket)
    {
        IReadOnlyList<MotionSegment> segments = trace.Segments(e.BallA);
        double end = e.Time;
        for (int i = segments.Count - 1; i >= 0; i--)
        {
            MotionSegment s = segments[i];
            if (s.StartTime >= e.Time) continue;
            double before = (s.Start.Position - pocket.MouthCentre).Dot(pocket.Axis);
            double after = (s.At(end).Position - pocket.MouthCentre).Dot(pocket.Axis);
            if (before <= 0 && after >= 0) return MouthCrossing.Within(s, s.StartTime, end, pocket);
            end = s.StartTime;
        }

        return e.BeforeA;
    }

    private static int JawTouches(Trace trace, int index)
    {
        ShotEvent e = trace.Events[index];
        int touches = 0;
        for (int i = index - 1; i >= 0; i--)
        {
            ShotEvent other = trace.Events[i];
            if (other.BallA != e.BallA && other.BallB != e.BallA) continue;
            if (other.Kind is ShotEventKind.SlideEnds or ShotEventKind.Stops) continue;
            if (other.Kind != ShotEventKind.Jaw || other.Pocket != e.Pocket) break;
            touches++;
        }

        return touches;
    }
}
