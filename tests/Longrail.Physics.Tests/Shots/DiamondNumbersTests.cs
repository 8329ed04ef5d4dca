using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots.Readings;
using Longrail.TestKit;

namespace Longrail.Physics.Tests.Shots;

/// <summary>The three ways of numbering a cushion. Plane geometry on WPA's figures: sights 3 11/16 in behind the nose,
/// ball radius 1.125 in.</summary>
public class DiamondNumbersTests
{
    private const double Inch = 0.0254;
    private const double BallRadius = 1.125 * Inch;

    private static readonly TableSpec _table = new(100 * Inch, 50 * Inch, null, null, 3.6875 * Inch);

    [Theory]
    // From nose to sights 3.6875 tan a, from the ball's centre to the nose 1.125 tan a more; inches, recomputed to the
    // digits printed.
    [InlineData(10, 0.65, 0.20)]
    [InlineData(20, 1.34, 0.41)]
    [InlineData(30, 2.13, 0.65)]
    [InlineData(45, 3.69, 1.12)]
    public void Sight_and_nose_lie_apart_by_the_setback_times_the_tangent(double degrees, double toSight, double toNose)
    {
        double tangent = Math.Tan(degrees * Math.PI / 180);
        double fromNose = DiamondNumbers.SightShift(tangent, 0, _table) / Inch;
        double fromCentre = DiamondNumbers.SightShift(tangent, BallRadius, _table) / Inch;
        Expect.Near(toSight, fromNose, 0.005, "nose to sights, in");
        // 1.125 in at 45 degrees lies just between two printed numbers.
        Expect.Near(toNose, fromCentre - fromNose, 0.005 + 1e-9, "ball's centre to nose, in");
    }

    [Fact]
    public void Through_the_sight_the_number_is_shifted_as_tabled()
    {
        foreach (GoldenRow row in GoldenTable.Load("sight-setback").Rows)
        {
            double tangent = Math.Tan(row["angle"].Value * Math.PI / 180);
            Vec2 touch = new(3 * _table.DiamondAlong, _table.Width - BallRadius);
            double sight = DiamondNumbers.Of(
                DiamondNumbering.Sight, CushionName.Left, touch, new Vec2(tangent, 1), BallRadius, _table);
            Expect.Near(row["shift_diamonds"].Value, sight - 3, row["shift_diamonds"].HalfUnit, $"{row}: diamonds");
        }
    }

    [Theory]
    [InlineData(CushionName.Left, 1.0, 0.5)]
    [InlineData(CushionName.Right, -1.0, -2.0)]
    [InlineData(CushionName.Foot, 1.0, -0.3)]
    [InlineData(CushionName.Head, -2.0, 0.3)]
    public void The_sight_lies_farther_along_the_way_of_travel_at_every_cushion(
        CushionName cushion, double dx, double dy)
    {
        var touch = new Vec2(1, 0.6);
        var way = new Vec2(dx, dy);
        double nose = DiamondNumbers.Of(DiamondNumbering.Nose, cushion, touch, way, BallRadius, _table);
        double sight = DiamondNumbers.Of(DiamondNumbering.Sight, cushion, touch, way, BallRadius, _table);
        bool isLong = Diamonds.IsLong(cushion);
        double travel = isLong ? dx : dy;
        double tangent = Math.Abs(isLong ? dx / dy : dy / dx);
        double diamond = isLong ? _table.DiamondAlong : _table.DiamondAcross;
        Expect.Near(
            Math.Sign(travel) * (BallRadius + _table.SightSetback) * tangent / diamond, sight - nose, 1e-12,
            "shift, diamonds");
    }

    [Fact]
    public void Tens_are_ten_to_a_diamond_at_the_nose()
    {
        var touch = new Vec2(2.5 * _table.DiamondAlong, 0);
        double number = DiamondNumbers.Of(
            DiamondNumbering.Tens, CushionName.Right, touch, new Vec2(1, -1), BallRadius, _table);
        Expect.Near(25, number, 1e-12, "number");
        Assert.Equal(["nose", "sight", "tens"], Enum.GetValues<DiamondNumbering>().Select(DiamondNumbers.Word));
    }

    [Fact]
    public void A_ball_that_leaves_the_cushion_has_no_number_through_the_sight() => Assert.Throws<ArgumentException>(
        () => DiamondNumbers.Of(
            DiamondNumbering.Sight, CushionName.Left, Vec2.Zero, new Vec2(1, -1), BallRadius, _table));
}
