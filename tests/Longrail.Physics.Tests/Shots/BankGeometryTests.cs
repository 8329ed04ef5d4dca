using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Shots;

/// <summary>Banks of a ball that loses nothing must be those of a mirror. Plane geometry; unfolding is the
/// independent route.</summary>
public class BankGeometryTests
{
    private const double Inch = 0.0254;
    private const double Far = 50 - 1.125, FarX = 100 - 1.125;

    [Fact]
    public void A_mirror_bank_touches_where_the_straight_line_to_the_mirrored_target_does()
    {
        // (37.5, 25) in off the left cushion to (50, 0): contact x = 41.6022, tan in = tan out = 0.1718.
        double x = 37.5 + 12.5 * (Far - 25) / (2 * Far - 25);
        Expect.Near(41.6022, x, 5e-5, "contact, inches, as printed");
        Trace trace = Send(37.5, 25, x - 37.5, Far - 25);
        ShotEvent touch = Cushions(trace)[0];
        Near(x, Far, touch.BeforeA.Position);
        Expect.Near(0.1718, touch.AfterA.Velocity.X / -touch.AfterA.Velocity.Y, 5e-5, "tangent out, as printed");
        Near(50, 0, Line(touch, toY: 0));
    }

    [Fact]
    public void A_corner_to_side_bank_touches_half_way()
    {
        // Equal distances from the rail: contact at the midpoint, at 2 diamonds for 4. Also taught as reference.
        double start = 1.125, x = start + 25;
        Trace trace = Send(start, 1.125, x - start, Far - 1.125);
        Near(x, Far, Cushions(trace)[0].BeforeA.Position);
        Near(start + 50, 1.125, Line(Cushions(trace)[0], toY: 1.125));
    }

    [Fact]
    public void Off_two_adjacent_rails_the_last_leg_is_parallel_to_the_first()
    {
        // (20, 10) to the long rail, the short rail, (50, 0): contacts (76.5958, 48.875), (98.875, 33.5717), slope
        // 0.68689.
        double slope = (2 * Far - 10) / (2 * FarX - 50 - 20);
        Expect.Near(0.68689, slope, 5e-6, "slope, as printed");
        Trace trace = Send(20, 10, 1, slope);
        IReadOnlyList<ShotEvent> touches = Cushions(trace);
        Near(20 + (Far - 10) / slope, Far, touches[0].BeforeA.Position);
        Near(FarX, 10 + slope * (FarX - 20) - 2 * (10 + slope * (FarX - 20) - Far), touches[1].BeforeA.Position);
        Expect.Near(76.5958, touches[0].BeforeA.Position.X / Inch, 5e-5, "first contact, as printed");
        Expect.Near(33.5717, touches[1].BeforeA.Position.Y / Inch, 5e-5, "second contact, as printed");
        Vec2 last = touches[1].AfterA.Velocity, first = touches[0].BeforeA.Velocity;
        Expect.Near(0, (last + first).Length, 1e-9, "last leg against first");
        Near(50, 0, Line(touches[1], toY: 0));
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(3.0)]
    [InlineData(-6.0)]
    public void Shifting_start_and_aim_alike_keeps_the_last_leg_parallel_and_shifts_the_end_by_as_much_the_other_way(
        double shift)
    {
        double slope = (2 * Far - 10) / (2 * FarX - 50 - 20);
        Trace trace = Send(20 + shift, 10, 1, slope);
        ShotEvent second = Cushions(trace)[1];
        Expect.Near(slope, second.AfterA.Velocity.Y / second.AfterA.Velocity.X, 1e-9, "slope of the last leg");
        Near(50 - shift, 0, Line(second, toY: 0));
    }

    [Fact]
    public void A_bank_off_both_long_rails_touches_where_the_table_unfolded_twice_says()
    {
        // From (20, 30) to the left rail, the right rail, and (80, 25): mirrored twice the target stands at 25 + 2
        // (Far - 1.125).
        double slope = (25 + 2 * (Far - 1.125) - 30) / 60;
        Trace trace = Send(20, 30, 1, slope);
        IReadOnlyList<ShotEvent> touches = Cushions(trace);
        Near(20 + (Far - 30) / slope, Far, touches[0].BeforeA.Position);
        Near(20 + (2 * Far - 1.125 - 30) / slope, 1.125, touches[1].BeforeA.Position);
        Near(80, 25, Line(touches[1], toY: 25));
    }

