using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Outcomes;

namespace Longrail.Scenes.Tests.Outcomes;

/// <summary>The scenes of the repository show what their comments promise.</summary>
public sealed class RepositorySceneTests
{
    [Theory]
    [InlineData("straight-bank-centre.json", "9")]
    [InlineData("cross-side-cut-bank.json", "5")]
    [InlineData("cross-corner-cut-bank.json", "12")]
    [InlineData("two-cushion-bank.json", "7")]
    [InlineData("frozen-bank.json", "3")]
    [InlineData("long-rail-stop-bank.json", "11")]
    public void A_bank_goes_down_and_nothing_else_does(string scene, string ball)
    {
        Outcome outcome = SceneFiles.Played(scene);
        IEnumerable<string> down = outcome.Scene.BallIds.Where(
            (_, i) => outcome.Trace.Balls[i].Phase == MotionPhase.Pocketed);
        Assert.Equal([ball], down);
    }

    [Fact]
    public void The_striped_ball_of_the_stop_shot_leaves_the_cue_ball_standing()
    {
        Outcome outcome = SceneFiles.Played("long-rail-stop-bank.json");
        double rest = outcome.Trace.Balls[0].State.Position.DistanceTo(
            outcome.Trace.Events.First(e => e.BallB is not null).BeforeA.Position);

        // Common practice, no source: within a ball's width is a stop shot.
        Assert.InRange(rest, 0.0, 0.05715);
    }

    // Common practice, no source: a frozen ball hit half full straight away kisses twice when slow and clears at pace.
    [Fact]
    public void The_frozen_ball_is_kissed_twice_slowly_and_clears_firmly()
    {
        Outcome firm = SceneFiles.Played("frozen-bank.json");
        Assert.False(firm.Readings.Shot.DoubleKiss);
        Scene slow = SceneSetting.With(firm.Scene.AsUsed, "stroke.speed", "0.8 m/s").Scene!;
        Assert.True(Outcome.Of(SceneCompiler.Compile(slow).Ready!).Readings.Shot.DoubleKiss);
    }

    [Theory]
    [InlineData("three-cushion-track.json", 3)]
    [InlineData("two-cushion-bank.json", 2)]
    public void A_track_takes_its_cushions_before_its_goal(string scene, int cushions)
    {
        Outcome outcome = SceneFiles.Played(scene);
        List<ShotEvent> events = [.. outcome.Trace.Events];
        ShotEvent? goal = events.Find(e => e.Kind == ShotEventKind.Pocketed) ?? events.Find(e => e.BallB is not null);
        Assert.True(goal is not null, "the track misses its goal");
        Assert.Equal(
            cushions,
            events.Count(e => e.BallA == goal.BallA && e.Kind == ShotEventKind.Cushion && e.Time < goal.Time));
    }
}
