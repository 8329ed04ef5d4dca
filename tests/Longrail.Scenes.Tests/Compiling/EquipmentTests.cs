using Longrail.Physics.Equipment;

namespace Longrail.Scenes.Tests.Compiling;

public sealed class EquipmentTests
{
    [Fact]
    public void A_scene_that_says_nothing_is_played_on_a_nine_foot_pool_table() =>
        Assert.Equal(EquipmentPresets.With(EquipmentPresets.Tables.Single(table => table.Name == "pool-9ft")), Of(""));

    [Theory]
    [InlineData("carom-10ft", 0.0615, 0.037)]
    [InlineData("snooker-12ft", 0.0525, 0.03675)]
    public void A_table_brings_its_balls_and_the_height_of_its_cushions(
        string table, double diameter, double noseHeight)
    {
        EquipmentSpec used = Of($"\"table\":{{\"preset\":\"{table}\"}}");
        Assert.Equal(diameter, used.BallSet.Diameter);
        Assert.Equal(noseHeight, used.Cushion.NoseHeight, 1e-17);
    }

    [Fact]
    public void A_number_wins_over_the_name_that_stands_for_it()
    {
        EquipmentSpec used = Of(
            """
            "table": {"preset":"pool-8ft","length":"90 in"}, "cloth": {"state":"damp","rollingFriction":0.011},
            "ballSet": {"state":"dirty","friction":{"decay":1}}
            """);
        BallFriction dirty = EquipmentPresets.BallConditions.Single(condition => condition.Name == "dirty").Friction;
        Assert.Equal(90 * 0.0254, used.Table.Length, 1e-15);
        Assert.Equal(46 * 0.0254, used.Table.Width, 1e-15);
        Assert.Equal(0.011, used.Cloth.RollingFriction);
        Assert.Equal(dirty with { Decay = 1 }, used.BallSet.Friction);
    }

    // Common practice, no source: the cushions wear the same cloth as the bed.
    [Fact]
    public void The_state_of_the_cloth_also_covers_the_cushions()
    {
        double playedIn = Of("").Cushion.Friction;
        Assert.True(Of("\"cloth\":{\"state\":\"new\"}").Cushion.Friction < playedIn);
        Assert.True(Of("\"cloth\":{\"state\":\"damp\"}").Cushion.Friction > playedIn);
        Assert.Equal(0.3, Of("\"cloth\":{\"state\":\"damp\"},\"cushion\":{\"friction\":0.3}").Cushion.Friction);
    }

    // Common practice, no source: dirtier balls throw more.
    [Fact]
    public void Dirty_balls_grip_more_than_clean_ones_and_polished_ones_less()
    {
        double[] slipSpeeds = [0, 0.5, 2, 7];
        BallFriction polished = Of("\"ballSet\":{\"state\":\"polished\"}").BallSet.Friction;
        BallFriction clean = Of("").BallSet.Friction;
        BallFriction dirty = Of("\"ballSet\":{\"state\":\"dirty\"}").BallSet.Friction;
        Assert.All(slipSpeeds, v => Assert.True(polished.At(v) < clean.At(v) && clean.At(v) < dirty.At(v)));
    }

    [Fact]
    public void A_wider_mouth_brings_a_wider_drop()
    {
        PocketSpec side = Of("\"table\":{\"pockets\":{\"side\":{\"mouth\":\"5 1/4 in\"}}}").Table.Side!;
        Assert.Equal(5.25 * 0.0254, side.Mouth, 1e-16);
        Assert.Equal(0.5 * side.Mouth, side.DropRadius);
        Assert.Equal(EquipmentPresets.DefaultTable.Table.Side!.Shelf, side.Shelf);
    }

    [Fact]
    public void A_carom_table_may_be_given_pockets()
    {
        TableSpec table = Of("""  "table":{"preset":"carom-10ft","pockets":{"corner":{"mouth":"5 in"}}}  """).Table;
        Assert.Equal(0.127, table.Corner!.Mouth, 1e-16);
        Assert.Equal(EquipmentPresets.DefaultTable.Table.Side, table.Side);
    }

    [Theory]
    [InlineData("\"63.5 %\"")]
    [InlineData("\"0.635 D\"")]
    [InlineData("\"1.27 R\"")]
    public void The_nose_may_be_a_part_of_the_ball(string height) =>
        Assert.Equal(
            0.635 * 0.0615,
            Of($"\"ballSet\":{{\"diameter\":0.0615}},\"cushion\":{{\"noseHeight\":{height}}}").Cushion.NoseHeight,
            1e-16);

    [Theory]
    [InlineData("\"cushion\":{\"noseHeight\":\"49 %\"}", "cushion.noseHeight")]
    [InlineData("\"cushion\":{\"noseHeight\":\"1.1 D\"}", "cushion.noseHeight")]
    [InlineData("\"ballSet\":{\"diameter\":0.14}", "cushion.noseHeight")]
    [InlineData("\"table\":{\"width\":0.55,\"pockets\":{\"corner\":{\"mouth\":0.4}}}", "table.pockets")]
    public void Equipment_that_does_not_fit_together_is_refused(string fields, string path) =>
        Assert.Contains(SceneFiles.Errors(SceneFiles.OneBall(fields)), error => error.Path == path);

    [Fact]
    public void A_ball_that_does_not_fit_under_the_nose_is_refused() =>
        Assert.Equal(
            "balls[0].diameter",
            SceneFiles.Error("""{"balls":[{"id":"9","x":1,"y":0.5,"diameter":0.1}]}""").Path);

    private static EquipmentSpec Of(string fields) => SceneFiles.Ready(SceneFiles.OneBall(fields)).Setup.Equipment;
}
