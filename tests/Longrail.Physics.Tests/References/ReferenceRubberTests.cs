using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.TestKit;
using Longrail.TestKit.Reference;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.References;

/// <summary>The small-step yielding cushion of the test kit against closed forms and against itself with smaller
/// steps.</summary>
public class ReferenceRubberTests
{
    [Theory]
    [InlineData(1.0, 0.0363)]
    [InlineData(0.8, 0.0363)]
    [InlineData(0.6, 0.04)]
    public void A_straight_spinless_frictionless_contact_lasts_the_contact_time_and_gives_back_e(double e, double nose)
    {
        // Closed form: m Y'' = -k cos^2 Y inwards and e^2 of it outwards; depth v/w with w = (pi/2)(1 + 1/e)/T.
        EquipmentSpec equipment = Plain
            .WithCushion(c => c with { Restitution = e, Friction = 0, NoseHeight = nose })
            .WithCloth(c => c with { SlidingFriction = 1e-12 });
        ReferenceRun run = Run(equipment, 2.0, Math.PI / 2, 0, 0, 1e-7);
        ReferenceEvent touch = Assert.Single(run.Events);

        // Leapfrog at 80,000 steps a contact; the instant of the turn is known to one step.
        Expect.Near(0.008, touch.Duration, 2e-7, "contact time, s");
        Expect.Near(-2 * e, touch.After.Velocity.Y, 1e-6, "speed out, m/s");
    }

    [Fact]
    public void Halving_the_steps_in_rubber_shrinks_the_change_at_second_order_where_nothing_sticks()
    {
        // No spot of bed or nose comes to rest in this contact: a fast glancing skid with much reverse side.
        double[] way = [.. new[] { 8e-6, 4e-6, 2e-6, 1e-7 }.Select(dt => End(Plain, 3, 0.6, 0, -1, dt).Position.X)];
        double first = Math.Abs(way[0] - way[3]), second = Math.Abs(way[1] - way[3]), third = Math.Abs(way[2] - way[3]);

        Expect.Less(1.9, Expect.Order(first, third, 4), "order from 8 to 2 microseconds");
        Expect.Less(third, 1e-7, "what is left at 2 microseconds, metres over the next half metre");
        Assert.True(second < first);
    }

    [Theory]
    [InlineData(2.0, 1.2, 1.0, 0.0)]
    [InlineData(1.0, 0.9, 1.0, 0.5)]
    [InlineData(4.0, 1.4, 0.2, -0.5)]
    public void With_sticking_the_usual_steps_leave_a_hundredth_of_the_whole_shot_tolerance(
        double speed, double angle, double roll, double side)
    {
        BallState usual = End(Plain, speed, angle, roll, side, new ReferenceSteps().Rubber);
        BallState fine = End(Plain, speed, angle, roll, side, 1e-7);

        Expect.Near(0, usual.Position.DistanceTo(fine.Position), Tolerance.WholeShot / 100, "place after half a metre");
    }

    [Theory]
    [InlineData(1.0, 0.7, 1.0, 0.0)]
    [InlineData(3.0, 1.1, 0.0, 0.5)]
    [InlineData(2.0, 0.4, 1.0, -1.0)]
    public void Without_weight_the_yielding_law_leaves_the_ball_with_the_impulse_laws_motion(
        double speed, double angle, double roll, double side)
    {
        // Both laws push with the same ratio of normal, nose and bed forces; only the weight's bed friction differs.
        var contact = new NoseAndBed(R, 0.0363, 0.2, 0.2);
        RailMotion motion = CushionTable.In(90 - angle * 180 / Math.PI, roll, side, R);
        RailMotion scaled = new()
        {
            Vx = speed * motion.Vx,
            Vy = speed * motion.Vy,
            Wx = speed * motion.Wx,
            Wy = speed * motion.Wy,
            Wz = speed * motion.Wz,
        };
        RailMotion impulse = ReferenceCushionImpulse.Rebound(scaled, R, 0.0363, 0.95, 0.2, 0.2, 20000);
        RailMotion yielding = Spring(contact, scaled, 0.95);

        Expect.Near(impulse.Vx, yielding.Vx, 1e-5 * speed, "along the rail");
        Expect.Near(impulse.Vy, yielding.Vy, 1e-5 * speed, "off the rail");
        Expect.Near(R * impulse.Wz, R * yielding.Wz, 1e-5 * speed, "side");
        Expect.Near(R * impulse.Wx, R * yielding.Wx, 1e-5 * speed, "roll");
    }

    private static RailMotion Spring(NoseAndBed contact, RailMotion ball, double e)
    {
        const double dt = 2e-7, stiffness = 1e5;
        double depth = 0, deepest = 0;
        do
        {
            double middle = depth + 0.5 * dt * ball.Vy;
            bool sinking = middle >= deepest;
            deepest = Math.Max(deepest, middle);
            contact.Push(ref ball, Math.Max(0, middle) * stiffness * (sinking ? 1 : e * e) * dt, 0);
            depth = middle + 0.5 * dt * ball.Vy;
        }
        while (depth > 0 || ball.Vy > 0);
        return ball;
    }

    private static BallState End(
        EquipmentSpec equipment, double speed, double angle, double roll, double side, double dt) =>
        Run(equipment, speed, angle, roll, side, dt).Final[0];

    private static ReferenceRun Run(
        EquipmentSpec equipment, double speed, double angle, double roll, double side, double dt)
    {
        double reach = R * Math.Sqrt(1 - Math.Pow((equipment.Cushion.NoseHeight - R) / R, 2));
        Vec2 start = new Vec2(1, 1.27 - reach) - 0.01 * Vec2.FromAngle(angle);
        return ReferenceIntegrator.Run(
            equipment.With(Moving(start.X, start.Y, speed, angle, roll, side)),
            0.02 + 0.5 / speed, new ReferenceSteps(Rubber: dt, Sample: 10));
    }
}
