using System.Runtime.CompilerServices;
using CsCheck;
using Longrail.Coaching.Effects;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using static Longrail.Coaching.Tests.Effects.EffectScenes;

namespace Longrail.Coaching.Tests.Effects;

public class EffectsRunnerTests
{
    // A few hundred sums of places of a metre or two.
    private const double Rounding = 1e-12;

    // The rubber is integrated in steps whose rounding depends on where along the rail the ball stands.
    private const double SameRubber = 1e-9;

    private static readonly Gen<string> _bank =
        from way in Gen.Double[55, 125]
        from cut in Gen.Double[-45, 45]
        from speed in Gen.Double[1.2, 4.5]
        from right in Gen.OneOf(Gen.Const(0.0), Gen.Double[-0.3, 0.3])
        from above in Gen.OneOf(Gen.Const(0.0), Gen.Double[-0.3, 0.3])
        from across in Gen.Double[0.6, 1.1]
        from distance in Gen.Double[0.1, 0.45]
        from balls in Gen.OneOf(Gen.Const("polished"), Gen.Const("clean"), Gen.Const("dirty"))
        from law in Gen.OneOf(Gen.Const("yielding"), Gen.Const("impulse"))
        select Bank(
            way, cut, speed, right, above, across, distance,
            $$"""
            "ballSet": { "state": "{{balls}}" }, "cushion": { "law": "{{law}}" },
            """);

    [Fact]
    public void Parts_and_remainder_add_up_to_the_total_and_the_parts_to_the_model() => _bank.Sample(
        text =>
        {
            EffectBudget budget = Budget(text);
            double parts = budget.Effects.Sum(effect => effect.Metres);
            Assert.Equal(budget.Total, parts + budget.Remainder, Rounding);
            Assert.Equal(budget.Target.Sense * (budget.ModelPlace - budget.MirrorPlace), parts, Rounding);
            Assert.Equal(parts, budget.Effects.Sum(effect => effect.AloneMetres) + budget.Interplay, Rounding);
            Assert.True(double.IsFinite(parts + budget.Total + budget.Interplay));
        },
        iter: 60);

    [Fact]
    public void With_every_cause_at_work_the_model_is_the_shot_itself_where_nothing_else_is_touched() => _bank.Sample(
        text =>
        {
            EffectBudget budget = Budget(text);
            bool touched = budget.Trace.Events.Take(budget.LastContact).Count(
                e => e.Kind == ShotEventKind.BallsMeet) > 1;
            Assert.True(touched || Math.Abs(budget.Remainder) < SameRubber, $"{budget.Remainder:R}\n{text}");
        },
        iter: 60);

    // The mirror by plain geometry, without the engine: ghost ball, line of centres, the angle back as in.
    [Fact]
    public void With_every_cause_off_the_shot_is_the_plain_mirror_bank() => _bank.Sample(
        text =>
        {
            EffectBudget budget = Budget(text);
            if (budget.AlwaysOn.Count > 0)
                return;
            ShotSetup setup = budget.Trace.Setup;
            Vec2 cue = setup.Balls[0].Start.Position;
            Vec2 ball = setup.Balls[1].Start.Position;
            Vec2 aim = Vec2.FromAngle(setup.Stroke!.Stroke.Aim);
            double along = (ball - cue).Dot(aim);
            double beside = (ball - cue).Cross(aim);
            double reach = 2 * setup.Balls[0].Radius;
            Vec2 ghost = cue + (along - Math.Sqrt(reach * reach - beside * beside)) * aim;
            Vec2 way = (ball - ghost).Normalized();
            double line = setup.Equipment.Table.Width
                - TableOutline.Reach(setup.Balls[1].Radius, setup.Equipment.Cushion.NoseHeight);
            Vec2 touch = ball + (line - ball.Y) / way.Y * way;
            var back = new Vec2(way.X, -way.Y);
            EffectTarget target = budget.Target;
            Vec2 arrival = touch + (target.Origin - touch).Dot(target.Across) / back.Dot(target.Across) * back;

            Assert.Equal(target.PlaceOf(arrival), budget.MirrorPlace, 1e-9);
            Assert.Equal(touch.X, budget.MirrorPath.Ball[1].X, 1e-9);
            Assert.Equal(ghost.X, budget.MirrorPath.Striker[^1].X, 1e-9);
        },
        iter: 60);

