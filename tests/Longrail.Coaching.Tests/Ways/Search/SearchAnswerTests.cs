using System.Text;
using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Search;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.TestKit;

namespace Longrail.Coaching.Tests.Ways.Search;

/// <summary>The answer as a whole: reasons, threads, stopping early, odd tables.</summary>
public class SearchAnswerTests
{
    private const double Two = 2 * TestEquipment.R;

    [Fact]
    public void The_answer_is_the_same_with_one_two_and_four_threads()
    {
        string one = Text(SearchLayouts.Run(SearchLayouts.Request("crowded", rails: 1, kicks: 1, threads: 1)));
        Assert.Equal(one, Text(SearchLayouts.Run(SearchLayouts.Request("crowded", rails: 1, kicks: 1, threads: 2))));
        Assert.Equal(one, Text(SearchLayouts.Run(SearchLayouts.Request("crowded", rails: 1, kicks: 1, threads: 4))));
    }

    [Fact]
    public void Each_way_is_shown_once_and_the_progress_ends_at_one()
    {
        var shown = new List<WayRoute>();
        var progress = new Parts();
        WaySearchResult result = WaySearch.Run(
            SearchLayouts.Request("easy-pot", rails: 1, kicks: 0), way => shown.Add(way.Route), progress,
            TestContext.Current.CancellationToken);
        Assert.Equal(shown.Count, shown.Distinct().Count());
        Assert.Superset(result.Ways.Select(way => way.Route).ToHashSet(), shown.ToHashSet());
        Assert.Equal(1, progress.Last);
        Assert.All(progress.All, part => Assert.InRange(part, 0, 1));
    }

    [Fact]
    public void A_search_that_is_stopped_keeps_what_it_has_and_says_so()
    {
        using var stop = new CancellationTokenSource();
        WaySearchResult result = WaySearch.Run(
            SearchLayouts.Request("easy-pot"), _ => stop.Cancel(), null, stop.Token);
        Assert.True(result.IsPartial);
        Assert.NotEmpty(result.Ways);
        Assert.Empty(result.NotPlayable);
    }

    [Fact]
    public void A_pot_behind_a_ball_is_blocked_by_that_ball()
    {
        NoWay no = No("blocked-pot", PocketName.FootLeft);
        Assert.Equal(NoWayReason.ObjectBallBlocked, no.Reason);
        Assert.Equal("4", no.Ball);
    }

    [Fact]
    public void Behind_two_balls_no_direct_way_is_open()
    {
        WaySearchResult result = SearchLayouts.Result("kick-only");
        Assert.DoesNotContain(result.Ways, way => way.Route.CueBall.Count == 0);
        NoWay[] direct = [.. result.NotPlayable.Where(no => no.Route.CueBall.Count == 0)];
        Assert.NotEmpty(direct);
        Assert.Contains(direct, no => no is { Reason: NoWayReason.CueBallBlocked, Ball: "4" or "12" });
    }

    [Fact]
    public void A_pot_back_over_the_shoulder_is_too_thin() =>
        Assert.Equal(NoWayReason.TooThin, No("easy-pot", PocketName.HeadRight).Reason);

    [Fact]
    public void On_a_cloth_like_sand_a_long_pot_runs_out_of_speed()
    {
        WaySearchRequest request = SearchLayouts.Request("easy-pot", rails: 0, kicks: 0);
        EquipmentSpec sand = request.Setup.Equipment.WithCloth(
            cloth => cloth with { RollingFriction = 1.5, SlidingFriction = 1.6 });
        // 6 m/s stop within v^2/(2 mu g) = 1.2 m, both balls' ways together; the pocket alone is 1.6 m off.
        WaySearchResult result = SearchLayouts.Run(request with
        {
            Setup = request.Setup with { Equipment = sand, Balls = Balls((0.6, 0.635), (1.0, 0.635)) },
            BallNames = ["cue", "3"],
            Pocket = PocketName.FootLeft,
        });
        Assert.Empty(result.Ways);
        Assert.Equal(NoWayReason.RunsOutOfSpeed, Assert.Single(result.NotPlayable).Reason);
    }

    [Fact]
    public void A_straight_pot_that_the_cue_ball_follows_at_every_stroke_is_a_scratch()
    {
        // Cue ball and object ball in line with a side pocket and a hand's breadth off it, cloth as good as none and
        // balls that do not bounce off each other: the cue ball goes in behind the ball.
        EquipmentSpec equipment = TestEquipment.Pocketed
            .WithBalls(balls => balls with { Restitution = 0 })
            .WithCloth(cloth => cloth with { SlidingFriction = 1e-3, RollingFriction = 1e-4 });
        double x = equipment.Table.Length / 2;
        WaySearchResult result = SearchLayouts.Run(new WaySearchRequest(
            new ShotSetup(equipment, Balls((x, 0.12 + 2.2 * Two), (x, 0.12))), 0, 1, ["cue", "1"], 0, 0, 0,
            PocketName.RightSide, 0,
            SearchLayouts.Club, 2));
        FoundWay? way = result.Ways.SingleOrDefault();
        // A cut may keep it up: then scratches end that stroke's leeway. Otherwise the scratch is the reason.
        if (way is null) Assert.Equal(NoWayReason.Scratch, Assert.Single(result.NotPlayable).Reason);
        else Assert.All(way.Strokes, s => Assert.Contains(Sides(s.Leeway), side => side.Limit == LeewayLimit.Scratch));
    }

