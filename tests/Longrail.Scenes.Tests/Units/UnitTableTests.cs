using System.Text;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Tests.Units;

public sealed class UnitTableTests
{
    // One rounding of the factor itself.
    private const double OneRounding = 1.2e-16;

    // Source: NIST Special Publication 811 (2008), appendix B.8; all of these are exact. Ounce: avoirdupois, a
    // sixteenth of 0.453 592 37 kg. Degree: pi/180. Revolution per minute: pi/30.
    [Theory]
    [InlineData("in", 0.0254)]
    [InlineData("ft", 0.3048)]
    [InlineData("yd", 0.9144)]
    [InlineData("mph", 0.44704)]
    [InlineData("ft/s", 0.3048)]
    [InlineData("km/h", 1.0 / 3.6)]
    [InlineData("oz", 0.028349523125)]
    [InlineData("lb", 0.45359237)]
    [InlineData("g", 0.001)]
    [InlineData("mm", 0.001)]
    [InlineData("cm", 0.01)]
    [InlineData("ms", 0.001)]
    [InlineData("deg", Math.PI / 180.0)]
    [InlineData("rpm", Math.PI / 30.0)]
    [InlineData("%", 0.01)]
    public void Units_have_the_factors_of_the_standard(string name, double factor) =>
        Assert.Equal(factor, Factor(name), factor * OneRounding);

    // Source: NIST SP 811, appendix B.8: a mile is 1609.344 m, an hour 3600 s.
    [Fact]
    public void A_mile_per_hour_is_a_mile_in_an_hour() =>
        Assert.Equal(1609.344 / 3600.0, Factor("mph"), 0.5 * OneRounding);

    [Fact]
    public void Names_of_units_are_told_apart_by_capitals()
    {
        Assert.Null(UnitTable.Find("r"u8));
        Assert.Null(UnitTable.Find("MM"u8));
        Assert.Equal(Dimension.BallRadius, UnitTable.Find("R"u8)!.Dimension);
    }

    [Fact]
    public void No_two_units_have_the_same_name() =>
        Assert.Equal(UnitTable.Units.Count, UnitTable.Units.Select(unit => unit.Name).Distinct().Count());

    private static double Factor(string name) => UnitTable.Find(Encoding.UTF8.GetBytes(name))!.Factor;
}
