using Longrail.Coaching.Contrasts;
using Longrail.Drawing.Paths;
using Longrail.Drawing.Sheets;
using Longrail.Drawing.Svg;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Drawing;

/// <summary>A shot as it moves: for each ball that moves, where it is and how it has turned at a row of times close
/// enough together to be joined by straight lines.</summary>
/// <param name="Duration">Length of the shot, seconds.</param>
/// <param name="Balls">The balls that move.</param>
public sealed record ShotMotion(double Duration, IReadOnlyList<BallMotion> Balls)
{
    /// <summary>Time between two keys, seconds. Between keys a ball that brakes by 0.2 g leaves its straight line by
    /// 0.02 mm; at 20 m/s a rolling ball turns by less than half a turn, so that the shorter way round is the right
    /// one up to the speed of a strong break.</summary>
    public const double Step = 1.0 / 240.0;

    /// <summary>Takes the motion out of a shot.</summary>
    /// <param name="input">The shot.</param>
    /// <param name="view">Where the table lies on the sheet.</param>
    public static ShotMotion Of(ShotPictureInput input, Viewport view)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(view);
        Trace trace = input.Trace;
        IReadOnlyList<string> colours = BallInk.Assign(input.Names.Count, input.Readings.Shot.StruckBall);
        var balls = new List<BallMotion>();
        for (int ball = 0; ball < input.Names.Count; ball++)
        {
            if (!BallTrack.Of(trace, ball).Moves)
                continue;
            balls.Add(Ball(trace, ball, input.Names[ball], colours[ball], input.StripeAxes?[ball], view));
        }

        return new ShotMotion(trace.Duration, balls);
    }

    /// <summary>Takes the banked balls of a comparison, all on one clock; each is named and coloured as its row
    /// is.</summary>
    /// <param name="contrast">The comparison.</param>
    /// <param name="view">Where the table lies on the sheet.</param>
    public static ShotMotion Of(Contrast contrast, Viewport view)
    {
        ArgumentNullException.ThrowIfNull(contrast);
        ArgumentNullException.ThrowIfNull(view);
        var balls = new List<BallMotion>();
        for (int row = 0; row < contrast.Rows.Count; row++)
        {
            Trace trace = contrast.Rows[row].Trace;
            string colour = row == 0 ? Ink.Graphite : VariantMark.Of(row - 1).Colour;
            int? bank = contrast.Rows[row].Bank?.Ball ?? contrast.Rows[row].Readings.Shot.FirstBallHit;
            foreach (int ball in new[] { bank, contrast.Rows[row].Readings.Shot.StruckBall }.OfType<int>().Distinct())
            {
                string name = ball == bank ? contrast.Rows[row].Label : "";
                balls.Add(Ball(trace, ball, name, colour, contrast.StripeAxes?[ball], view));
            }
        }

        return new ShotMotion(contrast.Rows.Max(row => row.Trace.Duration), balls);
    }

    private static BallMotion Ball(Trace trace, int ball, string name, string colour, Vec3? stripe, Viewport view)
    {
        bool down = trace.Balls[ball].Phase == MotionPhase.Pocketed;
        return new BallMotion(
            ball, name, colour, Rounded(view.ToSheet(trace.Setup.Balls[ball].Radius)),
            stripe is { } a ? [a.X, a.Y, a.Z] : null,
            down ? trace.Segments(ball)[^1].StartTime : null, Keys(trace, ball, view));
    }

    // The grid, and every start of a stretch: at a contact the path has a corner, and a straight line between two
    // points of the grid would cut it.
    private static double[] Keys(Trace trace, int ball, Viewport view)
    {
        IReadOnlyList<MotionSegment> segments = trace.Segments(ball);
        var times = new SortedSet<double>();
        for (int i = 0; i < segments.Count; i++)
        {
            double start = segments[i].StartTime;
            double end = i + 1 < segments.Count ? segments[i + 1].StartTime : trace.Duration;
            times.Add(start);
            if (segments[i].Phase is MotionPhase.AtRest or MotionPhase.Pocketed)
                continue;
            for (int k = (int)Math.Floor(start / Step) + 1; k * Step < end; k++)
                times.Add(k * Step);
            times.Add(end);
        }

        var keys = new List<double>(8 * times.Count);
        Rotation turned = Rotation.Identity;
        double before = 0;
        foreach (double time in times)
        {
            // Each key turns on from the one before: asked from the start each time, a long shot would take seconds.
            turned = turned.Then(Turn(trace, ball, before, time)).Normalized();
            before = time;
            SvgPoint at = view.ToSheet(TablePoint.From(trace.StateAt(ball, time).Position));
            keys.AddRange(
            [
                Math.Round(time, 6), Rounded(at.X), Rounded(at.Y),
                Rounded(turned.W), Rounded(turned.X), Rounded(turned.Y), Rounded(turned.Z),
            ]);
        }

        return [.. keys];
    }

    // Two neighbouring keys lie in one stretch, because every start of a stretch is a key.
    private static Rotation Turn(Trace trace, int ball, double from, double to)
    {
        if (to <= from)
            return Rotation.Identity;
        MotionSegment segment = trace.SegmentAt(ball, from);
        return segment.TurnUntil(from).Inverse().Then(segment.TurnUntil(to));
    }

    private static double Rounded(double value) => Math.Round(value, 4);
}
