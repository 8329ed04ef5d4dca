using System.Runtime.CompilerServices;
using System.Xml.Linq;
using Longrail.Coaching.Contrasts;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Outcomes;
using Longrail.Scenes.Reading;
using Longrail.TestKit;

namespace Longrail.Drawing.Tests;

public class ShotMotionTests
{
    // Where a page puts a ball between two keys, against the trace: a braking of 0.2 g leaves its chord by a t^2 / 8 =
    // 4 micrometres in 1/240 s, and places are written to 1e-4 of a sheet unit of about 1.5 mm. Rubber is harder: a
    // ball that turns round in 8 ms at 3 m/s is braked by 750 m/s^2, 1.6 mm; but every stretch in the rubber is a key
    // of its own.
    private const double Place = 2e-5;

    [Theory]
    [InlineData("first-bank.json")]
    [InlineData("long-rail-stop-bank.json")]
    [InlineData("three-cushion-track.json")]
    public void Between_two_keys_a_ball_is_where_the_trace_has_it_and_turned_as_there(string name)
    {
        ShotPictureInput input = Input(name);
        Plan plan = ShotPicture.DrawParts(input, 1900);
        ShotMotion motion = ShotMotion.Of(input, plan.View);
        Assert.NotEmpty(motion.Balls);
        foreach (BallMotion ball in motion.Balls)
        {
            double end = ball.Gone ?? motion.Duration;
            for (double time = 0.003; time < end; time += 0.0171)
            {
                (TablePoint at, Rotation turned) = Between(ball, time, plan.View);
                Vec2 place = input.Trace.StateAt(ball.Ball, time).Position;
                Assert.InRange(at.ToVec2().DistanceTo(place), 0, Place);
                Assert.InRange(turned.AngleTo(input.Trace.OrientationAt(ball.Ball, time)), 0, Tolerance.Orientation);
            }
        }
    }

    [Fact]
    public void A_ball_is_gone_when_it_drops()
    {
        ShotPictureInput input = Input("first-bank.json");
        ShotMotion motion = ShotMotion.Of(input, ShotPicture.DrawParts(input, 1900).View);
        Assert.Equal(MotionPhase.Pocketed, input.Trace.Balls[1].Phase);
        Assert.Equal(input.Trace.Events.Single(e => e.Pocket is not null).Time, motion.Balls[1].Gone);
        Assert.Null(motion.Balls[0].Gone);
    }

    [Fact]
    public void The_two_parts_of_a_plan_are_sound_and_each_numbered_event_is_a_group()
    {
        ShotPictureInput input = Input("first-bank.json");
        Plan plan = ShotPicture.DrawParts(input, 1900);
        XElement root = SvgReading.Sound(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1900 1000\"><title>t</title><desc>d</desc>"
            + $"{plan.Table}{plan.Shot}</svg>");
        string[] numbers = [.. SvgReading.All(root, "g").Where(g => (string?)g.Attribute("class") == "event")
            .Select(g => (string)g.Attribute("data-number")!)];
        Assert.Equal(["1", "2", "3", "4", "5"], numbers);
        Assert.Equal(plan.Numbered, numbers.Length);
        Assert.Equal(numbers,
            ShotPicture.Lines(input).Where(line => line.Number is not null).Select(line => $"{line.Number}"));
    }

    [Fact]
    public void A_point_of_the_sheet_goes_back_to_the_table()
    {
        Viewport view = ShotPicture.DrawParts(Input("first-bank.json"), 1900).View;
        TablePoint back = view.ToTable(view.ToSheet(new TablePoint(1.234, 0.567)));
        Assert.Equal((1.234, 0.567), (Math.Round(back.X, 12), Math.Round(back.Y, 12)));
    }

    [Fact]
    public void A_comparison_moves_the_banked_ball_and_the_cue_ball_of_every_row()
    {
        Variation speeds = new("stroke.speed", ["2.5 m/s", "3 m/s"]);
        Contrast contrast = ContrastRunner.Run(new ContrastRequest(Read("first-bank.json"), [speeds])).Contrast!;
        Plan plan = ContrastPicture.DrawParts(contrast, 1900);
        ShotMotion motion = ShotMotion.Of(contrast, plan.View);
        Assert.Equal(["base", "", "A", ""], motion.Balls.Select(ball => ball.Name));
        Assert.Equal(contrast.Rows.Max(row => row.Trace.Duration), motion.Duration);
        Assert.Contains("<g class=\"variant\" data-number=\"1\">", plan.Shot, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(399)]
    [InlineData(double.NaN)]
    [InlineData(10001)]
    public void A_sheet_too_narrow_or_too_wide_is_a_callers_mistake(double width) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ShotPicture.DrawParts(Input("first-bank.json"), width));

    // As the page does it: straight on, and the shorter way round.
    private static (TablePoint At, Rotation Turned) Between(BallMotion ball, double time, Viewport view)
    {
        // After its last key a ball lies still.
        time = Math.Min(time, Math.BitDecrement(ball.Keys[^7]));
        int k = 0;
        while (ball.Keys[7 * (k + 1)] <= time)
            k++;
        ReadOnlySpan<double> a = ball.Keys.AsSpan(7 * k, 7);
        ReadOnlySpan<double> b = ball.Keys.AsSpan(7 * k + 7, 7);
        double part = (time - a[0]) / (b[0] - a[0]);
        var at = new SvgPoint(a[1] + part * (b[1] - a[1]), a[2] + part * (b[2] - a[2]));
        var from = new Rotation(a[3], a[4], a[5], a[6]);
        Rotation step = from.Inverse().Then(new Rotation(b[3], b[4], b[5], b[6]));
        var axis = new Vec3(step.X, step.Y, step.Z);
        double angle = 2 * Math.Atan2(axis.Length, step.W);
        if (angle > Math.PI)
            angle -= 2 * Math.PI;
        Vec3 turn = axis.Length > 0 ? axis * (part * angle / axis.Length) : Vec3.Zero;
        return (view.ToTable(at), from.Then(Rotation.FromVector(turn)).Normalized());
    }

    private static ShotPictureInput Input(string name)
    {
        Outcome outcome = Outcome.Of(SceneCompiler.Compile(Read(name)).Ready!);
        return new ShotPictureInput
        {
            Trace = outcome.Trace,
            Readings = outcome.Readings,
            Names = outcome.Scene.BallIds,
            StripeAxes = outcome.Scene.StripeAxes,
        };
    }

    private static Scene Read(string name, [CallerFilePath] string thisFile = "") => SceneReader.Read(
        File.ReadAllBytes(Path.Combine(Path.GetDirectoryName(thisFile)!, "..", "..", "scenes", name))).Scene!;
}
