using Longrail.Coaching.Players;
using Longrail.Coaching.Ways;
using Longrail.Scenes;
using static Longrail.Coaching.Tests.Ways.WaysQuestions;

namespace Longrail.Coaching.Tests.Ways;

/// <summary>What is wrong with a question is told, and nothing is searched.</summary>
public sealed class WaysCheckTests
{
    [Fact]
    public void A_ball_that_is_not_there_names_those_that_are() =>
        Refused(Ask(ball: "7"), "ball: there is no ball \"7\"; allowed: 9, 8");

    [Fact]
    public void The_cue_ball_is_not_the_ball_to_make() =>
        Refused(Ask(ball: "cue"), "ball: \"cue\" is the ball that is struck; allowed: 9, 8");

    [Fact]
    public void The_next_ball_is_another_one() =>
        Refused(Ask(next: "9"), "next: \"9\" is the ball to make now; allowed: 8");

    [Fact]
    public void The_next_ball_is_not_the_cue_ball() =>
        Refused(Ask(next: "cue"), "next: \"cue\" is the ball that is struck; allowed: 8");

    [Fact]
    public void The_next_ball_is_there() => Refused(Ask(next: "ten"), "next: there is no ball \"ten\"; allowed: 8");

    [Theory]
    [InlineData(-1, 2)]
    [InlineData(0, 4)]
    [InlineData(2, 1)]
    public void Rails_go_from_0_to_3(int fewest, int most) => Refused(
        Ask() with { FewestRails = fewest, MostRails = most },
        $"rails: from {fewest} to {most} cushions; allowed: from 0 to 3, the fewer first");

    [Theory]
    [InlineData(-1)]
    [InlineData(3)]
    public void Kicks_go_over_two_cushions_at_the_most(int most) =>
        Refused(Ask() with { MostKickRails = most }, $"kick-rails: up to {most} cushions; allowed: 0 to 2");

    [Theory]
    [InlineData(0, "0 s")]
    [InlineData(-2, "-2 s")]
    public void A_time_budget_leaves_time(int seconds, string told) => Refused(
        Ask() with { TimeBudget = TimeSpan.FromSeconds(seconds) }, $"budget: {told} leave no time to search");

    [Fact]
    public void There_is_a_thread() => Refused(Ask() with { Threads = 0 }, "threads: 0 threads; allowed: 1 or more");

    [Theory]
    [InlineData(-0.001, 0.05, "the error of aim is -0.001")]
    [InlineData(double.NaN, 0.05, "the error of aim is NaN")]
    [InlineData(0.003, 1.0, "the error of speed is 1; allowed: a standard deviation: 0 or more, below 1")]
    public void Errors_of_a_player_are_not_negative(double aim, double speed, string told) =>
        Refused(Ask() with { Player = new Player("x", aim, speed, 0, 0, 0) }, $"player: {told}");

    [Fact]
    public void A_table_without_pockets_has_no_ways() => Refused(
        Ask("""{ "table": { "pockets": "none" }, "balls": [ { "id": "cue", "x": 1, "y": 0.5 }, { "id": "9", "x": 2, "y": 0.5 } ] }"""),
        "table.pockets: this table has no pockets, so no ball can be made");

    [Fact]
    public void A_layout_needs_a_cue_ball() => Refused(
        Ask("""{ "balls": [ { "id": "5", "x": 1, "y": 0.5 }, { "id": "9", "x": 2, "y": 0.5 } ] }"""),
        "balls: there is no cue ball; allowed: a ball with the id \"cue\"");

    [Fact]
    public void Balls_that_move_already_are_no_layout() => Refused(
        Ask("""{ "balls": [ { "id": "cue", "x": 1, "y": 0.5 }, { "id": "9", "x": 2, "y": 0.5 } ], "launch": [ { "ball": "9", "velocity": [1, 0] } ] }"""),
        "launch: balls are moving already");

    [Fact]
    public void Another_ball_than_cue_may_be_struck()
    {
        WaysRequest request = Ask(
            """{ "balls": [ { "id": "5", "x": 1, "y": 0.5 }, { "id": "9", "x": 2, "y": 0.5 } ], "stroke": { "ball": "5" } }""");

        Assert.Equal("5", request.CueBall);
        Assert.Empty(WaysCheck.Of(request));
    }

    [Fact]
    public void An_aim_that_cannot_be_found_does_not_stand_in_the_way_of_the_question()
    {
        WaysRequest request = Ask(
            """
            { "balls": [ { "id": "cue", "x": 1, "y": 0.5 }, { "id": "9", "x": 2, "y": 0.5 } ],
              "stroke": { "aim": { "bank": "9", "to": "head-left", "off": ["head"] }, "elevation": "3 deg" } }
            """);

        Assert.Empty(WaysCheck.Of(request));
        Assert.Equal(3 * Math.PI / 180, WaysQuestion.Of(request).Elevation, 1e-15);
    }

    [Fact]
    public void Everything_wrong_is_told_at_once() =>
        Assert.Equal(3, Answer(Ask(ball: "7", next: "cue") with { Threads = 0 }).Errors.Count);

    private static void Refused(WaysRequest request, string told)
    {
        WaysAnswer answer = Answer(request);

        SceneError error = Assert.Single(answer.Errors);
        Assert.StartsWith(told, error.ToString(), StringComparison.Ordinal);
        Assert.Empty(answer.Ways);
    }

    private static WaysAnswer Answer(WaysRequest request) => WaysRunner.Run(
        request,
        WaysParts.Usual with { Search = (_, _, _, _) => throw new InvalidOperationException("It was searched all the same.") },
        null, CancellationToken.None);
}
