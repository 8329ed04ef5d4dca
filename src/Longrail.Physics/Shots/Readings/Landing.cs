using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Roots;

namespace Longrail.Physics.Shots.Readings;

/// <summary>Where a ball that comes off a cushion next reaches the touch line of one, pocket mouths included.</summary>
/// <param name="Cushion">Whose line.</param>
/// <param name="Point">The ball's centre there, metres.</param>
/// <param name="Diamond">The place along that cushion, diamonds.</param>
internal readonly record struct Landing(CushionName Cushion, Vec2 Point, double Diamond)
{
    private static ReadOnlySpan<CushionName> All => [CushionName.Head, CushionName.Foot, CushionName.Left, CushionName.Right];

    /// <summary>Follows the ball of an event from the end of that contact to the next touch line.</summary>
    /// <returns>Null if it stops or meets a ball before, or the run ended.</returns>
    internal static Landing? After(Trace trace, int index, TableSpec table, double reach)
    {
        ShotEvent e = trace.Events[index];
        double from = e.Time + e.Duration;
        double until = NextMeeting(trace, index);
        IReadOnlyList<MotionSegment> segments = trace.Segments(e.BallA);
        for (int i = 0; i < segments.Count; i++)
        {
            MotionSegment s = segments[i];
            double end = Math.Min(i + 1 < segments.Count ? segments[i + 1].StartTime : trace.Duration, until);
            if (end <= from || s.Phase is MotionPhase.InRubber) continue;
            if (s.StartTime >= until || s.Phase is MotionPhase.Pocketed or MotionPhase.AtRest or MotionPhase.Pivoting) break;
            if (FirstLine(s, Math.Max(from, s.StartTime), end, table, reach) is { } landing) return landing;
        }

        return null;
    }

    /// <summary>Where the mirror ball would reach the same line: from the touch, back at the angle at which it
    /// came.</summary>
    /// <returns>The place in diamonds, or null if it never reaches that line.</returns>
    internal double? Mirror(Vec2 touch, Vec2 arrival, Vec2 into, TableSpec table, double reach)
    {
        Vec2 back = arrival - 2 * arrival.Dot(into) * into;
        double gap = Gap(Cushion, touch, table, reach);
        double closing = -Closing(Cushion, back);
        if (!(closing > 0)) return null;
        return Diamonds.Along(Cushion, touch + (gap / closing) * back, table);
    }

    /// <summary>How much farther than the mirror ball this one lands, in diamonds: positive is long.</summary>
    /// <param name="mirror">The mirror ball's place, diamonds.</param>
    /// <param name="travel">Unit vector of travel along the cushion that it comes off.</param>
    /// <param name="into">Unit vector into that cushion.</param>
    internal double LongOf(double mirror, Vec2 travel, Vec2 into)
    {
        // On the far side long means farther along the way of travel; on a rail that it runs towards, nearer to the
        // cushion it left.
        Vec2 along = Diamonds.IsLong(Cushion) ? new Vec2(1, 0) : new Vec2(0, 1);
        double farther = along.Dot(travel);
        double nearer = along.Dot(into);
        double sense = Math.Abs(farther) > Math.Abs(nearer) ? Math.Sign(farther) : Math.Sign(nearer);
        return sense * (Diamond - mirror);
    }

    /// <summary>When the ball next meets another, or its next touch ends the question anyway.</summary>
    private static double NextMeeting(Trace trace, int index)
    {
        ShotEvent e = trace.Events[index];
        double from = e.Time + e.Duration;
        for (int i = 0; i < trace.Events.Count; i++)
        {
            ShotEvent other = trace.Events[i];
            if (other.Kind == ShotEventKind.BallsMeet && other.Time > from && (other.BallA == e.BallA || other.BallB == e.BallA))
                return other.Time;
        }

        return double.PositiveInfinity;
    }

    private static Landing? FirstLine(MotionSegment s, double from, double end, TableSpec table, double reach)
    {
        BallState start = s.At(from);
        double limit = end - from;
        double best = double.PositiveInfinity;
        CushionName cushion = CushionName.Head;
        foreach (CushionName name in All)
        {
            double time = FirstCrossing.Quadratic(
                Gap(name, start.Position, table, reach), Closing(name, start.Velocity), 0.5 * Closing(name, s.Acceleration), limit + 1e-9);
            if (time >= best) continue;
            best = time;
            cushion = name;
        }

        if (double.IsPositiveInfinity(best)) return null;
        Vec2 point = s.At(from + best).Position;
        return new Landing(cushion, point, Diamonds.Along(cushion, point, table));
    }

    /// <summary>Distance of a ball's centre from a cushion's touch line, metres.</summary>
    private static double Gap(CushionName cushion, Vec2 p, TableSpec table, double reach) => cushion switch
    {
        CushionName.Head => p.X - reach,
        CushionName.Foot => table.Length - reach - p.X,
        CushionName.Left => table.Width - reach - p.Y,
        _ => p.Y - reach,
    };

    /// <summary>Rate of change of that distance for a velocity.</summary>
    private static double Closing(CushionName cushion, Vec2 v) => cushion switch
    {
        CushionName.Head => v.X,
        CushionName.Foot => -v.X,
        CushionName.Left => -v.Y,
        _ => v.Y,
    };
}
