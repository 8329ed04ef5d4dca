using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Chances;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Tests.Ways;

public class WayRankingTests
{
    private const double Degree = Math.PI / 180;

    private static readonly WaysRequest _request = new()
    {
        Scene = null!,
        Ball = "9",
        NextBall = "8",
        Player = PlayerPresets.Default,
    };

    [Fact]
    public void Ways_come_in_the_order_that_was_asked_for()
    {
        Way soft = Make(PocketName.FootLeft, made: 100, speed: 1.2, aim: 0.3, rails: 2, gap: 0.02);
        Way sure = Make(PocketName.FootRight, made: 300, speed: 3.0, aim: 0.5, rails: 1, gap: 0.05);
        Way wide = Make(PocketName.HeadLeft, made: 200, speed: 2.0, aim: 0.9, rails: 0, gap: 0.30);
        Way[] ways = [soft, wide, sure];

        Assert.Equal([sure, wide, soft], WayRanking.Ranked(ways, WaysOrder.Plan));
        Assert.Equal([sure, wide, soft], WayRanking.Ranked(ways, WaysOrder.Odds));
        Assert.Equal([wide, sure, soft], WayRanking.Ranked(ways, WaysOrder.Leeway));
        Assert.Equal([wide, sure, soft], WayRanking.Ranked(ways, WaysOrder.Kiss));
        Assert.Equal([soft, wide, sure], WayRanking.Ranked(ways, WaysOrder.Speed));
        Assert.Equal([wide, sure, soft], WayRanking.Ranked(ways, WaysOrder.Rails));
    }

    [Fact]
    public void The_order_of_equal_ways_does_not_depend_on_how_they_stood()
    {
        Way[] ways = [.. Enum.GetValues<PocketName>().Select(pocket => Make(pocket, made: 100))];

        Assert.Equal(
            WayRanking.Ranked(ways, WaysOrder.Plan), WayRanking.Ranked(ways.Reverse(), WaysOrder.Plan));
    }

    [Fact]
    public void With_a_next_ball_the_plan_ranks()
    {
        Way easier = Make(PocketName.FootLeft, made: 300, next: (20, 200, 40.0));
        Way better = Make(PocketName.FootRight, made: 250, next: (150, 200, 3.0));

        Assert.Equal([better, easier], WayRanking.Ranked([easier, better], WaysOrder.Plan));
        Assert.Equal([easier, better], WayRanking.Ranked([easier, better], WaysOrder.Odds));
    }

    [Fact]
    public void The_reason_names_what_sets_two_ways_apart()
    {
        Way first = Make(PocketName.FootLeft, made: 276, aim: 0.8, kisses: 0, next: (150, 200, 3.0));
        Way second = Make(PocketName.FootRight, made: 160, aim: 0.4, kisses: 60, next: (60, 200, 40.0));

        Assert.Equal(
            "likelier (52 against 12 %): twice the leeway, no kiss, straight on the 8",
            WayRanking.Reason(first, second, _request));
    }

    [Fact]
    public void Counts_that_cannot_tell_two_ways_apart_are_not_made_to()
    {
        // 205 and 195 of 400: the intervals are five percent either way.
        Way first = Make(PocketName.FootLeft, made: 205, aim: 0.8);
        Way second = Make(PocketName.FootRight, made: 195, aim: 0.4, speed: 1.0);

        Assert.Equal(
            "about as likely; twice the leeway; for the other: a softer stroke",
            WayRanking.Reason(first, second, _request with { NextBall = null }));
    }

    [Fact]
    public void Bounds_that_overlap_only_a_little_allow_a_probably()
    {
        // Wilson at 400: 0.50 to 0.60 and 0.44 to 0.54 (220 and 195 made): neither share lies in the other's bounds.
        Way first = Make(PocketName.FootLeft, made: 222);
        Way second = Make(PocketName.FootRight, made: 196);

        Assert.StartsWith("probably likelier", WayRanking.Reason(first, second, _request), StringComparison.Ordinal);
        Assert.StartsWith(
            "probably less likely", WayRanking.Reason(second, first, _request), StringComparison.Ordinal);
    }

    // Whatever the counts, "likelier" without "probably" needs intervals that are apart, and a kiss is only called less
    // risky where those of the kisses are.
    [Fact]
    public void No_reason_claims_more_than_its_intervals_bear_out()
    {
        for (int a = 0; a <= 400; a += 25)
        {
            for (int b = 0; b <= 400; b += 25)
            {
                Way first = Make(PocketName.FootLeft, made: a, kisses: b / 10);
                Way second = Make(PocketName.FootRight, made: b, kisses: a / 10);
                string reason = WayRanking.Reason(first, second, _request with { NextBall = null });

                bool apart = first.Made.Low > second.Made.High;
                Assert.Equal(apart, reason.StartsWith("likelier", StringComparison.Ordinal));
                bool fewer = first.Kiss!.Kisses.High < second.Kiss!.Kisses.Low;
                bool more = second.Kiss.Kisses.High < first.Kiss.Kisses.Low;
                Assert.Equal(fewer || more, reason.Contains("kiss", StringComparison.Ordinal));
            }
        }
    }

    [Fact]
    public void Another_order_leads_its_own_reason()
    {
        Way soft = Make(PocketName.FootLeft, made: 100, speed: 1.2);
        Way sure = Make(PocketName.FootRight, made: 300, speed: 3.0);

        Assert.Equal(
            "softer (1.2 against 3.0 m/s); less likely (25 against 75 %)",
            WayRanking.Reason(soft, sure, _request with { Order = WaysOrder.Speed, NextBall = null }));
    }

    private static Way Make(
        PocketName pocket, int made, double speed = 2.0, double aim = 0.4, int rails = 1, double gap = 0.1,
        int kisses = 0, (int Potted, int Trials, double CutDegrees)? next = null)
    {
        var aimSide = new LeewaySide(aim * Degree, LeewayLimit.NearJaw);
        var side = new LeewaySide(0.1, LeewayLimit.NotReached);
        var odds = Odds.Of(made, 400);
        return new Way
        {
            Route = new WayRoute([], [.. Enumerable.Repeat(CushionName.Left, rails)], pocket),
            Words = "",
            Stroke = new FoundStroke(
                new Stroke(0, speed, 0, 0, 0), new Leeway(aimSide, aimSide, side, side, side, side, side, side)),
            Windows = [],
            Cut = 0,
            HitFraction = 1,
            AimPoint = default,
            Made = odds,
            Scratch = Odds.Of(0, 100),
            Kiss = new KissSpread(gap, 0, gap, Odds.Of(kisses, 400)),
            Rest = null,
            Next = next is { } shot
                ? new NextShot(
                    PocketName.FootRight, shot.CutDegrees * Degree, Odds.Of(shot.Potted, shot.Trials),
                    odds.Share * shot.Potted / shot.Trials)
                : null,
        };
    }
}
