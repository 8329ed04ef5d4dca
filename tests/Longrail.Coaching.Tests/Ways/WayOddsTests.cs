using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Chances;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Tests.Ways;

public class WayOddsTests
{
    private const double Degree = Math.PI / 180;

    private static readonly Player _aimOnly = new("aim only", 0.25 * Degree, 0, 0, 0, 0, double.PositiveInfinity);

    // A hundred thousand shots for a pot, fewer for a bank, counted by other code with other random numbers: of twenty
    // seeds the intervals of at least sixteen must hold the share. With intervals of 95 % fifteen or fewer would do so
    // three times in ten thousand (binomial law).
    [Theory]
    [InlineData(true, 100_000)]
    [InlineData(false, 25_000)]
    public void The_interval_holds_what_a_long_plain_count_gives(bool isPot, int referenceShots)
    {
        ShotSetup setup = isPot
            ? FoundWays.Layout(FoundWays.Pool, new Vec2(1.5, 0.45), new Vec2(1.95, 0.75))
            : FoundWays.Layout(FoundWays.Pool, new Vec2(0.6985, 0.28575), new Vec2(1.016, 0.762));
        WayRoute route = isPot
            ? FoundWays.Pot(PocketName.FootLeft)
            : FoundWays.Bank(PocketName.RightSide, CushionName.Left);
        // Slow enough that a missed ball hardly ever comes round again, which counts there and not here.
        Stroke stroke = FoundWays.BankStroke(setup, route, isPot ? 1.4 : 2.4);
        Player player = PlayerPresets.Default;
        double share = ReferenceOdds.Share(setup, stroke, route.Pocket, player, referenceShots);
        Assert.InRange(share, 0.1, 0.9);

        int held = 0;
        for (ulong seed = 1; seed <= 20; seed++)
        {
            Odds made = Of(setup, FoundWays.Of(route, stroke), player, seed).Made;
            if (made.Low <= share && share <= made.High) held++;
        }

        Assert.True(held >= 16, $"{held} of 20 hold {share}");
    }

    [Fact]
    public void The_same_seed_gives_the_same_way_on_any_number_of_threads()
    {
        ShotSetup setup = FoundWays.Layout(
            FoundWays.Pool, new Vec2(0.6985, 0.28575), new Vec2(1.016, 0.762), new Vec2(1.9, 0.3));
        FoundWay[] ways =
        [
            BankWay(setup, PocketName.RightSide, CushionName.Left),
            BankWay(setup, PocketName.FootRight, CushionName.Left),
        ];
        string[] alone = [.. ways.Select(way => Text(way, 1))];

        foreach (int threads in new[] { 2, 4 })
        {
            string[] together = new string[2 * ways.Length];
            Parallel.For(
                0, together.Length, new ParallelOptions { MaxDegreeOfParallelism = threads },
                i => together[i] = Text(ways[i % ways.Length], 1));
            Assert.Equal([.. alone, .. alone], together);
        }

        Assert.NotEqual(alone[0], Text(ways[0], 2));

        // Every number with all its digits.
        string Text(FoundWay found, ulong seed)
        {
            Way way = Of(setup, found, PlayerPresets.Default, seed, next: 2, shots: 120);
            return string.Join(
                '\n', way.Stroke.Stroke, way.Cut, way.AimPoint, way.Made, way.Scratch, way.Kiss, way.Rest!.Mean,
                way.Rest.HalfLength, way.Rest.HalfWidth, way.Rest.Direction, way.Next,
                string.Join(' ', way.Rest.Places));
        }
    }

    [Fact]
    public void The_stroke_that_is_made_more_often_wins_the_race_wherever_it_stands()
    {
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, new Vec2(1.5, 0.45), new Vec2(1.95, 0.75));
        WayRoute route = FoundWays.Pot(PocketName.FootLeft);
        Stroke centred = FoundWays.BankStroke(setup, route, 1.4);
        // Half a degree off is near the jaw.
        Stroke edge = centred with { Aim = centred.Aim + 0.5 * Degree };
        Stroke other = centred with { Aim = centred.Aim - 0.5 * Degree };

