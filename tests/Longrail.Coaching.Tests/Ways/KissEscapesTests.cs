using Longrail.Coaching.Players;
using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Kisses;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Tests.Ways;

public class KissEscapesTests
{
    private const double Clearance = KissQuestion.UsualClearance;

    private static readonly WayRoute _across = FoundWays.Bank(PocketName.RightSide, CushionName.Left);

    // Straight-back banks across the table whose stroke would make the ball if the cue ball were not in the way. Every
    // way round is played again by the runner and looked at with a fine comb: one thing changed, the ball down off one
    // cushion, no second meeting, and never nearer than it says.
    [Theory]
    [InlineData(1.38, 0.04, 2.75)]
    [InlineData(1.44, 0.04, 2.0)]
    [InlineData(1.44, 0.08, 2.75)]
    public void A_way_round_clears_the_kiss_when_it_is_played(double ballX, double cueBallRight, double speed)
    {
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, new Vec2(ballX + cueBallRight, 0.5), new Vec2(ballX, 1.0));
        Stroke kissing = Kissing(setup, speed);

        KissAnswer answer = Find(setup, kissing, []);

        Assert.True(answer.Kisses);
        Assert.Equal(0, answer.Gap);
        Assert.NotEmpty(answer.Escapes);
        Assert.Equal(answer.Escapes.OrderBy(escape => escape.Cost), answer.Escapes);
        Assert.Equal(answer.Escapes.Count, answer.Escapes.Select(escape => escape.Change).Distinct().Count());
        foreach (KissEscape escape in answer.Escapes)
        {
            Assert.Equal(Changed(kissing, escape), escape.Stroke with { Aim = kissing.Aim });
            Assert.True(escape.Gap >= Clearance);
            Trace trace = FoundWays.Play(setup, escape.Stroke);
            Assert.Equal(PocketName.RightSide, trace.Balls[1].Pocket);
            Assert.Equal(
                [CushionName.Left],
                trace.Events.Where(e => e.Kind == ShotEventKind.Cushion && e.BallA == 1).Select(e => e.Cushion!.Value));
            double met = Assert.Single(trace.Events, e => e.Kind == ShotEventKind.BallsMeet).Time;
            Assert.Equal(escape.Gap, GapByComb(trace, met), 1e-4);
        }
    }

    [Fact]
    public void A_stroke_that_is_clear_needs_no_way_round()
    {
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, new Vec2(0.6985, 0.28575), new Vec2(1.016, 0.762));
        Stroke stroke = FoundWays.BankStroke(setup, _across, 2.4);

        KissAnswer answer = Find(setup, stroke, []);

        Assert.False(answer.Kisses);
        Assert.True(answer.Gap > Clearance);
        Assert.Empty(answer.Escapes);
    }

    [Fact]
    public void Where_nothing_else_helps_another_route_does()
    {
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, new Vec2(1.60, 0.5), new Vec2(1.48, 1.0));
        Stroke kissing = Kissing(setup, 2.0);
        WayRoute pot = FoundWays.Pot(PocketName.LeftSide);
        FoundWay other = FoundWays.Of(pot, FoundWays.BankStroke(setup, pot, 1.5));

        Assert.Empty(Find(setup, kissing, []).Escapes);
        KissEscape escape = Assert.Single(Find(setup, kissing, [other]).Escapes);
        Assert.Equal(KissChange.Route, escape.Change);
        Assert.Equal(pot, escape.Route);
        Assert.Equal(PocketName.LeftSide, FoundWays.Play(setup, escape.Stroke).Balls[1].Pocket);
    }

    [Fact]
    public void A_stroke_that_misses_the_ball_has_no_gap()
    {
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, new Vec2(1.60, 0.5), new Vec2(1.48, 1.0));

        KissAnswer answer = Find(setup, new Stroke(0, 1, 0, 0, 0), []);

        Assert.Null(answer.Gap);
        Assert.Empty(answer.Escapes);
    }

    [Fact]
    public void A_gap_of_nothing_is_not_asked_for()
    {
        ShotSetup setup = FoundWays.Layout(FoundWays.Pool, new Vec2(1.60, 0.5), new Vec2(1.48, 1.0));

        Assert.Throws<ArgumentOutOfRangeException>(() => KissEscapes.Find(
            Question(setup, new Stroke(0, 1, 0, 0, 0), []) with { Clearance = 0 },
            TestContext.Current.CancellationToken));
    }

    private static KissAnswer Find(ShotSetup setup, Stroke stroke, IReadOnlyList<FoundWay> others) =>
        KissEscapes.Find(Question(setup, stroke, others), TestContext.Current.CancellationToken);

    private static KissQuestion Question(ShotSetup setup, Stroke stroke, IReadOnlyList<FoundWay> others) =>
        new(setup, 0, 1, ["cue", "9"], PlayerPresets.Default, stroke, _across, Clearance, others);

    private static Stroke Changed(Stroke stroke, KissEscape escape) => escape.Change switch
    {
        KissChange.Speed => stroke with { Speed = stroke.Speed + escape.Amount },
        KissChange.Side => stroke with { OffsetRight = stroke.OffsetRight + escape.Amount },
        KissChange.Height => stroke with { OffsetAbove = stroke.OffsetAbove + escape.Amount },
        _ => stroke,
    };

    /// <summary>A stroke that kisses, and would bank the ball into the pocket if the cue ball vanished as they
    /// met.</summary>
    private static Stroke Kissing(ShotSetup setup, double speed)
    {
        var found = new List<Stroke>();
        double middle = (setup.Balls[1].Start.Position - setup.Balls[0].Start.Position).Angle;
        for (int i = -60; i <= 60; i++)
        {
            var stroke = new Stroke(middle + i * 0.0008, speed, 0, 0, 0);
            Trace trace = FoundWays.Play(setup, stroke);
            ShotEvent[] meetings = [.. trace.Events.Where(e => e.Kind == ShotEventKind.BallsMeet)];
            if (meetings.Length < 2) continue;
            ShotBall alone = setup.Balls[1] with { Start = meetings[0].AfterB!.Value };
            Trace ball = ShotRunner.Run(new ShotSetup(setup.Equipment, [alone]));
            int cushions = ball.Events.Count(e => e.Kind == ShotEventKind.Cushion);
            if (ball.Balls[0].Pocket == PocketName.RightSide && cushions == 1) found.Add(stroke);
        }

        Assert.NotEmpty(found);
        return found[found.Count / 2];
    }

    /// <summary>The nearest after the parting, instant by instant: a tenth of a millisecond at 3 m/s is 0.3 mm of way,
    /// and at a minimum far less of distance.</summary>
    private static double GapByComb(Trace trace, double met)
    {
        double end = trace.Events.First(e => e.Kind == ShotEventKind.Pocketed && e.BallA == 1).Time;
        double reach = 2 * trace.Setup.Balls[0].Radius;
        double least = double.PositiveInfinity;
        double last = double.NegativeInfinity;
        bool approaches = false;
        for (double time = met; time < end; time += 1e-4)
        {
            double distance = trace.StateAt(0, time).Position.DistanceTo(trace.StateAt(1, time).Position) - reach;
            approaches |= distance < last;
            if (approaches) least = Math.Min(least, distance);
            last = distance;
        }

        return least;
    }
}
