using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.TestKit;
using Longrail.TestKit.Reference;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.References;

/// <summary>The test kit's ball on cloth, ball on ball and orientation against printed tables and closed
/// forms.</summary>
public class ReferenceMotionTests
{
    [Fact]
    public void Force_and_torque_give_the_closed_form_of_a_curved_slide()
    {
        // Coriolis (1835), recomputed.
        foreach (GoldenRow row in GoldenTable.Load("slide-curved").Rows)
        {
            ReferenceBall ball = ReferenceBall.From(Ball(
                0,
                0,
                new Vec2(row["vx"].Value, row["vy"].Value),
                new Vec3(-row["qy"].Value / R, row["qx"].Value / R, 0)));
            double left = row["time"].Value;
            for (; left > 1e-4; left -= 1e-4) ReferenceCloth.Advance(ball, Plain.Cloth, 9.80665, 1e-4);
            ReferenceCloth.Advance(ball, Plain.Cloth, 9.80665, left);

            // The time is printed to 5e-5 s, so places at that time are known to their digits plus speed times 5e-5.
            Expect.Near(row["x"].Value, ball.X, row["x"].HalfUnit + 5e-5 * ball.State.Velocity.Length, $"{row}: x");
            Expect.Near(row["y"].Value, ball.Y, row["y"].HalfUnit + 5e-5 * ball.State.Velocity.Length, $"{row}: y");
            ReferenceCloth.Advance(ball, Plain.Cloth with { RollingFriction = 1e-12 }, 9.80665, 0.01);
            Expect.Printed(row["end_vx"], ball.Vx, $"{row}: final vx");
            Expect.Printed(row["end_vy"], ball.Vy, $"{row}: final vy");
        }
    }

    [Theory]
    [InlineData("throw-stun", 0.0)]
    [InlineData("throw-roll", 1.0)]
    public void Forces_and_arms_give_the_throw_tables(string table, double roll)
    {
        // Alciatore TP A.28 (2007).
        foreach (GoldenRow row in GoldenTable.Load(table).Rows)
        {
            foreach (int mph in new[] { 1, 2, 3, 5, 7, 10 })
            {
                (double thrown, double grip, _) = Throw(mph * Mph, row["cut"].Value * Math.PI / 180, roll, 0);
                GoldenCell cell = row[$"{mph}mph"];
                Expect.Printed(cell, thrown, $"{row}: {mph} mph");
                Expect.That(cell.Marked == (grip >= 1), $"{row}: {mph} mph: grip {grip}");
            }
        }
    }

    [Theory]
    [InlineData(0.3, 0.0, 0.0)]
    [InlineData(0.7, 1.0, 0.3)]
    [InlineData(1.1, -0.5, -1.0)]
    public void With_grip_the_surfaces_do_not_slip_afterwards_and_less_than_grip_leaves_slip_in_the_same_direction(
        double cut, double roll, double side)
    {
        // Rigid-body statement, evaluated with the vertical velocities that the bed later takes away.
        (_, _, double slipAfter) = Throw(0.5, cut, roll, side, new BallFriction(10, 0, 0));
        Expect.Near(0, slipAfter, Tolerance.Rounding, "slip after gripping, m/s");
        (_, _, double slides) = Throw(0.5, cut, roll, side, new BallFriction(0.01, 0, 0));
        Expect.Less(0, slides, "slip after sliding");
    }

    [Fact]
    public void A_rolled_way_of_one_circumference_brings_the_ball_round_once()
    {
        ReferenceBall ball = ReferenceBall.From(Moving(0, 0, 1, 0.3));
        while (ball.State.Position.Length < 2 * Math.PI * R - 1e-9)
        {
            double left = 2 * Math.PI * R - ball.State.Position.Length;
            ReferenceCloth.Advance(ball, Plain.Cloth, 9.80665, Math.Min(1e-5, left / ball.State.Velocity.Length));
        }

        Expect.Near(0, ball.Orientation.AngleTo(Rotation.Identity), 1e-6, "orientation after one turn, radians");
    }

    [Fact]
    public void Orientation_of_a_curved_spinning_slide_does_not_depend_on_the_step()
    {
        // Second order: ten times smaller steps leave a hundredth of the change.
        Rotation[] ends = [.. new[] { 1e-3, 1e-4, 1e-5 }.Select(Turned)];
        double coarse = ends[0].AngleTo(ends[2]), fine = ends[1].AngleTo(ends[2]);

        Expect.Less(fine, coarse / 50, "change from 0.1 ms against that from 1 ms");
        Expect.Less(fine, Tolerance.Orientation / 1000, "change from 0.1 ms, radians");
    }

    private static Rotation Turned(double step)
    {
        ReferenceBall ball = ReferenceBall.From(Ball(0, 0, new Vec2(2, 0), new Vec3(50, -60, 80)));
        for (int i = 0; i < (int)Math.Round(0.4 / step); i++) ReferenceCloth.Advance(ball, Plain.Cloth, 9.80665, step);
        return ball.Orientation;
    }

    private static (double ThrowDegrees, double Grip, double SlipAfter) Throw(
        double speed, double cut, double roll, double side, BallFriction? friction = null)
    {
        // The struck ball stands along +x; the cut is to the left of the way, so the ball is thrown to the right.
        ReferenceBall cue = ReferenceBall.From(Moving(0, 0, speed, cut, roll, side));
        ReferenceBall struck = ReferenceBall.From(Ball(2 * R, 0));
        (_, double grip) = ReferenceBallContact.Collide(cue, struck, 1, friction ?? Marlow);
        BallState a = cue.State, b = struck.State;
        var arm = new Vec3(R, 0, 0);
        // The vertical velocity that was dropped: m v_z = J_z, and R w_y of the struck ball is (5/2) J_z/m.
        double dropped = -2 * 0.4 * R * b.Spin.Y;
        Vec3 slip = new Vec3(a.Velocity.X - b.Velocity.X, a.Velocity.Y - b.Velocity.Y, 0) + (a.Spin + b.Spin).Cross(
            arm);
        double across = Math.Sqrt(slip.Y * slip.Y + (slip.Z + dropped) * (slip.Z + dropped));
        return (b.Velocity.Angle * 180 / Math.PI, grip, across);
    }
}