        Assert.Equal(centred, Of(setup, FoundWays.Of(route, edge, centred, other), _aimOnly).Stroke.Stroke);
        Assert.Equal(centred, Of(setup, FoundWays.Of(route, centred, edge, other), _aimOnly).Stroke.Stroke);
    }

    // Two strokes of a player without errors make the ball every time: nothing tells them apart but how hard they are.
    [Fact]
    public void Of_strokes_that_are_made_equally_often_the_milder_is_advised()
    {
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, new Vec2(1.5, 0.45), new Vec2(1.95, 0.75));
        WayRoute route = FoundWays.Pot(PocketName.FootLeft);
        Stroke soft = FoundWays.BankStroke(setup, route, 1.4);
        Stroke hard = FoundWays.BankStroke(setup, route, 2.6);
        Stroke off = FoundWays.BankStroke(setup, route, 1.4, above: -0.008);
        var steady = new Player("machine", 0, 0, 0, 0, 0);

        foreach (Stroke[] order in new Stroke[][] { [hard, off, soft], [soft, hard, off] })
            Assert.Equal(soft, Of(setup, FoundWays.Of(route, order), steady, shots: 10).Stroke.Stroke);
    }

    [Fact]
    public void A_player_without_errors_makes_what_the_stroke_makes()
    {
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, new Vec2(0.6985, 0.28575), new Vec2(1.016, 0.762));
        WayRoute route = FoundWays.Bank(PocketName.RightSide, CushionName.Left);
        FoundWay way = FoundWays.Of(route, FoundWays.BankStroke(setup, route, 2.4));

        Way odds = Of(setup, way, new Player("machine", 0, 0, 0, 0, 0), shots: 20);

        Assert.Equal(20, odds.Made.Made);
        Assert.Equal(0, odds.Scratch.Made);
        Assert.Equal(odds.Kiss!.Gap, odds.Kiss.Low);
        Assert.Equal(odds.Kiss.Gap, odds.Kiss.High);
        Assert.Equal(0, odds.Rest!.HalfLength, 12);
        Trace trace = FoundWays.Play(setup, way.Strokes[0].Stroke);
        Assert.Equal(trace.Balls[0].State.Position.X, odds.Rest.Mean.X, 9);
        Assert.Equal(trace.Balls[0].State.Position.Y, odds.Rest.Mean.Y, 9);
    }

    [Fact]
    public void A_ball_that_another_shields_and_a_scratch_do_not_count_as_made()
    {
        WayRoute route = FoundWays.Pot(PocketName.FootLeft);
        ShotSetup open = FoundWays.Layout(FoundWays.Pool, new Vec2(1.5, 0.45), new Vec2(1.95, 0.75));
        Stroke stroke = FoundWays.BankStroke(open, route, 1.4);
        ShotSetup shielded = FoundWays.Layout(
            FoundWays.Pool, new Vec2(1.5, 0.45), new Vec2(1.95, 0.75), new Vec2(1.7, 0.57));
        // Straight in, with follow enough to go after it.
        ShotSetup straight = FoundWays.Layout(FoundWays.Pool, new Vec2(2.0, 0.73), new Vec2(2.3, 1.03));
        double line = Math.PI / 4;
        var follow = new Stroke(line, 3, 0, 0.4 * 0.028575, 0);

        Assert.Equal(0, Of(shielded, FoundWays.Of(route, stroke), _aimOnly, shots: 40).Made.Made);
        Way scratched = Of(straight, FoundWays.Of(route, follow), _aimOnly with { Aim = 0 }, shots: 40);
        Assert.Equal(0, scratched.Made.Made);
        Assert.Equal(10, scratched.Scratch.Made);
        Assert.Equal(10, scratched.Scratch.Trials);
        Assert.Null(scratched.Rest);
    }

    [Fact]
    public void The_aim_point_is_where_the_stick_points()
    {
        TableSpec table = FoundWays.Pool.Table;

        // From the middle of the bed at 45 degrees: half the width up is half the width along.
        AimPoint point = StickLine.AimPoint(new Vec2(table.Length / 2, table.Width / 2), 45 * Degree, table);

        Assert.Equal(CushionName.Left, point.Cushion);
        Assert.Equal(6, point.Diamonds, 12);
        Assert.Equal(
            new AimPoint(CushionName.Head, 1),
            StickLine.AimPoint(new Vec2(1, table.Width / 4), Math.PI, table) with { Diamonds = 1 });
    }

    // D. Alciatore, FAQ and articles, as in the trade: a ball that just reaches the pocket finds the largest target.
    [Fact]
    public void Pocket_speed_makes_more_than_a_firm_stroke()
    {
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, new Vec2(1.4, 0.19), new Vec2(1.74, 0.14));
        // Along the rail, where the jaw is most in the way, and a player whose errors fill the opening.
        Player wide = _aimOnly with { Aim = 0.5 * Degree };
        WayRoute route = FoundWays.Pot(PocketName.FootRight);
        Odds slow = Of(setup, FoundWays.Of(route, FoundWays.BankStroke(setup, route, 1.2)), wide).Made;
        Odds firm = Of(setup, FoundWays.Of(route, FoundWays.BankStroke(setup, route, 4.0)), wide).Made;

        Assert.True(slow.Low > firm.High, $"{slow} {firm}");
    }

    // Trade texts: the longest path has the smallest angular margin. The long-rail bank against one across the table,
    // both nearly full and from equally far.
    [Fact]
    public void A_bank_along_the_table_is_made_less_often_than_one_across()
    {
        ShotSetup across = FoundWays.Layout(FoundWays.Pool, new Vec2(0.75, 0.35), new Vec2(1.016, 0.762));
        WayRoute side = FoundWays.Bank(PocketName.RightSide, CushionName.Left);
        ShotSetup along = FoundWays.Layout(FoundWays.Pool, new Vec2(1.6, 0.45), new Vec2(2.0, 0.65));
        WayRoute corner = FoundWays.Bank(PocketName.HeadLeft, CushionName.Foot);

        Odds near = Of(across, FoundWays.Of(side, FoundWays.BankStroke(across, side, 2.5)), _aimOnly).Made;
        Odds far = Of(along, FoundWays.Of(corner, FoundWays.BankStroke(along, corner, 3.5)), _aimOnly).Made;

        Assert.True(near.Low > far.High, $"{near} {far}");
    }

    [Fact]
    public void It_can_be_ended_early()
    {
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, new Vec2(1.5, 0.45), new Vec2(1.95, 0.75));
        FoundWay way = FoundWays.Of(FoundWays.Pot(PocketName.FootLeft), new Stroke(0.6, 1.4, 0, 0, 0));

        Assert.Throws<OperationCanceledException>(
            () => WayOdds.Of(Request(setup, _aimOnly, 1, null, 400), way, new CancellationToken(canceled: true)));
    }

    private static FoundWay BankWay(ShotSetup setup, PocketName pocket, CushionName off)
    {
        WayRoute route = FoundWays.Bank(pocket, off);
        return FoundWays.Of(
            route, FoundWays.BankStroke(setup, route, 2.4), FoundWays.BankStroke(setup, route, 3.0));
    }

    internal static Way Of(
        ShotSetup setup, FoundWay way, Player player, ulong seed = 1, int? next = null, int shots = 400) =>
        WayOdds.Of(Request(setup, player, seed, next, shots), way, TestContext.Current.CancellationToken);

    private static WayOddsRequest Request(ShotSetup setup, Player player, ulong seed, int? next, int shots) =>
        new(setup, 0, 1, next, [.. setup.Balls.Select((_, i) => $"{i}")], player, seed, shots, 0);
}
