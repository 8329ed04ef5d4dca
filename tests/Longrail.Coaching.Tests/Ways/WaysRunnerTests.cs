using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Words;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;
using static Longrail.Coaching.Tests.Ways.WaysQuestions;

namespace Longrail.Coaching.Tests.Ways;

public sealed class WaysRunnerTests
{
    [Fact]
    public void Ways_are_ranked_named_and_told_apart()
    {
        WaysAnswer answer = Run(Ask());

        Assert.Empty(answer.Errors);
        Assert.False(answer.IsPartial);
        Assert.Equal(2, answer.Ways.Count);
        Assert.True(answer.Ways[0].Plan >= answer.Ways[1].Plan);
        Assert.Contains(answer.Ways, way => way.Words == "cross-side bank off right into left-side, crossing");
        Assert.Contains(answer.Ways, way => way.Words.StartsWith("cross-corner bank off right into foot-left", StringComparison.Ordinal));
        Assert.False(string.IsNullOrEmpty(answer.Reason));
        Assert.Equal(WaysRun.Strokes, answer.Ways[0].Made.Trials);
        Assert.Equal(20, answer.ShotsPlayed);
    }

    [Fact]
    public void The_number_of_threads_changes_nothing()
    {
        byte[] one = WaysWriter.ToUtf8(Run(Ask(next: "8") with { Threads = 1 }));
        byte[] four = WaysWriter.ToUtf8(Run(Ask(next: "8") with { Threads = 4 }));

        Assert.True(one.AsSpan().SequenceEqual(four));
    }

    [Fact]
    public void Another_seed_gives_other_strokes_of_the_same_ways()
    {
        WaysAnswer one = Run(Ask());
        WaysAnswer other = Run(Ask() with { Seed = 2 });

        Assert.Equal(Routes(one), Routes(other));
        Assert.NotEqual(one.Ways.Select(way => way.Made.Made), other.Ways.Select(way => way.Made.Made));
    }

    [Fact]
    public void Being_watched_changes_nothing()
    {
        var kept = new Kept();
        byte[] watched = WaysWriter.ToUtf8(WaysRunner.Run(Ask(), Parts(), kept, CancellationToken.None));

        Assert.True(watched.AsSpan().SequenceEqual(WaysWriter.ToUtf8(Run(Ask()))));
        // The first way is shown while the search goes on, with rough odds; progress does not go back.
        WaysProgress first = kept.Reports.First(report => report.Ways.Count > 0);
        Assert.Equal("searching", first.Stage);
        Assert.Equal(WaysRun.RoughStrokes, first.Ways[0].Made.Trials);
        Assert.Equal(kept.Reports.Select(report => report.Done).Order(), kept.Reports.Select(report => report.Done));
        Assert.Equal(1, kept.Reports[^1].Done);
    }

    [Fact]
    public void A_search_that_is_stopped_leaves_what_it_found_marked_as_partial()
    {
        using var stop = new CancellationTokenSource();
        WaysParts parts = Parts(token =>
        {
            stop.Cancel();
            return !token.IsCancellationRequested;
        });

        WaysAnswer answer = WaysRunner.Run(Ask(), parts, null, stop.Token);

        Assert.True(answer.IsPartial);
        Way way = Assert.Single(answer.Ways);
        Assert.Equal(WaysRun.RoughStrokes, way.Made.Trials);
        Assert.NotEqual("", way.Words);
    }

    [Fact]
    public void A_run_that_is_stopped_at_the_odds_keeps_all_ways_with_rough_odds()
    {
        using var stop = new CancellationTokenSource();
        WaysParts usual = Parts();
        WaysParts parts = usual with
        {
            Odds = (question, way, strokes, token) =>
            {
                if (strokes == WaysRun.Strokes)
                    stop.Cancel();
                return usual.Odds(question, way, strokes, token);
            },
        };

        WaysAnswer answer = WaysRunner.Run(Ask(), parts, null, stop.Token);

        Assert.True(answer.IsPartial);
        Assert.Equal(2, answer.Ways.Count);
        Assert.All(answer.Ways, way => Assert.Equal(WaysRun.RoughStrokes, way.Made.Trials));
    }

    [Fact]
    public void A_time_budget_stops_it()
    {
        // The search waits until it is told to stop.
        WaysParts parts = Parts(token => !token.WaitHandle.WaitOne(TimeSpan.FromSeconds(60)));

        WaysAnswer answer = WaysRunner.Run(
            Ask() with { TimeBudget = TimeSpan.FromMilliseconds(50) }, parts, null, CancellationToken.None);

        Assert.True(answer.IsPartial);
        Assert.Single(answer.Ways);
    }

    [Fact]
    public void The_shot_of_a_way_makes_the_ball_in_the_pocket_of_its_route()
    {
        WaysRequest request = Ask();
        Assert.All(Run(request).Ways, way =>
        {
            Trace trace = WayShot.Of(request, way.Stroke.Stroke);
            Assert.Equal(way.Route.Pocket, trace.Balls[request.Scene.IndexOf("9")].Pocket);
        });
    }

    [Fact]
    public void No_way_at_all_is_an_answer_that_says_why()
    {
        WaysParts parts = Parts() with
        {
            Search = (_, _, _, _) => new(
                [], [new NoWay(FoundWays.Pot(PocketName.LeftSide), NoWayReason.CueBallBlocked, "8")], false, 5),
        };

        WaysAnswer answer = WaysRunner.Run(Ask(), parts, null, CancellationToken.None);

        Assert.Empty(answer.Ways);
        Assert.Empty(answer.Errors);
        Assert.Null(answer.Reason);
        Assert.Equal(["8 stands in the cue ball's way: pot into left-side"], WaysNotes.NotPlayable(answer));
    }

    private static WaysAnswer Run(WaysRequest request) =>
        WaysRunner.Run(request, Parts(), null, TestContext.Current.CancellationToken);

    private static IEnumerable<WayRoute> Routes(WaysAnswer answer) =>
        answer.Ways.Select(way => way.Route).OrderBy(route => route.Pocket);
}
