using System.Text;
using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Coaching.Tests.Ways;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Tests.Players;

public class PlayerPresetsTests
{
    private const double Degree = Math.PI / 180;

    // Pan, Komar and Kong, BMC Sports Sci. Med. Rehabil. 13, 9 (2021): the less expert vary more. A direction only.
    [Fact]
    public void Each_step_up_is_steadier_in_everything()
    {
        for (int i = 1; i < PlayerPresets.All.Count; i++)
        {
            Player below = PlayerPresets.All[i - 1];
            Player player = PlayerPresets.All[i];
            Assert.True(
                player.Aim < below.Aim && player.Speed < below.Speed && player.TipAcross < below.TipAcross
                && player.TipUp < below.TipUp && player.Elevation < below.Elevation, player.Name);
        }
    }

    // What the presets say of themselves: the cue ball's direction strays by 0.7, 0.25, 0.12 and 0.06 degrees, as the
    // strokes that they give are counted.
    [Theory]
    [InlineData("beginner", 0.7)]
    [InlineData("club", 0.25)]
    [InlineData("county", 0.12)]
    [InlineData("national", 0.06)]
    public void The_cue_balls_direction_strays_as_the_preset_says(string name, double degrees)
    {
        CueSpec cue = EquipmentPresets.DefaultCue.Cue;
        BallSetSpec set = FoundWays.Pool.BallSet;
        var errors = new StrokeErrors(PlayerPresets.Named(name)!, new RandomNumbers(1, 1));
        double grip = TipContact.MiscueLimit(cue) * set.Diameter / 2;
        double sum = 0;
        const int Strokes = 4000;
        for (ulong i = 0; i < Strokes; i++)
        {
            Stroke stroke = errors.Played(new Stroke(0, 0.2, 0, 0, 0), i, grip)!.Value;
            double direction = TipContact.Strike(stroke, set.Diameter / 2, set.Mass, cue).Velocity.Angle;
            sum += direction * direction;
        }

        // Two digits at most were claimed; the count adds 1 / sqrt(2 n), 1.1 %.
        Assert.Equal(degrees, Math.Sqrt(sum / Strokes) / Degree, 0.06 * degrees);
    }

    [Fact]
    public void A_hard_stroke_strays_more_in_aim_and_tip_and_not_in_speed()
    {
        Player player = PlayerPresets.Default;
        Assert.Equal(Math.Sqrt(2), player.Growth(player.HardStroke), 12);
        Assert.Equal(1, (player with { HardStroke = double.PositiveInfinity }).Growth(9), 12);
        var errors = new StrokeErrors(player, new RandomNumbers(1, 1));
        var soft = new Stroke(0, 1e-3, 0, 0, 0);
        Stroke hard = soft with { Speed = 2 * player.HardStroke };
        for (ulong i = 0; i < 100; i++)
        {
            Stroke one = errors.Played(soft, i, 0.014)!.Value;
            Stroke two = errors.Played(hard, i, 0.014)!.Value;
            Assert.Equal(Math.Sqrt(5) * one.Aim, two.Aim, 6);
            Assert.Equal(Math.Sqrt(5) * one.OffsetRight, two.OffsetRight, 6);
            Assert.Equal(Math.Sqrt(5) * one.OffsetAbove, two.OffsetAbove, 6);
            Assert.Equal(one.Speed / soft.Speed, two.Speed / hard.Speed, 12);
            Assert.Equal(one.Elevation, two.Elevation);
        }
    }

    [Fact]
    public void What_a_player_file_leaves_out_is_as_its_preset()
    {
        PlayerReading reading = PlayerReader.Read(Encoding.UTF8.GetBytes(
            """{ "name": "N. N.", "preset": "county", "aim": "0.3 deg", "tip": { "up": "1 mm" } }"""));

        Player county = PlayerPresets.Named("county")!;
        Assert.Empty(reading.Errors);
        Assert.Equal(county with { Name = "N. N.", Aim = reading.Player!.Aim, TipUp = 0.001 }, reading.Player);
        Assert.Equal(0.3 * Degree, reading.Player.Aim, 15);
    }

    [Fact]
    public void An_empty_file_is_the_default_player() =>
        Assert.Equal(PlayerPresets.Default, PlayerReader.Read("{}"u8).Player);

    [Fact]
    public void A_wrong_file_gives_no_player()
    {
        PlayerReading reading = PlayerReader.Read("""{ "aim": "-1 deg" }"""u8);

        Assert.Null(reading.Player);
        Assert.Equal("aim", Assert.Single(reading.Errors).Path);
    }

    [Fact]
    public void A_contact_beyond_the_tips_grip_is_a_miscue()
    {
        var errors = new StrokeErrors(PlayerPresets.Default with { TipAcross = 0.005 }, new RandomNumbers(1, 1));
        var meant = new Stroke(0, 2, 0.010, 0, 0);
        int miscues = 0;
        for (ulong i = 0; i < 2000; i++)
        {
            if (errors.Played(meant, i, 0.0147) is { } stroke)
                Assert.True(double.Hypot(stroke.OffsetRight, stroke.OffsetAbove) < 0.0147);
            else
                miscues++;
        }

        // To the side alone a share of 1 - Phi(0.94) = 0.174 is out; up and down adds to it. Four deviations of the
        // count are 0.034.
        Assert.InRange(miscues / 2000.0, 0.174 - 0.034, 0.174 + 0.08);
    }

    [Fact]
    public void A_level_butt_strays_upwards_only_and_speed_never_backwards()
    {
        var errors = new StrokeErrors(
            new Player("wild", 0.1, 0.5, 0, 0, 5 * Degree), new RandomNumbers(1, 1));
        for (ulong i = 0; i < 2000; i++)
        {
            Stroke stroke = errors.Played(new Stroke(0, 2, 0, 0, 0), i, 0.0147)!.Value;
            Assert.InRange(stroke.Elevation, 0, 85 * Degree);
            Assert.True(stroke.Speed >= 0.2);
        }
    }
}
