using Longrail.Coaching.Charts;
using Longrail.Coaching.TableCards;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.TestKit;
using static Longrail.Coaching.Tests.Charts.ChartCases;

namespace Longrail.Coaching.Tests.Charts;

/// <summary>The trade's rules through the chart. A rebound that comes short asks for a longer touch, so every "shorter"
/// is a larger correction.</summary>
public class ChartTradeTests
{
    // No pocket may stand where a kick touches.
    private static readonly EquipmentSpec _plain =
        Standard with { Table = Standard.Table with { Corner = null, Side = null } };

    [Theory]
    [InlineData(BankKind.CrossSide, 1.5, 2.0)]
    [InlineData(BankKind.CrossSide, 3.0, 2.0)]
    [InlineData(BankKind.CrossCorner, 4.0, 2.0)]
    [InlineData(BankKind.LongRail, 5.0, 2.0)]
    public void The_harder_a_bank_is_struck_the_shorter_it_comes(BankKind kind, double along, double across)
    {
        // B1. Alciatore, bank and kick effects; trade texts.
        BankChart chart = Run(Request(Route(kind), At(along, across), 2.6, 3.2, 4.5));
        Expect.Less(Correction(chart[0, 0, 0]), Correction(chart[0, 0, 1]), "3.2 against 2.6 m/s");
        Expect.Less(Correction(chart[0, 0, 1]), Correction(chart[0, 0, 2]), "4.5 against 3.2 m/s");
    }

    [Fact]
    public void A_ball_farther_from_the_rail_on_the_same_line_comes_longer()
    {
        // B3. Common practice; follows from the slide lengths. Both places lie on one mirror line.
        TableSpec table = Standard.Table;
        ChartRoute route = Route(BankKind.CrossSide);
        var far = new Vec2(1.5 * table.DiamondAlong, 2.5 * table.DiamondAcross);
        Vec2 touch = Run(Request(route, At(1.5, 2.5), 3)).Rows[0].MirrorTouch!.Value;
        Vec2 near = touch + 0.3 * (far - touch);
        ChartPlaces places = ChartPlaces.Line(
            new(1.5, 2.5), new(near.X / table.DiamondAlong, near.Y / table.DiamondAcross), 2);
        BankChart chart = Run(Request(route, places, 3));
        Expect.Near(0, chart.Rows[1].MirrorTouch!.Value.DistanceTo(touch), 1e-12, "mirror touches, m");
        Expect.Less(Correction(chart[0, 0, 0]), Correction(chart[1, 0, 0]), "far against near");
    }

    [Theory]
    // Seen from the cue ball the bank goes to the left off the right cushion, to the right off the left one.
    [InlineData(PocketName.LeftSide, -1)]
    [InlineData(PocketName.RightSide, 1)]
    public void Side_on_the_hand_of_the_banks_direction_shortens_and_on_the_other_lengthens(PocketName pocket, int hand)
    {
        // B10, B11. Trade texts.
        ChartRequest request = Request(Route(BankKind.CrossSide, pocket), At(2, 2), 4.5);
        BankChart chart = Run(request with { Tips = [Tip(0.25 * hand), Tip(0), Tip(-0.25 * hand)] });
        Expect.Less(Correction(chart[0, 1, 0]), Correction(chart[0, 0, 0]), "none against the same hand");
        Expect.Less(Correction(chart[0, 2, 0]), Correction(chart[0, 1, 0]), "the other hand against none");
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(1.5)]
    [InlineData(2.0)]
    [InlineData(2.5)]
    [InlineData(3.0)]
    public void A_fast_sliding_ball_is_hit_a_sixth_of_a_diamond_nearer_to_the_target_than_the_mirror(double x)
    {
        // Alciatore, fast-bank rule: from 2 x + 1/3 diamonds off the target it is hit to x: 1/6 diamond longer than the
        // mirror in our words. A calibration target, so a direction and a band: a quarter of a diamond, what a player
        // would call the same place. Power speed, 9 mph, without roll at the start; the number counts where the line
        // begins at the rail, and the ball lies half way to the cushion on it.
        TableSpec table = Standard.Table;
        double number = 2 * x + 1.0 / 3;
        ChartRoute kick = Route(BankKind.Kick, target: new Vec2(7 * table.DiamondAlong, 0.12));
        ChartPlaces start = At(7 - 0.75 * number, 2);
        BankChart chart = Run(Request(kick, start, 4.0) with { Equipment = _plain, Height = CueHeight.Centre });
        double correction = Correction(chart[0, 0, 0]);
        Expect.Less(0, correction, "longer than the mirror");
        Expect.Near(1.0 / 6, correction, TradeAnchors.QuarterDiamond, "correction, diamonds");
    }

    [Theory]
    [InlineData(2.0)]
    [InlineData(3.0)]
    [InlineData(4.0)]
    public void A_plain_rolling_kick_on_a_neutral_table_finds_its_target_by_the_mirror(double away)
    {
        // Trade article and common practice, the default calibration: half way between, through the sight. At the nose
        // that is a quarter of a diamond at most.
        TableSpec table = Standard.Table;
        ChartRoute kick = Route(BankKind.Kick, target: new Vec2(6 * table.DiamondAlong, 0.12));
        BankChart chart = Run(Request(kick, At(6 - away, 0.12 / table.DiamondAcross), 1.6) with { Equipment = _plain });
        Expect.Near(0, Correction(chart[0, 0, 0]), TradeAnchors.QuarterDiamond, "correction, diamonds");
    }

    [Fact]
    public void What_makes_a_bank_is_wider_at_pocket_speed_than_at_a_firm_one()
    {
        // B17. Alciatore.
        ChartRoute route = Route(BankKind.CrossSide);
        double Leeway(double speed) => Run(OnePlace(route, new(2.2, 0.67), new(2, 2), speed))[0, 0].Leeway!.Value;
        Expect.Less(Leeway(4.5), Leeway(2), "leeway, radians");
    }

    [Fact]
    public void A_long_way_back_leaves_the_least_leeway()
    {
        // B18. Trade article. Both balls are hit full from a diamond away.
        double cross = FullHitLeeway(BankKind.CrossSide, new(2.5, 1.5));
        double back = FullHitLeeway(BankKind.LongRail, new(5, 2));
        Expect.Less(back, cross, "leeway, radians");

        static double FullHitLeeway(BankKind kind, Vec2 ball)
        {
            TableSpec table = Standard.Table;
            ChartRoute route = Route(kind);
            var at = new Vec2(ball.X * table.DiamondAlong, ball.Y * table.DiamondAcross);
            double reach = TableOutline.Reach(0.5 * Standard.BallSet.Diameter, Standard.Cushion.NoseHeight);
            Vec2 touch = MirrorBank.Touches(at, [route.Off], route.Target, table, reach)![0];
            Vec2 cue = at - table.DiamondAlong * (touch - at).Normalized();
            MapCell cell =
                Run(OnePlace(route, ball, new(cue.X / table.DiamondAlong, cue.Y / table.DiamondAcross), 3.2))[0, 0];
            Assert.Equal(NoBank.None, cell.Failure);
            return cell.Leeway!.Value;
        }
    }
}
