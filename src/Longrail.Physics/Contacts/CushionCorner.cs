using Longrail.Physics.Geometry;

namespace Longrail.Physics.Contacts;

/// <summary>A ball pressed into two pieces of rubber at once: the corner of a table without pockets, or a tight pair of
/// jaws.</summary>
/// <remarks>Same springs and coefficients as <see cref="CushionRubber"/>, but with three contacts sharing one ball the
/// sticking limit is smoothed: below a twentieth of the ball's speed friction falls in proportion to the slip. The
/// deepest point and the way out are met to a step.</remarks>
internal static class CushionCorner
{
    private const double SmoothedFraction = 0.05;
    private const double Substep = 0.5;

    /// <summary>Moves a ball on that two pieces hold. Ends early when it leaves one of them.</summary>
    /// <returns>The time moved on, seconds.</returns>
    internal static double Advance(
        ref PressedBall ball, ref RubberSlot first, ref RubberSlot second, RubberPiece[] pieces, in RubberLaw law, double stretch,
        out bool leftFirst, out bool leftSecond)
    {
        double elapsed = 0;
        leftFirst = leftSecond = false;
        while (elapsed < stretch)
        {
            double smooth = SmoothedFraction * Math.Max(ball.Velocity.Length, ball.Surface.Length) + 1e-9;
            leftFirst = Turn(ball, ref first, pieces, law);
            leftSecond = Turn(ball, ref second, pieces, law);
            if (leftFirst || leftSecond) break;
            double step = Math.Min(stretch - elapsed, Substep * law.LongestStep);
            PressedBall k1 = Rate(ball, first, second, pieces, law, smooth);
            PressedBall k2 = Rate(ball.Plus(k1, 0.5 * step), first, second, pieces, law, smooth);
            PressedBall k3 = Rate(ball.Plus(k2, 0.5 * step), first, second, pieces, law, smooth);
            PressedBall k4 = Rate(ball.Plus(k3, step), first, second, pieces, law, smooth);
            ball = ball.Plus(k1, step / 6).Plus(k2, step / 3).Plus(k3, step / 3).Plus(k4, step / 6);
            elapsed += step;
        }

        return elapsed;
    }

    /// <summary>Notices the deepest point; true when the ball is out.</summary>
    private static bool Turn(in PressedBall ball, ref RubberSlot slot, RubberPiece[] pieces, in RubberLaw law)
    {
        double depth = -pieces[slot.Piece].Gap(ball.Position, law.Reach, out Vec2 into);
        double speed = ball.Velocity.Dot(into);
        if (!slot.Returning && speed <= 0)
        {
            slot.TurnBack(depth, law);
        }
        else if (slot.Returning && speed > 0 && depth >= slot.Deepest)
        {
            slot.Returning = false;
        }

        return slot.Returning && depth <= 0 && speed <= 0;
    }

    private static PressedBall Rate(
        in PressedBall ball, in RubberSlot first, in RubberSlot second, RubberPiece[] pieces, in RubberLaw law, double smooth)
    {
        double load = law.Gravity;
        Vec2 force = Vec2.Zero;
        Vec3 torque = Vec3.Zero;
        Nose(ball, first, pieces, law, smooth, ref load, ref force, ref torque);
        Nose(ball, second, pieces, law, smooth, ref load, ref force, ref torque);

        // The bed: slip v + w x (0, 0, -R), friction against it.
        var slip = new Vec2(ball.Velocity.X - ball.Surface.Y, ball.Velocity.Y + ball.Surface.X);
        double speed = Math.Max(slip.Length, smooth);
        Vec2 bed = slip * (-law.Friction.BedFriction * Math.Max(load, 0) / speed);
        force += bed;
        torque += new Vec3(bed.Y, -bed.X, 0);
        return new PressedBall(ball.Velocity, force, 2.5 * torque);
    }

    private static void Nose(
        in PressedBall ball, in RubberSlot slot, RubberPiece[] pieces, in RubberLaw law, double smooth,
        ref double load, ref Vec2 force, ref Vec3 torque)
    {
        double depth = -pieces[slot.Piece].Gap(ball.Position, law.Reach, out Vec2 into);
        double normal = law.Force(depth, slot.Loses);
        NoseBedLaw tilt = law.Friction;
        ball.Seen(into).NoseSlip(tilt, out double slipAlong, out double slipUp);
        double speed = Math.Max(Math.Sqrt(slipAlong * slipAlong + slipUp * slipUp), smooth);
        double along = -tilt.NoseFriction * normal * slipAlong / speed;
        double up = -tilt.NoseFriction * normal * slipUp / speed;
        load += normal * tilt.Sin - up * tilt.Cos;
        Vec2 alongLine = into.Right;
        force += along * alongLine - (normal * tilt.Cos + up * tilt.Sin) * into;
        Vec2 level = up * alongLine + tilt.Sin * along * into;
        torque += new Vec3(level.X, level.Y, -tilt.Cos * along);
    }
}
