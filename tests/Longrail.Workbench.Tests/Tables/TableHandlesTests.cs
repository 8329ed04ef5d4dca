using CsCheck;
using Longrail.Drawing;
using Longrail.Physics.Geometry;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Outcomes;
using Longrail.Workbench.Tables;

namespace Longrail.Workbench.Tests.Tables;

/// <summary>What a place on the drawing says in the scene's fields.</summary>
public sealed class TableHandlesTests
{
    private static readonly Outcome _outcome = Play(SampleScenes.Opening.Scene!);

    [Fact]
    public void A_ball_dropped_anywhere_on_the_bed_is_a_scene_and_stands_there() =>
        Gen.Select(Gen.Double[-0.1, 2.64], Gen.Double[-0.1, 1.37], Gen.Bool).Sample((x, y, snaps) =>
        {
            Scene scene = SampleScenes.Opening.Scene!;
            foreach ((string path, string value) in TableHandles.BallEdit(_outcome, "9", new TablePoint(x, y), snaps))
                scene = SceneSetting.With(scene, path, value).Scene!;
            SceneCompilation made = SceneCompiler.Compile(SceneSetting.With(scene, "stroke.aim", "0").Scene!);
            if (made.Ready is null)
            {
                // On the other ball, or in a pocket's mouth: refused in words.
                return made.Errors[0].Problem.Contains("overlap", StringComparison.Ordinal)
                    || made.Errors[0].Problem.Contains("pocket", StringComparison.Ordinal)
                    || made.Errors[0].Problem.Contains("cushion", StringComparison.Ordinal);
            }

            Vec2 at = made.Ready.Setup.Balls[1].Start.Position;
            var inside = new Vec2(Math.Clamp(x, 0.0275, 2.5125), Math.Clamp(y, 0.0275, 1.2425));
            return at.DistanceTo(inside) < 1.5 * BenchView.SnapReach;
        });

    [Theory]
    [InlineData(1.27, 0.636, 1.27, 0.635)]
    [InlineData(0.643, 0.63, 0.635, 0.635)]
    [InlineData(0.99, 0.32, 0.99, 0.3175)]
    [InlineData(0.9, 0.3, 0.9, 0.3)]
    public void Spots_and_half_diamonds_catch_a_ball(double x, double y, double wantedX, double wantedY)
    {
        Scene scene = SampleScenes.Opening.Scene!;
        foreach ((string path, string value) in TableHandles.BallEdit(_outcome, "9", new TablePoint(x, y), snaps: true))
            scene = SceneSetting.With(scene, path, value).Scene!;
        Vec2 at = Play(SceneSetting.With(scene, "stroke.aim", "0").Scene!).Trace.Setup.Balls[1].Start.Position;
        Assert.Equal(wantedX, at.X, 4);
        Assert.Equal(wantedY, at.Y, 4);
    }

    [Fact]
    public void The_grip_of_the_stick_gives_back_the_aim_where_it_lies() => Gen.Double[-3.1, 3.1].Sample(aim =>
    {
        Vec2 grip = TableHandles.AimGrip(_outcome, aim, 0);
        (_, string value) = TableHandles.AimEdit(_outcome, aim, 0, TablePoint.From(grip));
        double back = SceneSetting.With(SampleScenes.Opening.Scene!, "stroke.aim", value)
            .Scene!.Stroke!.Aim!.Angle!.Value.Value;
        // The field shows a thousandth of a degree.
        return Math.Abs(Math.IEEERemainder(back - aim, 2 * Math.PI)) < 0.0006 * Math.PI / 180;
    });

    [Fact]
    public void The_ghost_ball_where_it_lies_is_the_cut_that_was_read()
    {
        var meeting = TableHandles.Meeting(_outcome)!;
        (string path, string value) = TableHandles.ContactEdit(_outcome, 0, 1,
            TablePoint.From(meeting.BeforeA.Position))!.Value;
        Outcome again = Play(SceneSetting.With(SampleScenes.Opening.Scene!, path, value).Scene!);
        double cut = again.Readings.Events.OfType<Physics.Shots.Readings.MeetReading>().First().CutDegrees;
        double was = _outcome.Readings.Events.OfType<Physics.Shots.Readings.MeetReading>().First().CutDegrees;
        Assert.Equal(was, cut, 2);
    }

    private static Outcome Play(Scene scene) => Outcome.Of(SceneCompiler.Compile(scene).Ready!);
}
