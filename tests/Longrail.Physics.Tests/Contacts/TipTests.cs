using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Contacts;

/// <summary>What the tip gives the ball. Sources stand in the tables: rigid-body derivations, Alciatore,
/// Coriolis.</summary>
public class TipTests
{
    private static readonly CueSpec _cue = Plain.Cue;
    private static readonly CueSpec _stiff = _cue with { EndMass = 1e-12 };
    private static readonly CueSpec _grips = _stiff with { TipFriction = 5 };

    [Fact]
    public void The_stick_must_be_faster_the_farther_from_the_centre_it_strikes()
    {
        const double ounce = 0.028349523125;
        foreach (GoldenRow row in GoldenTable.Load("tip-speed").Rows)
        {
            CueSpec cue = _cue with { Mass = row["cue_oz"].Value * ounce, TipRestitution = row["restitution"].Value };
            for (int b = 0; b <= 5; b++)
            {
                TipResult up = TipContact.Strike(new Stroke(0, 2, 0, 0.1 * b * R, 0), R, 6 * ounce, cue);
                TipResult aside = TipContact.Strike(new Stroke(1, 2, -0.1 * b * R, 0, 0), R, 6 * ounce, cue);
                Expect.Printed(row[$"b{b}"], 2 / up.CueSpeed, $"{row}: b/R 0.{b} above");
                Expect.Printed(row[$"b{b}"], 2 / aside.CueSpeed, $"{row}: b/R 0.{b} left");
            }
        }
    }

    [Fact]
    public void Spin_is_two_and_a_half_times_the_offset_upwards_and_sideways()
    {
        foreach (GoldenRow row in GoldenTable.Load("tip-spin").Rows)
        {
            double b = row["offset"].Value * R, ratio = row["spin_ratio"].Value;
            foreach (double sign in new[] { 1.0, -1.0 })
            {
                TipResult roll = TipContact.Strike(new Stroke(0, 2, 0, sign * b, 0), R, M, _stiff);
                Expect.Close(sign * ratio, R * roll.Spin.Y / 2, Tolerance.ClosedForm, $"{row}: above");
                Expect.Near(0, roll.Spin.X, Tolerance.ClosedForm, $"{row}: above, across");
                TipResult side = TipContact.Strike(new Stroke(0, 2, sign * b, 0, 0), R, M, _stiff);
                Expect.Close(sign * ratio, R * side.Spin.Z / 2, 1e-9, $"{row}: right side turns counter-clockwise");
            }
        }
    }

    [Fact]
    public void The_miscue_limit_is_the_sine_of_the_friction_angle_wherever_the_tip_strikes()
    {
        foreach (GoldenRow row in GoldenTable.Load("miscue").Rows)
        {
            CueSpec cue = _cue with { TipFriction = row["tip_friction"].Value };
            Expect.Printed(
                row["limit"], TipContact.Strike(new Stroke(0, 1, 0, 0, 0), R, M, cue).MiscueLimit / R, $"{row}");
            TipResult low = TipContact.Strike(new Stroke(0, 1, 0.1 * R, -0.2 * R, 0), R, M, cue);
            Expect.Printed(row["limit"], low.MiscueLimit / R, $"{row}: low and right");
        }
    }

    [Fact]
    public void A_tip_that_does_not_meet_the_ball_is_refused() =>
        Assert.ThrowsAny<ArgumentException>(
            () => TipContact.Strike(new Stroke(0, 1, 0.8 * R, -0.7 * R, 0), R, M, _cue));

    [Fact]
    public void Squirt_is_as_tabled_and_away_from_the_side_struck()
    {
        foreach (GoldenRow row in GoldenTable.Load("squirt").Rows)
        {
            CueSpec cue = _cue with { EndMass = M / row["mass_ratio"].Value };
            foreach (string column in row.Columns.Where(c => c[0] == 'b'))
            {
                double b = double.Parse(column[1..], System.Globalization.CultureInfo.InvariantCulture) * R;
                foreach (double speed in new[] { 0.5, 5.0 })
                {
                    TipResult right = TipContact.Strike(new Stroke(0.3, speed, b, 0, 0), R, M, cue);
                    TipResult left = TipContact.Strike(new Stroke(0.3, speed, -b, 0, 0), R, M, cue);
                    Expect.Printed(row[column], right.Squirt * 180 / Math.PI, $"{row}: {column} right, {speed} m/s");
                    Expect.Printed(row[column], -left.Squirt * 180 / Math.PI, $"{row}: {column} left, {speed} m/s");
                    Expect.Near(
                        0.3 + right.Squirt, right.Velocity.Angle, Tolerance.ClosedForm, $"{row}: way of the ball");
                    Expect.Close(speed, right.Velocity.Length, Tolerance.ClosedForm, $"{row}: speed");
                }
            }

            foreach (string b in new[] { "0.25", "0.5" })
            {
                double offset = double.Parse(b, System.Globalization.CultureInfo.InvariantCulture) * R;
                TipResult right = TipContact.Strike(new Stroke(0, 1, offset, 0, 0), R, M, cue);
                Expect.Printed(row["pivot" + b], offset / Math.Tan(right.Squirt) / 0.0254, $"{row}: pivot at {b}");
            }
        }
    }

