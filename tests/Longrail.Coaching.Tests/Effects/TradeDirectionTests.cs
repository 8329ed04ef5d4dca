using Longrail.Coaching.Effects;
using static Longrail.Coaching.Tests.Effects.EffectScenes;

namespace Longrail.Coaching.Tests.Effects;

/// <summary>The trade's rules on what makes a bank short or long, as signs of the shares.</summary>
/// <remarks>The object ball goes off the left cushion. With a way of less than 90 degrees it travels towards the foot,
/// which is to the right of the shooter; positive shares are long.</remarks>
public class TradeDirectionTests
{
    // What a cushion and the way to and from it do, whatever the hit did.
    private static readonly EffectKind[] _rebound =
        [EffectKind.Roll, EffectKind.Curve, EffectKind.Rubber, EffectKind.Speed];
    private static readonly EffectKind[] _throw = [EffectKind.CutThrow, EffectKind.SpinThrow];

    // Alciatore; trade article: more speed shortens a bank that would otherwise arrive rolling.
    [Fact]
    public void A_harder_stroke_shortens_because_less_roll_arrives()
    {
        EffectBudget slow = Budget(Bank(75, 0, 1.6, across: 0.5));
        EffectBudget fast = Budget(Bank(75, 0, 5, across: 0.5));

        Assert.True(fast.Shares(_rebound) < slow.Shares(_rebound));
        Assert.True(fast.Shares(EffectKind.Roll, EffectKind.Curve) < slow.Shares(EffectKind.Roll, EffectKind.Curve));
        Assert.True(fast.Share(EffectKind.Roll) < slow.Share(EffectKind.Roll));
    }

    // Alciatore: a ball that slides anyway is less sensitive to speed than a slow one.
    [Fact]
    public void Once_the_ball_slides_anyway_more_speed_changes_little()
    {
        double Rebound(double speed) => Budget(Bank(75, 0, speed, across: 0.9, distance: 0.15)).Shares(_rebound);

        Assert.True(Math.Abs(Rebound(7) - Rebound(5)) < 0.5 * Math.Abs(Rebound(3.5) - Rebound(1.75)));
    }

    // From where a skid ends; common practice, no source: the farther from the rail, the more roll, the longer.
    [Fact]
    public void Farther_from_the_rail_at_the_same_speed_is_longer_by_roll()
    {
        EffectBudget near = Budget(Bank(75, 0, 2.5, across: 1.1, distance: 0.3));
        EffectBudget far = Budget(Bank(75, 0, 2.5, across: 0.5, distance: 0.3));

        Assert.True(far.Share(EffectKind.Roll) > near.Share(EffectKind.Roll));
    }

    // Alciatore; trade article: topspin curves the ball long after the cushion.
    [Fact]
    public void A_rolling_ball_curves_long_after_the_cushion()
    {
        EffectBudget budget = Budget(Bank(70, 0, 1.8, across: 0.4, distance: 0.25));

        Assert.True(budget.Share(EffectKind.Curve) > 5);
        Assert.True(budget.Alone(EffectKind.Curve) > 5);
        Assert.True(budget.Share(EffectKind.Roll) > 0);
    }

    // Common practice, no source: backspin still on the ball makes it short.
    [Fact]
    public void Draw_that_arrives_shortens()
    {
        EffectBudget draw = Budget(Alone("-0.45 R"));
        EffectBudget follow = Budget(Alone("0.4 R"));

        Assert.True(draw.Share(EffectKind.Roll) < 0);
        Assert.True(follow.Share(EffectKind.Roll) > 0);
        Assert.True(draw.Shares(_rebound) < follow.Shares(_rebound));
    }

    // Trade article: close to the rail a bank comes short.
    [Fact]
    public void Close_to_the_rail_the_rebound_is_short_for_want_of_roll()
    {
        EffectBudget close = Budget(Bank(65, 0, 3, across: 1.2));
        EffectBudget off = Budget(Bank(65, 0, 3, across: 0.6));

        Assert.True(close.Total < 0);
        Assert.True(close.Share(EffectKind.Rubber) < 0);
        Assert.True(close.Share(EffectKind.Roll) < off.Share(EffectKind.Roll));
        Assert.True(close.Shares(_rebound) < off.Shares(_rebound));
    }

    // Trade article; throw and handed-over side both from the formulas of docs/physics.md. A cut towards the way of the
    // bank (here to the right, the bank to the right): shorter, twice.
    [Fact]
    public void A_cut_towards_the_bank_is_thrown_short_and_gets_reverse_side()
    {
        EffectBudget budget = Budget(Bank(75, -30, 2.2, across: 1.0));

        Assert.True(budget.Share(EffectKind.CutThrow) < -5);
        Assert.True(budget.Share(EffectKind.Side) < -1);
    }

    // The same for the crossing bank: longer, twice.
    [Fact]
    public void A_cut_against_the_bank_is_thrown_long_and_gets_running_side()
    {
        EffectBudget budget = Budget(Bank(75, 30, 2.2, across: 1.0));

        Assert.True(budget.Share(EffectKind.CutThrow) > 5);
        Assert.True(budget.Share(EffectKind.Side) > 1);
    }

