using Longrail.Physics.Contacts;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots.Readings;

/// <summary>The least clear distance between two balls after they have parted.</summary>
/// <param name="Gap">Clear distance, metres.</param>
/// <param name="Time">When, seconds.</param>
internal readonly record struct KissGap(double Gap, double Time)
{
    /// <summary>Looks for the smallest minimum of the distance after the balls have parted; if they only draw apart,
    /// the place where both end.</summary>
    /// <returns>Null if they part at the very end of the run.</returns>
    internal static KissGap? After(Trace trace, int a, int b, double parted) => After(
        trace.Stretches(a), trace.Stretches(b),
        BallContact.Reach(trace.Setup.Balls[a].Radius, trace.Setup.Balls[b].Radius), parted, trace.Duration);

    /// <summary>The same of two balls' stretches of motion.</summary>
    /// <param name="first">One ball's way, in order of time.</param>
    /// <param name="second">The other's.</param>
    /// <param name="reach">Plan distance at which they touch, metres.</param>
    /// <param name="parted">When they parted, seconds.</param>
    /// <param name="duration">When the run ended, seconds.</param>
    internal static KissGap? After(
        ReadOnlySpan<MotionSegment> first, ReadOnlySpan<MotionSegment> second, double reach, double parted,
        double duration)
    {
        int i = IndexAt(first, parted);
        int j = IndexAt(second, parted);
        double time = parted;
        double least = double.PositiveInfinity;
        double when = parted;
        double distance = 0;
        while (time < duration)
        {
            ref readonly MotionSegment s = ref first[i];
            ref readonly MotionSegment t = ref second[j];
            if (s.Phase == MotionPhase.Pocketed || t.Phase == MotionPhase.Pocketed) break;
            double nextA = i + 1 < first.Length ? first[i + 1].StartTime : duration;
            double nextB = j + 1 < second.Length ? second[j + 1].StartTime : duration;
            double end = Math.Min(nextA, nextB);
            if (end > time)
            {
                (double closest, double at) = Closest(s, t, time, end);
                // The start of the parting itself is no kiss; a minimum inside the stretch, or a stretch that begins
                // closing, is.
                if (at > time && closest < least && (at < end || Rate(s, t, end) < 0))
                {
                    least = closest;
                    when = at;
                }

                distance = Distance(s, t, end);
                time = end;
            }

            if (nextA <= end && i + 1 < first.Length) i++;
            if (nextB <= end && j + 1 < second.Length) j++;
            if (nextA > end && nextB > end) break;
            if (i + 1 >= first.Length && j + 1 >= second.Length && time >= duration) break;
        }

        if (double.IsPositiveInfinity(least))
        {
            if (!(time > parted)) return null;
            least = distance;
            when = time;
        }

        return new KissGap(least - reach, when);
    }

    private static (double Distance, double Time) Closest(
        in MotionSegment s, in MotionSegment t, double from, double to)
    {
        double low = from;
        double high = to;
        if (Rate(s, t, low) >= 0) return (Distance(s, t, low), low);
        if (Rate(s, t, high) <= 0) return (Distance(s, t, high), high);
        // To the last bit: a stretch is halved until its ends are neighbours.
        for (int k = 0; k < 60; k++)
        {
            double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high) break;
            if (Rate(s, t, middle) < 0) low = middle;
            else high = middle;
        }

        return (Distance(s, t, high), high);
    }

    private static double Distance(in MotionSegment s, in MotionSegment t, double time) =>
        PositionAt(s, time).DistanceTo(PositionAt(t, time));

    private static double Rate(in MotionSegment s, in MotionSegment t, double time) =>
        (PositionAt(s, time) - PositionAt(t, time)).Dot(VelocityAt(s, time) - VelocityAt(t, time));

    // The centre alone, without the spin, of which a search asks too often.
    private static Vec2 PositionAt(in MotionSegment s, double time)
    {
        double past = time - s.StartTime;
        return s.Start.Position + past * (s.Start.Velocity + (0.5 * past) * s.Acceleration);
    }

    private static Vec2 VelocityAt(in MotionSegment s, double time) =>
        s.Start.Velocity + (time - s.StartTime) * s.Acceleration;

    private static int IndexAt(ReadOnlySpan<MotionSegment> segments, double time)
    {
        int index = 0;
        while (index + 1 < segments.Length && segments[index + 1].StartTime <= time) index++;
        return index;
    }
}
