using System.Globalization;
using Longrail.Physics.Geometry;

namespace Longrail.Scenes.Tests.Compiling;

public sealed class BallPlacementTests
{
    // Rounding of a few operations on lengths of the table's size, metres.
    private const double Rounding = 1e-15;

    // A ball of 57.15 mm touching a nose at 63.5 % of its diameter: sin(theta) = 2 * 0.635 - 1 = 0.27, and its centre
    // stands R cos(theta) from the nose line in plan. Derivation from the geometry of a sphere; WPA for the two
    // numbers.
    private static readonly double _reach = 0.028575 * Math.Sqrt(1.0 - 0.27 * 0.27);

    [Theory]
    [InlineData("head")]
    [InlineData("foot")]
    [InlineData("left")]
    [InlineData("right")]
    public void A_frozen_ball_stands_where_it_touches_the_nose(string cushion)
    {
        bool isShort = cushion is "head" or "foot";
        string other = isShort ? "\"y\":0.635" : "\"x\":0.9";
        Vec2 place = Place($$"""{"balls":[{"id":"9",{{other}},"frozenTo":"{{cushion}}"}]}""");
        double expected = cushion switch { "head" or "right" => _reach, "foot" => 2.54 - _reach, _ => 1.27 - _reach };
        Assert.Equal(expected, isShort ? place.X : place.Y, Rounding);
        Assert.Equal(isShort ? 0.635 : 0.9, isShort ? place.Y : place.X);
    }

    [Fact]
    public void A_ball_may_touch_a_cushion_but_not_stand_in_it()
    {
        Assert.Empty(SceneFiles.Errors(At(0.9, _reach)));
        Assert.Empty(SceneFiles.Errors(At(0.9, _reach - 0.9e-9)));
        SceneError error = SceneFiles.Error(At(0.9, _reach - 0.0035));
        Assert.Equal("balls[0]", error.Path);
        Assert.Contains("3.5 mm too far over the right cushion", error.Problem);
        Assert.Equal("\"frozenTo\": \"right\"", error.Suggestion);
    }

    [Fact]
    public void A_ball_outside_the_table_is_refused_by_how_far()
    {
        SceneError error = SceneFiles.Error(At(0.9, 1.5));
        string millimetres = ((1.5 - (1.27 - _reach)) * 1000).ToString("0.0", CultureInfo.InvariantCulture);
        Assert.Contains($"ball \"9\" stands {millimetres} mm too far over the left cushion", error.Problem);
        Assert.Null(error.Suggestion);
    }

    [Fact]
    public void A_ball_may_hang_in_the_mouth_of_a_pocket_but_not_over_the_drop()
    {
        // The side pocket's mouth is in the middle of the right cushion, its drop 3/16 in behind the nose line.
        Assert.Empty(SceneFiles.Errors(At(1.27, 0.0)));
        Assert.Empty(SceneFiles.Errors(At(1.27, -0.004)));
        Assert.Contains("over the drop of the pocket right-side", SceneFiles.Error(At(1.27, -0.006)).Problem);
        Assert.Contains("over the drop of the pocket right-side", SceneFiles.Error(At(1.27, -0.03)).Problem);
        Assert.Contains("over the drop of the pocket head-left", SceneFiles.Error(At(0.0, 1.27)).Problem);
        Assert.Contains("cushion", SceneFiles.Error(At(1.22, 0.0)).Problem);
    }

    [Fact]
    public void A_table_without_pockets_has_cushions_all_around() =>
        Assert.Contains(
            "too far over the right cushion",
            SceneFiles.Error("""{"table":{"pockets":"none"},"balls":[{"id":"9","x":1.27,"y":0}]}""").Problem);

    [Fact]
    public void Balls_may_touch_but_not_overlap()
    {
        Assert.Empty(SceneFiles.Errors(Pair(0.05715)));
        Assert.Empty(SceneFiles.Errors(Pair(0.05715 - 0.9e-9)));
        SceneError error = SceneFiles.Error(Pair(0.05715 - 0.0021));
        Assert.Equal("balls[1]", error.Path);
        Assert.Contains("ball \"9\" overlaps ball \"cue\" by 2.1 mm", error.Problem);
    }

    [Fact]
    public void An_overlap_too_small_for_a_decimal_is_still_told() =>
        Assert.Contains("by 0.000002 mm", SceneFiles.Error(Pair(0.05715 - 2e-9)).Problem);

