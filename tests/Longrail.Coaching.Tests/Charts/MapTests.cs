using Longrail.Coaching.Charts;
using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using static Longrail.Coaching.Tests.Charts.ChartCases;

namespace Longrail.Coaching.Tests.Charts;

public class MapTests
{
    // Strays as much at any speed, so that the count below needs no more than five plain normal errors.
    private static readonly Player _club = new("club", 0.003, 0.06, 0.0008, 0.0015, 0.017, double.PositiveInfinity);

    [Theory]
    [InlineData(PocketName.RightSide, false, true)]
    [InlineData(PocketName.LeftSide, true, false)]
    public void A_map_of_leeway_is_its_own_mirror_image(PocketName pocket, bool endForEnd, bool leftRight)
    {
        Vec2 Turned(Vec2 p) => new(endForEnd ? 8 - p.X : p.X, leftRight ? 4 - p.Y : p.Y);
        MapRequest asked = Small(MapMeasure.Leeway);
        OddsMap map = Run(asked);
        Vec2 a = Turned(asked.From);
        Vec2 b = Turned(asked.To);
        OddsMap image = Run(asked with
        {
            Route = Route(BankKind.CrossSide, pocket),
            CueBall = Turned(asked.CueBall),
            From = new Vec2(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y)),
            To = new Vec2(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y)),
        });

        int answered = 0;
        foreach (MapCell cell in map.Cells)
        {
            Vec2 there = Turned(cell.Place);
            MapCell other = image.Cells.Single(c => (c.Place - there).Length < 1e-9);
            Assert.Equal(cell.Failure, other.Failure);
            if (cell.Leeway is not { } leeway)
                continue;
            answered++;
            // Edges are found to a 4096th of a step, and a step is about an eighth of the leeway: both edges.
            Expect.Near(leeway, other.Leeway!.Value, leeway / 4096, $"leeway at {cell.Place}");
        }

        Assert.True(answered > 5);
    }

    [Fact]
    public void A_cells_odds_agree_with_twenty_thousand_shots_played_otherwise()
    {
        // Another generator, another way through the engine, and the plain question: is the ball down there, and the
        // cue ball not?
        MapRequest request = OnePlace(Route(BankKind.CrossSide), new(2.4, 1.2), new(2, 3), 2.5) with
        {
            Measure = MapMeasure.Odds,
            Player = _club,
            Shots = 2000,
        };
        MapCell cell = Run(request)[0, 0];
        Odds told = cell.Made!.Value;
        const int shots = 20_000;
        double share = (double)CountMade(request, cell, shots) / shots;

        // Both are counts: 3.3 deviations of their difference, one false alarm in a thousand; the seeds are fixed.
        double deviation = Math.Sqrt(share * (1 - share) * (1.0 / shots + 1.0 / told.Trials));
        Expect.Near(share, told.Share, 3.3 * deviation, "odds");
        Assert.InRange(share, 0.2, 0.8);
    }

    [Fact]
    public void A_player_without_errors_makes_every_bank_that_there_is()
    {
        MapRequest request = Small(MapMeasure.Odds) with
        {
            Player = new Player("sure", 0, 0, 0, 0, 0),
            Shots = 3,
            Speeds = [2.5],
        };
        OddsMap map = Run(request);
        Assert.All(
            map.Cells.Where(cell => cell.Failure == NoBank.None), cell => Assert.Equal(1.0, cell.Made!.Value.Share));
        Assert.All(map.Cells.Where(cell => cell.Failure != NoBank.None), cell => Assert.Null(cell.Made));
    }

    [Fact]
    public void The_seed_decides_and_the_number_of_threads_does_not()
    {
        MapRequest request = Small(MapMeasure.Odds) with { Player = _club, Shots = 60, Threads = 1 };
        string one = ChartCsv.Of(Run(request));
        Assert.Equal(one, ChartCsv.Of(Run(request with { Threads = 4 })));
        Assert.NotEqual(one, ChartCsv.Of(Run(request with { Seed = 2 })));
    }

    [Fact]
    public void A_steadier_player_makes_it_more_often_and_more_shots_narrow_the_interval()
    {
        MapRequest request = OnePlace(Route(BankKind.CrossSide), new(2.4, 1.2), new(2, 3), 2.5) with
        {
            Measure = MapMeasure.Odds,
            Shots = 400,
        };
        OddsMap beginner = Run(request with { Player = PlayerPresets.Named("beginner") });
        OddsMap national = Run(request with { Player = PlayerPresets.Named("national") });
        Assert.True(beginner[0, 0].Made!.Value.High < national[0, 0].Made!.Value.Low);
        double half = Run(request with { Player = _club, Shots = 100 }).TypicalHalfWidth!.Value;
        // Wilson's interval narrows as one over the root of the shots: by half, within a tenth for counts of this size.
        Expect.Near(0.5, Run(request with { Player = _club }).TypicalHalfWidth!.Value / half, 0.05, "half-widths");
    }

    private static MapRequest Small(MapMeasure measure) => new()
    {
        Equipment = Standard,
        Route = Route(BankKind.CrossSide),
        Measure = measure,
        CueBall = new Vec2(2, 3),
        From = new Vec2(1, 0.2),
        To = new Vec2(4.6, 2.4),
        Columns = 7,
        Rows = 3,
        Speeds = [2, 3],
    };

    private static int CountMade(MapRequest request, MapCell cell, int shots)
    {
        EquipmentSpec e = request.Equipment;
        double radius = 0.5 * e.BallSet.Diameter;
        double grip = TipContact.MiscueLimit(e.Cue) * radius;
        var random = new Random(20261125);
        Player player = request.Player!;
        var place = new Vec2(cell.Place.X * e.Table.DiamondAlong, cell.Place.Y * e.Table.DiamondAcross);
        var cue = new Vec2(request.CueBall.X * e.Table.DiamondAlong, request.CueBall.Y * e.Table.DiamondAcross);
        var balls = new ShotBall[2];
        var ends = new BallEnd[2];
        int made = 0;
        for (int k = 0; k < shots; k++)
        {
            double aim = cell.Aim!.Value + player.Aim * Normal(random);
            double speed = cell.Speed!.Value * (1 + player.Speed * Normal(random));
            double right = player.TipAcross * Normal(random);
            double above = player.TipUp * Normal(random);
            double elevation = Math.Abs(player.Elevation * Normal(random));
            if (Math.Sqrt(right * right + above * above) >= grip)
                continue;
            TipResult struck =
                TipContact.Strike(new Stroke(aim, speed, right, above, elevation), radius, e.BallSet.Mass, e.Cue);
            balls[0] = new ShotBall(radius, e.BallSet.Mass, new BallState(cue, struck.Velocity, struck.Spin));
            balls[1] = new ShotBall(radius, e.BallSet.Mass, BallState.AtRest(place));
            ShotRunner.RunToEnd(new ShotSetup(e, balls), ShotOptions.Default, ends);
            if (ends[1].Pocket == request.Route.Pocket && ends[0].Pocket is null)
                made++;
        }

        return made;
    }

    // The polar method of Marsaglia and Bray.
    private static double Normal(Random random)
    {
        while (true)
        {
            double u = 2 * random.NextDouble() - 1;
            double v = 2 * random.NextDouble() - 1;
            double s = u * u + v * v;
            if (s is > 0 and < 1)
                return u * Math.Sqrt(-2 * Math.Log(s) / s);
        }
    }
}
