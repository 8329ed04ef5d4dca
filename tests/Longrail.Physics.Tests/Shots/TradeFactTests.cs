using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Shots;

/// <summary>What every instructor knows: signs only, no amounts. Alciatore's published effects where named; the rest
/// is common practice, no source.</summary>
public class TradeFactTests
{
    private const double Diamond = 0.3175;

    [Theory]
    [InlineData(20.0)]
    [InlineData(30.0)]
    public void The_same_line_struck_harder_rebounds_shorter(double angle)
    {
        // B1. A ball struck through the centre, half a table's width from the cushion. Alciatore; common practice for
        // the amount.
        double[] landings = [.. new[] { 1.6, 2.8, 4.8 }.Select(v => Landing(Plain, v, angle, 0, 0, 0.6))];
        Expect.Less(landings[1], landings[0], "landing at 2.8 m/s against 1.6 m/s");
        Expect.Less(landings[2], landings[1], "landing at 4.8 m/s against 2.8 m/s");
    }

    [Fact]
    public void An_eighth_of_a_tip_of_running_side_visibly_lengthens_and_of_reverse_side_shortens()
    {
        // Common practice, no source. Visible: more than a ball's radius on the landing rail at a medium stroke.
        double offset = 0.013 / 8 * R / (R + Plain.Cue.TipRadius);
        double plain = Stroke(0), running = Stroke(offset), reverse = Stroke(-offset);
        Expect.Less(plain, running, "running side", 0.5 * R);
        Expect.Less(reverse, plain, "reverse side", 0.5 * R);

        static double Stroke(double right)
        {
            const double angle = 25;
            // A ball that goes along +x into the left cushion: right side is running side. The stick makes up for
            // squirt.
            CueSpec cue = Plain.Cue with { EndMass = 1e-12 };
            TipResult hit = TipContact.Strike(new Stroke((90 - angle) * Math.PI / 180, 1.8, right, 0, 0), R, M, cue);
            return LandingOf(Plain, hit.Velocity, hit.Spin, angle, 0.3);
        }
    }

    [Fact]
    public void More_way_to_the_cushion_lets_the_ball_roll_and_lengthens_the_rebound() =>
        // B3. Common practice; follows from the slide lengths.
        Expect.Less(Landing(Plain, 2.5, 30, 0, 0, 0.1), Landing(Plain, 2.5, 30, 0, 0, 0.9), "landing");

    [Fact]
    public void Roll_lengthens_and_draw_shortens()
    {
        // B4, B5. Alciatore for roll; common practice for draw.
        double stun = Landing(Plain, 2, 30, 0, 0, 0.02);
        Expect.Less(stun, Landing(Plain, 2, 30, 1, 0, 0.02), "rolling against stun");
        Expect.Less(Landing(Plain, 2, 30, -0.8, 0, 0.02), stun, "draw against stun");
    }

    [Fact]
    public void Running_side_adds_speed_and_reverse_side_takes_it()
    {
        // Alciatore, effects of side on kicks; the difference is large between 20 and 40 degrees from the normal.
        double Out(double side) => Into(Plain, 2, 30, 1, side, 0.02).Play()
            .Events.First(e => e.Kind == ShotEventKind.Cushion).AfterA is var s ? Plays.Final(s).Length : 0;
        Expect.Less(Out(0), Out(0.7), "running");
        Expect.Less(Out(-0.7), Out(0), "reverse");
    }

    [Fact]
    public void On_a_straight_bank_the_cue_balls_side_arrives_reversed_and_moves_the_rebound_accordingly()
    {
        // B10, B11. The bank goes to the right (+x): right side on the cue ball makes reverse side on the object
        // ball: shorter.
        (double Side, double Landing) right = Bank(0.5, 0, Plain), left = Bank(-0.5, 0, Plain);
        (double Side, double Landing) none = Bank(0, 0, Plain);
        Expect.Less(right.Side, -1, "side of the object ball at the cushion after right side, rad/s");
        Expect.Less(1, left.Side, "side of the object ball at the cushion after left side, rad/s");

        // Compare rebounds from the cushion alone, not throw: tangent out less tangent in.
        Expect.Less(right.Landing, none.Landing, "right side");
        Expect.Less(none.Landing, left.Landing, "left side");
    }

    [Fact]
    public void A_cut_with_the_bank_banks_short_and_a_cut_against_it_long_and_gearing_takes_it_away()
    {
        // B8, B9, B12. The ball goes up and to the right. Cut to the right (the way it travels): reverse side; to the
        // left: running.
        (double Side, double Landing) with = Bank(0, -0.5, Plain), against = Bank(0, 0.5, Plain);
        (double Side, double Landing) none = Bank(0, 0, Plain);
        Expect.Less(with.Landing, none.Landing, "cut with the bank");
        Expect.Less(none.Landing, against.Landing, "cut against the bank");
        double gears = Math.Sin(0.5);
        Expect.Near(
            0, R * Bank(gears, 0.5, Plain).Side, 0.02,
            "side at the cushion with gearing outside side, as surface speed");
    }

