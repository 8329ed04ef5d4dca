using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.TestKit;
using Longrail.TestKit.Reference;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Shots;

/// <summary>The trade's numbers that are read off a trace, against tables, closed forms and plane geometry.</summary>
public class ReadingTests
{
    private const double Deg = Math.PI / 180;

    [Fact]
    public void A_meeting_reads_its_cut_hit_throw_and_grip_as_tabled()
    {
        // Alciatore TP A.28 (2007); positive to the left, so a cut to the left is thrown to the right.
        EquipmentSpec balls = Plain.WithBalls(b => b with { Restitution = 1 });
        foreach (GoldenRow row in GoldenTable.Load("throw-stun").Rows)
        {
            foreach (int hand in new[] { 1, -1 })
            {
                double cut = hand * row["cut"].Value;
                MeetReading m = Meet(Plays.Hit(balls, 3 * Mph, cut * Deg, 0, 0));
                Expect.Near(cut, m.CutDegrees, 1e-5, $"{row}: cut");
                Expect.Near(1 - Math.Sin(Math.Abs(cut) * Deg), m.HitFraction, 1e-6, $"{row}: hit fraction");
                Expect.Printed(row["3mph"], -hand * m.ThrowDegrees, $"{row}: throw");
                Assert.Equal(row["3mph"].Marked, m.Gripped);
                Expect.Near(3 * Mph * Math.Cos(cut * Deg), m.ClosingSpeed, 1e-6, $"{row}: closing speed");
                Expect.Near(3 * Mph * Math.Abs(Math.Sin(cut * Deg)), m.SlipSpeed, 1e-6, $"{row}: slip speed");
            }
        }
    }

    [Fact]
    public void A_meeting_reads_roll_and_side_of_the_striker_and_the_side_it_handed_over()
    {
        // Side as a tip offset is 0.4 R w_z / v; in a gripping straight hit 5/14 of the surface speed goes over,
        // reversed.
        EquipmentSpec balls = Plain.WithBalls(b => b with { Restitution = 1 });
        MeetReading m = Meet(Plays.Hit(balls, 1, 0, 0, 0.2));
        Expect.Near(0.08, m.StrikerSide, 1e-6, "side of the striker, b/R");
        Expect.Near(
            -0.08 * 5 / 14, m.SideHandedOver * m.StruckSpeed, 1e-6, "side handed over, b/R, at the striker's speed");
        Assert.True(m.Gripped);
        Expect.Near(1, Meet(Plays.Hit(balls, 1, 0.4, 1, 0)).StrikerRollRatio, 1e-6, "roll ratio");
        Expect.Near(-0.5, Meet(Plays.Hit(balls, 1, 0.4, -0.5, 0)).StrikerRollRatio, 1e-6, "roll ratio of draw");
    }

    [Theory]
    [InlineData(CushionName.Left)]
    [InlineData(CushionName.Right)]
    [InlineData(CushionName.Head)]
    [InlineData(CushionName.Foot)]
    public void A_rebound_reads_its_angles_and_speeds_as_tabled_at_every_cushion(CushionName name)
    {
        EquipmentSpec table = Plain.WithCloth(c => c with { SlidingFriction = 0.212 }) with { Cushion = Mathavan(R) };
        foreach (GoldenRow row in GoldenTable.Load("cushion-side").Rows)
        {
            CushionReading c = Rebound(table, name, 1, row["angle"].Value, 1, row["side"].Value);
            Expect.Near(row["angle"].Value, c.AngleInDegrees, 1e-5, $"{row}: angle in");
            Expect.Near(row["out"].Value, c.AngleOutDegrees, Tolerance.CushionAngle, $"{row}: angle out");
            Expect.Near(row["out_speed"].Value, c.SpeedOut, Tolerance.CushionSpeed, $"{row}: speed out");
            Expect.Near(
                row["final"].Value, c.AngleAfterCurveDegrees, Tolerance.CushionAngle, $"{row}: angle after the curve");
            Expect.Near(
                row["final_speed"].Value, c.SpeedAfterCurve, Tolerance.CushionSpeed, $"{row}: speed after the curve");
            Expect.Near(1, c.SpeedIn, 1e-6, $"{row}: speed in");
            Expect.Near(1, c.RollRatioIn, 1e-5, $"{row}: roll ratio");

            // Straight in there is no way along the rail, and so neither running nor reverse side; only its size is
            // certain.
            double side = 0.4 * row["side"].Value, read = row["angle"].Value == 0 ? Math.Abs(c.SideIn) : c.SideIn;
            Expect.Near(side, read, 1e-5, $"{row}: side in, positive running");
            double turns = 0.4 * row["wz"].Value / row["out_speed"].Value;
            if (row["angle"].Value != 0)
                Expect.Near(
                    turns, c.SideOut, 0.4 * Tolerance.CushionSpeed * 2 / row["out_speed"].Value, $"{row}: side out");
        }
    }

