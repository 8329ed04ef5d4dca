using Longrail.TestKit;
using Longrail.TestKit.Reference;

namespace Longrail.Physics.Tests.References;

/// <summary>The small-step cushion of the test kit against tables made by another program, and against itself with
/// smaller steps.</summary>
public class ReferenceCushionTests
{
    private const double R = 0.02625;
    private const int Steps = 2000;

    [Fact]
    public void Impulse_steps_give_the_published_equations_table_without_side()
    {
        foreach (GoldenRow row in GoldenTable.Load("cushion-plain").Rows)
        {
            CushionTable.CheckPlain(row, (angle, roll, side) => Rebound(angle, roll, side, Steps));
        }
    }

    [Fact]
    public void Impulse_steps_give_the_published_equations_table_with_side()
    {
        foreach (GoldenRow row in GoldenTable.Load("cushion-side").Rows)
        {
            CushionTable.CheckSide(row, (angle, roll, side) => Rebound(angle, roll, side, Steps));
        }
    }

    [Fact]
    public void Impulse_steps_give_the_published_equations_table_straight_in()
    {
        foreach (GoldenRow row in GoldenTable.Load("cushion-straight").Rows)
        {
            CushionTable.CheckStraight(row, (angle, roll, side) => Rebound(angle, roll, side, Steps));
        }
    }

    [Theory]
    [InlineData(30.0, 1.0, 0.0)]
    [InlineData(45.0, 0.0, 0.5)]
    [InlineData(70.0, 1.0, -1.0)]
    public void Halving_the_impulse_steps_shrinks_the_change_at_least_in_proportion(
        double angle, double roll, double side)
    {
        int[] steps = [250, 500, 1000, 2000, 64000];
        double[] angles = [.. steps.Select(n => CushionTable.AngleOut(Rebound(angle, roll, side, n)))];
        double coarse = Math.Abs(angles[0] - angles[4]), fine = Math.Abs(angles[3] - angles[4]);

        // A factor of 8 in the steps: first order would leave 1/8; what remains at 2000 steps is far below the
        // table's 0.1 degree.
        Expect.Less(fine, Math.Max(coarse / 6, 1e-7), "error at 2000 steps against a sixth of that at 250");
        Expect.Less(fine, 0.001, "error at 2000 steps, degrees");
    }

    [Fact]
    public void Without_friction_only_the_speed_into_the_cushion_changes_by_exactly_the_restitution()
    {
        // Closed form: no friction at nose or bed, so the work is m v^2/2 in and e^2 of it out.
        var ball = new RailMotion { Vx = 1.5, Vy = 2, Wx = 10, Wy = -20, Wz = 30 };
        RailMotion after = ReferenceCushionImpulse.Rebound(ball, R, 1.3 * R, 0.8, 0, 0, 1000);

        Expect.Close(-1.6, after.Vy, Tolerance.ClosedForm, "speed out of the cushion");
        Expect.Close(1.5, after.Vx, Tolerance.Rounding, "speed along the rail");
        Expect.Close(10, after.Wx, Tolerance.Rounding, "spin");
        Expect.Close(30, after.Wz, Tolerance.Rounding, "side");
    }

    private static RailMotion Rebound(double angle, double roll, double side, int steps) =>
        ReferenceCushionImpulse.Rebound(CushionTable.In(angle, roll, side, R), R, 1.4 * R, 0.98, 0.14, 0.212, steps);
}