    [Fact]
    public void A_table_without_pockets_has_no_ways()
    {
        WaySearchRequest request = Request(TestEquipment.Plain, (0.6, 0.6), (1.5, 0.7));
        WaySearchResult result = SearchLayouts.Run(request);
        Assert.Empty(result.Ways);
        Assert.Empty(result.NotPlayable);
        Assert.False(result.IsPartial);
    }

    [Fact]
    public void A_snooker_table_has_ways_too()
    {
        EquipmentSpec snooker = EquipmentPresets.With(EquipmentPresets.Tables.Single(t => t.Name == "snooker-12ft"));
        double r = snooker.BallSet.Diameter / 2;
        ShotBall Ball(double x, double y) => new(r, snooker.BallSet.Mass, BallState.AtRest(new Vec2(x, y)));
        WaySearchResult result = SearchLayouts.Run(Request(snooker, (0, 0), (0, 0)) with
        {
            Setup = new ShotSetup(snooker, [Ball(2.2, 0.6), Ball(2.9, 1.2)]),
            MostRails = 0,
            MostKickRails = 0,
        });
        Assert.Contains(result.Ways, way => way.Route is { Pocket: PocketName.FootLeft, ObjectBall.Count: 0 });
    }

    [Fact]
    public void Frozen_balls_can_be_played()
    {
        // In line with the foot left corner: frozen balls go along their line of centres.
        Vec2 line = (new Vec2(2.5, 1.23) - new Vec2(1.6, 0.6)).Normalized();
        WaySearchRequest request = Request(TestEquipment.Pocketed, (1.6, 0.6), (1.6 + Two * line.X, 0.6 + Two * line.Y));
        WaySearchResult result = SearchLayouts.Run(request with { MostRails = 1, MostKickRails = 0 });
        Assert.NotEmpty(result.Ways);
        foreach (FoundWay way in result.Ways)
        {
            Assert.Equal(way.Route, RouteOfTrace.Read(SearchLayouts.Shoot(request, way.Strokes[0].Stroke), 0, 1));
        }
    }

    [Fact]
    public void Three_rail_banks_are_found_when_asked_for()
    {
        WaySearchRequest request = SearchLayouts.Request("bank-by-side-pocket", rails: 3, kicks: 0) with { FewestRails = 3 };
        WaySearchResult result = SearchLayouts.Run(request);
        Assert.NotEmpty(result.Ways);
        Assert.All(result.Ways, way => Assert.Equal(3, way.Route.ObjectBall.Count));
        Assert.All(result.Ways, way => Assert.Equal(
            way.Route, RouteOfTrace.Read(SearchLayouts.Shoot(request, way.Strokes[0].Stroke), 0, 1)));
    }

    [Theory]
    [InlineData(0, 0, 0, 2, 2, 1)]
    [InlineData(0, 5, 0, 2, 2, 1)]
    [InlineData(-1, 1, 0, 2, 2, 1)]
    [InlineData(0, 1, 0, 4, 2, 1)]
    [InlineData(0, 1, 2, 1, 2, 1)]
    [InlineData(0, 1, 0, 2, 3, 1)]
    [InlineData(0, 1, 0, 2, 2, 0)]
    public void What_cannot_be_asked_is_refused(int cueBall, int objectBall, int fewest, int most, int kicks, int threads)
    {
        WaySearchRequest request = Request(TestEquipment.Pocketed, (0.6, 0.6), (1.5, 0.7)) with
        {
            CueBall = cueBall,
            ObjectBall = objectBall,
            FewestRails = fewest,
            MostRails = most,
            MostKickRails = kicks,
            Threads = threads,
        };
        Assert.Throws<ArgumentException>(() => SearchLayouts.Run(request));
    }

    [Fact]
    public void Balls_that_overlap_are_refused_in_plain_words()
    {
        WaySearchRequest request = Request(TestEquipment.Pocketed, (0.6, 0.6), (0.61, 0.6));
        Assert.Contains("overlap", Assert.Throws<ArgumentException>(() => SearchLayouts.Run(request)).Message);
    }

    private static NoWay No(string layout, PocketName pocket) => SearchLayouts.Result(layout).NotPlayable
        .Single(no => no.Route.Pocket == pocket && no.Route.CueBall.Count == 0 && no.Route.ObjectBall.Count == 0);

    private static WaySearchRequest Request(EquipmentSpec equipment, params (double X, double Y)[] places) => new(
        new ShotSetup(equipment, Balls(places)), 0, 1, [.. places.Select((_, i) => $"{i}")], 0, 2, 2, null, 0,
        SearchLayouts.Club, 2);

    private static ShotBall[] Balls(params (double X, double Y)[] places) =>
        [.. places.Select(place => TestEquipment.Ball(place.X, place.Y))];

    private static LeewaySide[] Sides(Leeway l) =>
        [l.AimLeft, l.AimRight, l.Slower, l.Faster, l.TipLeft, l.TipRight, l.TipLower, l.TipHigher];

    private static string Text(WaySearchResult result)
    {
        var text = new StringBuilder();
        text.Append(result.ShotsPlayed).Append('\n');
        foreach (FoundWay way in result.Ways)
        {
            text.Append(RouteKey.Of(way.Route)).Append('\n').AppendJoin('\n', way.Strokes).Append('\n')
                .AppendJoin('\n', way.Windows).Append('\n');
        }

        foreach (NoWay no in result.NotPlayable)
            text.Append(RouteKey.Of(no.Route)).Append(no.Reason).Append(no.Ball).Append('\n');
        return text.ToString();
    }

    private sealed class Parts : IProgress<double>
    {
        private readonly Lock _lock = new();

        internal List<double> All { get; } = [];

        internal double Last => All[^1];

        public void Report(double value)
        {
            lock (_lock) All.Add(value);
        }
    }
}
