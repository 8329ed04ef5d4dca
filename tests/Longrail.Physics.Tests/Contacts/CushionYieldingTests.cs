using CsCheck;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using Longrail.TestKit.Reference;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Contacts;

/// <summary>Rebounds under the yielding law: closed forms, the limit of a short contact, the reference
/// integrator.</summary>
public class CushionYieldingTests
{
    [Theory]
    [InlineData(0.95, 0.0363, 0.008)]
    [InlineData(1.0, 0.031, 0.004)]
    [InlineData(0.6, 0.04, 0.012)]
    public void A_straight_spinless_frictionless_contact_lasts_the_contact_time_sinks_v_over_w_and_gives_back_e(
        double e, double nose, double time)
    {
        // Closed form of the spring with loss: w = (pi/2)(1 + 1/e)/T.
        EquipmentSpec equipment = Plain
            .WithCushion(_ => new CushionSpec(CushionLaw.Yielding, e, 0, nose, time))
            .WithCloth(c => c with { SlidingFriction = 1e-12 });
        double w = Math.PI / 2 * (1 + 1 / e) / time;
        foreach (double speed in new[] { 0.01, 1.0, 6.0 })
        {
            ShotEvent touch = Touch(equipment, speed, 0, 0, 0);
            Expect.Near(time, touch.Duration, Tolerance.CushionContact * time, $"duration at {speed} m/s");
            Expect.Near(
                -e * speed, touch.AfterA.Velocity.Y, Tolerance.CushionContact * speed, $"speed out at {speed} m/s");
            Expect.Near(speed / w, touch.Depth, Tolerance.CushionContact * speed / w, $"depth at {speed} m/s");
        }
    }

    [Theory]
    [InlineData(0.0, 1.0, 0.0)]
    [InlineData(30.0, 1.0, 0.0)]
    [InlineData(45.0, 0.0, 0.5)]
    [InlineData(20.0, 1.0, -1.0)]
    [InlineData(65.0, -0.5, 0.3)]
    public void As_the_contact_gets_short_it_becomes_the_impulse_law_at_first_order(
        double angle, double roll, double side)
    {
        // The two laws differ by the friction of the ball's weight at the bed while it is in the rubber: mu g T at
        // most.
        RailMotion limit = Plays.Rebound(With(CushionLaw.Impulse, 0.008), CushionName.Left, 1.5, angle, roll, side);
        double[] times = [0.016, 0.008, 0.004, 0.002, 0.001, 1e-4];
        double[] errors = [.. times.Select(t =>
            Distance(Plays.Rebound(With(CushionLaw.Yielding, t), CushionName.Left, 1.5, angle, roll, side), limit))];
        for (int i = 0; i < times.Length; i++)
        {
            // The weight's friction acts on speed (1) and spin (5/2) for the contact time; doubled for what follows
            // from that at the other point of friction, over 1.5 m/s; and the engine's own error.
            double bound = 2 * 3.5 * 2 * 0.2 * 9.80665 * times[i] / 1.5 + Tolerance.CushionContact;
            Expect.Less(errors[i], bound, $"difference of the laws at {times[i]} s");
        }

        Expect.Less(0.8, Expect.Order(errors[2], errors[5], times[2] / times[5]), "order in the contact time");
        Expect.Less(Expect.Order(errors[2], errors[5], times[2] / times[5]), 1.2, "order in the contact time");
    }

    [Fact]
    public void Contacts_agree_with_tiny_time_steps_for_all_kinds_of_balls_and_cushions() => Cases.Check(
        from cushion in SceneGen.Cushion
        from angle in Gen.Double[0, 80]
        from roll in Gen.Double[-1.25, 1.25]
        from side in Gen.Double[-1.25, 1.25]
        from speed in SceneGen.Speed
        select (cushion with { Law = CushionLaw.Yielding }, angle, roll, side, speed),
        150,
        item =>
        {
            (CushionSpec cushion, double angle, double roll, double side, double speed) = item;
            // A ball that touches more gently than a few centimetres a second leans, and the rubber gives back all it
            // took (docs/physics.md); the reference knows no leaning.
            if (speed * Math.Cos(angle * Math.PI / 180) < 0.06) return;
            ShotSetup shot = Into(Plain with { Cushion = cushion }, speed, angle, roll, side);
            ShotEvent engine = shot.Play(0.2).Events.First(e => e.Kind == ShotEventKind.Cushion);
            ReferenceEvent steps = ReferenceIntegrator.Run(shot, 0.1, new ReferenceSteps(Rubber: 1e-6)).Events[0];

            // Steps of 1e-6 s leave up to 1e-6 of the speed (shown by the reference's own tests) and, where a slip
            // dies, the weight's friction over one step; places follow over ten milliseconds.
            double speeds = Tolerance.AnyCushionContact * speed + 2e-6, places = 0.01 * speeds;
            Expect.Near(0, (engine.AfterA.Velocity - steps.After.Velocity).Length, speeds, "velocity out");
            Expect.Near(0, R * (engine.AfterA.Spin - steps.After.Spin).Length, 3 * speeds, "surface speed of spin out");
            Expect.Near(0, engine.AfterA.Position.DistanceTo(steps.After.Position), places, "place on leaving");
            Expect.Near(steps.Duration, engine.Duration, 1e-5, "duration");
        },
        item => $"{item}");

    [Fact]
    public void The_ball_travels_along_the_rail_while_it_is_in_the_rubber()
    {
        // Without friction it goes on at its speed along the rail for the contact time.
        EquipmentSpec smooth = Plain
            .WithCushion(c => c with { Friction = 0 })
            .WithCloth(c => c with { SlidingFriction = 1e-12 });
        ShotEvent touch = Touch(smooth, 2, 40, 0, 0);
        double way = touch.AfterA.Position.X - touch.BeforeA.Position.X;
        double expected = 2 * Math.Sin(40 * Math.PI / 180) * 0.008;
        Expect.Near(expected, way, Tolerance.CushionContact * expected, "way along the rail, m");
    }

    private static EquipmentSpec With(CushionLaw law, double time) =>
        Plain.WithCushion(c => c with { Law = law, ContactTime = time });

    private static double Distance(RailMotion a, RailMotion b)
    {
        double x = a.Vx - b.Vx, y = a.Vy - b.Vy, wx = R * (a.Wx - b.Wx), wy = R * (a.Wy - b.Wy), wz = R * (a.Wz - b.Wz);
        return Math.Sqrt(x * x + y * y + wx * wx + wy * wy + wz * wz);
    }

    private static ShotEvent Touch(EquipmentSpec equipment, double speed, double angle, double roll, double side) =>
        Into(equipment, speed, angle, roll, side).Play(0.2).Events.First(e => e.Kind == ShotEventKind.Cushion);

    private static ShotSetup Into(EquipmentSpec equipment, double speed, double angle, double roll, double side)
    {
        double sin = (equipment.Cushion.NoseHeight - R) / R, reach = R * Math.Sqrt(1 - sin * sin);
        return equipment.With(
            Moving(1, 1.27 - reach - Plays.Hair, speed, Math.PI / 2 - angle * Math.PI / 180, roll, side));
    }
}
