using Longrail.Physics.Contacts;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Scenes.Tests.Compiling;

public sealed class StrokeTests
{
    private const double Radius = 0.028575;

    // A tip that is level and at the centre gives no side and no squirt, so the ball leaves along the stick at its
    // speed.
    [Fact]
    public void A_stroke_through_the_centre_sets_the_ball_moving_along_the_stick()
    {
        ShotSetup setup = SceneFiles.Ready(
            SceneFiles.TwoBalls("\"stroke\":{\"aim\":\"30 deg\",\"speed\":\"5 mph\"}")).Setup;
        Vec2 velocity = setup.Balls[0].Start.Velocity;
        Assert.Equal(5 * 0.44704, velocity.Length, 1e-15);
        Assert.Equal(Math.PI / 6, velocity.Angle, 1e-15);
        Assert.Equal(default, setup.Balls[1].Start.Velocity);
        Assert.Equal(0, setup.Stroke!.Ball);
    }

    // b = B R/(R + r): derivation for a dome of radius r touching a ball of radius R. With a tip of 13 mm and a dome of
    // 10.6 mm an eighth of a tip is b/R = 13 mm / 8 / (28.575 mm + 10.6 mm) = 0.0415.
    [Fact]
    public void An_eighth_of_a_tip_moves_the_shaft_and_the_dome_makes_less_of_it()
    {
        Stroke stroke = StrokeOf("\"tip\":{\"right\":\"1/8 tip\"}");
        Assert.Equal(0.013 / 8 * Radius / (Radius + 0.0106), stroke.OffsetRight, 1e-17);
        Assert.Equal(0.0415, stroke.OffsetRight / Radius, 5e-5);
    }

    [Theory]
    [InlineData("\"0.2 R\"", 0.2 * Radius)]
    [InlineData("\"-0.2R\"", -0.2 * Radius)]
    [InlineData("\"3 mm\"", 0.003)]
    [InlineData("0.003", 0.003)]
    public void Offsets_in_radii_and_metres_are_where_tip_and_ball_touch(string right, double metres) =>
        Assert.Equal(metres, StrokeOf($"\"tip\":{{\"right\":{right}}}").OffsetRight, 1e-17);

    // Coulomb: a tip holds up to b/R = sin(atan(mu)), 0.514 for mu = 0.6 (derivation; 0.6 and 0.514 R: Alciatore).
    [Fact]
    public void A_miscue_is_refused_by_how_far_the_tip_is_out()
    {
        SceneError error = SceneFiles.Error(SceneFiles.OneBall("\"stroke\":{\"tip\":{\"right\":\"0.62 R\"}}"));
        Assert.Equal("stroke.tip", error.Path);
        Assert.Contains("0.62 R from its centre, 3.0 mm too far", error.Problem);
        Assert.Contains("0.514 R", error.Allowed);
    }

    [Fact]
    public void Right_and_above_count_together_for_a_miscue()
    {
        // 0.36 sqrt(2) = 0.509 and 0.37 sqrt(2) = 0.523, on either side of 0.5145.
        Assert.Empty(SceneFiles.Errors(Struck("0.36 R")));
        Assert.Contains("miscue", SceneFiles.Error(Struck("0.37 R")).Problem);

        static string Struck(string offset) =>
            SceneFiles.OneBall($$"""  "stroke":{"tip":{"right":"{{offset}}","above":"{{offset}}"} }  """);
    }

    [Fact]
    public void A_tip_beside_the_ball_is_a_miscue_even_for_a_tip_that_hardly_slips() =>
        Assert.Contains("miscue", SceneFiles.Error(
            SceneFiles.OneBall("\"cue\":{\"tipFriction\":5},\"stroke\":{\"tip\":{\"right\":\"1.1 R\"}}")).Problem);

    // V (1 + e)/(1 + m/M + 5/2 (b/R)^2), a point impact without slip (derivation); e = 0.73, m = 0.17 kg, M = 0.54 kg,
    // b = 0.
    [Fact]
    public void The_stick_s_speed_may_stand_instead_of_the_ball_s() =>
        Assert.Equal(2.0 * 1.73 / (1.0 + 0.17 / 0.54), StrokeOf("\"cueSpeed\":\"2 m/s\"").Speed, 1e-14);

    [Fact]
    public void The_stick_s_speed_is_found_again_in_what_the_tip_did()
    {
        ShotSetup setup = SceneFiles.Ready(SceneFiles.OneBall(
            """  "stroke":{"cueSpeed":3,"tip":{"right":"0.3 R","above":"-0.2 R"},"elevation":"7 deg"}  """)).Setup;
        Assert.Equal(3.0, setup.Stroke!.Result.CueSpeed, 1e-14);
    }