    [Fact]
    public void The_same_scene_gives_the_same_budget_bit_for_bit()
    {
        string text = Bank(80, 20, 2.2, right: 0.2);
        EffectBudget a = Budget(text);
        EffectBudget b = Budget(text);

        Assert.Equal(a.Effects.Select(e => e.Metres), b.Effects.Select(e => e.Metres));
    }

    [Fact]
    public void A_mirrored_shot_has_the_same_budget()
    {
        EffectBudget right = Budget(Bank(75, 20, 2.2, right: 0.15, above: 0.1));
        EffectBudget left = Budget(Bank(105, -20, 2.2, right: -0.15, above: 0.1));

        Assert.Equal("long", right.Target.PositiveWord);
        for (int k = 0; k < right.Effects.Count; k++)
            Assert.Equal(right.Effects[k].Metres, left.Effects[k].Metres, SameRubber);
    }

    [Fact]
    public void Clean_balls_have_no_condition_to_speak_of() =>
        Assert.Equal(0.0, Budget(Bank(80, 30, 2.0)).Share(EffectKind.BallCondition));

    [Fact]
    public void Long_means_what_the_reading_of_the_cushion_means()
    {
        foreach (double way in (double[])[65, 80, 100, 115])
        {
            // No squirt, no throw: then the touch is the mirror's, and the whole budget is the rebound's.
            EffectBudget budget = Budget(Bank(way, 0, 2.4));
            var readings = Physics.Shots.Readings.TraceReadings.Of(budget.Trace);
            var rebound = (Physics.Shots.Readings.CushionReading)readings.Events[budget.LastContact]!;

            Assert.Equal(rebound.LongOfMirrorDiamonds!.Value, budget.Total / budget.Target.Diamond, 1e-9);
        }
    }

    [Theory]
    [InlineData("two-cushion-bank.json", 2)]
    [InlineData("three-cushion-track.json", 3)]
    public void The_parts_at_each_cushion_add_up_to_the_share(string scene, int cushions)
    {
        EffectBudget budget = Budget(File.ReadAllText(ScenePath(scene)));

        Assert.Equal(cushions, budget.Cushions.Count);
        EffectKind[] atCushions = [EffectKind.Roll, EffectKind.Curve, EffectKind.Rubber, EffectKind.Speed];
        foreach (EffectShare effect in budget.Effects)
        {
            Assert.Equal(atCushions.Contains(effect.Kind) ? cushions : 0, effect.PerCushionMetres.Count);
            if (effect.PerCushionMetres.Count > 0)
                Assert.Equal(effect.Metres, effect.PerCushionMetres.Sum(), Rounding);
        }
    }

    [Fact]
    public void A_cue_ball_alone_has_no_hit_to_split()
    {
        EffectBudget budget = Budget("""
            { "table": { "pockets": "none" }, "balls": [ { "id": "cue", "x": 0.8, "y": 0.4 } ],
              "stroke": { "aim": "60 deg", "speed": 2.2, "tip": { "right": "0.2 R" } } }
            """);

        Assert.Null(budget.Striker);
        Assert.Equal(
            [
                EffectKind.SquirtAndSwerve, EffectKind.Side, EffectKind.Roll, EffectKind.Curve, EffectKind.Rubber,
                EffectKind.Speed,
            ],
            budget.Effects.Select(e => e.Kind));
        Assert.Equal("side", EffectNames.Of(EffectKind.Side, budget));
    }

    [Fact]
    public void A_kick_is_measured_beside_the_ball_that_it_meets()
    {
        EffectBudget budget = Budget(File.ReadAllText(ScenePath("three-cushion-track.json")));

        Assert.Equal(EffectTargetKind.Ball, budget.Target.Kind);
        Assert.Equal("red", budget.Names[budget.Target.Met!.Value]);
        ShotEvent meets = budget.Trace.Events.First(e => e.Kind == ShotEventKind.BallsMeet);
        Assert.Equal(0.0, (budget.Target.PointAt(budget.Place) - meets.BeforeA.Position).Length, 1e-9);
    }

    [Fact]
    public void A_cut_straight_into_a_pocket_is_measured_at_its_mouth()
    {
        EffectBudget budget = Budget(File.ReadAllText(ScenePath("corner-cut-dirty.json")));

        Assert.Equal(EffectTargetKind.Mouth, budget.Target.Kind);
        Assert.Equal(PocketName.FootLeft, budget.Target.Pocket);
        Assert.Empty(budget.Cushions);
        // (mouth - ball)/2 of a corner of 4.5625 in and a ball of 2.25 in, along the mouth itself.
        Assert.Equal((4.5625 - 2.25) / 2 * 0.0254, budget.Target.HalfOpening!.Value, 1e-12);
        Assert.Equal(
            [EffectKind.SquirtAndSwerve, EffectKind.CutThrow, EffectKind.SpinThrow, EffectKind.BallCondition],
            budget.Effects.Select(e => e.Kind));
    }

