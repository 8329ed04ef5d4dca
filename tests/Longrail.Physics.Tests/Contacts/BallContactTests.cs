using CsCheck;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using Longrail.TestKit.Reference;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Contacts;

/// <summary>Balls of any size and motion meeting, and several at once.</summary>
public class BallContactTests
{
    [Fact]
    public void Any_two_balls_part_as_forces_and_arms_in_space_say() => Cases.Check(
        from large in Gen.Double[0.02, 0.035]
        from mass in Gen.Double[0.08, 0.25]
        from first in SceneGen.Motion
        from second in SceneGen.Motion
        from line in SceneGen.Angle
        from restitution in Gen.Double[0.7, 1]
        from dirt in Gen.Double[0, 3]
        select (large, mass, first, second, line, restitution, dirt),
        2000,
        item =>
        {
            // Two balls a hair apart, the second of another size; turned about if they would part.
            (double large, double mass, (Vec2 v, Vec3 w) first, (Vec2 v, Vec3 w) second, double line, _, _) = item;
            (double e, double dirt) = (item.restitution, item.dirt);
            Vec2 n = Vec2.FromAngle(line);
            double closing = n.Dot(first.v - second.v);
            if (closing < 0) (n, closing) = (-n, -closing);
            if (closing < 0.01 * (first.v - second.v).Length || closing < 0.01) return;
            double touch = 2 * Math.Sqrt(R * large);
            var a = new ShotBall(R, M, new BallState(new Vec2(1.2, 0.6), first.v, first.w));
            var b = new ShotBall(
                large, mass, new BallState(new Vec2(1.2, 0.6) + (touch + Plays.Hair) * n, second.v, second.w));
            EquipmentSpec equipment = Plain
                .WithBalls(
                    s => s with { Restitution = e, Friction = new BallFriction(dirt * 9.951e-3, dirt * 0.108, 1.088) })
                .WithCloth(_ => new ClothSpec(1e-9, 1e-9, 1e-6));
            ShotEvent meet = equipment.With(a, b).Play(1e-6).Events.First(x => x.Kind == ShotEventKind.BallsMeet);

            bool swapped = meet.BallA == 1;
            ReferenceBall p = ReferenceBall.From(a with { Start = swapped ? meet.BeforeB!.Value : meet.BeforeA });
            ReferenceBall q = ReferenceBall.From(b with { Start = swapped ? meet.BeforeA : meet.BeforeB!.Value });
            ReferenceBallContact.Collide(p, q, e, equipment.BallSet.Friction);
            BallState after = swapped ? meet.AfterB!.Value : meet.AfterA;
            BallState other = swapped ? meet.AfterA : meet.AfterB!.Value;
            double scale = first.v.Length + second.v.Length;
            Expect.Near(
                0, (p.State.Velocity - after.Velocity).Length, Tolerance.ClosedForm * scale, "velocity of the first");
            Expect.Near(
                0, (q.State.Velocity - other.Velocity).Length, Tolerance.ClosedForm * scale, "velocity of the second");
            Expect.Near(0, R * (p.State.Spin - after.Spin).Length, Tolerance.ClosedForm * scale, "spin of the first");
            Expect.Near(0, R * (q.State.Spin - other.Spin).Length, Tolerance.ClosedForm * scale, "spin of the second");
        },
        item => $"{item}");

    [Fact]
    public void A_ball_sent_between_two_frozen_ones_comes_back_with_a_fifth_of_its_speed()
    {
        // Symmetry, momentum and energy leave one answer without losses: 2 sqrt(3)/5 for both struck balls, -1/5 for
        // the striker. The engine follows balls that press on each other in time; that may cost 1e-5 of the speed, as
        // at a cushion.
        Trace trace = Triple(Lossless).Play(0.4);
        Expect.Near(-0.2 * 2, trace.StateAt(0, 0.39).Velocity.X, 2 * Tolerance.CushionContact, "striker");
        foreach (int ball in new[] { 1, 2 })
        {
            Vec2 v = trace.StateAt(ball, 0.39).Velocity;
            Expect.Near(2 * 2 * Math.Sqrt(3) / 5, v.Length, 2 * Tolerance.CushionContact, $"ball {ball}");
            Expect.Near(
                ball == 1 ? Math.PI / 6 : -Math.PI / 6, v.Angle, Tolerance.CushionContact, $"direction of ball {ball}");
        }
    }

    [Fact]
    public void A_symmetrical_break_stays_symmetrical_and_goes_nowhere_sideways()
    {
        // Mirror symmetry about the line of the break; the rack is struck dead centre.
        const double d = 2 * R;
        List<ShotBall> balls = [Moving(0.635, 0.635, 8, 0)];
        for (int row = 0; row < 5; row++)
        {
            for (int i = 0; i <= row; i++)
                balls.Add(Ball(1.8 + row * d * Math.Sqrt(0.75), 0.635 + (i - row / 2.0) * d));
        }

        Trace trace = Plain.With([.. balls]).Play(0.25);

        // A contact followed in some 160 steps of second order is right to 1/160^2 = 4e-5 of the speed; allowed is
        // 1e-4 of it. Just after the first instant: later meetings, one after the other, blow rounding up a
        // hundredfold each.
        double time = trace.Events.First(e => e.Kind == ShotEventKind.BallsMeet).Time + 1e-7;
        for (int row = 0, first = 1; row < 5; first += row + 1, row++)
        {
            for (int i = 0; i <= row; i++)
            {
                Vec2 one = trace.StateAt(first + i, time).Velocity;
                Vec2 other = trace.StateAt(first + row - i, time).Velocity;
                Expect.Near(one.X, other.X, 8e-4, $"row {row}, ball {i}: along");
                Expect.Near(one.Y, -other.Y, 8e-4, $"row {row}, ball {i}: across");
            }
        }

        double speed = Enumerable.Range(1, 15).Max(i => trace.StateAt(i, time).Velocity.Length);
        Expect.Less(1.5, speed, "fastest ball of the rack, m/s");
    }

    [Fact]
    public void The_far_ball_of_a_frozen_pair_goes_along_their_line_whatever_the_cut_on_the_near_one()
    {
        // A frozen combination of clean balls: the second can be pushed only along the line of centres. Plane geometry.
        foreach (double cut in new[] { 0.0, 0.4, -0.8 })
        {
            Vec2 near = new(1.2, 0.6), line = Vec2.FromAngle(0.3), far = near + 2 * R * line;
            Vec2 way = line.Rotated(-cut), cue = near - 2 * R * way - 0.2 * way;
            Trace trace = Lossless.With(
                Moving(cue.X, cue.Y, 2, way.Angle, 0), Ball(near.X, near.Y), Ball(far.X, far.Y)).Play(0.3);
            Vec2 v = trace.StateAt(2, 0.25).Velocity;
            Expect.Less(0.5, v.Length, "speed of the far ball");
            Expect.Near(0.3, v.Angle, 1e-4, $"direction at a cut of {cut}");
        }
    }

    private static ShotSetup Triple(EquipmentSpec equipment)
    {
        Vec2 one = new(1.2, 0.6 + R), two = new(1.2, 0.6 - R);
        return equipment.With(Moving(1.0, 0.6, 2, 0, 0), Ball(one.X, one.Y), Ball(two.X, two.Y));
    }
}
