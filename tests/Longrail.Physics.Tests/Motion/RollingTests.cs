using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Motion;

/// <summary>One ball on the cloth, rolling, turning on the spot, stopping.</summary>
public class RollingTests
{
    private static readonly EquipmentSpec _field = Plain.WithTable(t => t with { Length = 400, Width = 200 });

    [Fact]
    public void A_rolling_ball_stops_where_and_when_constant_deceleration_says()
    {
        foreach (GoldenRow row in GoldenTable.Load("roll-out").Rows)
        {
            ShotEvent stop = Stop(row["friction"].Value, row["speed"].Value);
            Expect.Printed(row["distance"], stop.AfterA.Position.X - 100, $"{row}: distance");
            Expect.Printed(row["time"], stop.Time, $"{row}: time");
        }
    }

    [Fact]
    public void A_ball_that_just_dies_after_one_length_takes_the_time_that_names_the_table_speed()
    {
        const double length = 2.54 - 0.05715;
        foreach (GoldenRow row in GoldenTable.Load("table-speed").Rows)
        {
            // The friction is printed to 5e-6; the time goes as its root.
            double friction = 2 * length / (row["time"].Value * row["time"].Value * 9.80665);
            Expect.Printed(row["friction"], friction, $"{row}: friction");
            ShotEvent stop = Stop(friction, 2 * length / row["time"].Value);
            Expect.Close(row["time"].Value, stop.Time, Tolerance.ClosedForm, $"{row}: time");
            Expect.Close(length, stop.AfterA.Position.X - 100, Tolerance.ClosedForm, $"{row}: way");
            Expect.Printed(row["speed"], 2 * length / stop.Time, $"{row}: start speed");
        }
    }

    [Fact]
    public void Side_dies_at_a_steady_rate_whatever_else_the_ball_does()
    {
        // 50 rad/s at 10 rad/s^2 lives 5 s (Alciatore's rate; kinematics).
        foreach (Vec2 velocity in new[] { Vec2.Zero, new Vec2(0.2, 0), new Vec2(3, 0) })
        {
            Trace trace = _field.With(Ball(100, 100, velocity, new Vec3(0, 0, -50))).Play();
            foreach (double time in new[] { 0.0, 1.0, 2.5, 4.9, 5.0, 5.5 })
                Expect.Near(
                    -Math.Max(0, 50 - 10 * time), trace.StateAt(0, time).Spin.Z, Tolerance.ClosedForm,
                    $"side at {time} s");
        }
    }

    [Fact]
    public void A_ball_that_only_turns_stays_where_it_is_and_is_at_rest_when_the_turning_is_over()
    {
        Trace trace = _field.With(Ball(100, 100, Vec2.Zero, new Vec3(0, 0, 30))).Play();
        Assert.Equal(StopReason.AtRest, trace.Ended);
        Assert.Equal(MotionPhase.Pivoting, trace.SegmentAt(0, 1).Phase);
        Expect.Close(3, trace.Duration, Tolerance.ClosedForm, "duration");
        Expect.Near(0, trace.Balls[0].State.Position.DistanceTo(new Vec2(100, 100)), 0, "way");
        // Half of 30 rad/s for 3 s: 45 rad.
        var turned = Rotation.FromVector(new Vec3(0, 0, 45));
        Expect.Near(0, trace.OrientationAt(0, 3).AngleTo(turned), Tolerance.ClosedForm, "orientation, radians");
    }

    [Fact]
    public void A_rolled_way_turns_the_ball_by_way_over_radius_about_the_axle()
    {
        var way = Vec2.FromAngle(0.4);
        Trace trace = _field.With(Moving(100, 100, 1, 0.4)).Play();
        foreach (double time in new[] { 0.1, 1.0, 5.0, trace.Duration })
        {
            double rolled = trace.StateAt(0, time).Position.DistanceTo(new Vec2(100, 100));
            var expected = Rotation.FromVector(rolled / R * new Vec3(way.Left.X, way.Left.Y, 0));
            Expect.Near(
                0, trace.OrientationAt(0, time).AngleTo(expected), Tolerance.Orientation / 100,
                $"orientation at {time} s");
        }
    }

    private static ShotEvent Stop(double friction, double speed) => _field
        .WithCloth(c => c with { RollingFriction = friction })
        .With(Moving(100, 100, speed, 0)).Play(1000).Events.Single(e => e.Kind == ShotEventKind.Stops);
}
