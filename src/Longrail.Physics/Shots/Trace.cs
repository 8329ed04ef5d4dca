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

    /// <summary>Time at which it ended, seconds.</summary>
    public double Duration { get; }

    /// <summary>The events in order of time.</summary>
    public IReadOnlyList<ShotEvent> Events { get; }

    /// <summary>How each ball ended, in the order of the set-up.</summary>
    public IReadOnlyList<BallEnd> Balls { get; }

    /// <summary>The pieces of one ball's way, in order of time, the first from time 0.</summary>
    /// <param name="ball">Index of the ball.</param>
    public IReadOnlyList<MotionSegment> Segments(int ball) => _segments[ball];

    /// <summary>The piece of a ball's way at a time.</summary>
    /// <param name="ball">Index of the ball.</param>
    /// <param name="time">Time, seconds; clamped to [0, Duration].</param>
    public MotionSegment SegmentAt(int ball, double time) => throw new NotImplementedException();

    /// <summary>A ball's state at a time (just after, where an event falls on that time).</summary>
    /// <param name="ball">Index of the ball.</param>
    /// <param name="time">Time, seconds; clamped to [0, Duration].</param>
    public BallState StateAt(int ball, double time) => throw new NotImplementedException();

    /// <summary>How a ball has turned since time 0, to 0.1 degree over a whole shot.</summary>
    /// <param name="ball">Index of the ball.</param>
    /// <param name="time">Time, seconds; clamped to [0, Duration].</param>
    public Rotation OrientationAt(int ball, double time) => throw new NotImplementedException();

    /// <summary>A hash of everything that happened, equal for equal runs on one machine whatever the number of threads.</summary>
    public ulong Hash() => throw new NotImplementedException();
}