    [Fact]
    public void An_object_ball_near_the_rail_banks_shorter_than_one_far_from_it()
    {
        // B6. Trade texts (the published fix is to over-cut). Driven full at 30 degrees from the normal at a medium
        // speed.
        double near = Turn(0.03), far = Turn(0.7);
        Expect.Less(near, far, "angle out after the curve, degrees");

        static double Turn(double gap)
        {
            Vec2 way = Vec2.FromAngle(60 * Math.PI / 180), struck = new Vec2(1.2, 1.27 - R) - gap * way,
                cue = struck - (2 * R + 0.1) * way;
            Trace trace = Plain.With(Moving(cue.X, cue.Y, 1.8, way.Angle, 0), Ball(struck.X, struck.Y)).Play();
            Vec2 end = Plays.Final(trace.Events.First(e => e.Kind == ShotEventKind.Cushion && e.BallA == 1).AfterA);
            return Math.Atan2(end.X, -end.Y) * 180 / Math.PI;
        }
    }

    [Fact]
    public void Speed_moves_a_ball_that_slides_at_the_rail_less_than_one_that_may_roll()
    {
        // B2. Alciatore: the angle is less sensitive to speed when the ball slides anyway. Both pairs have the same
        // ratio of speeds.
        double sliding = Math.Abs(Landing(Plain, 4.8, 30, 0, 0, 0.02) - Landing(Plain, 3.2, 30, 0, 0, 0.02));
        double rolling = Math.Abs(Landing(Plain, 2.4, 30, 0, 0, 0.6) - Landing(Plain, 1.6, 30, 0, 0, 0.6));
        Expect.Less(sliding, rolling, "what half as much speed again does");
    }

    [Fact]
    public void A_frozen_ball_banks_no_longer_than_one_near_the_rail()
    {
        // B7. Trade texts: shorter still. Struck by a full ball on the same line, so that cut and throw are out of it;
        // what is left is that it has had no way at all on which to begin to roll.
        double sin = (Plain.Cushion.NoseHeight - R) / R, line = 1.27 - R * Math.Sqrt(1 - sin * sin);
        double Out(double gap)
        {
            Vec2 way = Vec2.FromAngle(60 * Math.PI / 180), struck = new Vec2(1.2, line) - gap * way, cue = struck - (2 * R + 0.1) * way;
            Trace trace = Plain.With(Moving(cue.X, cue.Y, 1.8, way.Angle, 0), Ball(struck.X, struck.Y)).Play();
            Vec2 end = Plays.Final(trace.Events.First(e => e.Kind == ShotEventKind.Cushion && e.BallA == 1).AfterA);
            return Math.Atan2(end.X, -end.Y) * 180 / Math.PI;
        }

        Expect.Less(Out(0), Out(0.05), "angle out after the curve, degrees");
    }

    [Fact]
    public void A_damp_cloth_is_slower_lets_balls_roll_sooner_and_grips_more_at_the_cushion()
    {
        // B16. Slower bed: trade text; that the cushion grips more and balls roll sooner: common practice, no source.
        // The net effect on a bank is left open, as the trade leaves it.
        ClothCondition damp = EquipmentPresets.ClothConditions.Single(c => c.Name == "damp");
        Expect.Less(1, damp.Rolling, "rolling friction against played-in");
        Expect.Less(1, damp.Sliding, "sliding friction against played-in");
        Expect.Less(1, damp.CushionFriction, "cushion friction against played-in");
        double Way(double factor) => Plain.WithCloth(c => c with { RollingFriction = c.RollingFriction * factor })
            .With(Moving(0.3, 0.6, 0.5, 0, 1)).Play().Balls[0].State.Position.X;
        double Skid(double factor) => Plain.WithCloth(c => c with { SlidingFriction = c.SlidingFriction * factor })
            .With(Moving(0.3, 0.6, 1.5, 0, 0)).Play().Events.First(e => e.Kind == ShotEventKind.SlideEnds).BeforeA.Position.X;
        Expect.Less(Way(damp.Rolling), Way(1), "how far a ball rolls");
        Expect.Less(Skid(damp.Sliding), Skid(1), "how far it skids");
    }

    [Fact]
    public void A_slick_cushion_takes_from_what_side_does_and_a_slick_cloth_keeps_the_ball_sliding_and_short()
    {
        // B15. (a) trade texts: less grip at the cushion; (b) follows from the slide lengths.
        double Effect(double grip)
        {
            EquipmentSpec cushions = Plain.WithCushion(c => c with { Friction = grip });
            return Landing(cushions, 2, 20, 1, 0.6, 0.02) - Landing(cushions, 2, 20, 1, 0, 0.02);
        }

        Expect.Less(Effect(0.1), Effect(0.25), "what side does");
        double Slides(double friction) => Landing(
            Plain.WithCloth(c => c with { SlidingFriction = friction }), 2.5, 30, 0, 0, 0.5);
        Expect.Less(Slides(0.12), Slides(0.3), "landing on slick and on slow cloth");
    }

