namespace Longrail.Physics.Shots;

/// <summary>Plays a shot: next contact, resolve, repeat.</summary>
public static class ShotRunner
{
    [ThreadStatic]
    private static ShotLoop? _loop;

    /// <summary>Plays a shot to its end. A pure function: the same set-up and options give the same trace, bit for
    /// bit.</summary>
    /// <param name="setup">Equipment and balls.</param>
    /// <param name="options">Limits; null for <see cref="ShotOptions.Default"/>.</param>
    /// <exception cref="ArgumentException">A quantity is out of its legal range, or balls overlap; the message says
    /// which.</exception>
    public static Trace Run(ShotSetup setup, ShotOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        options ??= ShotOptions.Default;
        ShotLoop loop = _loop ??= new ShotLoop();
        StopReason ended = loop.Run(setup, options);
        return ToTrace(loop, setup, ended);
    }

    /// <summary>Plays a shot and keeps only how the balls ended: for searches, which run thousands. Allocates
    /// nothing.</summary>
    /// <param name="setup">Equipment and balls.</param>
    /// <param name="options">Limits.</param>
    /// <param name="ends">Filled with how each ball ended; at least as long as the set-up has balls.</param>
    /// <exception cref="ArgumentException">A quantity is out of its legal range, or balls overlap; the message says
    /// which.</exception>
    public static StopReason RunToEnd(ShotSetup setup, ShotOptions options, Span<BallEnd> ends)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(options);
        ShotLoop loop = _loop ??= new ShotLoop();
        StopReason ended = loop.Run(setup, options);
        for (int i = 0; i < setup.Balls.Count; i++) ends[i] = loop.End(i);
        return ended;
    }

    private static Trace ToTrace(ShotLoop loop, ShotSetup setup, StopReason ended)
    {
        var events = new ShotEvent[loop.Events.Length];
        for (int i = 0; i < events.Length; i++) events[i] = loop.Events[i].ToEvent();

        int balls = setup.Balls.Count;
        Span<int> counts = balls <= 64 ? stackalloc int[balls] : new int[balls];
        counts.Clear();
        foreach ((int ball, _) in loop.Segments) counts[ball]++;
        var segments = new MotionSegment[balls][];
        for (int i = 0; i < balls; i++) segments[i] = new MotionSegment[counts[i]];
        counts.Clear();
        foreach ((int ball, MotionSegment segment) in loop.Segments) segments[ball][counts[ball]++] = segment;

        var ends = new BallEnd[balls];
        for (int i = 0; i < balls; i++) ends[i] = loop.End(i);
        return new Trace(setup, ended, loop.Now, events, segments, ends);
    }
}
