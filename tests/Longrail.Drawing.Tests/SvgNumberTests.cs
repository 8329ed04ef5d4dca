using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Tests;

public class SvgNumberTests
{
    // The grammar of numbers: W3C, SVG 1.1 (Second Edition), section 4.2 "Basic data types", <number>.
    [Theory]
    [InlineData(0.0, "0")]
    [InlineData(-0.0004, "0")]
    [InlineData(0.0005, "0.001")]
    [InlineData(-0.0005, "-0.001")]
    [InlineData(1.5, "1.5")]
    [InlineData(2970, "2970")]
    [InlineData(123456.7894, "123456.789")]
    public void A_number_has_at_most_three_decimals_and_no_minus_before_zero(double value, string expected) =>
        Assert.Equal(expected, SvgNumber.Format(value));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void A_number_that_is_not_finite_is_refused(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SvgNumber.Format(value));
}
