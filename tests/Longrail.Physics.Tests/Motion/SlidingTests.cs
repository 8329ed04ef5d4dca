using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Motion;

/// <summary>One ball on the cloth, skidding. Sources stand in the tables: Coriolis (1835), rigid-body
/// derivations.</summary>
public class SlidingTests
{
    private static readonly EquipmentSpec _field = Plain.WithTable(t => t with { Length = 400, Width = 200 });

    [Fact]
    public void A_ball_without_spin_slides_for_the_time_and_way_of_the_closed_form_and_then_rolls_at_five_sevenths()
    {
        foreach (GoldenRow row in GoldenTable.Load("slide-from-stun").Rows)
        {
            ShotEvent end = SlideEnd(row["friction"].Value, new Vec2(row["speed"].Value, 0), Vec2.Zero);
            Expect.Printed(row["time"], end.Time, $"{row}: time");
            Expect.Printed(row["distance"], end.AfterA.Position.X - 100, $"{row}: distance");
            Expect.Printed(row["rolling_speed"], end.AfterA.Velocity.X, $"{row}: rolling speed");
            Expect.Close(5.0 / 7, end.AfterA.Velocity.X / row["speed"].Value, Tolerance.ClosedForm, $"{row}: 5/7");
        }
    }

    [Fact]
    public void Draw_overspin_and_all_between_slide_as_the_closed_form_says()
    {
        foreach (GoldenRow row in GoldenTable.Load("slide-from-spin").Rows)
        {
            double roll = row["roll_ratio"].Value;
            if (roll == 1)
            {
                Trace rolls = Shoot(0.2, new Vec2(2, 0), new Vec2(2, 0), 1);
                Assert.DoesNotContain(rolls.Events, e => e.Kind == ShotEventKind.SlideEnds && e.Time > 0);
                Assert.Equal(MotionPhase.Rolling, rolls.SegmentAt(0, 0.5).Phase);
                continue;
            }

            ShotEvent end = SlideEnd(0.2, new Vec2(2, 0), new Vec2(2 * roll, 0));
            Expect.Printed(row["time"], end.Time, $"{row}: time");
            Expect.Printed(row["distance"], end.AfterA.Position.X - 100, $"{row}: distance");
            Expect.Printed(row["rolling_speed"], end.AfterA.Velocity.X, $"{row}: rolling speed");
        }
    }

    [Fact]
    public void A_slide_with_spin_across_the_way_curves_as_the_parabola_of_Coriolis()
    {
        foreach (GoldenRow row in GoldenTable.Load("slide-curved").Rows)
        {
            ShotEvent end = SlideEnd(
                0.2, new Vec2(row["vx"].Value, row["vy"].Value), new Vec2(row["qx"].Value, row["qy"].Value));
            Expect.Printed(row["time"], end.Time, $"{row}: time");
            Expect.Printed(row["x"], end.AfterA.Position.X - 100, $"{row}: x");
            Expect.Printed(row["y"], end.AfterA.Position.Y - 100, $"{row}: y");
            Expect.Printed(row["end_vx"], end.AfterA.Velocity.X, $"{row}: final vx");
            Expect.Printed(row["end_vy"], end.AfterA.Velocity.Y, $"{row}: final vy");
            Expect.Printed(row["end_angle"], end.AfterA.Velocity.Angle * 180 / Math.PI, $"{row}: final angle");
        }
    }

    [Fact]
    public void The_final_velocity_does_not_depend_on_friction()
    {
        // vf = (5 v + 2 q)/7, rigid-body derivation.
        Vec2 v = new(2, 0.5), q = new(-1, 1.5);
        foreach (double friction in new[] { 0.05, 0.15, 0.3, 0.6 })
        {
            Vec2 end = SlideEnd(friction, v, q).AfterA.Velocity;
            Expect.Close((5 * v.X + 2 * q.X) / 7, end.X, Tolerance.ClosedForm, $"vx at {friction}");
            Expect.Close((5 * v.Y + 2 * q.Y) / 7, end.Y, Tolerance.ClosedForm, $"vy at {friction}");
        }
    }

    [Fact]
    public void Side_alone_leaves_the_path_straight_and_unchanged()
    {
        // The friction of a point contact does not know of spin about the vertical. Rigid-body derivation.
        Trace with = _field.With(Ball(100, 100, new Vec2(2, 1), new Vec3(0, 0, 80))).Play();
        Trace without = _field.With(Ball(100, 100, new Vec2(2, 1))).Play();
        foreach (double time in new[] { 0.1, 0.3, 1.0, 3.0 })
        {
            Vec2 a = with.StateAt(0, time).Position, b = without.StateAt(0, time).Position;
            Expect.Near(0, a.DistanceTo(b), Tolerance.ClosedForm, $"place with and without side at {time} s");
            Expect.Near(
                0, (a - new Vec2(100, 100)).Cross(new Vec2(2, 1)), Tolerance.ClosedForm, $"off the line at {time} s");
        }
    }

    [Fact]
    public void Second_differences_of_place_are_constant_while_sliding()
    {
        Trace trace = _field.With(Ball(100, 100, new Vec2(2, 0.3), new Vec3(30, -40, 20))).Play();
        double end = trace.Events.First(e => e.Kind == ShotEventKind.SlideEnds).Time, h = end / 12;
        Vec2[] p = [.. Enumerable.Range(0, 12).Select(i => trace.StateAt(0, i * h).Position)];
        Vec2 first = p[2] - 2 * p[1] + p[0];
        for (int i = 1; i < 10; i++)
        {
            Vec2 d = p[i + 2] - 2 * p[i + 1] + p[i];
            // Places near 100 m are known to 1.4e-14 m each, four of them make a difference.
            Expect.Near(0, (d - first).Length, 1e-12, $"second difference {i}");
        }
    }

    private static ShotEvent SlideEnd(double friction, Vec2 velocity, Vec2 roll) =>
        Shoot(friction, velocity, roll, 3).Events.First(e => e.Kind == ShotEventKind.SlideEnds);

    /// <summary>A ball whose spin would roll it at the velocity <paramref name="roll"/>.</summary>
    private static Trace Shoot(double friction, Vec2 velocity, Vec2 roll, double time) => _field
        .WithCloth(c => c with { SlidingFriction = friction })
        .With(Ball(100, 100, velocity, new Vec3(-roll.Y / R, roll.X / R, 0)))
        .Play(time);
}
