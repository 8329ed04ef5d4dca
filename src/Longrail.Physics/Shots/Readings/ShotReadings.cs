using System.Globalization;

namespace Longrail.Physics.Shots.Readings;

/// <summary>Takes the reading of the shot as a whole.</summary>
internal static class ShotReadings
{
    /// <summary>Two balls that meet again slower than this only lean on each other, m/s; that is no double
    /// kiss.</summary>
    private const double KissSpeed = 0.01;

    /// <summary>A hop that an eye would see, metres (assumption).</summary>
    private const double SeenHop = 1e-3;

    /// <summary>Speed straight into a cushion from which a ball is likely to leave the bed, m/s (assumption; a firm
    /// bank is 2 to 3).</summary>
    private const double HardIntoCushion = 5.0;

    /// <summary>Depth in the rubber beyond which the linear spring is not to be believed, metres (assumption; a ball's
    /// radius is 29 mm).</summary>
    private const double DeepestBelieved = 0.015;

    internal static ShotReading Of(Trace trace, object?[] readings)
    {
        int? struck = FirstMover(trace);
        int? hit = null;
        double met = 0;
        bool again = false;
        double againTime = 0;
        for (int i = 0; i < trace.Events.Count && struck.HasValue; i++)
        {
            ShotEvent e = trace.Events[i];
            if (e.Kind != ShotEventKind.BallsMeet || (e.BallA != struck && e.BallB != struck)) continue;
            int other = e.BallA == struck ? e.BallB!.Value : e.BallA;
            if (hit is null)
            {
                hit = other;
                met = e.Time;
            }
            else if (other == hit && !again && readings[i] is MeetReading { ClosingSpeed: > KissSpeed })
            {
                again = true;
                againTime = e.Time;
            }
        }

        double? gap = null;
        double? gapTime = null;
        if (again)
        {
            gap = 0;
            gapTime = againTime;
        }
        else if (hit is { } objectBall && KissGap.After(trace, struck!.Value, objectBall, met) is { } closest)
        {
            gap = 1000 * closest.Gap;
            gapTime = closest.Time;
        }

        return new ShotReading(struck, hit, gap, gapTime, again, Cautions(trace));
    }

    private static int? FirstMover(Trace trace)
    {
        if (trace.Setup.Stroke is { } stroke) return stroke.Ball;
        int? fastest = null;
        double speed = 0;
        for (int i = 0; i < trace.Setup.Balls.Count; i++)
        {
            double v = trace.Setup.Balls[i].Start.Velocity.Length;
            if (v <= speed) continue;
            speed = v;
            fastest = i;
        }

        return fastest;
    }

    private static List<string> Cautions(Trace trace)
    {
        var cautions = new List<string>();
        double hardest = 0;
        double highest = 0;
        double deepest = 0;
        foreach (ShotEvent e in trace.Events)
        {
            if (e.Kind == ShotEventKind.Tip)
            {
                if (e.HopHeight > SeenHop)
                {
                    cautions.Add(Text(
                        $"The raised butt drives the ball into the bed: a real ball would hop about {1000 * e.HopHeight:0} mm, which is not followed here. Jump and massé strokes are for rooms that allow them."));
                }

                continue;
            }

            highest = Math.Max(highest, e.HopHeight);
            deepest = Math.Max(deepest, e.Depth);
            if (e.Kind is ShotEventKind.Cushion or ShotEventKind.Jaw)
            {
                double change = (e.AfterA.Velocity - e.BeforeA.Velocity).Length;
                hardest = Math.Max(hardest, Math.Min(change, e.BeforeA.Velocity.Length));
            }
        }

        if (hardest > HardIntoCushion)
        {
            cautions.Add(Text(
                $"A ball goes into a cushion at {hardest:0.0} m/s: a real one may leave the bed. Keep hands, glasses and people away from its line, and keep to the rules of the room."));
        }

        if (deepest > DeepestBelieved)
        {
            cautions.Add(Text(
                $"A ball sinks {1000 * deepest:0} mm into the rubber here, deeper than a real cushion lets it, which stiffens: do not trust where and when it comes out."));
        }

        if (highest > SeenHop)
        {
            cautions.Add(Text(
                $"A real ball would likely hop about {1000 * highest:0} mm where the surfaces climb on each other; here all balls stay on the bed."));
        }

        return cautions;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
