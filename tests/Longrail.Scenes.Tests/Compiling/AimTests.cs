using Longrail.Physics.Equipment;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Outcomes;
using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Tests.Compiling;

public sealed class AimTests
{
    // The solver meets the cut to 0.0006 degrees; the readings are taken from the shot that was played.
    private const double CutToleranceDegrees = 0.001;

    [Theory]
    [InlineData("20 deg left", 20.0)]
    [InlineData("20 deg right", -20.0)]
    [InlineData("0 deg", 0.0)]
    public void A_cut_is_played_as_asked(string cut, double degrees)
    {
        string aim = $$"""{"at":"9","cut":"{{cut}}"}""";
        Outcome outcome = Outcome.Of(SceneFiles.Ready(Struck(aim)));
        MeetReading meet = outcome.Readings.Events.OfType<MeetReading>().First();
        Assert.Equal(degrees, meet.CutDegrees, CutToleranceDegrees);
    }

    [Fact]
    public void A_bank_goes_down_where_it_was_asked_to()
    {
        Outcome outcome = Outcome.Of(SceneFiles.Ready(Struck("""{"bank":"9","to":"right-side","off":["left"]}""")));
        BallEnd end = outcome.Trace.Balls[1];
        Assert.Equal((MotionPhase.Pocketed, PocketName.RightSide), (end.Phase, end.Pocket!.Value));
    }

    [Fact]
    public void The_solved_angle_stands_beside_its_task_and_is_not_solved_again()
    {
        ReadyScene first = SceneFiles.Ready(Struck("""{"bank":"9","to":"right-side","off":["left"]}"""));
        Assert.Equal("9", first.AsUsed.Stroke!.Aim!.Bank);
        double solved = first.AsUsed.Stroke.Aim.Solved!.Value.Value;
        Assert.Equal(first.Setup.Stroke!.Stroke.Aim, solved);

        // Faster, the stick stays where it was; asked for another pocket, it is solved anew.
        Scene faster = SceneSetting.With(first.AsUsed, "stroke.speed", "4").Scene!;
        Assert.Equal(solved, SceneCompiler.Compile(faster).Ready!.Setup.Stroke!.Stroke.Aim);
        Scene other = SceneSetting.With(first.AsUsed, "stroke.aim.to", "foot-right").Scene!;
        Assert.NotEqual(solved, SceneCompiler.Compile(other).Ready!.Setup.Stroke!.Stroke.Aim);
    }

    [Theory]
    [InlineData("""{"bank":"9","to":"right-side","off":["head","foot"]}""", "never takes these cushions")]
    public void An_aim_that_does_not_exist_is_refused_with_the_reason(string aim, string reason)
    {
        SceneCompilation compilation = SceneCompiler.Compile(SceneReader.Read(Struck(aim)).Scene!);
        SceneError error = Assert.Single(compilation.Errors);
        Assert.True(compilation.IsUnreachable);
        Assert.Equal("stroke.aim", error.Path);
        Assert.Contains(reason, error.Problem);
    }

    [Fact]
    public void A_ball_in_the_way_is_named()
    {
        SceneError error = SceneFiles.Error(
            """
            { "balls": [ { "id": "cue", "x": 0.8, "y": 0.6 }, { "id": "9", "x": 1.5, "y": 0.6 },
                         { "id": "4", "x": 1.1, "y": 0.6 } ],
              "stroke": { "aim": { "at": "9" } } }
            """);
        Assert.Contains("ball \"4\" is in the way", error.Problem);
    }

    private static string Struck(string aim) =>
        $$"""
        { "balls": [ { "id": "cue", "along": 2.2, "across": 0.9 }, { "id": "9", "along": 3.2, "across": 2.4 } ],
          "stroke": { "speed": 2.5, "aim": {{aim}} } }
        """;
}