    [Fact]
    public void Draw_and_follow_alone_do_not_squirt_sideways_and_mixed_offsets_squirt_by_their_sideways_part()
    {
        // The end mass acts square to the stick, away from the offset: sideways part a/b of the whole. Rigid-body
        // derivation.
        Expect.Near(
            0, TipContact.Strike(new Stroke(0, 1, 0, 0.3 * R, 0), R, M, _cue).Squirt, Tolerance.Rounding, "follow");
        double whole = Math.Tan(TipContact.Strike(new Stroke(0, 1, 0.3 * R, 0, 0), R, M, _cue).Squirt);
        double mixed = Math.Tan(TipContact.Strike(new Stroke(0, 1, 0.18 * R, -0.24 * R, 0), R, M, _cue).Squirt);
        Expect.Close(
            0.6 * whole, mixed, Tolerance.ClosedForm, "tangent of the squirt at offset (0.18, -0.24) against (0.3, 0)");
    }

    [Fact]
    public void A_raised_stick_with_side_bends_the_path_to_the_final_direction_tabled()
    {
        foreach (GoldenRow row in GoldenTable.Load("swerve").Rows)
        {
            double elevation = row["elevation"].Value * Math.PI / 180;
            foreach ((string column, double b) in new[] { ("b0.25", 0.25), ("b0.5", 0.5) })
            {
                foreach (double speed in new[] { 0.8, 3.0 })
                {
                    TipResult hit = TipContact.Strike(new Stroke(0, speed, b * R, 0, elevation), R, M, _grips);
                    Vec2 final = Plays.Final(new BallState(Vec2.Zero, hit.Velocity, hit.Spin));
                    // Right side curves to the right.
                    Expect.Printed(row[column], -final.Angle * 180 / Math.PI, $"{row}: {column} at {speed} m/s");
                    Expect.Close(speed, hit.Velocity.Length, Tolerance.ClosedForm, "speed over the cloth");
                }
            }
        }
    }

    [Fact]
    public void The_played_path_ends_in_that_direction_too()
    {
        TipResult hit = TipContact.Strike(new Stroke(0, 2, -0.5 * R, 0, Math.PI / 18), R, M, _grips);
        Trace trace =
            Plain.WithTable(t => t with { Length = 100, Width = 50 }).With(Ball(50, 25, hit.Velocity, hit.Spin)).Play();
        ShotEvent rolls = trace.Events.First(e => e.Kind == ShotEventKind.SlideEnds);
        Expect.Near(
            Math.Atan(0.5 * Math.Tan(Math.PI / 18)), rolls.AfterA.Velocity.Angle, 1e-9, "final direction, radians");
    }

    [Fact]
    public void A_stroke_straight_down_the_line_of_the_masse_rule_sends_the_ball_along_it()
    {
        // Coriolis (1835): the final direction is parallel to the line from the bed contact to where the stick's axis
        // meets the cloth.
        const double elevation = 0.7;
        foreach ((double right, double above) in new[] { (0.3, 0.2), (-0.25, -0.3), (0.4, 0.0) })
        {
            TipResult hit = TipContact.Strike(new Stroke(0, 1.5, right * R, above * R, elevation), R, M, _grips);
            Vec2 final = Plays.Final(new BallState(Vec2.Zero, hit.Velocity, hit.Spin));

            // Axis: through centre + offsets in the stick's frame, along the stick; meets z = -R.
            Vec3 f = new(Math.Cos(elevation), 0, -Math.Sin(elevation)), r = new(0, -1, 0), up = r.Cross(f);
            Vec3 start = right * R * r + above * R * up;
            Vec3 cloth = start + (start.Z + R) / Math.Sin(elevation) * f;
            Expect.Near(
                Math.Atan2(cloth.Y, cloth.X), final.Angle, 1e-9, $"final direction at offset ({right}, {above})");
        }
    }

    [Fact]
    public void A_round_tip_touches_nearer_to_the_centre_than_its_shaft_points()
    {
        foreach (GoldenRow row in GoldenTable.Load("tip-profile").Rows)
        {
            CueSpec cue = _cue with { TipRadius = row["tip_radius_mm"].Value / 1000 };
            Expect.Printed(row["ratio"], TipContact.ContactOffset(0.01, R, cue) / 0.01, $"{row}: ratio");
            Expect.Printed(row["shaft_mm"], TipContact.ShaftOffset(0.5 * R, R, cue) * 1000, $"{row}: shaft");
        }

        foreach (GoldenRow row in GoldenTable.Load("tip-fractions").Rows)
        {
            CueSpec cue = _cue with { TipRadius = 0.010605 };
            double b = TipContact.ContactOffset(row["part"].Value * row["width"].Value / 1000, R, cue) / R;
            Expect.Printed(row["offset"], b, $"{row}: offset");
            Expect.Printed(row["spin_ratio"], 2.5 * b, $"{row}: spin ratio");
            Expect.Printed(row["percent"], 200 * b, $"{row}: percent");
        }
    }

    [Fact]
    public void Everything_turns_with_the_aim()
    {
        TipResult plain = TipContact.Strike(new Stroke(0, 2, 0.2 * R, -0.3 * R, 0.1), R, M, _cue);
        TipResult turned = TipContact.Strike(new Stroke(2.1, 2, 0.2 * R, -0.3 * R, 0.1), R, M, _cue);
        Expect.Near(0, (turned.Velocity - plain.Velocity.Rotated(2.1)).Length, Tolerance.ClosedForm, "velocity");
        Expect.Near(0, (turned.Spin.Horizontal - plain.Spin.Horizontal.Rotated(2.1)).Length, 1e-8, "spin");
        Expect.Near(plain.Spin.Z, turned.Spin.Z, 1e-8, "side");
    }
}
