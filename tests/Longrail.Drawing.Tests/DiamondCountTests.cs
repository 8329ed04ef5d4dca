using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Drawing.Tests;

public class DiamondCountTests
{
    private const double Inch = 0.0254;

    [Theory]
    [InlineData(DiamondNumbering.Nose, 2.834, "2.83")]
    [InlineData(DiamondNumbering.Tens, 2.834, "28.3")]
    [InlineData(DiamondNumbering.Sight, 2.834, "2.83")]
    [InlineData(DiamondNumbering.Nose, -0.001, "0.00")]
    public void A_place_is_written_as_the_convention_does(DiamondNumbering numbering, double diamonds, string text) =>
        Assert.Equal(text, DiamondCount.Text(numbering, diamonds));

    // Plane geometry: sights 3 11/16 in behind the nose (WPA equipment specifications) and a centre 1.125 in before it
    // make (3.6875 + 1.125) tan(a) in along the cushion; inches worked out to two digits, so half of the last one.
    [Theory]
    [InlineData(10, 0.85)]
    [InlineData(20, 1.75)]
    [InlineData(30, 2.78)]
    [InlineData(45, 4.81)]
    public void Through_the_sight_a_touch_is_counted_farther_along_by_the_tangent_of_the_angle(double degrees,
        double inches)
    {
        TableSpec table = EquipmentPresets.DefaultTable.Table with { SightSetback = 3.6875 * Inch };
        (double sin, double cos) = Math.SinCos(degrees * Math.PI / 180);
        foreach (CushionName cushion in Enum.GetValues<CushionName>())
        {
            (Vec2 centre, Vec2 velocity, double diamond, double at) = cushion switch
            {
                CushionName.Left => (new Vec2(1, table.Width - 1.125 * Inch), new Vec2(sin, cos), table.DiamondAlong,
                    1.0),
                CushionName.Right => (new Vec2(1, 1.125 * Inch), new Vec2(sin, -cos), table.DiamondAlong, 1.0),
                CushionName.Head => (new Vec2(1.125 * Inch, 0.5), new Vec2(-cos, sin), table.DiamondAcross, 0.5),
                _ => (new Vec2(table.Length - 1.125 * Inch, 0.5), new Vec2(cos, sin), table.DiamondAcross, 0.5),
            };
            double seen = DiamondCount.Sight(cushion, centre, velocity, table)!.Value;
            Assert.Equal(inches, (seen * diamond - at) / Inch, 0.0051);
        }
    }

    [Fact]
    public void A_ball_that_does_not_come_to_the_cushion_is_not_counted_there() =>
        Assert.Null(DiamondCount.Sight(
        CushionName.Left, new Vec2(1, 1), new Vec2(1, 0), EquipmentPresets.DefaultTable.Table));
}
