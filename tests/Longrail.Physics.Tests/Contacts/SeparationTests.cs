using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Contacts;

/// <summary>Where two balls go after they met: the 90- and 30-degree rules, draw, distances. Sources stand in the
/// tables.</summary>
public class SeparationTests
{
    [Theory]
    [InlineData(1.0)]
    [InlineData(0.95)]
    [InlineData(0.9)]
    public void Stunned_balls_part_at_a_right_angle_less_what_restitution_takes(double e)
    {
        // 90 - atan((1 - e)/(2 tan cut)) degrees: rigid-body derivation.
        foreach (double cut in new[] { 10.0, 30, 45, 70, 85 })
        {
            ShotEvent m = Plays.Meet(Slick(e), 2, cut * Math.PI / 180, 0, 0);
            Vec2 a = m.AfterA.Velocity, b = m.AfterB!.Value.Velocity;
            double between = Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b))) * 180 / Math.PI;
            double expected = 90 - Math.Atan((1 - e) / (2 * Math.Tan(cut * Math.PI / 180))) * 180 / Math.PI;
            Expect.Near(expected, between, 1e-6, $"cut {cut}");
        }
    }

    [Fact]
    public void A_rolling_cue_ball_is_deflected_as_tabled_and_both_balls_roll_on_at_the_speeds_tabled()
    {
        foreach (GoldenRow row in GoldenTable.Load("natural-roll").Rows)
        {
            double cut = row["cut"].Value;
            Expect.Printed(row["hit"], 1 - Math.Sin(cut * Math.PI / 180), $"{row}: hit fraction");
            (double deflection, double cue, double ob) = Deflection(1, cut, 1);
            Expect.Printed(row["deflection_e100"], deflection, $"{row}: deflection");
            Expect.Printed(row["cue"], cue, $"{row}: cue ball");
            Expect.Printed(row["object"], ob, $"{row}: object ball");
            Expect.Printed(row["deflection_e095"], Deflection(0.95, cut, 1).Deflection, $"{row}: e = 0.95");
            Expect.Printed(row["deflection_e090"], Deflection(0.9, cut, 1).Deflection, $"{row}: e = 0.9");
        }
    }

    [Fact]
    public void The_deflection_of_a_rolling_cue_ball_is_largest_where_tabled()
    {
        foreach (GoldenRow row in GoldenTable.Load("natural-roll-peak").Rows)
        {
            double e = row["restitution"].Value, cut = row["cut"].Value;
            Expect.Printed(row["deflection"], Deflection(e, cut, 1).Deflection, $"{row}");
            Expect.Less(Deflection(e, cut - 0.5, 1).Deflection, Deflection(e, cut, 1).Deflection, $"{row}: fuller");
            Expect.Less(Deflection(e, cut + 0.5, 1).Deflection, Deflection(e, cut, 1).Deflection, $"{row}: thinner");
        }
    }

    [Fact]
    public void Typical_draw_comes_back_as_published()
    {
        // Alciatore: 58, 90 and 128 degrees, whole degrees.
        foreach (GoldenRow row in GoldenTable.Load("draw").Rows)
            Expect.Printed(row["deflection"], Deflection(1, row["cut"].Value, -0.625).Deflection, $"{row}");
    }

    [Fact]
    public void The_played_paths_end_as_the_velocities_after_the_hit_say()
    {
        EquipmentSpec field = Slick(1).WithTable(t => t with { Length = 100, Width = 50 });
        Vec2 cue = new Vec2(50, 25) - 2 * R * Vec2.FromAngle(0.5);
        Trace trace = field.With(Moving(cue.X - 0.3, cue.Y, 2, 0), Ball(50, 25)).Play();
        ShotEvent meet = trace.Events.First(e => e.Kind == ShotEventKind.BallsMeet);
        ShotEvent rolls = trace.Events.First(
            e => e.Kind == ShotEventKind.SlideEnds && e.BallA == 0 && e.Time >= meet.Time);
        Expect.Near(0, (Plays.Final(meet.AfterA) - rolls.AfterA.Velocity).Length, 1e-9, "rolling velocity, m/s");
    }

    [Fact]
    public void After_a_full_hit_by_a_rolling_ball_the_distances_stand_in_the_ratio_tabled()
    {
        foreach (GoldenRow row in GoldenTable.Load("full-hit-distances").Rows)
        {
            foreach (string column in row.Columns.Skip(1))
            {
                double mu = double.Parse(column[2..], System.Globalization.CultureInfo.InvariantCulture);
                (double cue, double ob) = Distances(row["restitution"].Value, mu, 0, 1);
                Expect.Printed(row[column], ob / cue, $"{row}: {column}");
            }
        }
    }

    [Fact]
    public void A_45_degree_stun_shot_sends_both_balls_half_the_way()
    {
        // Both leave at cos 45 of the speed; slide and roll go as the square. Alciatore; rigid-body derivation.
        (double cue, double ob) = Distances(1, 0, Math.PI / 4, 0);
        (double alone, _) = Distances(1, 0, double.NaN, 0);
        Expect.Close(0.5, cue / alone, 1e-7, "cue ball");
        Expect.Close(0.5, ob / alone, 1e-7, "object ball");
    }

    [Fact]
    public void The_distances_of_a_rolling_cue_ball_and_its_object_ball_match_near_33_degrees()
    {
        // Equal final rolling speeds at sin^2 cut = 0.3 (roll phases only): rigid-body derivation; "slightly over
        // 30": Alciatore.
        double cut = Math.Asin(Math.Sqrt(0.3)) * 180 / Math.PI;
        (_, double cue, double ob) = Deflection(1, cut, 1);
        Expect.Near(cue, ob, 1e-7, "final rolling speeds");
    }

    private static EquipmentSpec Slick(double e, double mu = 0) =>
        Plain.WithBalls(b => b with { Restitution = e, Friction = new BallFriction(mu, 0, 0) });

    private static (double Deflection, double Cue, double Object) Deflection(double e, double cutDegrees, double roll)
    {
        ShotEvent m = Plays.Meet(Slick(e), 2, cutDegrees * Math.PI / 180, roll, 0);
        Vec2 cue = Plays.Final(m.AfterA), ob = Plays.Final(m.AfterB!.Value);
        return (Math.Abs(cue.Angle) * 180 / Math.PI, cue.Length / 2, ob.Length / 2);
    }

    /// <summary>How far both balls go on an endless table, metres; without a second ball where the cut is not a
    /// number.</summary>
    private static (double Cue, double Object) Distances(double e, double mu, double cut, double roll)
    {
        EquipmentSpec field = Slick(e, mu).WithTable(t => t with { Length = 400, Width = 200 });
        Vec2 struck = new(200, 100), line = Vec2.FromAngle(double.IsNaN(cut) ? 0 : cut);
        Vec2 cue = struck - 2 * R * line - new Vec2(Plays.Hair, 0);
        ShotBall ball = Moving(cue.X, cue.Y, 2, 0, roll);
        if (double.IsNaN(cut)) return (field.With(ball).Play().Balls[0].State.Position.DistanceTo(cue), 0);
        Trace trace = field.With(ball, Ball(struck.X, struck.Y)).Play();
        // The paths' lengths: the cue ball of a full hit goes straight on.
        return (
            trace.Balls[0].State.Position.DistanceTo(cue), trace.Balls[1].State.Position.DistanceTo(struck));
    }
}