    [Fact]
    public void A_rebound_reads_where_it_touches_and_lands_and_a_mirror_lands_neither_long_nor_short()
    {
        // Plane geometry: from one long cushion to the other, in eighths of the length from the head.
        double tan = Math.Tan(25 * Deg), touch = 1.0, run = 1.27 - 2 * R;
        Trace trace = Lossless.With(Ball(touch - 0.3 * tan, 1.27 - R - 0.3, 2 * new Vec2(tan, 1).Normalized())).Play(3);
        CushionReading c = First<CushionReading>(trace);
        Expect.Near(touch / 0.3175, c.TouchDiamonds, 1e-6, "touch");
        Expect.Near(touch / 0.3175, c.LeaveDiamonds, 1e-6, "leave");
        Assert.Equal("right", c.LandingCushion);
        Expect.Near((touch + run * tan) / 0.3175, c.LandingDiamonds!.Value, 1e-6, "landing");
        Expect.Near(0, c.LongOfMirrorDiamonds!.Value, 1e-6, "long of the mirror");
        Expect.Near(25, c.AngleOutDegrees, 1e-6, "angle out");
    }

    [Fact]
    public void Long_is_positive_and_short_is_negative_whichever_way_the_ball_goes()
    {
        foreach (int way in new[] { 1, -1 })
        {
            // Running side over a short way lengthens, reverse shortens (Alciatore); the turning sense changes with
            // the way.
            double Long(double side)
            {
                Vec2 v = Vec2.FromAngle((90 - way * 25) * Deg);
                var spin = 2 / R * new Vec3(-v.Y, v.X, way * side);
                Trace trace = Plain.With(Ball(1.27, 1.15, 2 * v, spin)).Play();
                return First<CushionReading>(trace).LongOfMirrorDiamonds!.Value;
            }

            Expect.Less(Long(0), Long(0.8), "running side", 0.05);
            Expect.Less(Long(-0.8), Long(0), "reverse side", 0.05);
            Expect.Less(0, Long(0.8), "running side is long");
            Expect.Less(Long(-0.8), 0, "reverse side is short");
        }
    }

    [Fact]
    public void The_kiss_gap_of_a_stop_shot_bank_is_that_of_plane_geometry()
    {
        // The struck ball comes back at a from the normal past the cue ball that stopped dead: 2R sin 2a + 2d sin a -
        // 2R.
        foreach ((double degrees, double d) in new[] { (20.0, 0.06), (30.0, 0.03), (15.0, 0.2) })
        {
            double a = degrees * Deg;
            Vec2 ob = new(0.6, 1.27 - R - d), way = new(Math.Sin(a), Math.Cos(a)), cue = ob - (2 * R + 0.01) * way;
            Trace trace = Lossless.With(Ball(cue.X, cue.Y, 2 * way), Ball(ob.X, ob.Y)).Play(0.3);
            ShotReading shot = TraceReadings.Of(trace).Shot;
            double gap = 2 * R * Math.Sin(2 * a) + 2 * d * Math.Sin(a) - 2 * R;
            Expect.Near(1000 * gap, shot.KissGapMillimetres!.Value, 1e-3, $"gap at {degrees} degrees, mm");
            Assert.False(shot.DoubleKiss);
            Assert.Equal(0, shot.StruckBall);
            Assert.Equal(1, shot.FirstBallHit);
        }
    }

    [Fact]
    public void A_double_kiss_is_said_to_be_one()
    {
        Vec2 ob = new(0.6, 1.27 - R - 0.03), way = new(Math.Sin(5 * Deg), Math.Cos(5 * Deg)),
            cue = ob - (2 * R + 0.01) * way;
        ShotReading shot =
            TraceReadings.Of(Lossless.With(Ball(cue.X, cue.Y, 2 * way), Ball(ob.X, ob.Y)).Play(0.3)).Shot;
        Assert.True(shot.DoubleKiss);
        Expect.Near(0, shot.KissGapMillimetres!.Value, 1e-6, "gap");
    }

    [Fact]
    public void A_pocket_reads_how_the_ball_came_in()
    {
        // Plane geometry at the left side pocket, seen looking into it from the table: the foot (+x) is on the right
        // hand. The nose stands above the ball's centre, so the ball needs R cos t to either side of its centre.
        double half = Pocketed.Table.Side!.Mouth / 2, rise = Pocketed.Cushion.NoseHeight - R;
        double reach = Math.Sqrt(R * R - rise * rise);
        foreach ((double degrees, double off) in new[] { (0.0, 0.0), (10.0, 0.008), (-15.0, -0.005) })
        {
            // Positive: it comes from the right of the axis, so it travels to the left.
            Vec2 way = Vec2.FromAngle((90 + degrees) * Deg), mouth = new(1.27 + off, 1.27), start = mouth - 0.3 * way;
            PocketReading p = First<PocketReading>(Pocketed.With(Moving(start.X, start.Y, 1, way.Angle)).Play());
            Expect.Near(degrees, p.EntryAngleDegrees, 1e-6, "entry angle");
            Expect.Near(1000 * off, p.EntryOffsetMillimetres, 1e-6, "entry offset, mm");
            Assert.Equal(0, p.JawTouches);
            if (degrees == 0)
                Expect.Near(1000 * (half - Math.Abs(off) - reach), p.MarginMillimetres, 1e-6, "margin, mm");
        }
    }

