using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Contacts;

/// <summary>Throw and side handed over when two equal balls meet: Alciatore TP A.28 (2007) with the friction of
/// Marlow (1995).</summary>
public class ThrowTests
{
    private static readonly EquipmentSpec _balls = Plain.WithBalls(b => b with { Restitution = 1 });
    private static readonly int[] _speeds = [1, 2, 3, 5, 7, 10];

    [Fact]
    public void Friction_falls_with_slip_as_fitted_and_meets_the_rows_it_was_fitted_to()
    {
        foreach (GoldenRow row in GoldenTable.Load("ball-friction").Rows)
            Expect.Printed(row["friction"], Marlow.At(row["slip"].Value), $"{row}");

        // The fit meets its three anchors within 5e-4 (TP A.28).
        foreach (GoldenRow row in GoldenTable.Load("ball-friction-anchors").Rows)
            Expect.Near(row["friction"].Value, Marlow.At(row["slip"].Value), 5e-4, $"{row}");
    }

    [Theory]
    [InlineData("throw-stun", 0.0)]
    [InlineData("throw-roll", 1.0)]
    public void Cuts_throw_as_tabled_and_grip_where_marked(string table, double roll)
    {
        foreach (GoldenRow row in GoldenTable.Load(table).Rows)
        {
            foreach (int mph in _speeds)
            {
                GoldenCell cell = row[$"{mph}mph"];
                double cut = row["cut"].Value;
                Expect.Printed(cell, Plays.Throw(_balls, mph * Mph, cut, roll), $"{row}: {mph} mph");
                Expect.Printed(
                    cell, -Plays.Throw(_balls, mph * Mph, -cut, roll), $"{row}: {mph} mph, cut the other way");
                if (!cell.Marked) continue;
                double grips = Math.Atan(Math.Tan(cut * Math.PI / 180) / 7) * 180 / Math.PI;
                Expect.Near(grips, Plays.Throw(_balls, mph * Mph, cut, roll), 1e-6, $"{row}: {mph} mph, gripping");
            }
        }
    }

    [Fact]
    public void Cuts_and_side_throw_as_tabled_in_metres_per_second()
    {
        foreach (GoldenRow row in GoldenTable.Load("throw-metric").Rows)
        {
            double thrown = Plays.Throw(
                _balls, row["speed"].Value, row["cut"].Value, row["roll"].Value, -2.5 * row["side"].Value);
            Expect.Printed(row["throw"], thrown, $"{row}");
        }
    }

    [Fact]
    public void Throw_of_a_stun_shot_peaks_where_and_as_high_as_tabled()
    {
        foreach (GoldenRow row in GoldenTable.Load("throw-stun-peak").Rows)
        {
            double speed = row["speed"].Value * Mph, cut = row["cut"].Value, step = 3 * row["cut"].HalfUnit;
            double peak = Plays.Throw(_balls, speed, cut, 0);
            Expect.Near(
                row["throw"].Value, peak, row["throw"].HalfUnit + Slope(cut) * row["cut"].HalfUnit, $"{row}: throw");
            Expect.Less(Plays.Throw(_balls, speed, cut - step, 0), peak, $"{row}: thicker");
            Expect.Less(Plays.Throw(_balls, speed, cut + step, 0), peak, $"{row}: thinner");
        }

        // Below the peak the balls grip: throw = atan(tan(cut)/7), of slope about 1/7 per degree there.
        static double Slope(double cut) => 1 / (7 * Math.Pow(Math.Cos(cut * Math.PI / 180), 2));
    }

    [Fact]
    public void With_a_constant_coefficient_throw_does_not_depend_on_speed()
    {
        foreach (GoldenRow row in GoldenTable.Load("throw-constant-friction").Rows)
        {
            EquipmentSpec balls = _balls.WithBalls(
                b => b with { Friction = new BallFriction(row["friction"].Value, 0, 0) });
            foreach (double speed in new[] { 0.3, 2.0, 7.0 })
            {
                double thrown = Plays.Throw(balls, speed, row["cut"].Value, row.Text("cue_ball") == "roll" ? 1 : 0);
                Expect.Printed(row["throw"], thrown, $"{row} at {speed} m/s");
            }
        }
    }

    [Fact]
    public void Side_throws_a_full_hit_as_tabled_to_the_side_away_from_it()
    {
        foreach (GoldenRow row in GoldenTable.Load("throw-side").Rows)
        {
            double side = 1.25 * row["percent"].Value / 100;
            foreach (string column in row.Columns.Skip(1))
            {
                double roll = column.StartsWith("roll", StringComparison.Ordinal) ? 1 : 0;
                double speed = double.Parse(column[4..^3], System.Globalization.CultureInfo.InvariantCulture) * Mph;
                // Left side (turning clockwise) throws to the right, right side to the left.
                Expect.Printed(row[column], Plays.Throw(_balls, speed, 0, roll, -side), $"{row}: {column}, left side");
                Expect.Printed(row[column], -Plays.Throw(_balls, speed, 0, roll, side), $"{row}: {column}, right side");
            }
        }
    }

