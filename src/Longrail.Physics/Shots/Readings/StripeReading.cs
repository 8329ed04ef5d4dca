using Longrail.Physics.Geometry;

namespace Longrail.Physics.Shots.Readings;

/// <summary>What a ball's stripe shows on arrival: how far it turned, and its tilt against a pure slide and a pure
/// roll.</summary>
internal readonly record struct StripeReading(double TurnDegrees, double? OffSlideDegrees, double? OffRollDegrees)
{
    internal static StripeReading At(Trace trace, int index, Vec3? stripeAxis)
    {
        ShotEvent e = trace.Events[index];
        double from = LastContactEnd(trace, index);
        double turn = Angles.Degrees(TurnBetween(trace, e.BallA, from, e.Time));
        if (stripeAxis is not { } axis) return new StripeReading(turn, null, null);

        Vec3 then = trace.OrientationAt(e.BallA, from).Apply(axis);
        Vec3 now = trace.OrientationAt(e.BallA, e.Time).Apply(axis);
        Vec2 way = e.BeforeA.Position - trace.StateAt(e.BallA, from).Position;
        double radius = trace.Setup.Balls[e.BallA].Radius;
        // A pure roll along the straight way turns the ball about the horizontal axis to its left by the way over the
        // radius.
        Rotation roll = Rotation.FromVector(new Vec3(-way.Y / radius, way.X / radius, 0));
        return new StripeReading(turn, Tilt(now, then), Tilt(now, roll.Apply(then)));
    }

    private static double Tilt(Vec3 a, Vec3 b) => Angles.Degrees(Math.Atan2(a.Cross(b).Length, Math.Abs(a.Dot(b))));

    /// <summary>When the ball's contact before this event ended; 0 if there was none.</summary>
    private static double LastContactEnd(Trace trace, int index)
    {
        int ball = trace.Events[index].BallA;
        for (int i = index - 1; i >= 0; i--)
        {
            ShotEvent e = trace.Events[i];
            bool contact = e.Kind is ShotEventKind.Tip or ShotEventKind.BallsMeet or ShotEventKind.Cushion or ShotEventKind.Jaw;
            if (contact && (e.BallA == ball || e.BallB == ball)) return Math.Min(e.Time + e.Duration, trace.Events[index].Time);
        }

        return 0;
    }

    /// <summary>The angle run through: the integral of the spin's size. Simpson's rule on each stretch.</summary>
    private static double TurnBetween(Trace trace, int ball, double from, double to)
    {
        double sum = 0;
        IReadOnlyList<MotionSegment> segments = trace.Segments(ball);
        for (int i = 0; i < segments.Count && segments[i].StartTime < to; i++)
        {
            double start = Math.Max(from, segments[i].StartTime);
            double end = i + 1 < segments.Count ? Math.Min(segments[i + 1].StartTime, to) : to;
            if (end <= start) continue;
            double Spin(double t) => segments[i].At(t).Spin.Length;
            sum += (end - start) / 6 * (Spin(start) + 4 * Spin(0.5 * (start + end)) + Spin(end));
        }

        return sum;
    }
}
