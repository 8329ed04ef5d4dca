using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using Longrail.TestKit.Reference;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Shots;

/// <summary>How the balls turn, so that a stripe can be trusted: the engine's own spins, added up in tiny turns, must
/// give the engine's orientation to a tenth of a degree at any time of a shot, in the rubber too.</summary>
public class OrientationTests
{
    [Theory]
    [InlineData(2.5, 0.35, 1.0, 0.0)]
    [InlineData(4.0, 0.9, 0.0, 0.5)]
    [InlineData(6.0, 2.2, -0.6, -0.8)]
    [InlineData(1.0, 1.4, -1.25, 1.25)]
    public void Tiny_turns_by_the_spin_add_up_to_the_orientation(double speed, double angle, double roll, double side)
    {
        ShotSetup shot = Plain.With(Moving(0.8, 0.5, speed, angle, roll, side), Ball(1.4, 0.6));
        Trace trace = shot.Play();
        for (int ball = 0; ball < 2; ball++)
        {
            ReferenceBall turning = ReferenceBall.From(shot.Balls[ball]);
            double time = 0;
            const double step = 1e-4;
            for (int k = 0; time < Math.Min(trace.Duration, 6); k++)
            {
                // No step straddles a jump of the spin: cut it at the events and at the beginning of each stretch of
                // motion.
                double next = Math.Min(NextJump(trace, ball, time), time + step);
                Vec3 spin = trace.StateAt(ball, 0.5 * (time + next)).Spin;
                turning.Turn(spin.X, spin.Y, spin.Z, next - time);
                time = next;
                if (k % 97 != 0) continue;
                Expect.Near(
                    0, trace.OrientationAt(ball, time).AngleTo(turning.Orientation), Tolerance.Orientation,
                    $"orientation of ball {ball} at {time:R} s, {trace.SegmentAt(ball, time).Phase}");
            }
        }
    }

    [Fact]
    public void An_orientation_stays_a_rotation()
    {
        Trace trace = Plain.With(Moving(0.8, 0.5, 5, 0.6, 0.3, 0.7)).Play();
        for (double time = 0; time < trace.Duration; time += 0.31)
        {
            Rotation q = trace.OrientationAt(0, time);
            Expect.Near(1, q.W * q.W + q.X * q.X + q.Y * q.Y + q.Z * q.Z, 1e-9, $"length at {time} s");
        }

        Expect.Near(0, trace.OrientationAt(0, 0).AngleTo(Rotation.Identity), 0, "orientation at the start");
    }

    private static double NextJump(Trace trace, int ball, double time)
    {
        foreach (MotionSegment segment in trace.Segments(ball))
        {
            if (segment.StartTime > time + 1e-15) return segment.StartTime;
        }

        return double.PositiveInfinity;
    }
}
