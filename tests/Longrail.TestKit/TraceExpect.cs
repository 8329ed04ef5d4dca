using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.TestKit;

/// <summary>What must hold for every shot, whatever was played.</summary>
public static class TraceExpect
{
    /// <summary>Kinetic energy of a ball, joules.</summary>
    public static double Energy(ShotBall ball, BallState state) =>
        0.5 * ball.Mass * state.Velocity.LengthSquared + 0.2 * ball.Mass * ball.Radius * ball.Radius * state.Spin.LengthSquared;

    /// <summary>Every number in it is finite.</summary>
    public static void Finite(Trace trace)
    {
        foreach (ShotEvent e in trace.Events)
        {
            Expect.That(double.IsFinite(e.Time) && double.IsFinite(e.Duration), $"time of {e}");
            Finite(e.BeforeA, $"{e.Kind} at {e.Time:R}");
            Finite(e.AfterA, $"{e.Kind} at {e.Time:R}");
        }

        for (int i = 0; i < trace.Balls.Count; i++) Finite(trace.Balls[i].State, $"end of ball {i}");
    }

    /// <summary>Events stand in order of time.</summary>
    public static void InOrder(Trace trace)
    {
        for (int i = 1; i < trace.Events.Count; i++)
        {
            Expect.That(
                trace.Events[i].Time >= trace.Events[i - 1].Time,
                $"event {i} at {trace.Events[i].Time:R} stands after one at {trace.Events[i - 1].Time:R}");
        }
    }

    /// <summary>No contact and no stretch of cloth adds energy.</summary>
    public static void EnergyNeverRises(Trace trace)
    {
        IReadOnlyList<ShotBall> balls = trace.Setup.Balls;
        foreach (ShotEvent e in trace.Events)
        {
            if (e.Duration > 0 && StruckMeanwhile(trace, e)) continue;
            double before = Energy(balls[e.BallA], e.BeforeA), after = Energy(balls[e.BallA], e.AfterA);
            if (e.BallB is int b)
            {
                before += Energy(balls[b], e.BeforeB!.Value);
                after += Energy(balls[b], e.AfterB!.Value);
            }

            Expect.That(
                after <= before * (1 + Tolerance.EnergyRise),
                $"{e.Kind} of ball {e.BallA} at {e.Time:R}: energy from {before:R} to {after:R} J");
        }

        for (int i = 0; i < balls.Count; i++)
        {
            IReadOnlyList<MotionSegment> way = trace.Segments(i);
            for (int k = 0; k + 1 < way.Count; k++)
            {
                if (way[k].Phase == MotionPhase.InRubber) continue;
                double time = way[k + 1].StartTime - way[k].StartTime;
                Vec2 end = way[k].Start.Velocity + time * way[k].Acceleration;
                double before = Energy(balls[i], way[k].Start);
                double after = 0.5 * balls[i].Mass * end.LengthSquared;
                Expect.That(
                    after <= before * (1 + Tolerance.EnergyRise),
                    $"ball {i} {way[k].Phase} from {way[k].StartTime:R} for {time:R} s: energy from {before:R} to over {after:R} J");
            }
        }
    }

    /// <summary>Two balls that meet keep their common momentum in the plane.</summary>
    public static void MomentumKept(Trace trace)
    {
        foreach (ShotEvent e in trace.Events.Where(e => e.Kind == ShotEventKind.BallsMeet))
        {
            double a = trace.Setup.Balls[e.BallA].Mass, b = trace.Setup.Balls[e.BallB!.Value].Mass;
            Vec2 before = a * e.BeforeA.Velocity + b * e.BeforeB!.Value.Velocity;
            Vec2 after = a * e.AfterA.Velocity + b * e.AfterB!.Value.Velocity;
            double scale = a * e.BeforeA.Velocity.Length + b * e.BeforeB!.Value.Velocity.Length;
            Expect.Near(0, (after - before).Length, Tolerance.ClosedForm * scale, $"change of momentum at {e.Time:R}, kg m/s");
        }
    }

    /// <summary>At the start, middle and end of every stretch between events no two balls on the table overlap.</summary>
    public static void NoOverlap(Trace trace)
    {
        double[] times = [.. trace.Events.Select(e => e.Time)
            .Concat(trace.Events.Select(e => e.Time + e.Duration)).Append(trace.Duration).Where(t => t <= trace.Duration)
            .Distinct().Order()];
        double last = 0;
        foreach (double time in times)
        {
            NoOverlapAt(trace, 0.5 * (last + time));
            NoOverlapAt(trace, time);
            last = time;
        }
    }

    /// <summary>At the end every ball lies on the table, no deeper in a cushion than a micrometre, and nothing moves.</summary>
    public static void AtRestOnTable(Trace trace)
    {
        Expect.That(trace.Ended == StopReason.AtRest, $"ended {trace.Ended} at {trace.Duration:R} s after {trace.Events.Count} events");
        double nose = trace.Setup.Equipment.Cushion.NoseHeight;
        double length = trace.Setup.Equipment.Table.Length, width = trace.Setup.Equipment.Table.Width;
        for (int i = 0; i < trace.Balls.Count; i++)
        {
            BallEnd end = trace.Balls[i];
            if (end.Phase == MotionPhase.Pocketed) continue;
            Expect.That(end.Phase == MotionPhase.AtRest, $"ball {i} ended {end.Phase}");
            Expect.That(end.State.Velocity == Vec2.Zero && end.State.Spin == Vec3.Zero, $"ball {i} at rest, but {end.State}");
            double radius = trace.Setup.Balls[i].Radius, sin = (nose - radius) / radius;
            double reach = radius * Math.Sqrt(1 - sin * sin) - Tolerance.Overlap;
            Vec2 p = end.State.Position;
            bool inside = p.X >= reach && p.Y >= reach && p.X <= length - reach && p.Y <= width - reach;
            // Between a pocket's jaws a ball may hang past the nose lines.
            bool hangs = trace.Setup.Equipment.Table.Corner is not null && p.X > -0.1 && p.Y > -0.1 &&
                p.X < length + 0.1 && p.Y < width + 0.1;
            Expect.That(inside || hangs, $"ball {i} came to rest at {p}");
        }
    }

    private static bool StruckMeanwhile(Trace trace, ShotEvent contact) => trace.Events.Any(e =>
        e.Kind == ShotEventKind.BallsMeet && (e.BallA == contact.BallA || e.BallB == contact.BallA) &&
        e.Time >= contact.Time && e.Time <= contact.Time + contact.Duration);

    private static void NoOverlapAt(Trace trace, double time)
    {
        int count = trace.Balls.Count;
        var places = new Vec2[count];
        var there = new bool[count];
        for (int i = 0; i < count; i++)
        {
            there[i] = trace.SegmentAt(i, time).Phase != MotionPhase.Pocketed;
            places[i] = trace.StateAt(i, time).Position;
        }

        for (int i = 0; i < count; i++)
        {
            for (int j = i + 1; there[i] && j < count; j++)
            {
                double touch = 2 * Math.Sqrt(trace.Setup.Balls[i].Radius * trace.Setup.Balls[j].Radius);
                double gap = places[i].DistanceTo(places[j]) - touch;
                Expect.That(!there[j] || gap >= -Tolerance.Overlap, $"balls {i} and {j} overlap by {-gap:R} m at {time:R} s");
            }
        }
    }

    private static void Finite(BallState s, string what) => Expect.That(
        double.IsFinite(s.Position.X + s.Position.Y + s.Velocity.X + s.Velocity.Y + s.Spin.X + s.Spin.Y + s.Spin.Z),
        $"{what}: {s}");
}