    [Fact]
    public void A_second_touch_stands_in_the_remainder_and_is_named()
    {
        EffectBudget budget = Budget("""
            { "balls": [
                { "id": "cue", "along": 2.6, "across": 1.6 }, { "id": "3", "along": 2.6, "frozenTo": "left" } ],
              "stroke": { "aim": { "at": "3", "cut": "5 deg left" }, "speed": 0.9 } }
            """);

        Assert.True(Math.Abs(budget.Remainder) > 0.01);
        Assert.Contains(budget.Notes, note => note.Contains("ball 3 touches cue at", StringComparison.Ordinal));
        Assert.Contains(budget.Notes, note => note.StartsWith("Ball 3 lies on the cushion", StringComparison.Ordinal));
    }

    [Fact]
    public void Squirt_without_which_the_ball_would_be_missed_is_left_on_and_said_so()
    {
        // A thin cut from far away: the line of the stick passes the object ball, squirt brings the cue ball to it.
        EffectBudget budget = Budget("""
            { "table": { "pockets": "none" },
              "balls": [ { "id": "cue", "x": 0.2, "y": 0.6 }, { "id": "9", "x": 1.8, "y": 0.665 } ],
              "stroke": { "aim": "0 deg", "speed": 4, "tip": { "right": "0.45 R" } } }
            """);

        Assert.Equal([EffectKind.SquirtAndSwerve], budget.AlwaysOn);
        Assert.DoesNotContain(budget.Effects, e => e.Kind == EffectKind.SquirtAndSwerve);
        Assert.Contains(
            budget.Notes, n => n.StartsWith("Squirt and swerve cannot be switched off", StringComparison.Ordinal));
        Assert.Equal(0.0, budget.Remainder, SameRubber);
    }

    [Theory]
    [InlineData("", "", null, "nothing is struck")]
    [InlineData("", """ "aim": 0, "speed": 0.2 """, null, "ball cue stops before it comes to a cushion")]
    [InlineData(""" "x": 1.5, "y": 0.6 """, """ "aim": 0, "speed": 0.8 """, null, "ball 9 stops before it comes to a")]
    [InlineData(""" "x": 1, "y": 1 """, """ "aim": 0, "speed": 2 """, "9", "ball 9 does not move")]
    [InlineData(
        """ "x": 1.5, "y": 0.6 """, """ "aim": "2 deg", "speed": 3, "tip": { "above": "0.4 R" } """, "cue",
        "ball cue meets 9 before it comes to a cushion")]
    public void A_shot_without_a_budget_is_told_why(string nine, string stroke, string? ball, string expected)
    {
        string other = nine.Length > 0 ? $$""", { "id": "9", {{nine}} }""" : "";
        string struck = stroke.Length > 0 ? $$""", "stroke": { {{stroke}} }""" : "";
        string text = $$"""{ "balls": [ { "id": "cue", "x": 1, "y": 0.6 }{{other}} ]{{struck}} }""";

        EffectsAnswer answer = Run(text, new EffectsOptions(ball));

        Assert.Null(answer.Budget);
        Assert.True(answer.IsUnreachable);
        Assert.Contains(expected, Assert.Single(answer.Errors).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ball_that_is_not_there_is_refused_with_those_that_are()
    {
        EffectsAnswer answer = Run(Bank(80, 0, 2), new EffectsOptions("7"));

        Assert.False(answer.IsUnreachable);
        Assert.Equal("cue, 9", Assert.Single(answer.Errors).Allowed);
    }

    [Fact]
    public void More_cushions_than_there_are_cannot_be_counted()
    {
        EffectsAnswer answer = Run(Bank(80, 0, 1.3), new EffectsOptions(Cushions: 3));

        Assert.Contains("not 3", Assert.Single(answer.Errors).Problem, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Run(Bank(80, 0, 2), new EffectsOptions(Cushions: 4)));
    }

    [Fact]
    public void Work_that_is_stopped_ends()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        Assert.Throws<OperationCanceledException>(() => EffectsRunner.Run(Ready(Bank(80, 0, 2)), null, stop.Token));
    }

    internal static string ScenePath(string name, [CallerFilePath] string thisFile = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(thisFile)!, "..", "..", "..", "scenes", name));
}
