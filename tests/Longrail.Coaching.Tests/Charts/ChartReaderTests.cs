using System.Text;
using Longrail.Coaching.Charts;
using Longrail.Coaching.Players;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using Longrail.Scenes.Reading;

namespace Longrail.Coaching.Tests.Charts;

public class ChartReaderTests
{
    private const string Layout = """
        { "table": { "preset": "pool-8ft" }, "ballSet": { "state": "dirty" }, "balls": [
             { "id": "cue", "along": 1, "across": 1 }, { "id": "9", "along": 5, "across": 3 } ] }
        """;

    [Theory]
    [InlineData("cross-side", CushionName.Right, PocketName.LeftSide)]
    [InlineData("cross-corner", CushionName.Right, PocketName.FootLeft)]
    [InlineData("long-rail", CushionName.Foot, PocketName.HeadLeft)]
    public void A_bank_alone_is_a_whole_question(string bank, CushionName off, PocketName pocket)
    {
        ChartRequest request = Good(new ChartQuestion { Bank = bank });
        Assert.Equal(off, request.Route.Off);
        Assert.Equal(pocket, request.Route.Pocket);
        Assert.Equal(CueHeight.Stun, request.Height);
        Assert.Equal(3, request.Tips.Count);
        Assert.True(request.Places.Diamonds.Count > 4);
        Assert.Equal("pool-9ft", request.Names.Table);
        Assert.Empty(ChartRunner.Run(request, null, TestContext.Current.CancellationToken).Errors);
    }

    [Theory]
    [InlineData("cross-side", null, "left", CushionName.Left, PocketName.RightSide)]
    [InlineData("cross-corner", "head-right", null, CushionName.Left, PocketName.HeadRight)]
    [InlineData("long-rail", null, "head", CushionName.Head, PocketName.FootLeft)]
    public void A_pocket_or_a_cushion_says_the_other(
        string bank, string? pocket, string? off, CushionName cushion, PocketName into)
    {
        ChartRequest request = Good(new ChartQuestion { Bank = bank, Pocket = pocket, Off = off });
        Assert.Equal(cushion, request.Route.Off);
        Assert.Equal(into, request.Route.Pocket);
        Assert.Empty(
            ChartRunner.Run(request with { Speeds = [3] }, null, TestContext.Current.CancellationToken).Errors);
    }

    [Fact]
    public void A_scene_gives_the_equipment_the_target_and_the_cue_ball()
    {
        var scene = SceneReader.ReadReady(Encoding.UTF8.GetBytes(Layout)).Ready!;
        ChartRequest kick = Good(new ChartQuestion { Scene = scene, Bank = "kick", Target = "9" });
        Assert.Equal(("pool-8ft", "dirty"), (kick.Names.Table!, kick.Names.Balls!));
        Assert.Equal(5 * kick.Equipment.Table.DiamondAlong, kick.Route.Target.X, 12);
        Assert.Equal(CueHeight.Follow, kick.Height);
        MapRequest map =
            ChartReader.Read(new ChartQuestion { Scene = scene, Bank = "cross-side", Map = "leeway" }).Map!;
        Assert.Equal(1, map.CueBall.X, 12);
    }

    [Fact]
    public void Places_are_read_in_diamonds_or_with_units()
    {
        ChartRequest line =
            Good(new ChartQuestion { Bank = "cross-side", Line = "1, 2 to 25 in, 2 diamonds", Places = "3" });
        Assert.Equal([new Vec2(1, 2), new Vec2(1.5, 2), new Vec2(2, 2)], line.Places.Diamonds);
        ChartRequest grid = Good(new ChartQuestion { Bank = "cross-side", Grid = "3x2", BallArea = "1,1 to 3,3" });
        Assert.Equal(
            [new(1, 1), new(2, 1), new(3, 1), new(1, 3), new(2, 3), new Vec2(3, 3)], grid.Places.Diamonds);
        ChartRequest half = Good(new ChartQuestion { Bank = "cross-side", Line = "1,2 to 3,2" });
        Assert.Equal([1, 1.5, 2, 2.5, 3], half.Places.Diamonds.Select(p => p.X));
        Assert.Equal(
            DiamondNumbering.Tens, Good(new ChartQuestion { Bank = "cross-side", Numbering = "tens" }).Numbering);
    }