    [Fact]
    public void More_than_about_half_of_all_side_throws_less()
    {
        foreach (GoldenRow row in GoldenTable.Load("throw-side-peak").Rows)
        {
            double speed = row["speed"].Value * Mph, percent = row["percent"].Value;
            double At(double p) => Plays.Throw(_balls, speed, 0, 0, -1.25 * p / 100);
            Expect.Near(
                row["throw"].Value, At(percent), row["throw"].HalfUnit + 0.11 * row["percent"].HalfUnit,
                $"{row}: throw");
            Expect.Less(At(percent - 1), At(percent), $"{row}: a percent less");
            Expect.Less(At(percent + 1), At(percent), $"{row}: a percent more");
        }
    }

    [Fact]
    public void Outside_side_that_gears_gives_no_throw_and_hands_nothing_over_at_any_speed_and_roll()
    {
        foreach (GoldenRow row in GoldenTable.Load("gearing").Rows)
        {
            double cut = row["cut"].Value, sin = Math.Sin(cut * Math.PI / 180);
            Expect.Printed(row["offset"], 0.4 * sin, $"{row}: offset");
            Expect.Printed(row["percent"], 80 * sin, $"{row}: percent");
            if (cut == 90) continue;
            foreach (double speed in new[] { 0.5, 2.0, 6.0 })
            {
                foreach (double roll in new[] { -0.7, 0.0, 1.0 })
                {
                    // The object ball is cut to the left, the cue ball passes on its right: outside side is right
                    // side, w_z positive.
                    ShotEvent e = Plays.Meet(_balls, speed, cut * Math.PI / 180, roll, sin);
                    Expect.Near(0, Plays.Throw(_balls, speed, cut, roll, sin), 1e-6, $"{row}: throw at {speed} m/s");
                    Expect.Near(0, R * e.AfterB!.Value.Spin.Z / speed, 1e-8, $"{row}: side handed over at {speed} m/s");
                }
            }
        }
    }

    [Fact]
    public void A_straight_hit_hands_side_over_as_tabled_turning_the_other_way()
    {
        foreach (GoldenRow row in GoldenTable.Load("side-handed-over").Rows)
        {
            double side = 1.25 * row["percent"].Value / 100, speed = 3 * Mph;
            ShotEvent e = Plays.Meet(_balls, speed, 0, row.Text("cue_ball") == "roll" ? 1 : 0, side);
            double given = e.AfterB!.Value.Spin.Z / e.BeforeA.Spin.Z;
            Expect.Printed(row["ratio"], -given, $"{row}");
            if (row["ratio"].Marked) Expect.Near(5.0 / 14, -given, 1e-6, $"{row}: gripping");
        }
    }

    [Fact]
    public void Both_balls_change_spin_by_the_same_vector()
    {
        // Equal and opposite impulses at opposite arms. Rigid-body statement; magnitudes also in Alciatore's note on
        // spin transfer.
        foreach (
            (double cut, double roll, double side) in new[] { (0.0, 1.0, 0.5), (0.5, 0.3, -0.8), (-1.1, 1.0, 0.2) })
        {
            ShotEvent e = Plays.Meet(Plain, 1.5, cut, roll, side);
            Vec3 a = e.AfterA.Spin - e.BeforeA.Spin, b = e.AfterB!.Value.Spin - e.BeforeB!.Value.Spin;
            Expect.Near(0, (a - b).Length / b.Length, Tolerance.ClosedForm, "difference of the two changes");
            Expect.Less(0.1, b.Length, "the change itself, rad/s");
        }
    }

    [Fact]
    public void Side_that_an_object_ball_gets_is_the_tangent_of_its_throw_as_a_tip_offset()
    {
        // R w = (5/2) J_t/m and tan(throw) = J_t/J_n, so b/R = (2/5) R w_z / v_n = tan(throw) exactly. Rigid-body
        // derivation.
        foreach (double cut in new[] { 0.2, 0.5, 0.9 })
        {
            ShotEvent e = Plays.Meet(_balls, 1, cut, 0, 0);
            double normal = 1 * Math.Cos(cut);
            double offset = 0.4 * R * e.AfterB!.Value.Spin.Z / normal;
            Expect.Close(
                Math.Tan(Plays.Throw(_balls, 1, cut * 180 / Math.PI, 0) * Math.PI / 180),
                Math.Abs(offset),
                1e-7,
                $"cut {cut}");
        }
    }

    [Fact]
    public void A_cut_to_the_right_leaves_left_side_on_the_object_ball_and_the_other_way_round()
    {
        // Common practice and the derivation above: left side turns clockwise, w_z negative.
        Assert.True(Plays.Meet(_balls, 1, -0.5, 0, 0).AfterB!.Value.Spin.Z < 0);
        Assert.True(Plays.Meet(_balls, 1, 0.5, 0, 0).AfterB!.Value.Spin.Z > 0);
    }
}
