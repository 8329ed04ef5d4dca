using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Physics.Shots.Aims;

/// <summary>Finds where to point the stick: for a cut angle, or for a bank. Root finds on the full physics.</summary>
/// <remarks>Squirt, swerve, throw, the cushion and the curve after it are all in the answer, because each trial is a
/// whole shot.</remarks>
public static class AimSolver
{
    /// <summary>The cut is met to this, radians (0.0006 degrees).</summary>
    private const double CutTolerance = 1e-5;

    /// <summary>The aim that cuts a ball by an angle.</summary>
    /// <param name="setup">Equipment and balls at rest.</param>
    /// <param name="cueBall">Index of the ball to strike.</param>
    /// <param name="objectBall">Index of the ball to cut.</param>
    /// <param name="cut">Cut angle, radians: positive sends the object ball to the left of the cue ball's path; between
    /// -pi/2 and pi/2.</param>
    /// <param name="template">The stroke; its aim is ignored.</param>
    /// <exception cref="ArgumentOutOfRangeException">The cut is not below a right angle.</exception>
    public static AimSolution SolveCut(ShotSetup setup, int cueBall, int objectBall, double cut, Stroke template)
    {
        ArgumentNullException.ThrowIfNull(setup);
        if (!(Math.Abs(cut) < Math.PI / 2)) throw new ArgumentOutOfRangeException(nameof(cut), cut, "A cut is less than a right angle.");
        var shot = new AimShot(setup, cueBall, template);
        if (GhostBall.Aim(setup, cueBall, objectBall, cut) is not { } line) return new AimSolution(AimFailure.TooThin, 0);

        // Squirt and swerve turn the path by a few degrees at most: start from the line that undoes the squirt, then
        // secant steps on the cut that comes out.
        ShotBall ball = setup.Balls[cueBall];
        double squirt = TipContact.Strike(template with { Aim = 0 }, ball.Radius, ball.Mass, setup.Equipment.Cue).Squirt;
        double distance = ball.Start.Position.DistanceTo(setup.Balls[objectBall].Start.Position);
        // A degree of aim changes the cut by about distance over ball width degrees.
        double step = -CutTolerance * 100 * BallContact.Reach(ball.Radius, setup.Balls[objectBall].Radius) / Math.Max(distance, 1e-3);
        double aim = line - squirt;
        FirstContact first = FirstContact.Of(shot, aim, cueBall, objectBall);
        for (int i = 0; i < 40; i++)
        {
            if (first.Failure is not AimFailure.None)
            {
                // Missed by a little: turn towards the ball's middle and try again.
                double middle = (setup.Balls[objectBall].Start.Position - ball.Start.Position).Angle - squirt;
                if (i >= 20 || first.Failure is AimFailure.Blocked) return new AimSolution(first.Failure, 0, first.InTheWay);
                aim += 0.05 * Wrapped(middle - aim);
                first = FirstContact.Of(shot, aim, cueBall, objectBall);
                continue;
            }

            double error = first.Cut - cut;
            if (Math.Abs(error) <= CutTolerance) return new AimSolution(AimFailure.None, Wrapped(aim));
            FirstContact beside = FirstContact.Of(shot, aim + step, cueBall, objectBall);
            if (beside.Failure is not AimFailure.None)
            {
                step = -step;
                beside = FirstContact.Of(shot, aim + step, cueBall, objectBall);
                if (beside.Failure is not AimFailure.None) return new AimSolution(beside.Failure, 0, beside.InTheWay);
            }

            double slope = (beside.Cut - first.Cut) / step;
            if (slope == 0 || !double.IsFinite(slope)) return new AimSolution(AimFailure.TooThin, 0);
            double next = aim - error / slope;
            FirstContact there = FirstContact.Of(shot, next, cueBall, objectBall);
            for (int half = 0; half < 30 && there.Failure is not AimFailure.None; half++)
            {
                next = 0.5 * (next + aim);
                there = FirstContact.Of(shot, next, cueBall, objectBall);
            }

            aim = next;
            first = there;
        }

        return new AimSolution(AimFailure.TooThin, 0);
    }

    /// <summary>The aim that banks a ball into a pocket off named cushions, in that order and without
    /// another.</summary>
    /// <remarks>Scans the cut from one side to the other, refines where the object ball's way passes the middle of the
    /// pocket's mouth, and takes the thickest hit that goes down. Jaws may be touched.</remarks>
    /// <param name="setup">Equipment and balls at rest.</param>
    /// <param name="cueBall">Index of the ball to strike.</param>
    /// <param name="objectBall">Index of the ball to bank.</param>
    /// <param name="to">The pocket.</param>
    /// <param name="off">The cushions, in order.</param>
    /// <param name="template">The stroke; its aim is ignored.</param>
    /// <exception cref="ArgumentException">The table has no pockets.</exception>
    public static AimSolution SolveBank(
        ShotSetup setup, int cueBall, int objectBall, PocketName to, IReadOnlyList<CushionName> off, Stroke template)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(off);
        var outline = new TableOutline(setup.Equipment.Table);
        if (outline.Pockets.Length == 0) throw new ArgumentException("This table has no pockets.", nameof(setup));
        return new BankSearch(setup, outline.Pockets[(int)to], cueBall, objectBall, off, template).Solve();
    }

    /// <summary>An angle brought into (-pi, pi].</summary>
    internal static double Wrapped(double angle) => Math.IEEERemainder(angle, 2 * Math.PI);
}
