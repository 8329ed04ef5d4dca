using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Drawing.Paths;

/// <summary>One ball's way over the table as it is drawn.</summary>
internal sealed class BallTrack
{
    // A parabola is joined by straight lines that miss it by less than an eighth of a line's width at 1 : 12.
    private const int PointsPerCurve = 24;

    private readonly Func<double, BallState> _stateAt;
    private readonly Func<double, Rotation> _orientationAt;

    internal BallTrack(
        double radius, IReadOnlyList<TrackPiece> pieces, Func<double, BallState> stateAt,
        Func<double, Rotation> orientationAt, BallEnd end)
    {
        Radius = radius;
        Pieces = pieces;
        _stateAt = stateAt;
        _orientationAt = orientationAt;
        End = end;
    }

    /// <summary>The ball's radius, metres.</summary>
    internal double Radius { get; }

    /// <summary>The stretches in which it moves, in order of time.</summary>
    internal IReadOnlyList<TrackPiece> Pieces { get; }

    /// <summary>How it ended.</summary>
    internal BallEnd End { get; }

    /// <summary>Whether it moves at all.</summary>
    internal bool Moves => Pieces.Count > 0;

    /// <summary>Where it starts.</summary>
    internal TablePoint StartPoint => PositionAt(0);

    /// <summary>Where it ends.</summary>
    internal TablePoint EndPoint => TablePoint.From(End.State.Position);

    /// <summary>Takes the ways of all balls out of a trace.</summary>
    internal static IReadOnlyList<BallTrack> AllOf(Trace trace) =>
        [.. Enumerable.Range(0, trace.Setup.Balls.Count).Select(ball => Of(trace, ball))];

    /// <summary>Takes one ball's way out of a trace.</summary>
    internal static BallTrack Of(Trace trace, int ball)
    {
        var pieces = new List<TrackPiece>();
        IReadOnlyList<MotionSegment> segments = trace.Segments(ball);
        for (int i = 0; i < segments.Count; i++)
        {
            double start = segments[i].StartTime;
            double end = i + 1 < segments.Count ? segments[i + 1].StartTime : trace.Duration;
            if (end > start && segments[i].Phase is MotionPhase.Sliding or MotionPhase.Rolling or MotionPhase.InRubber)
                pieces.Add(Piece(time => trace.StateAt(ball, time), segments[i].Phase, start, end));
        }

        return new BallTrack(
            trace.Setup.Balls[ball].Radius, pieces,
            time => trace.StateAt(ball, time), time => trace.OrientationAt(ball, time), trace.Balls[ball]);
    }

    /// <summary>The same way as far as a time; ends there as it is then.</summary>
    internal BallTrack Until(double time)
    {
        var pieces = new List<TrackPiece>();
        foreach (TrackPiece piece in Pieces.Where(piece => piece.Start < time))
            pieces.Add(piece.End <= time ? piece : Part(piece, piece.Start, time));
        return new BallTrack(
            Radius, pieces, _stateAt, _orientationAt, End with { State = _stateAt(Math.BitDecrement(time)) });
    }

    /// <summary>The rest of the way from a time.</summary>
    internal BallTrack From(double time)
    {
        var pieces = new List<TrackPiece>();
        foreach (TrackPiece piece in Pieces.Where(piece => piece.End > time))
            pieces.Add(piece.Start >= time ? piece : Part(piece, time, piece.End));
        return new BallTrack(Radius, pieces, _stateAt, _orientationAt, End);
    }

    internal TablePoint PositionAt(double time) => TablePoint.From(_stateAt(time).Position);

    internal BallState StateAt(double time) => _stateAt(time);

    internal Rotation OrientationAt(double time) => _orientationAt(time);

    private TrackPiece Part(TrackPiece piece, double start, double end) => Piece(_stateAt, piece.Phase, start, end);

    private static TrackPiece Piece(Func<double, BallState> stateAt, MotionPhase phase, double start, double end)
    {
        // A rolling ball goes straight.
        int count = phase == MotionPhase.Rolling ? 1 : PointsPerCurve;
        var points = new TablePoint[count + 1];
        for (int k = 0; k <= count; k++)
        {
            // Just before the end, not at it: there the state is already that after the event.
            double time = k == count ? Math.BitDecrement(end) : start + (end - start) * k / count;
            points[k] = TablePoint.From(stateAt(time).Position);
        }

        return new TrackPiece(phase, start, end, points);
    }
}