    [Fact]
    public void A_stroke_reads_its_line_path_and_offsets()
    {
        var stroke = new Stroke(0.4, 2, 0.2 * R, -0.1 * R, 0);
        TipResult hit = TipContact.Strike(stroke, R, M, Plain.Cue);
        ShotSetup shot = new(Plain, [Ball(0.6, 0.6, hit.Velocity, hit.Spin)], new StrokeRecord(0, stroke, hit));
        TipReading t = First<TipReading>(shot.Play());
        Expect.Near(0.4 / Deg, t.AimDegrees, 1e-9, "aim");
        Expect.Near((0.4 + hit.Squirt) / Deg, t.PathDegrees, 1e-9, "path");
        Expect.Near(hit.Squirt / Deg, t.SquirtDegrees, 1e-9, "squirt");
        Expect.Near(0.2, t.OffsetRight, 1e-9, "right");
        Expect.Near(-0.1, t.OffsetAbove, 1e-9, "above");

        // The roundness of the tip: shaft = contact (R + r)/R, in widths of the tip.
        Expect.Near(0.2 * (R + Plain.Cue.TipRadius) / Plain.Cue.TipDiameter, t.ShaftRightTips, 1e-9, "shaft, in tips");
        Expect.Near(0.5, t.SideRatio, 1e-9, "R w_z / v");
        Expect.Near(2, t.BallSpeed, 1e-9, "ball speed");
        Expect.Near(hit.CueSpeed, t.CueSpeed, 1e-9, "stick speed");
    }

    [Theory]
    [InlineData(0.0, 0.0)]
    [InlineData(1.0, 1.0)]
    public void A_stripe_reads_as_a_still_band_after_a_slide_and_as_a_full_roll_after_a_roll(double roll, double rolled)
    {
        // A stripe along the way (axis across it) is still for a pure slide; a pure roll turns it in its own plane,
        // which leaves the axis. An axis along the way shows the turning: about the axle by way over radius.
        EquipmentSpec slick = Lossless;
        Trace trace = slick.With(Moving(1, 0.8, 1, Math.PI / 2, roll)).Play(1);
        var along = new Vec3(0, 1, 0);
        CushionReading c = First<CushionReading>(trace, [along]);
        double way = 1.27 - R - 0.8, turn = rolled * way / R;
        Expect.Near(turn / Deg, c.StripeTurnDegrees, 0.1, "how far it has turned");
        Expect.Near(rolled == 0 ? 0 : Axis(turn), c.StripeOffSlideDegrees!.Value, 0.1, "off a pure slide");
        Expect.Near(rolled == 0 ? Axis(way / R) : 0, c.StripeOffRollDegrees!.Value, 0.1, "off a pure roll");

        // An axis has no head and no tail: angles between axes lie in 0 to 90 degrees.
        static double Axis(double angle) => Math.Acos(Math.Abs(Math.Cos(angle))) / Deg;
    }

    private static MeetReading Meet(ShotSetup shot) => First<MeetReading>(shot.Play(0.01));

    private static T First<T>(Trace trace, IReadOnlyList<Vec3?>? stripes = null)
        where T : class => TraceReadings.Of(trace, stripes).Events.OfType<T>().First();

    private static CushionReading Rebound(
        EquipmentSpec equipment, CushionName cushion, double speed, double angle, double roll, double side)
    {
        ReferenceRail rail = ReferenceRail.Of(equipment.Table).Single(r => r.Name == cushion);
        double sin = (equipment.Cushion.NoseHeight - R) / R, reach = R * Math.Sqrt(1 - sin * sin);
        Vec2 middle = new(equipment.Table.Length / 2, equipment.Table.Width / 2);
        Vec2 place = middle - new Vec2(rail.IntoX, rail.IntoY) * (rail.Depth(middle.X, middle.Y, reach) + Plays.Hair);
        var ball = new ReferenceBall { Radius = R, Mass = M, X = place.X, Y = place.Y };
        rail.Out(Plays.Scaled(CushionTable.In(angle, roll, side, R), speed), ball);
        return First<CushionReading>(equipment.With(new ShotBall(R, M, ball.State)).Play());
    }
}
