using CsCheck;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.TestKit;

namespace Longrail.Physics.Tests.Shots;

/// <summary>The unfolded table against numbers worked out by other routes. Inches, ball radius 1.125.</summary>
public class MirrorBankTests
{
    private const double R = 1.125;
    private static readonly TableSpec _table = new(100, 50, null, null);

    [Fact]
    public void Off_one_rail_it_touches_where_the_straight_line_to_the_mirrored_target_does()
    {
        // Common geometry: (37.5, 25) off the left cushion to (50, 0): x = 41.6022, tangent in = out = 0.1718.
        Vec2 touch = Touches(new(37.5, 25), new(50, 0), CushionName.Left)[0];
        Expect.Near(41.6022, touch.X, 5e-5, "touch, as printed");
        Expect.Near(0.1718, (touch.X - 37.5) / (touch.Y - 25), 5e-5, "tangent in, as printed");
        Expect.Near(0.1718, (50 - touch.X) / touch.Y, 5e-5, "tangent out, as printed");
    }

    [Fact]
    public void Four_diamonds_apart_at_equal_distances_it_touches_at_two() =>
        // Common geometry, also taught as reference.
        Expect.Near(25 + 25, Touches(new(25, R), new(75, R), CushionName.Left)[0].X, 1e-12, "touch");

    [Fact]
    public void Off_two_adjacent_rails_the_last_leg_is_parallel_to_the_first()
    {
        // Common geometry: (20, 10), long rail, short rail, (50, 0): (76.5958, 48.875), (98.875, 33.5717), slope
        // 0.68689.
        Vec2[] touches = Touches(new(20, 10), new(50, 0), CushionName.Left, CushionName.Foot);
        Expect.Near(76.5958, touches[0].X, 5e-5, "first touch, as printed");
        Expect.Near(33.5717, touches[1].Y, 5e-5, "second touch, as printed");
        Expect.Near(0.68689, (touches[0].Y - 10) / (touches[0].X - 20), 5e-6, "first slope, as printed");
        Expect.Near(0.68689, touches[1].Y / (touches[1].X - 50), 5e-6, "last slope, as printed");
    }

    [Fact]
    public void Off_both_long_rails_all_legs_have_the_same_tangent()
    {
        // Common geometry: the table unfolded twice.
        Vec2[] touches = Touches(new(20, 30), new(80, 25), CushionName.Left, CushionName.Right);
        double first = (touches[0].X - 20) / (touches[0].Y - 30);
        double second = (touches[1].X - touches[0].X) / (touches[0].Y - touches[1].Y);
        double third = (80 - touches[1].X) / (25 - touches[1].Y);
        Expect.Near(first, second, 1e-12, "tangent of the second leg");
        Expect.Near(first, third, 1e-12, "tangent of the third leg");
        Expect.Near(60 / (2 * (50 - 2 * R) - 30 + 25), first, 1e-12, "tangent, from the heights alone");
    }

    [Fact]
    public void Every_touch_lies_on_its_line_and_the_angles_are_equal() =>
        (from x in Gen.Double[2, 98]
         from y in Gen.Double[2, 48]
         from tx in Gen.Double[2, 98]
         from ty in Gen.Double[2, 48]
         from cushion in Gen.Enum<CushionName>()
         select (new Vec2(x, y), new Vec2(tx, ty), cushion)).Sample(t =>
        {
            (Vec2 from, Vec2 to, CushionName cushion) = t;
            Vec2 touch = Touches(from, to, cushion)[0];
            Expect.Near(0, MirrorBank.Gap(cushion, touch, _table, R), 1e-11, "gap at the touch");
            Vec2 into = cushion is CushionName.Left or CushionName.Right ? new Vec2(0, 1) : new Vec2(1, 0);
            Vec2 arrives = (touch - from).Normalized();
            Vec2 leaves = (to - touch).Normalized();
            Expect.Near(
                0, (leaves - (arrives - 2 * arrives.Dot(into) * into)).Length, 1e-9, "leaving against mirrored");
        });

    [Fact]
    public void Behind_the_touch_line_there_is_no_mirror_bank()
    {
        Assert.Null(MirrorBank.Touches(new(50, 49.5), [CushionName.Left], new(60, 20), _table, R));
        Assert.Throws<ArgumentException>(() => MirrorBank.Touches(new(50, 20), [], new(60, 20), _table, R));
    }

    private static Vec2[] Touches(Vec2 from, Vec2 to, params CushionName[] off) =>
        MirrorBank.Touches(from, off, to, _table, R)!;
}