    // A point impact gives the ball up to (1 + e)/(1 + m/M) = 1.32 times the stick's speed (derivation), and 0.5 R off
    // the centre costs about a third of it.
    [Theory]
    [InlineData("\"cueSpeed\":25", "the ball would have to move at 32.9 m/s")]
    [InlineData("\"speed\":29,\"tip\":{\"right\":\"0.5 R\"}", "the stick would have to move at 32.5 m/s")]
    [InlineData("\"speed\":2,\"elevation\":\"89.999 deg\"", "the stick would have to move at")]
    public void A_stroke_that_no_arm_can_play_is_refused(string fields, string problem) =>
        Assert.Contains(problem, SceneFiles.Error(SceneFiles.OneBall($"\"stroke\":{{{fields}}}")).Problem);

    [Fact]
    public void Without_a_name_the_cue_ball_is_struck_or_else_the_first()
    {
        const string Named = """{"balls":[{"id":"9","x":1,"y":0.5},{"id":"cue","x":0.5,"y":0.5}],"stroke":{}}""";
        const string NoCueBall = """{"balls":[{"id":"9","x":1,"y":0.5},{"id":"8","x":0.5,"y":0.5}],"stroke":{}}""";
        Assert.Equal(1, SceneFiles.Ready(Named).Setup.Stroke!.Ball);
        Assert.Equal(0, SceneFiles.Ready(NoCueBall).Setup.Stroke!.Ball);
    }

    [Theory]
    [InlineData("\"stroke\":{\"ball\":\"8\"}", "stroke.ball", "there is no ball \"8\"")]
    [InlineData("\"stroke\":{\"speed\":1,\"cueSpeed\":1}", "stroke", "both speed and cueSpeed")]
    [InlineData("\"stroke\":{},\"launch\":[{\"ball\":\"cue\"}]", "launch", "both a stroke and a launch")]
    [InlineData("\"stroke\":{\"aim\":{}}", "stroke.aim", "neither at nor bank")]
    [InlineData("\"stroke\":{\"aim\":{\"at\":\"9\",\"bank\":\"9\"}}", "stroke.aim", "both at and bank")]
    [InlineData("\"stroke\":{\"aim\":{\"at\":\"8\"}}", "stroke.aim.at", "there is no ball \"8\"")]
    [InlineData("\"stroke\":{\"aim\":{\"at\":\"cue\"}}", "stroke.aim.at", "is the ball that is struck")]
    [InlineData("\"stroke\":{\"aim\":{\"bank\":\"9\",\"to\":\"left-side\"}}", "stroke.aim", "a bank needs a pocket")]
    [InlineData(
        """ "table":{"pockets":"none"},"stroke":{"aim":{"bank":"9","to":"left-side","off":["right"]}} """,
        "stroke.aim.to", "no pockets")]
    [InlineData("\"launch\":[{\"ball\":\"8\"}]", "launch[0].ball", "there is no ball \"8\"")]
    [InlineData("\"launch\":[{}]", "launch[0].ball", "no ball is named")]
    [InlineData("\"launch\":[{\"ball\":\"9\"},{\"ball\":\"9\"}]", "launch[1].ball", "launched twice")]
    public void What_does_not_fit_together_is_refused(string fields, string path, string problem)
    {
        SceneError error = SceneFiles.Error(SceneFiles.TwoBalls(fields));
        Assert.Equal(path, error.Path);
        Assert.Contains(problem, error.Problem);
    }

    [Fact]
    public void A_launch_sets_balls_moving_without_a_stroke()
    {
        ShotSetup setup = SceneFiles.Ready(SceneFiles.TwoBalls(
            "\"launch\":[{\"ball\":\"9\",\"velocity\":[1.2,\"2 mph\"],\"spin\":[30,-40,\"60 rpm\"]}]")).Setup;
        Assert.Null(setup.Stroke);
        Assert.Equal(new Vec2(1.2, 2 * 0.44704), setup.Balls[1].Start.Velocity);
        Assert.Equal(2 * Math.PI, setup.Balls[1].Start.Spin.Z, 1e-14);
    }

    [Fact]
    public void A_solved_aim_is_taken_as_it_stands()
    {
        string scene = SceneFiles.TwoBalls("\"stroke\":{\"aim\":{\"at\":\"9\",\"cut\":\"10 deg\",\"solved\":0.01}}");
        Assert.Equal(0.01, SceneFiles.Ready(scene).Setup.Stroke!.Stroke.Aim);
    }

    private static Stroke StrokeOf(string fields) =>
        SceneFiles.Ready(SceneFiles.OneBall($"\"stroke\":{{{fields}}}")).Setup.Stroke!.Stroke;
}