    // Source: WEPF (world eight-ball): object balls 50.8 mm, cue ball 47.6 mm. Their centres stand at different
    // heights, so that they touch at 2 sqrt(r1 r2) = 49.1740 mm in plan (Pythagoras), not at half the sum of the
    // diameters, 49.2 mm.
    [Fact]
    public void Unequal_balls_touch_where_their_heights_let_them()
    {
        string Balls(string y) =>
            $$"""
            { "ballSet": { "diameter": "50.8 mm" },
              "balls": [ { "id": "cue", "x": 1, "y": 0.5, "diameter": "47.6 mm" }, { "id": "9", "x": 1, "y": {{y}} } ] }
            """;
        Assert.Empty(SceneFiles.Errors(Balls("0.549175")));
        Assert.Contains("overlaps ball \"cue\" by 0.1 mm", SceneFiles.Error(Balls("0.549074")).Problem);
    }

    // Source: WPA, sights 12.5 in apart on a 9-ft table, so 3.5 diamonds are 43.75 in.
    [Theory]
    [InlineData("\"along\":3.5,\"across\":1.5")]
    [InlineData("\"along\":\"3.5 diamonds\",\"across\":\"1 1/2 diamonds\"")]
    [InlineData("\"x\":\"3.5 diamonds\",\"y\":\"1.5 diamonds\"")]
    [InlineData("\"x\":\"43.75 in\",\"y\":\"18 3/4 in\"")]
    [InlineData("\"x\":1.11125,\"y\":0.47625")]
    public void Diamonds_inches_and_metres_name_the_same_place(string place)
    {
        Vec2 p = Place($$"""{"balls":[{"id":"9",{{place}}}]}""");
        Assert.Equal(1.11125, p.X, Rounding);
        Assert.Equal(0.47625, p.Y, Rounding);
    }

    [Theory]
    [InlineData("\"x\":1", "neither y nor across")]
    [InlineData("\"y\":0.5", "neither x nor along")]
    [InlineData("\"x\":1,\"along\":3,\"y\":0.5", "x is given in more than one way")]
    [InlineData("\"x\":1,\"y\":0.5,\"frozenTo\":\"left\"", "y is given in more than one way")]
    [InlineData("\"along\":1,\"across\":1,\"frozenTo\":\"foot\"", "x is given in more than one way")]
    public void Each_coordinate_is_given_once(string place, string problem) =>
        Assert.Contains(problem, SceneFiles.Error($$"""{"balls":[{"id":"9",{{place}}}]}""").Problem);

    [Fact]
    public void A_scene_without_a_ball_is_refused()
    {
        Assert.Equal("balls", SceneFiles.Error("{}").Path);
        Assert.Contains("no ball", SceneFiles.Error("""{"balls":[]}""").Problem);
    }

    [Fact]
    public void Each_name_stands_for_one_ball()
    {
        SceneError error = SceneFiles.Error("""{"balls":[{"id":"9","x":1,"y":0.5},{"id":"9","x":1.2,"y":0.5}]}""");
        Assert.Equal("balls[1].id", error.Path);
        Assert.Contains("the name of balls[0] already", error.Problem);
        Assert.Contains("no name", SceneFiles.Error("""{"balls":[{"x":1,"y":0.5}]}""").Problem);
    }

    [Fact]
    public void Errors_found_late_point_into_the_text_too()
    {
        SceneError error = SceneFiles.Error(
            """
            {
             "balls": [
              {"id":"cue","x":1,"y":0.5},
              {"id":"9","x":1.01,"y":0.5}
             ]
            }
            """);
        Assert.Equal((4, 3), (error.Line!.Value, error.Column!.Value));
    }

    private static string At(double x, double y) => string.Create(
        CultureInfo.InvariantCulture, $$"""{"balls":[{"id":"9","x":{{x:R}},"y":{{y:R}}}]}""");

    private static string Pair(double distance) => string.Create(
        CultureInfo.InvariantCulture,
        $$"""{"balls":[{"id":"cue","x":1,"y":0.5},{"id":"9","x":{{1 + distance:R}},"y":0.5}]}""");

    private static Vec2 Place(string text) => SceneFiles.Ready(text).Setup.Balls[0].Start.Position;
}
