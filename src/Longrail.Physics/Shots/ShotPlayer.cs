using System.Runtime.InteropServices;
using Longrail.Physics.Contacts;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Physics.Shots;

/// <summary>Plays shots one after another for a search: watched, ended early, and without allocating once it is
/// warm.</summary>
/// <remarks>One player belongs to one thread at a time. It gives the same shots as <see cref="ShotRunner"/>, bit for
/// bit, up to the moment at which a watch ends them.</remarks>
public sealed class ShotPlayer
{
    private readonly ShotLoop _loop = new();
    private readonly List<MotionSegment> _first = [];
    private readonly List<MotionSegment> _second = [];
    private int _balls;

    /// <summary>Number of events of the last shot.</summary>
    public int EventCount => _loop.Events.Length;

    /// <summary>Time at which the last shot ended, seconds.</summary>
    public double Duration => _loop.Now;

    /// <summary>An event of the last shot.</summary>
    /// <param name="index">From 0 to <see cref="EventCount"/> - 1, in order of time.</param>
    public ShotMoment this[int index] => new(in _loop.Events[index]);

    /// <summary>Plays a shot to its end, or until the watch ends it.</summary>
    /// <param name="setup">Equipment and balls. The list of balls is read before the first event only.</param>
    /// <param name="options">Limits.</param>
    /// <param name="watch">Sees every event.</param>
    /// <exception cref="ArgumentException">A quantity is out of its legal range, or balls overlap; the message says
    /// which.</exception>
    public StopReason Play<TWatch>(ShotSetup setup, ShotOptions options, ref TWatch watch)
        where TWatch : struct, IShotWatch
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(options);
        _balls = setup.Balls.Count;
        return _loop.Run(setup, options, ref watch);
    }

    /// <summary>Plays a shot to its end.</summary>
    /// <param name="setup">Equipment and balls.</param>
    /// <param name="options">Limits.</param>
    /// <exception cref="ArgumentException">A quantity is out of its legal range, or balls overlap; the message says
    /// which.</exception>
    public StopReason Play(ShotSetup setup, ShotOptions options)
    {
        var toTheEnd = default(WatchToTheEnd);
        return Play(setup, options, ref toTheEnd);
    }

    /// <summary>How a ball of the last shot ended, or stood when the watch ended it.</summary>
    /// <param name="ball">Index of the ball.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such ball in the last shot.</exception>
    public BallEnd End(int ball)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)ball, (uint)_balls);
        return _loop.End(ball);
    }

    /// <summary>The stretches of motion of the last shot, of all balls, in order of time.</summary>
    public int StretchCount => _loop.Segments.Length;

    /// <summary>A stretch of the last shot.</summary>
    /// <param name="index">From 0 to <see cref="StretchCount"/> - 1.</param>
    /// <param name="ball">Index of the ball that it belongs to.</param>
    public MotionSegment Stretch(int index, out int ball)
    {
        (ball, MotionSegment segment) = _loop.Segments[index];
        return segment;
    }

    /// <summary>How near two balls of the last shot came to each other after they had parted: the smallest minimum of
    /// the clear distance between them; where they only drew apart, the distance at the end (of the time looked at, or
    /// when one dropped).</summary>
    /// <param name="a">Index of one ball.</param>
    /// <param name="b">Index of the other.</param>
    /// <param name="parted">When they parted, seconds.</param>
    /// <param name="until">How long to look, seconds; at most to the end of the shot.</param>
    /// <returns>Metres, not negative but for rounding; null if they parted at the very end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such ball in the last shot.</exception>
    public double? ClosestAfter(int a, int b, double parted, double until = double.PositiveInfinity)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)a, (uint)_balls);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)b, (uint)_balls);
        _first.Clear();
        _second.Clear();
        foreach ((int ball, MotionSegment stretch) in _loop.Segments)
        {
            if (ball == a) _first.Add(stretch);
            else if (ball == b) _second.Add(stretch);
        }

        double reach = BallContact.Reach(_loop.RadiusOf(a), _loop.RadiusOf(b));
        return KissGap.After(
            CollectionsMarshal.AsSpan(_first), CollectionsMarshal.AsSpan(_second), reach, parted,
            Math.Min(until, _loop.Now))?.Gap;
    }
}