    // Trade article: side on the hand to which the bank goes (right side, bank to the right) shortens, side on the
    // other hand lengthens.
    [Fact]
    public void Side_on_the_banks_own_hand_shortens_and_on_the_other_lengthens()
    {
        EffectBudget right = Budget(Bank(75, 0, 2.2, right: 0.12, across: 1.0, distance: 0.15));
        EffectBudget left = Budget(Bank(75, 0, 2.2, right: -0.12, across: 1.0, distance: 0.15));

        Assert.True(right.Share(EffectKind.Side) < -1);
        Assert.True(left.Share(EffectKind.Side) > 1);
        // Right side throws to the left, which for a bank to the right is square: short as well.
        Assert.True(right.Share(EffectKind.SpinThrow) < 0);
        Assert.True(left.Share(EffectKind.SpinThrow) > 0);
    }

    // Alciatore: the outside side that gears removes both, and most of what dirt does.
    [Fact]
    public void Gearing_side_removes_throw_side_and_the_work_of_dirt()
    {
        // A shaft without squirt, so that both hits are the same cut.
        const string Dirty = """ "ballSet": { "state": "dirty" }, "cue": { "endMass": 1e-4 }, """;
        // 0.4 sin(cut) at the touch; the tip gives a little more, since the cloth slows the ball a little on 15 cm.
        double gearing = 0.4 * Math.Sin(30 * Math.PI / 180);
        EffectBudget plain = Budget(Bank(75, 30, 3, across: 1.0, distance: 0.1, more: Dirty));
        EffectBudget geared = Budget(Bank(75, 30, 3, right: gearing, across: 1.0, distance: 0.1, more: Dirty));

        Assert.True(Math.Abs(geared.Shares(_throw)) < 0.25 * Math.Abs(plain.Shares(_throw)));
        Assert.True(Math.Abs(geared.Share(EffectKind.Side)) < 0.25 * Math.Abs(plain.Share(EffectKind.Side)));
        Assert.True(
            Math.Abs(geared.Share(EffectKind.BallCondition)) < 0.25 * Math.Abs(plain.Share(EffectKind.BallCondition)));
    }

    // Trade article; Alciatore: dirt makes throw and handed-over side grow, polish makes them shrink.
    [Theory]
    [InlineData(30)]
    [InlineData(-30)]
    public void Dirt_adds_to_what_the_cut_does_and_polish_takes_from_it(double cut)
    {
        EffectBudget With(string state) =>
            Budget(Bank(75, cut, 2.2, across: 1.0, more: $$""" "ballSet": { "state": "{{state}}" }, """));
        EffectBudget dirty = With("dirty");
        EffectBudget polished = With("polished");
        int thrown = Math.Sign(dirty.Share(EffectKind.CutThrow));

        Assert.Equal(thrown, Math.Sign(dirty.Share(EffectKind.BallCondition)));
        Assert.Equal(-thrown, Math.Sign(polished.Share(EffectKind.BallCondition)));
        EffectKind[] hit = [EffectKind.CutThrow, EffectKind.Side, EffectKind.BallCondition];
        Assert.True(thrown * dirty.Shares(hit) > thrown * polished.Shares(hit));
    }

    // A new slick cloth, both parts: (a) the cushion grips less, so side does less (trade article); (b) the ball slides
    // longer, so roll brings less length at medium speed (from where a skid ends).
    [Fact]
    public void A_slick_cloth_takes_from_the_work_of_side_and_from_that_of_roll()
    {
        string Cloth(string state) => $$""" "cloth": { "state": "{{state}}" }, """;
        EffectBudget Played(string state) => Budget(Bank(75, 30, 2.5, across: 0.9, more: Cloth(state)));
        EffectBudget slick = Played("new");
        EffectBudget worn = Played("worn");

        // The roll that has formed on the way; the rest of the budget is not compared here.
        Assert.True(slick.Share(EffectKind.Roll) < worn.Share(EffectKind.Roll));
        Assert.True(Friction(0.1) < Friction(0.16));

        // Less cushion friction alone, at the same side on arrival.
        static double Friction(double nose) => Budget(Bank(
            75, 30, 2.5, across: 0.9, more: string.Create(
                System.Globalization.CultureInfo.InvariantCulture, $$""" "cushion": { "friction": {{nose}} }, """)))
            .Share(EffectKind.Side);
    }

    // A slower bed, where balls roll sooner: trade article. Its net effect on a bank is common practice and not
    // asserted.
    [Fact]
    public void On_a_damp_cloth_more_roll_arrives()
    {
        EffectBudget dry = Budget(Bank(75, 0, 2.8, across: 0.8));
        EffectBudget damp = Budget(Bank(75, 0, 2.8, across: 0.8, more: """ "cloth": { "state": "damp" }, """));

        Assert.True(damp.Alone(EffectKind.Roll) > dry.Alone(EffectKind.Roll));
    }

    // A frozen ball has no way on which to gain roll: trade article (shorter still).
    [Fact]
    public void A_ball_frozen_to_the_rail_comes_short_and_speed_along_the_way_is_nothing()
    {
        EffectBudget budget = Budget(File.ReadAllText(EffectsRunnerTests.ScenePath("frozen-bank.json")));

        Assert.True(budget.Total < 0);
        Assert.Equal(0.0, budget.Share(EffectKind.Speed), 1e-6);
        Assert.True(budget.Share(EffectKind.Rubber) < 0);
    }

    private static string Alone(string above) => $$"""
        { "table": { "pockets": "none" }, "balls": [ { "id": "cue", "x": 1.0, "y": 0.9 } ],
          "stroke": { "aim": "65 deg", "speed": 3, "tip": { "above": "{{above}}" } } }
        """;
}
