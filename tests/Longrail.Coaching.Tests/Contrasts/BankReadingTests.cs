using System.Globalization;
using Longrail.Coaching.Contrasts;
using Longrail.Physics.Equipment;
using static Longrail.Coaching.Tests.Contrasts.ContrastScenes;

namespace Longrail.Coaching.Tests.Contrasts;

public class BankReadingTests
{
    [Fact]
    public void The_object_ball_is_the_banked_ball_if_it_touches_a_cushion()
    {
        Contrast contrast = Run(Straight, Hold.Stick, Vary("stroke.speed", "3"));

        Assert.Equal("9", contrast.Names[contrast.Base.Bank!.Ball]);
        Assert.NotNull(contrast.Base.Bank.Hit);
        Assert.Equal(CushionName.Left, contrast.Base.Bank.Cushion);
    }

    [Fact]
    public void Without_an_object_ball_it_is_the_cue_ball()
    {
        BankReading bank = Run(Alone, Hold.Stick, Vary("stroke.speed", "3")).Base.Bank!;

        Assert.Equal(0, bank.Ball);
        Assert.Null(bank.Hit);
        Assert.Equal(CushionName.Left, bank.Cushion);
        Assert.Equal(CushionName.Right, bank.Target);
        // A diamond along a 2.54 m table is an eighth of it.
        Assert.Equal(bank.LandingDiamonds!.Value * 2.54 / 8, bank.LandingMetres!.Value, 12);
    }

    [Fact]
    public void A_ball_that_reaches_no_cushion_gives_no_bank()
    {
        Contrast contrast = Run(Alone, Hold.Stick, Vary("stroke.speed", "0.1", "0.2"));

        Assert.NotNull(contrast.Base.Bank);
        Assert.All(contrast.Rows.Skip(1), row => Assert.Null(row.Bank));
        Assert.All(contrast.Rows.Skip(1), row => Assert.Null(row.Change));
    }

    // Geometry alone: a ball that comes in flatter leaves flatter and lands further on in the direction in which it
    // travels. All four cushions, both directions along each.
    [Theory]
    [InlineData(60, 50, 70)]
    [InlineData(120, 130, 110)]
    [InlineData(-60, -50, -70)]
    [InlineData(-120, -130, -110)]
    [InlineData(6, 9, 3)]
    [InlineData(-6, -9, -3)]
    [InlineData(174, 171, 177)]
    [InlineData(-174, -171, -177)]
    public void A_flatter_rebound_is_longer_and_a_steeper_one_shorter_on_every_cushion(
        double aim, double flatter, double steeper)
    {
        // Far enough from the corner ahead that all three land on the cushion across.
        double x = Math.Cos(aim * Math.PI / 180) > 0 ? 0.5 : 2.04;
        double y = Math.Sin(aim * Math.PI / 180) > 0 ? 0.4 : 0.87;
        string scene = string.Create(CultureInfo.InvariantCulture, $$"""
            {
              "table": { "pockets": "none" },
              "balls": [ { "id": "cue", "x": {{x}}, "y": {{y}} } ],
              "stroke": { "aim": "{{aim}} deg", "speed": 3 }
            }
            """);

        Contrast contrast = Run(scene, Hold.Stick, Vary("stroke.aim", Degrees(flatter), Degrees(steeper)));

        Assert.Equal(contrast.Base.Bank!.Target, contrast.Rows[1].Bank!.Target);
        Assert.True(contrast.Rows[1].Change!.IsLonger);
        Assert.False(contrast.Rows[2].Change!.IsLonger);
    }

    [Fact]
    public void A_base_that_comes_straight_off_the_cushion_is_neither_longer_nor_shorter()
    {
        string scene = Alone.Replace("60 deg", "90 deg", StringComparison.Ordinal);

        Contrast contrast = Run(scene, Hold.Stick, Vary("stroke.tip.right", "1/4 tip"));

        Assert.NotEqual(0, contrast.Rows[1].Change!.Metres);
        Assert.Null(contrast.Rows[1].Change!.IsLonger);
    }

    private static string Degrees(double degrees) => string.Create(CultureInfo.InvariantCulture, $"{degrees} deg");
}