    [Fact]
    public void The_crossed_lines_of_the_X_method_find_the_contact_of_a_point_but_not_of_a_ball()
    {
        // Lines: object to the place opposite the target, target to the object's foot on the rail. Similar triangles.
        Vec2 target = new(50, 0), from = new(20, 30), foot = new(20, 50), opposite = new(50, 50);
        double s = (foot - target).Cross(from - target) / (opposite - from).Cross(foot - target);
        double x = (from + s * (opposite - from)).X;

        const double tiny = 1e-7;
        EquipmentSpec points = Lossless.WithCushion(c => c with { NoseHeight = tiny });
        Vec2 way = new Vec2(x, 50) - from;
        Trace trace = points.With(new ShotBall(tiny, M, new(Inch * from, way.Normalized(), default))).Play(4);
        ShotEvent touch = Cushions(trace)[0];
        Vec2 end = Line(touch, toY: 0);
        // A ball of radius r turns r before the rail: r (tan in + tan out) or so beside.
        Expect.Near(50 * Inch, end.X, 4 * tiny, "end of a point's bank, m");

        Trace ball = Send(from.X, from.Y, way.X, way.Y);
        Expect.Less(0.5, Math.Abs(Line(Cushions(ball)[0], toY: 0).X / Inch - 50), "a real ball's miss, inches");
    }

    [Fact]
    public void Aiming_through_a_sight_shifts_the_touch_along_the_rail_as_tabled()
    {
        // Plane geometry with WPA's sights; the ball turns a radius before the nose.
        foreach (GoldenRow row in GoldenTable.Load("sight-setback").Rows)
        {
            double tan = Math.Tan(row["angle"].Value * Math.PI / 180);
            Vec2 sight = new(75 * Inch, 50 * Inch + Lossless.Table.SightSetback), way = new(tan, 1);
            Vec2 start = sight - (sight.Y - 0.6) * way;
            Trace trace = Send(start.X / Inch, start.Y / Inch, tan, 1);
            double shift = sight.X - Cushions(trace)[0].BeforeA.Position.X;
            Expect.Near(row["shift_mm"].Value, 1000 * shift, row["shift_mm"].HalfUnit, $"{row}: mm");
            Expect.Near(
                row["shift_diamonds"].Value, shift / Lossless.Table.DiamondAlong, row["shift_diamonds"].HalfUnit,
                $"{row}");
        }
    }

    [Fact]
    public void A_tilted_nose_is_touched_R_cos_theta_from_its_line()
    {
        // Pythagoras: the nose stands above the centre by R sin theta.
        Trace trace = Plain.With(Moving(1, 0.6, 1, Math.PI / 2)).Play();
        double rise = 0.0363 - R;
        Expect.Near(
            1.27 - Math.Sqrt(R * R - rise * rise), Cushions(trace)[0].BeforeA.Position.Y, Tolerance.Geometry, "touch");
    }

    private static Trace Send(double x, double y, double dx, double dy) =>
        Lossless.With(Ball(x * Inch, y * Inch, 2 * new Vec2(dx, dy).Normalized())).Play(5);

    private static IReadOnlyList<ShotEvent> Cushions(Trace trace) =>
        [.. trace.Events.Where(e => e.Kind == ShotEventKind.Cushion)];

    /// <summary>Where the leg after a touch crosses a height, metres; the height in inches.</summary>
    private static Vec2 Line(ShotEvent touch, double toY)
    {
        Vec2 p = touch.AfterA.Position, v = touch.AfterA.Velocity;
        return p + (toY * Inch - p.Y) / v.Y * v;
    }

    private static void Near(double x, double y, Vec2 place)
    {
        Expect.Near(x * Inch, place.X, Tolerance.NearlyPureGeometry, "x, m");
        Expect.Near(y * Inch, place.Y, Tolerance.NearlyPureGeometry, "y, m");
    }
}
