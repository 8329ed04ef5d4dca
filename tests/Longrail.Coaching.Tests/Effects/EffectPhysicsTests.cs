using System.Globalization;
using Longrail.Coaching.Effects;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using static Longrail.Coaching.Tests.Effects.EffectScenes;

namespace Longrail.Coaching.Tests.Effects;

/// <summary>Budgets against numbers that come from elsewhere: the trade's geometry, the published formula of
/// throw.</summary>
public class EffectPhysicsTests
{
    private const double Inch = 0.0254;

    // The trade's inches are given to four decimals.
    private const double FourDecimals = 5e-5;

    // The friction of the cloth cannot be zero; over a table it bends and slows nothing by more than this, metres.
    private const double Frictionless = 1e-9;

    /// <summary>Nothing lost, no friction, nose at the height of the centre: a ball goes like a ray of light between
    /// lines one radius inside the noses.</summary>
    private const string Lossless = """
        "cloth": { "slidingFriction": 1e-12, "rollingFriction": 1e-12, "spinDecay": 1e-9 },
        "cushion": { "law": "impulse", "restitution": 1, "friction": 0, "noseHeight": "50 %" },
        "ballSet": { "restitution": 1, "friction": { "base": 0, "gain": 0, "decay": 0 } },
        """;

    // Ball (37.5, 25) in, off the long rail to (50, 0) in: contact x 41.6022 in at equal angles (geometry of the
    // mirror on the ball-centre line, an independent computation).
    [Fact]
    public void One_cushion_without_loss_is_the_mirror_and_nothing_else()
    {
        EffectBudget budget = Alone(37.5, 25, 41.6022 - 37.5, 50 - 1.125 - 25, null);

        Assert.Equal(41.6022, budget.MirrorPath.Ball[1].X / Inch, FourDecimals);
        // At the far ball-centre line, 1.125 in before the point (50, 0).
        Assert.Equal(50 - 1.125 * 0.1718, budget.Place / Inch, 3 * FourDecimals);
        AssertNothing(budget);
    }

    // (20, 10) in, long then short cushion, to (50, 0): contacts (76.5958, 48.875) and (98.875, 33.5717), slope
    // 0.68689 at both ends (an independent computation); parallel first and last legs are the trade's rule.
    [Fact]
    public void Two_adjacent_cushions_without_loss_give_parallel_legs()
    {
        EffectBudget budget = Alone(20, 10, 76.5958 - 20, 48.875 - 10, 2);
        IReadOnlyList<Vec2> way = budget.MirrorPath.Ball;

        Assert.Equal(33.5717, way[2].Y / Inch, 3 * FourDecimals);
        Assert.Equal(98.875, way[2].X / Inch, FourDecimals);
        Vec2 first = way[1] - way[0];
        Vec2 last = way[3] - way[2];
        Assert.Equal(0.68689, first.Y / first.X, 1e-5);
        Assert.Equal(0.0, first.Cross(last), Frictionless);
        AssertNothing(budget);
    }

    // Opposite cushions: the touches lie at equal tangents, as the twice unfolded table has it.
    [Fact]
    public void Two_opposite_cushions_without_loss_are_a_straight_line_on_the_unfolded_table()
    {
        EffectBudget budget = Alone(20, 20, 12, 50 - 1.125 - 20, 2);
        IReadOnlyList<Vec2> way = budget.MirrorPath.Ball;
        double tangent = 12 / (50 - 1.125 - 20);

        Assert.Equal([CushionName.Left, CushionName.Right], budget.Cushions);
        Assert.Equal(47.75 * tangent, (way[2].X - way[1].X) / Inch, 1e-6);
        Assert.Equal(47.75 * tangent, (way[3].X - way[2].X) / Inch, 1e-6);
        AssertNothing(budget);
    }

    // The trade's crossing lines: from the ball to the point opposite the target, and from the ball's foot point to the
    // target; the mirror's touch stands over their crossing.
    [Fact]
    public void The_mirror_touches_where_the_crossing_lines_say()
    {
        EffectBudget budget = Alone(30, 18, 9, 50 - 1.125 - 18, null);
        Vec2 ball = budget.MirrorPath.Ball[0];
        Vec2 target = budget.MirrorPath.Ball[2];
        double line = (50 - 1.125) * Inch;
        // Both lines run from the ball's x to the target's x; they cross where their heights are equal.
        double part = (line - ball.Y) / ((line - ball.Y) + (line - target.Y));

        Assert.Equal(ball.X + part * (target.X - ball.X), budget.MirrorPath.Ball[1].X, Frictionless);
    }

    [Fact]
    public void A_hit_without_friction_goes_along_the_line_of_centres()
    {
        EffectBudget budget = Budget(Bank(70, 30, 2.5, more: Lossless));

        Assert.Equal(0.0, budget.Total, Frictionless);
        // A condition is compared with clean balls: having no friction takes back just the throw that those would have.
        Assert.True(Math.Abs(budget.Share(EffectKind.CutThrow)) > 10);
        Assert.Equal(0.0, budget.Shares(EffectKind.CutThrow, EffectKind.BallCondition), 1000 * Frictionless);
    }

