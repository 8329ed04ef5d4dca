using Longrail.Physics.Contacts;
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
    internal static KissGap? After(Trace trace, int a, int b, double parted)
    {
        IReadOnlyList<MotionSegment> first = trace.Segments(a);
        IReadOnlyList<MotionSegment> second = trace.Segments(b);
        double reach = BallContact.Reach(trace.Setup.Balls[a].Radius, trace.Setup.Balls[b].Radius);
        int i = IndexAt(first, parted);
        int j = IndexAt(second, parted);
        double time = parted;
        double least = double.PositiveInfinity;
        double when = parted;
        double distance = 0;
        while (time < trace.Duration)
        {
            MotionSegment s = first[i];
            MotionSegment t = second[j];
            if (s.Phase == MotionPhase.Pocketed || t.Phase == MotionPhase.Pocketed) break;
            double nextA = i + 1 < first.Count ? first[i + 1].StartTime : trace.Duration;
            double nextB = j + 1 < second.Count ? second[j + 1].StartTime : trace.Duration;
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

            if (nextA <= end && i + 1 < first.Count) i++;
            if (nextB <= end && j + 1 < second.Count) j++;
            if (nextA > end && nextB > end) break;
            if (i + 1 >= first.Count && j + 1 >= second.Count && time >= trace.Duration) break;
        }

        if (double.IsPositiveInfinity(least))
        {
            if (!(time > parted)) return null;
            least = distance;
            when = time;
        }

        return new KissGap(least - reach, when);
    }

    private static (double Distance, double Time) Closest(MotionSegment s, MotionSegment t, double from, double to)
    {
        double low = from;
        double high = to;
        if (Rate(s, t, low) >= 0) return (Distance(s, t, low), low);
        if (Rate(s, t, high) <= 0) return (Distance(s, t, high), high);
        for (int k = 0; k < 60; k++)
        {
            double middle = 0.5 * (low + high);
            if (Rate(s, t, middle) < 0) low = middle;
            else high = middle;
        }

        return (Distance(s, t, high), high);
    }

    private static double Distance(MotionSegment s, MotionSegment t, double time) => s.At(time).Position.DistanceTo(t.At(time).Position);

    private static double Rate(MotionSegment s, MotionSegment t, double time)
    {
        BallState a = s.At(time);
        BallState b = t.At(time);
        return (a.Position - b.Position).Dot(a.Velocity - b.Velocity);
    }

    private static int IndexAt(IReadOnlyList<MotionSegment> segments, double time)
    {
        int index = 0;
        while (index + 1 < segments.Count && segments[index + 1].StartTime <= time) index++;
        return index;
    }
}
