using Longrail.Coaching.Contrasts;
using Longrail.Scenes;
using static Longrail.Coaching.Tests.Contrasts.ContrastScenes;

namespace Longrail.Coaching.Tests.Contrasts;

public class ContrastRunnerTests
{
    [Theory]
    [InlineData("stroke.speed", "1.1 m/s", new[] { "stroke.speed" })]
    [InlineData("stroke.tip.right", "1/8 tip", new[] { "stroke.tip.right" })]
    [InlineData("cloth.slidingFriction", "0.25", new[] { "cloth.slidingFriction" })]
    [InlineData("balls.cue.x", "0.82", new[] { "balls[0].x" })]
    [InlineData("cushion.law", "impulse", new[] { "cushion.law" })]
    public void Exactly_the_varied_field_differs_from_the_base(string path, string level, string[] expected)
    {
        Contrast contrast = Run(Alone, Hold.Stick, Vary(path, level));

        Assert.Equal(expected, Differences(contrast.Base.AsUsed, contrast.Rows[1].AsUsed));
    }

    [Fact]
    public void A_state_is_one_field_of_the_scene_though_it_stands_for_several_numbers()
    {
        Contrast contrast = Run(Straight, Hold.Stick, Vary("ballSet.state", "polished", "dirty"));

        foreach (ContrastRow row in contrast.Rows.Skip(1))
        {
            Assert.Equal(["ballSet.state"], Differences(contrast.Base.Scene, row.Scene));
            Assert.All(
                Differences(contrast.Base.AsUsed, row.AsUsed),
                path => Assert.StartsWith("ballSet.", path, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_base_is_the_scene_as_it_is_and_its_change_is_exactly_zero()
    {
        Contrast contrast = Run(Alone, Hold.Stick, Vary("stroke.speed", "1.8", "4.4"));

        Assert.Equal(["base", "A", "B"], contrast.Rows.Select(r => r.Label));
        Assert.True(contrast.Base.IsBase);
        Assert.Equal("2.2 m/s", contrast.Base.Values.Single().Text);
        Assert.Empty(Differences(Read(Alone), contrast.Base.Scene));
        Assert.Equal(0.0, contrast.Base.Change!.Metres);
        Assert.Equal(0.0, contrast.Base.Change.Diamonds);
        Assert.Null(contrast.Base.Change.IsLonger);
        Assert.NotEqual(0.0, contrast.Rows[1].Change!.Metres);
    }

    [Theory]
    [InlineData("stroke.aim", "61 deg", "60 deg")]
    [InlineData("balls.cue.x", "0.9", "0.8 m")]
    [InlineData("balls[0].x", "0.9", "0.8 m")]
    [InlineData("cushion.law", "impulse", "yielding")]
    [InlineData("cloth.slidingFriction", "0.3", "0.2")]
    public void The_bases_value_is_shown_with_its_unit_also_where_the_scene_leaves_it_to_the_default(
        string path, string level, string expected) =>
        Assert.Equal(expected, Run(Alone, Hold.Stick, Vary(path, level)).Base.Values.Single().Text);

    [Fact]
    public void A_level_at_which_the_scene_stands_already_is_the_base_in_the_words_it_was_asked_for()
    {
        Contrast contrast = Run(Alone, Hold.Stick, Vary("stroke.speed", "1.1 m/s", "2.2 m/s", "4.4 m/s"));

        Assert.Equal(["base", "A", "B"], contrast.Rows.Select(r => r.Label));
        Assert.Equal(["2.2 m/s", "1.1 m/s", "4.4 m/s"], contrast.Rows.Select(r => r.Values.Single().Text));
    }

    [Fact]
    public void Holding_the_stick_keeps_its_line_and_lets_squirt_turn_the_path()
    {
        Contrast contrast = Run(Alone, Hold.Stick, Vary("stroke.tip.right", "-1/4 tip", "1/4 tip"));

        double aim = contrast.Base.Trace.Setup.Stroke!.Stroke.Aim;
        Assert.All(contrast.Rows, row => Assert.Equal(aim, row.Trace.Setup.Stroke!.Stroke.Aim));
        // Right side squirts the ball to the left of the stick, left side to the right (common practice, no source).
        Assert.True(Launch(contrast.Rows[2]) > Launch(contrast.Base) + 1e-4);
        Assert.True(Launch(contrast.Rows[1]) < Launch(contrast.Base) - 1e-4);
    }

    // The bound is what the task asks for; one correction is exact up to rounding, since squirt does not depend on the
    // aim.
    [Theory]
    [InlineData(Alone)]
    [InlineData(Straight)]
    public void Holding_the_path_re_aims_so_that_the_cue_ball_leaves_along_the_same_line(string scene)
    {
        Contrast contrast = Run(scene, Hold.Path, Vary("stroke.tip.right", "-1/4 tip", "0", "1/4 tip", "0.4 R"));

        foreach (ContrastRow row in contrast.Rows)
            Assert.Equal(Launch(contrast.Base), Launch(row), 1e-9);
        Assert.NotEqual(contrast.Base.Trace.Setup.Stroke!.Stroke.Aim, contrast.Rows[^1].Trace.Setup.Stroke!.Stroke.Aim);
        string[] allowed = ["stroke.aim", "stroke.aim.solved", "stroke.tip.right"];
        Assert.All(contrast.Rows, row => Assert.Empty(Differences(contrast.Base.AsUsed, row.AsUsed).Except(allowed)));
    }

    [Fact]
    public void An_aim_that_had_to_be_found_is_not_found_anew_for_each_level()
    {
        Contrast contrast = Run(Straight, Hold.Stick, Vary("stroke.tip.right", "0", "1/4 tip"));

        double aim = contrast.Base.Trace.Setup.Stroke!.Stroke.Aim;
        Assert.All(contrast.Rows, row => Assert.Equal(aim, row.Trace.Setup.Stroke!.Stroke.Aim));
    }

    [Fact]
    public void Two_varied_fields_are_combined_and_rows_in_which_both_differ_are_marked()
    {
        Contrast contrast = Run(
            Alone, Hold.Stick, Vary("stroke.speed", "2.2", "4.4"), Vary("stroke.tip.right", "0", "1/8 tip"));

        Assert.True(contrast.VariesTwoThings);
        Assert.Equal(["base", "A", "B", "C"], contrast.Rows.Select(r => r.Label));
        Assert.Equal([false, false, false, true], contrast.Rows.Select(r => r.TwoThingsChanged));
        Assert.Equal(["stroke.speed", "stroke.tip.right"], Differences(contrast.Base.AsUsed, contrast.Rows[3].AsUsed));
    }

    [Fact]
    public void One_varied_field_is_never_marked()
    {
        Contrast contrast = Run(Alone, Hold.Path, Vary("stroke.tip.right", "1/8 tip", "1/4 tip"));

        Assert.False(contrast.VariesTwoThings);
        Assert.DoesNotContain(contrast.Rows, r => r.TwoThingsChanged);
    }

    [Fact]
    public void An_unknown_field_is_refused_with_the_nearest_name()
    {
        SceneError error = Assert.Single(
            Errors(Alone, Hold.Stick, Vary("stroke.sped", "1", "2", "3")).DistinctBy(e => e.Suggestion));

        Assert.Contains("unknown field", error.Problem, StringComparison.Ordinal);
        Assert.Equal("\"speed\"", error.Suggestion);
    }

    [Fact]
    public void Each_wrong_level_is_named_and_nothing_is_played()
    {
        IReadOnlyList<SceneError> errors = Errors(
            Alone, Hold.Stick, Vary("stroke.speed", "1.2 m/s", "7 mm", "3 m/s", "-1"));

        Assert.Equal(2, errors.Count);
        Assert.StartsWith("level \"7 mm\"", errors[0].Problem, StringComparison.Ordinal);
        Assert.StartsWith("level \"-1\"", errors[1].Problem, StringComparison.Ordinal);
        Assert.All(errors, e => Assert.Equal("stroke.speed", e.Path));
    }

    [Fact]
    public void A_level_that_miscues_is_named()
    {
        SceneError error = Assert.Single(Errors(Alone, Hold.Stick, Vary("stroke.tip.right", "1/8 tip", "0.8 R")));

        Assert.StartsWith("level \"0.8 R\": miscue", error.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_level_that_puts_other_balls_on_the_table_is_refused()
    {
        SceneError error = Assert.Single(Errors(
            Alone, Hold.Stick, Vary("balls", """[{"id":"cue","x":0.8,"y":0.4},{"id":"9","x":1,"y":1}]""")));

        Assert.Contains("other balls", error.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_on_another_table_is_named()
    {
        Contrast contrast = Run(Alone, Hold.Stick, Vary("table.length", "2.6 m"));

        string note = Assert.Single(ContrastNotes.Of(contrast));
        Assert.StartsWith("A: played on another table", note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_level_of_one_of_two_fields_is_reported_once()
    {
        IReadOnlyList<SceneError> errors = Errors(
            Alone, Hold.Stick, Vary("stroke.speed", "nonsense", "2"),
            Vary("stroke.tip.right", "0", "1/8 tip", "1/4 tip"));

        Assert.Single(errors);
    }

    [Fact]
    public void Varying_one_field_twice_or_the_aim_while_the_path_is_held_is_refused()
    {
        Assert.Equal(
            "stroke.speed", Errors(Alone, Hold.Stick, Vary("stroke.speed", "1"), Vary("stroke.speed", "2"))[0].Path);
        Assert.Contains(
            "path", Errors(Alone, Hold.Path, Vary("stroke.aim", "50 deg"))[0].Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Holding_the_path_without_a_stroke_is_refused()
    {
        const string Launched = """
            { "balls": [ { "id": "cue", "x": 1, "y": 0.6 } ], "launch": [ { "ball": "cue", "velocity": [1, 1] } ] }
            """;

        Assert.Equal("stroke", Errors(Launched, Hold.Path, Vary("cloth.slidingFriction", "0.1"))[0].Path);
        Assert.Equal(2, Run(Launched, Hold.Stick, Vary("cloth.slidingFriction", "0.1")).Rows.Count);
    }

    [Fact]
    public void More_levels_than_anyone_can_compare_are_refused()
    {
        string[] levels = [.. Enumerable.Range(1, 15).Select(k => $"{k} m/s")];
        string[] tips = [.. Enumerable.Range(0, 15).Select(k => $"{k} mm")];

        IReadOnlyList<SceneError> errors = Errors(
            Alone, Hold.Stick, Vary("stroke.speed", levels), Vary("stroke.tip.right", tips));
        Assert.Contains("225", errors[0].Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void No_variation_or_three_are_a_callers_mistake()
    {
        Scene scene = Read(Alone);
        Variation v = Vary("stroke.speed", "1");
        Assert.Throws<ArgumentException>(() => ContrastRunner.Run(new ContrastRequest(scene, [])));
        Assert.Throws<ArgumentException>(() => ContrastRunner.Run(new ContrastRequest(scene, [v, v, v])));
        Assert.Throws<ArgumentException>(() => ContrastRunner.Run(new ContrastRequest(scene, [Vary("stroke.speed")])));
    }

    private static double Launch(ContrastRow row) => row.Trace.Setup.Stroke!.Result.Velocity.Angle;
}