    // The form of D. Alciatore, TP A.28 (2007), with the restitution that he leaves out: for a unit mass the push is
    // J = (1 + e) v cos(cut)/2, the rub F = min(mu(slip) J, |slip|/7), and tan(throw) the part of F across over J.
    [Theory]
    [InlineData(0.0, 20.0, 0.0)]
    [InlineData(0.0, 35.0, 0.0)]
    [InlineData(1.0, 30.0, 0.0)]
    [InlineData(0.0, 0.0, 0.3)]
    [InlineData(0.5, 25.0, -0.4)]
    public void Throw_moves_the_arrival_as_the_published_formula_says(double roll, double cut, double side)
    {
        EffectBudget budget = AtTheMouth(1.5, cut, roll, side);
        (BallState cue, BallState ball, double e, BallFriction mu) = Hit(budget);
        Vec2 centres = (ball.Position - cue.Position).Normalized();
        double across = cue.Velocity.Dot(centres.Left) + R * cue.Spin.Z;
        double up = R * (cue.Spin.X * centres.Y - cue.Spin.Y * centres.X);
        double slip = Math.Sqrt(across * across + up * up);
        double push = (1 + e) * cue.Velocity.Dot(centres) / 2;
        double rub = Math.Min(mu.At(slip) * push, slip / 7);
        // The struck ball is rubbed the way the striker's surface goes.
        Vec2 way = centres + (rub * across / slip / push) * centres.Left;
        double place = Crossing(budget.Target, ball.Position, way);

        // A ball that is given follow or draw along the line of centres but is thrown off it curves a little back.
        double curves = Math.Abs(roll) > 0 ? 2e-3 : 2e-5;
        Assert.Equal(place, budget.Place, curves);
        Assert.Equal(
            1000 * budget.Target.Sense * (place - budget.MirrorPlace),
            budget.Shares(EffectKind.CutThrow, EffectKind.SpinThrow), 1000 * curves);
    }

    // Outside side of 0.4 sin(cut) (R w = v sin(cut)) turns the balls like gears: 30 degrees 0.200, 45 degrees 0.283
    // (Alciatore, the 40 % rule; values recomputed).
    [Theory]
    [InlineData(15)]
    [InlineData(30)]
    [InlineData(45)]
    public void Gearing_side_leaves_neither_throw_nor_side(double cut)
    {
        double gearing = Math.Sin(cut * Math.PI / 180);
        EffectBudget without = AtTheMouth(1.5, cut, 0, 0);
        EffectBudget budget = AtTheMouth(1.5, cut, 0, gearing);

        // A tenth of a millimetre a metre: the cloth takes a little of the speed and the side on the way to the touch.
        Assert.Equal(0.0, budget.Shares(EffectKind.CutThrow, EffectKind.SpinThrow), 0.2);
        Assert.True(Math.Abs(without.Share(EffectKind.CutThrow)) > 5);
        // The two undo each other: neither is nothing.
        Assert.Equal(without.Share(EffectKind.CutThrow), budget.Share(EffectKind.CutThrow), 0.3);
        Assert.Equal(0.0, Side(budget), 0.001);
        Assert.True(Math.Abs(Side(without)) > 0.02);
    }

    // Throw of an angle gives side of b/R = tan(throw) with balls that lose nothing (the same impulse does both;
    // recomputed).
    [Fact]
    public void The_side_handed_over_is_the_tangent_of_the_throw()
    {
        EffectBudget budget = AtTheMouth(1.5, 25, 0, 0, """ "ballSet": { "restitution": 1 }, """);
        BallState after = budget.Trace.Events[budget.LastContact].AfterB!.Value;
        (BallState cue, BallState ball, _, _) = Hit(budget);
        Vec2 centres = (ball.Position - cue.Position).Normalized();
        double tangent = centres.Cross(after.Velocity) / centres.Dot(after.Velocity);

        Assert.Equal(tangent, -0.4 * R * after.Spin.Z / after.Velocity.Dot(centres), 1e-12);
        Assert.True(Math.Abs(tangent) > 0.03);
    }

    [Fact]
    public void Dirty_balls_throw_more_and_polished_ones_less_and_the_budget_names_the_condition()
    {
        string State(string state) => $$""" "ballSet": { "state": "{{state}}" }, """;
        EffectBudget dirty = AtTheMouth(1.5, 30, 0.5, 0, State("dirty"));
        EffectBudget clean = AtTheMouth(1.5, 30, 0.5, 0, State("clean"));
        EffectBudget polished = AtTheMouth(1.5, 30, 0.5, 0, State("polished"));
        int thrown = Math.Sign(clean.Share(EffectKind.CutThrow));

        Assert.True(thrown * dirty.Share(EffectKind.BallCondition) > 1);
        Assert.True(thrown * polished.Share(EffectKind.BallCondition) < -1);
        Assert.Equal(0.0, clean.Share(EffectKind.BallCondition));
        Assert.True(thrown * dirty.Total > thrown * clean.Total);
        Assert.True(thrown * clean.Total > thrown * polished.Total);
    }