    public static TheoryData<string, string> Wrong => new()
    {
        { "bank", "no bank is named" },
        { "bank=cross-side;table=carom-10ft",
            "bank: this table has no pockets, so it has no cross-side bank; allowed: kick" },
        {
            "bank=crosside",
            "bank: \"crosside\" is not known here; allowed: cross-side, cross-corner, long-rail, kick; "
            + "did you mean \"cross-side\"?"
        },
        { "bank=cross-side;table=pool-10ft", "table: \"pool-10ft\"" },
        { "bank=cross-side;pocket=foot-left",
            "pocket: a cross-side bank does not go into foot-left; allowed: right-side, left-side" },
        { "bank=cross-side;pocket=left-side;off=left",
            "off: a cross-side bank into left-side does not come off the left cushion; allowed: right" },
        { "bank=cross-side;speeds=0", "speeds: the number 0 is out of range; allowed: more than 0 to 30 m/s" },
        { "bank=cross-side;speeds=2 mph,3 mm", "speeds: \"3 mm\" is a length, not a speed" },
        { "bank=cross-side;tips=2 tip", "tips: \"2 tip\" is a miscue" },
        { "bank=cross-side;line=1,2 to 9,2",
            "line: a ball at 8, 2 would stand in a cushion or off the table; allowed: along from 0.09" },
        { "bank=cross-side;line=1,2", "line: \"1,2\"; allowed: two places" },
        { "bank=cross-side;grid=3 by 2", "grid: \"3 by 2\"; allowed: places along x places across" },
        { "bank=cross-side;grid=900x900", "grid: \"900x900\"; allowed: up to 2000 places" },
        { "bank=cross-side;distance=1 in",
            "distance: the balls' centres 25.4 mm apart; allowed: more than a ball's width" },
        { "bank=kick;distance=1 diamond", "distance: a kick has no object ball" },
        { "bank=kick;height=stun", "height: a kick has no object ball" },
        { "bank=kick;pocket=left-side", "pocket: a kick goes to a place or a ball" },
        { "bank=kick;target=9", "target: there is no ball \"9\"" },
        { "bank=kick;target=9,9", "target: a ball at 9, 9 would stand in a cushion or off the table" },
        { "bank=cross-side;target=6,2", "target: a cross-side bank goes into a pocket" },
        { "bank=cross-side;seed=2", "seed: belongs to a map" },
        { "bank=cross-side;map=chance", "map: \"chance\" is not known here; allowed: odds, leeway" },
        { "bank=kick;map=leeway", "bank: a map moves the object ball, and a kick has none" },
        { "bank=cross-side;map=leeway;grid=0x3", "grid: \"0x3\"" },
        { "bank=cross-side;map=leeway;grid=300x300", "grid: 300x300 places" },
        { "bank=cross-side;map=leeway;ball-area=0,0 to 9,4", "grid: a ball at" },
        { "bank=cross-side;map=leeway;cue=8,4", "cue: a ball at 8, 4 would stand in a cushion" },
        { "bank=cross-side;map=leeway;shots=10", "shots: belongs to a map of odds" },
        { "bank=cross-side;map=odds", "player: odds are somebody's" },
        { "bank=cross-side;map=odds;shots=0", "shots: \"0\"; allowed: a whole number from 1" },
        { "bank=cross-side;map=odds;seed=-1", "seed: \"-1\"; allowed: a whole number from 0" },
        { "bank=cross-side;map=odds;tips=0,1/8 tip", "tips: a map shows one place of the tip" },
        { "bank=cross-side;map=odds;numbering=tens", "numbering: belongs to a chart of corrections" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_wrong_question_is_told_what_would_be_right(string question, string expected)
    {
        IReadOnlyList<SceneError> errors = Errors(Question(question));
        Assert.Contains(errors, error => error.ToString().Contains(expected, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(-0.001, 0.05)]
    [InlineData(double.NaN, 0.05)]
    [InlineData(0.001, 1.0)]
    [InlineData(0.001, -0.1)]
    public void A_player_with_impossible_errors_is_refused(double aim, double speed)
    {
        var player = new Player("odd", aim, speed, 0, 0, 0);
        IReadOnlyList<SceneError> errors = Errors(
            new ChartQuestion { Bank = "cross-side", Map = "odds", Player = player, Grid = "1x1" });
        Assert.Contains(
            "player: \"odd\" has an error size that is negative or no number", errors[0].ToString(),
            StringComparison.Ordinal);
    }

    // What the reader lets pass the runner may still refuse.
    private static IReadOnlyList<SceneError> Errors(ChartQuestion question)
    {
        ChartReading reading = ChartReader.Read(question);
        if (reading.Chart is { } chart)
            return ChartRunner.Run(chart, null, TestContext.Current.CancellationToken).Errors;
        return reading.Map is { } map
            ? ChartRunner.Run(map, null, TestContext.Current.CancellationToken).Errors
            : reading.Errors;
    }

    private static ChartRequest Good(ChartQuestion question)
    {
        ChartReading reading = ChartReader.Read(question);
        Assert.Empty(reading.Errors);
        return reading.Chart!;
    }

    private static ChartQuestion Question(string text)
    {
        Dictionary<string, string> parts = text.Split(';').Where(part => part.Contains('='))
            .ToDictionary(part => part[..part.IndexOf('=')], part => part[(part.IndexOf('=') + 1)..]);
        string? Part(string name) => parts.GetValueOrDefault(name);
        return new ChartQuestion
        {
            Table = Part("table"),
            Bank = Part("bank"),
            Pocket = Part("pocket"),
            Off = Part("off"),
            Target = Part("target"),
            Line = Part("line"),
            Grid = Part("grid"),
            BallArea = Part("ball-area"),
            Speeds = Part("speeds"),
            Tips = Part("tips"),
            Distance = Part("distance"),
            Height = Part("height"),
            Numbering = Part("numbering"),
            Map = Part("map"),
            Cue = Part("cue"),
            Seed = Part("seed"),
            Shots = Part("shots"),
        };
    }
}