    [Fact]
    public void Dirtier_balls_throw_more_and_hand_over_more_side()
    {
        // B13, B14. Alciatore; common practice. Clean by the fit, dirty two and a half times as much, polished a third.
        double[] throws = new double[3], sides = new double[3];
        for (int i = 0; i < 3; i++)
        {
            double dirt = new[] { 0.35, 1.0, 2.5 }[i];
            EquipmentSpec balls = Plain.WithBalls(
                b => b with { Friction = new BallFriction(dirt * 9.951e-3, dirt * 0.108, 1.088) });
            throws[i] = Plays.Throw(balls, 1.5, 35, 0);
            sides[i] = -Plays.Meet(balls, 1.5, 0, 0, 0.8).AfterB!.Value.Spin.Z;
        }

        Expect.Less(throws[0], throws[1], "polished against clean, throw");
        Expect.Less(throws[1], throws[2], "clean against dirty, throw");
        Expect.Less(sides[0], sides[1], "polished against clean, side");
        Expect.Less(sides[1], sides[2], "clean against dirty, side");
    }

    [Fact]
    public void A_frozen_ball_hit_half_full_straight_away_from_the_cue_ball_kisses_twice_slowly_and_clears_at_pace()
    {
        // Common practice, no source: at pace the cue ball has left sideways before the rubber gives the ball back.
        Assert.Equal(2, Meetings(0.6));
        Assert.Equal(1, Meetings(5));

        static int Meetings(double speed)
        {
            double sin = (Plain.Cushion.NoseHeight - R) / R, line = 1.27 - R * Math.Sqrt(1 - sin * sin);
            Vec2 struck = new(1.27, line), way = new(0, 1);
            Vec2 cue = struck - 2 * R * way.Rotated(Math.PI / 6) - 0.3 * way;
            Trace trace = Plain.With(Moving(cue.X, cue.Y, speed, Math.PI / 2), Ball(struck.X, struck.Y)).Play(1);
            return trace.Events.Count(e => e.Kind == ShotEventKind.BallsMeet);
        }
    }

    /// <summary>A ball that goes up and to the right into the left cushion, at an angle from its normal.</summary>
    private static ShotSetup Into(
        EquipmentSpec equipment, double speed, double angle, double roll, double side, double way)
    {
        double a = (90 - angle) * Math.PI / 180;
        Vec2 start = new Vec2(1, 1.27 - R) - way * Vec2.FromAngle(a);
        return equipment.With(Moving(start.X, start.Y, speed, a, roll, side));
    }

    /// <summary>How far along the table the ball lands on the opposite rail's line, from where the straight line met
    /// the cushion.</summary>
    private static double Landing(
        EquipmentSpec equipment, double speed, double angle, double roll, double side, double way)
    {
        ShotSetup shot = Into(equipment, speed, angle, roll, side, way);
        return Landing(shot.Play(), 0);
    }

    private static double LandingOf(EquipmentSpec equipment, Vec2 velocity, Vec3 spin, double angle, double way)
    {
        Vec2 start = new Vec2(1, 1.27 - R) - way * Vec2.FromAngle((90 - angle) * Math.PI / 180);
        return Landing(equipment.With(Ball(start.X, start.Y, velocity, spin)).Play(), 0);
    }

    private static double Landing(Trace trace, int ball)
    {
        ShotEvent[] touches = [.. trace.Events.Where(e => e.Kind == ShotEventKind.Cushion && e.BallA == ball)];
        Assert.Equal(CushionName.Left, touches[0].Cushion);
        Assert.Equal(CushionName.Right, touches[1].Cushion);
        return touches[1].BeforeA.Position.X;
    }

    /// <summary>An object ball driven up and to the right at 15 degrees from the normal with a cue ball's side and
    /// cut; its side on arrival and its landing on the right cushion, cleaned of the direction in which throw sent
    /// it.</summary>
    private static (double Side, double Landing) Bank(double side, double cut, EquipmentSpec equipment)
    {
        Vec2 struck = new(1, 0.8), wanted = Vec2.FromAngle(75 * Math.PI / 180);
        Vec2 ghost = struck - 2 * R * wanted, way = wanted.Rotated(-cut), cue = ghost - 0.01 * way;
        ShotBall striker = Moving(cue.X, cue.Y, 2 / Math.Cos(cut), way.Angle, 0, side);
        Trace trace = equipment.With(striker, Ball(struck.X, struck.Y)).Play();
        ShotEvent touch = trace.Events.First(e => e.Kind == ShotEventKind.Cushion && e.BallA == 1);
        BallState touched = touch.BeforeA;
        double spin = touched.Spin.Z;

        // The same arrival, turned to the wanted line: only speed, roll and side are the object ball's own.
        double turn = wanted.Angle - touched.Velocity.Angle;
        Vec2 roll = touched.Spin.Horizontal.Rotated(turn);
        var shot = new ShotBall(R, M, new BallState(
            new Vec2(1, 1.2), touched.Velocity.Rotated(turn), new Vec3(roll.X, roll.Y, spin)));
        return (spin, Landing(equipment.With(shot).Play(), 0) / Diamond);
    }
}
