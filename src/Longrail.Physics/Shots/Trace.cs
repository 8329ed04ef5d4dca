using System.Runtime.InteropServices;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <summary>All that happened in a shot: its events, and every ball's way piece by piece.</summary>
public sealed class Trace
{
    private readonly MotionSegment[][] _segments;

    internal Trace(
        ShotSetup setup, StopReason ended, double duration, ShotEvent[] events, MotionSegment[][] segments, BallEnd[] balls)
    {
        Setup = setup;
        Ended = ended;
        Duration = duration;
        Events = events;
        _segments = segments;
        Balls = balls;
    }

    /// <summary>The shot that was run.</summary>
    public ShotSetup Setup { get; }

    /// <summary>Why it ended.</summary>
    public StopReason Ended { get; }

    /// <summary>Time at which it ended, seconds: when the last ball had stopped, spinning on the spot
    /// included.</summary>
    public double Duration { get; }

    /// <summary>The events in order of time.</summary>
    public IReadOnlyList<ShotEvent> Events { get; }

    /// <summary>How each ball ended, in the order of the set-up.</summary>
    public IReadOnlyList<BallEnd> Balls { get; }

    /// <summary>The pieces of one ball's way, in order of time, the first from time 0.</summary>
    /// <param name="ball">Index of the ball.</param>
    public IReadOnlyList<MotionSegment> Segments(int ball) => _segments[ball];

    internal ReadOnlySpan<MotionSegment> Stretches(int ball) => _segments[ball];

    /// <summary>The piece of a ball's way at a time.</summary>
    /// <param name="ball">Index of the ball.</param>
    /// <param name="time">Time, seconds; clamped to [0, Duration].</param>
    public MotionSegment SegmentAt(int ball, double time) => _segments[ball][IndexAt(ball, Clamp(time))];

    /// <summary>A ball's state at a time (just after, where an event falls on that time).</summary>
    /// <param name="ball">Index of the ball.</param>
    /// <param name="time">Time, seconds; clamped to [0, Duration].</param>
    public BallState StateAt(int ball, double time)
    {
        time = Clamp(time);
        return _segments[ball][IndexAt(ball, time)].At(time);
    }

    /// <summary>How a ball has turned since time 0, to 0.1 degree over a whole shot.</summary>
    /// <param name="ball">Index of the ball.</param>
    /// <param name="time">Time, seconds; clamped to [0, Duration].</param>
    public Rotation OrientationAt(int ball, double time)
    {
        time = Clamp(time);
        MotionSegment[] segments = _segments[ball];
        Rotation turned = Rotation.Identity;
        for (int i = 0; i < segments.Length && segments[i].StartTime < time; i++)
        {
            double end = i + 1 < segments.Length ? Math.Min(segments[i + 1].StartTime, time) : time;
            turned = turned.Then(segments[i].TurnUntil(end));
        }

        return turned.Normalized();
    }

    /// <summary>A hash of everything that happened, equal for equal runs on one machine whatever the number of
    /// threads.</summary>
    public ulong Hash()
    {
        // FNV-1a over the bits of every number, in order.
        ulong hash = 14695981039346656037UL;
        foreach (MotionSegment[] ball in _segments)
        {
            foreach (ref readonly MotionSegment s in ball.AsSpan())
            {
                Add(ref hash, s.StartTime, (double)s.Phase, s.Start.Position.X, s.Start.Position.Y);
                Add(ref hash, s.Start.Velocity.X, s.Start.Velocity.Y, s.Start.Spin.X, s.Start.Spin.Y);
                Add(ref hash, s.Start.Spin.Z, s.Acceleration.X, s.Acceleration.Y, 0);
            }
        }

        foreach (ShotEvent e in Events) Add(ref hash, e.Time, (double)e.Kind, e.BallA, e.BallB ?? -1);
        Add(ref hash, Duration, (double)Ended, 0, 0);
        return hash;
    }

    private static void Add(ref ulong hash, double a, double b, double c, double d)
    {
        ReadOnlySpan<double> values = [a, b, c, d];
        foreach (ulong bits in MemoryMarshal.Cast<double, ulong>(values)) hash = (hash ^ bits) * 1099511628211UL;
    }

    private double Clamp(double time) => double.IsNaN(time) ? 0 : Math.Clamp(time, 0, Duration);

    private int IndexAt(int ball, double time)
    {
        MotionSegment[] segments = _segments[ball];
        int low = 0;
        int high = segments.Length - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (segments[middle].StartTime <= time) low = middle;
            else high = middle - 1;
        }

        return low;
    }
}
