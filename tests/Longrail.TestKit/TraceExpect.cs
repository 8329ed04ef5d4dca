using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.TestKit;

/// <summary>What must hold for every shot, whatever was played.</summary>
public static class TraceExpect
{
    /// <summary>Kinetic energy of a ball, joules.</summary>
    public static double Energy(ShotBall ball, BallState state) =>
        0.5 * ball.Mass * state.Velocity.LengthSquared +
        0.2 * ball.Mass * ball.Radius * ball.Radius * state.Spin.LengthSquared;

    /// <summary>Every number in it is finite.</summary>
    public static void Finite(Trace trace)
    {
        foreach (ShotEvent e in trace.Events)
        {
            Expect.That(double.IsFinite(e.Time) && double.IsFinite(e.Duration), $"time of {e}");
            Finite(e.BeforeA, $"{e.Kind} at {e.Time:R}");
            Finite(e.AfterA, $"{e.Kind} at {e.Time:R}");
            if (e.BallB is null) continue;
            Finite(e.BeforeB!.Value, $"{e.Kind} at {e.Time:R}");
            Finite(e.AfterB!.Value, $"{e.Kind} at {e.Time:R}");
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
        foreach (
            ShotEvent e in trace.Events.Where(e => e.Kind != ShotEventKind.BallsMeet && e.Kind != ShotEventKind.Tip))
        {
            if (e.Duration > 0 && PressedMeanwhile(trace, e)) continue;
            NotMore(
                Energy(balls[e.BallA], e.BeforeA), Energy(balls[e.BallA], e.AfterA),
                $"{e.Kind} of ball {e.BallA} at {e.Time:R}");
        }

        foreach (MeetingBall[] meeting in Meetings(trace))
        {
            NotMore(
                meeting.Sum(m => Energy(m.Ball, m.Before)), meeting.Sum(m => Energy(m.Ball, m.After)),
                $"balls meeting at {meeting[0].Time:R}");
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
                NotMore(before, after, $"ball {i} {way[k].Phase} from {way[k].StartTime:R} for {time:R} s");
            }
        }
    }

    /// <summary>Balls that meet keep their common momentum in the plane, unless a cushion pushes at the same
    /// instant.</summary>
    public static void MomentumKept(Trace trace)
    {
        foreach (MeetingBall[] meeting in Meetings(trace))
        {
            double time = meeting[0].Time;
            bool cushion = trace.Events.Any(
                e => e.Time == time && e.Kind is ShotEventKind.Cushion or ShotEventKind.Jaw && e.Duration == 0);
            if (cushion) continue;
            Vec2 change = Vec2.Zero;
            double scale = 0;
            foreach (MeetingBall m in meeting)
            {
                change += m.Ball.Mass * (m.After.Velocity - m.Before.Velocity);
                scale += m.Ball.Mass * m.Before.Velocity.Length;
            }

            Expect.Near(0, change.Length, Tolerance.ClosedForm * scale, $"change of momentum at {time:R}, kg m/s");
        }
    }

    /// <summary>At the start, middle and end of every stretch between events no two balls on the table
    /// overlap.</summary>
    public static void NoOverlap(Trace trace)
    {
        double[] times = [.. trace.Events.Select(e => e.Time)
            .Concat(trace.Events.Select(e => e.Time + e.Duration)).Append(trace.Duration).Where(
                t => t <= trace.Duration)
            .Distinct().Order()];
        double last = 0;
        foreach (double time in times)
        {
            NoOverlapAt(trace, 0.5 * (last + time));
            NoOverlapAt(trace, time);
            last = time;
        }
    }

    /// <summary>At the end every ball lies on the table, no deeper in a cushion than a micrometre, and nothing
    /// moves.</summary>
    public static void AtRestOnTable(Trace trace)
    {
        Expect.That(
            trace.Ended == StopReason.AtRest,
            $"ended {trace.Ended} at {trace.Duration:R} s after {trace.Events.Count} events");
        double nose = trace.Setup.Equipment.Cushion.NoseHeight;
        double length = trace.Setup.Equipment.Table.Length, width = trace.Setup.Equipment.Table.Width;
        for (int i = 0; i < trace.Balls.Count; i++)
        {
            BallEnd end = trace.Balls[i];
            if (end.Phase == MotionPhase.Pocketed) continue;
            Expect.That(end.Phase == MotionPhase.AtRest, $"ball {i} ended {end.Phase}");
            Expect.That(
                end.State.Velocity == Vec2.Zero && end.State.Spin == Vec3.Zero, $"ball {i} at rest, but {end.State}");
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

    private static void NotMore(double before, double after, string what) => Expect.That(
        after <= before * (1 + Tolerance.EnergyRise), $"{what}: energy from {before:R} to {after:R} J");

    /// <summary>All balls on the table just before and just after each instant at which some met. Balls frozen
    /// together are one meeting, whose pairs alone need keep neither energy nor momentum, and a frozen neighbour may
    /// take part without an event.</summary>
    private static IEnumerable<MeetingBall[]> Meetings(Trace trace)
    {
        foreach (
            double time in trace.Events.Where(e => e.Kind == ShotEventKind.BallsMeet).Select(e => e.Time).Distinct())
        {
            List<MeetingBall> balls = [];
            for (int i = 0; i < trace.Setup.Balls.Count; i++)
            {
                ShotEvent[] own = [.. trace.Events.Where(
                    e => e.Time == time && e.Kind == ShotEventKind.BallsMeet && (e.BallA == i || e.BallB == i))];
                MotionSegment after = trace.SegmentAt(i, time);
                MotionSegment before = trace.Segments(i).LastOrDefault(s => s.StartTime < time, after);
                if (own.Length > 0)
                {
                    ShotEvent first = own[0], last = own[^1];
                    BallState a = first.BallA == i ? first.BeforeA : first.BeforeB!.Value;
                    BallState b = last.BallA == i ? last.AfterA : last.AfterB!.Value;
                    balls.Add(new MeetingBall(time, trace.Setup.Balls[i], a, b));
                }
                else if (after.Phase != MotionPhase.Pocketed && before.Phase != MotionPhase.InRubber)
                {
                    balls.Add(new MeetingBall(time, trace.Setup.Balls[i], before.At(time), after.At(time)));
                }
            }

            yield return [.. balls];
        }
    }

    private readonly record struct MeetingBall(double Time, ShotBall Ball, BallState Before, BallState After);

    /// <summary>Whether a ball or another cushion gave the ball energy while it was in the rubber.</summary>
    private static bool PressedMeanwhile(Trace trace, ShotEvent contact) => trace.Events.Any(e =>
        !ReferenceEquals(e, contact) &&
        e.Kind is ShotEventKind.BallsMeet or ShotEventKind.Cushion or ShotEventKind.Jaw &&
        (e.BallA == contact.BallA || e.BallB == contact.BallA) &&
        e.Time <= contact.Time + contact.Duration && e.Time + e.Duration >= contact.Time);

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
                Expect.That(
                    !there[j] || gap >= -Tolerance.Overlap, $"balls {i} and {j} overlap by {-gap:R} m at {time:R} s");
            }
        }
    }

    private static void Finite(BallState s, string what) => Expect.That(
        double.IsFinite(s.Position.X + s.Position.Y + s.Velocity.X + s.Velocity.Y + s.Spin.X + s.Spin.Y + s.Spin.Z),
        $"{what}: {s}");
}
