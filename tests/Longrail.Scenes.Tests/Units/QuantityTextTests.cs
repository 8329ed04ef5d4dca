using System.Globalization;
using CsCheck;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Tests.Units;

public sealed class QuantityTextTests
{
    // Two roundings: one of the sum of whole and fraction, one of the product with the factor.
    private const double TwoRoundings = 2.3e-16;

    [Theory]
    [InlineData("50 in", 50 * 0.0254)]
    [InlineData("50in", 50 * 0.0254)]
    [InlineData("  50   in  ", 50 * 0.0254)]
    [InlineData("2 1/4 in", 2.25 * 0.0254)]
    [InlineData("1/8 in", 0.125 * 0.0254)]
    [InlineData("-1/8 in", -0.125 * 0.0254)]
    [InlineData("-2 1/4 in", -2.25 * 0.0254)]
    [InlineData("+3 mm", 0.003)]
    [InlineData("1e-3 m", 0.001)]
    [InlineData(".5 m", 0.5)]
    [InlineData("3 feet", 0.9144)]
    public void Lengths_are_read(string text, double metres)
    {
        Assert.Equal(QuantityTextProblem.None, QuantityText.Parse(text, QuantityKind.Length, out Quantity length));
        Assert.Equal(metres, length.Value, Math.Abs(metres) * TwoRoundings);
        Assert.Equal(RelativeUnit.None, length.Unit);
    }

    [Theory]
    [InlineData("1/8 tip", 0.125, RelativeUnit.TipWidth)]
    [InlineData("-1/8 tip", -0.125, RelativeUnit.TipWidth)]
    [InlineData("2 tips", 2.0, RelativeUnit.TipWidth)]
    [InlineData("0.2 R", 0.2, RelativeUnit.BallRadius)]
    [InlineData("0.2R", 0.2, RelativeUnit.BallRadius)]
    [InlineData("3 mm", 0.003, RelativeUnit.None)]
    public void Offsets_of_the_tip_keep_what_they_are_counted_in(string text, double value, RelativeUnit unit)
    {
        Assert.Equal(QuantityTextProblem.None, QuantityText.Parse(text, QuantityKind.TipOffset, out Quantity offset));
        Assert.Equal(new Quantity(value, unit), offset);
    }

    // The rules of the game give the nose's height as a percentage of the ball's diameter: WPA, 62.5 to 64.5 %.
    [Theory]
    [InlineData("63.5 %")]
    [InlineData("0.635 D")]
    public void The_height_of_a_nose_may_be_a_part_of_the_ball(string text)
    {
        Assert.Equal(QuantityTextProblem.None, QuantityText.Parse(text, QuantityKind.BallHeight, out Quantity height));
        Assert.Equal(0.635, height.Value, 1e-16);
        Assert.Equal(RelativeUnit.BallDiameter, height.Unit);
    }

    [Theory]
    [InlineData("12 deg left", 12.0)]
    [InlineData("12 deg right", -12.0)]
    [InlineData("12 deg", 12.0)]
    [InlineData("12deg  left", 12.0)]
    public void A_cut_may_say_to_which_side(string text, double degrees)
    {
        Assert.Equal(QuantityTextProblem.None, QuantityText.Parse(text, QuantityKind.CutAngle, out Quantity cut));
        Assert.Equal(degrees * Math.PI / 180.0, cut.Value, 1e-15);
    }

    [Theory]
    [InlineData("fast", QuantityTextProblem.NotANumber)]
    [InlineData("", QuantityTextProblem.NotANumber)]
    [InlineData("-", QuantityTextProblem.NotANumber)]
    [InlineData("--1 m/s", QuantityTextProblem.NotANumber)]
    [InlineData("m/s", QuantityTextProblem.NotANumber)]
    [InlineData("NaN m/s", QuantityTextProblem.NotFinite)]
    [InlineData("infinity m/s", QuantityTextProblem.NotFinite)]
    [InlineData("-Infinity", QuantityTextProblem.NotFinite)]
    [InlineData("1/0 m/s", QuantityTextProblem.NotFinite)]
    [InlineData("1e400 m/s", QuantityTextProblem.NotFinite)]
    [InlineData("2.2", QuantityTextProblem.NoUnit)]
    [InlineData("2.2 mp/h", QuantityTextProblem.UnknownUnit)]
    [InlineData("2.2 M/S", QuantityTextProblem.UnknownUnit)]
    [InlineData("2.2 kg", QuantityTextProblem.WrongUnit)]
    [InlineData("2.2 m", QuantityTextProblem.WrongUnit)]
    [InlineData("2.2 m/s left", QuantityTextProblem.UnknownWord)]
    [InlineData("2,2 m/s", QuantityTextProblem.UnknownWord)]
    public void What_is_no_speed_is_told_apart(string text, QuantityTextProblem problem) =>
        Assert.Equal(problem, QuantityText.Parse(text, QuantityKind.Speed, out _));

    [Fact]
    public void A_plain_number_needs_no_unit_and_may_be_a_percentage()
    {
        Assert.Equal(QuantityTextProblem.None, QuantityText.Parse("0.2", QuantityKind.Ratio, out Quantity plain));
        Assert.Equal(QuantityTextProblem.None, QuantityText.Parse("95 %", QuantityKind.Ratio, out Quantity part));
        Assert.Equal(0.2, plain.Value);
        Assert.Equal(0.95, part.Value, 1e-15);
    }

    // Property: a number written with all its digits comes back bit for bit.
    [Fact]
    public void Any_finite_number_comes_back() =>
        Gen.Double.Where(double.IsFinite).Sample(
            value =>
            {
                string text = value.ToString("R", CultureInfo.InvariantCulture) + " m";
                return QuantityText.Parse(text, QuantityKind.Length, out Quantity read) == QuantityTextProblem.None
                    && BitConverter.DoubleToInt64Bits(read.Value) == BitConverter.DoubleToInt64Bits(value);
            });

    // Property: noise is refused or read, never an exception, and what is read is finite.
    [Fact]
    public void Noise_never_throws() =>
        Gen.String[0, 30].Sample(
            text => QuantityText.Parse(text, QuantityKind.TipOffset, out Quantity read) != QuantityTextProblem.None
                || double.IsFinite(read.Value));
}