    // The formula of docs/physics.md (form as Alciatore TP A.31) and plain geometry, on a table where nothing else
    // acts.
    [Fact]
    public void Squirt_moves_the_arrival_by_its_angle()
    {
        EffectBudget budget = Budget($$"""
            { "table": { "pockets": "none" }, {{Lossless}} "balls": [ { "id": "cue", "x": 1.0, "y": 0.3 } ],
              "stroke": { "aim": "80 deg", "speed": 6, "tip": { "right": "0.3 R" } } }
            """);
        // 170 g ball, 8.5 g at the end of an ordinary shaft.
        double squirt = Math.Atan(2.5 * 0.3 * Math.Sqrt(0.91) / (1 + 0.17 / 0.0085 + 2.5 * 0.91));
        double aim = 80 * Math.PI / 180;
        double way = 2 * (1.27 - R) - 0.3 - R;
        double mirror = 1.0 + way / Math.Tan(aim);
        double turned = 1.0 + way / Math.Tan(aim + squirt);

        Assert.Equal(mirror, budget.MirrorPlace, Frictionless);
        Assert.Equal(
            1000 * budget.Target.Sense * (turned - mirror), budget.Share(EffectKind.SquirtAndSwerve),
            1000 * Frictionless);
    }

    private static EffectBudget Alone(double x, double y, double alongInches, double acrossInches, int? cushions)
    {
        double angle = Math.Atan2(acrossInches, alongInches) * 180 / Math.PI;
        return Budget(
            string.Create(CultureInfo.InvariantCulture, $$"""
                { "table": { "pockets": "none" }, {{Lossless}}
                  "balls": [ { "id": "cue", "x": "{{x}} in", "y": "{{y}} in" } ],
                  "stroke": { "aim": "{{angle:R}} deg", "speed": 2 } }
                """),
            new EffectsOptions(Cushions: cushions));
    }

    private static void AssertNothing(EffectBudget budget)
    {
        Assert.Equal(0.0, budget.Total, Frictionless);
        Assert.All(budget.Effects, effect => Assert.Equal(0.0, effect.Metres, Frictionless));
    }

    /// <summary>A cue ball that is launched just before it cuts the object ball straight into a corner: what it has at
    /// the touch is what it was given.</summary>
    /// <param name="speed">Speed, m/s.</param>
    /// <param name="cut">Cut, degrees, positive to the left.</param>
    /// <param name="roll">Part of natural roll.</param>
    /// <param name="side">Right side, R w/v.</param>
    /// <param name="more">More fields of the scene.</param>
    private static EffectBudget AtTheMouth(double speed, double cut, double roll, double side, string more = "")
    {
        var ball = new Vec2(2.3, 1.03);
        Vec2 centres = Vec2.FromAngle(45 * Math.PI / 180);
        Vec2 way = Vec2.FromAngle((45 - cut) * Math.PI / 180);
        // A tenth of a millimetre of way before the touch.
        Vec2 cue = ball - 2 * R * centres - 1e-4 * way;
        Vec2 velocity = speed * way;
        double turn = roll * speed / R;
        return Budget(string.Create(CultureInfo.InvariantCulture, $$"""
            { {{more}}
              "balls": [
                { "id": "cue", "x": {{cue.X:R}}, "y": {{cue.Y:R}} },
                { "id": "8", "x": {{ball.X:R}}, "y": {{ball.Y:R}} } ],
              "launch": [ { "ball": "cue", "velocity": [{{velocity.X:R}}, {{velocity.Y:R}}],
                "spin": [{{-turn * way.Y:R}}, {{turn * way.X:R}}, {{side * speed / R:R}}] } ] }
            """));
    }

    private static (BallState Cue, BallState Ball, double Restitution, BallFriction Friction) Hit(EffectBudget budget)
    {
        ShotEvent hit = budget.Trace.Events.First(e => e.Kind == ShotEventKind.BallsMeet);
        BallSetSpec balls = budget.Trace.Setup.Equipment.BallSet;
        return (hit.BeforeA, hit.BeforeB!.Value, balls.Restitution, balls.Friction);
    }

    /// <summary>Side on the struck ball after the hit, as a tip offset b/R.</summary>
    private static double Side(EffectBudget budget)
    {
        BallState after = budget.Trace.Events[budget.LastContact].AfterB!.Value;
        return 0.4 * R * after.Spin.Z / after.Velocity.Length;
    }

    private static double Crossing(EffectTarget target, Vec2 from, Vec2 way) => target.PlaceOf(
        from + (target.Origin - from).Dot(target.Across) / way.Dot(target.Across) * way);
}
