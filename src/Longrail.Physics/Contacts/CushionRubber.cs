using Longrail.Physics.Geometry;

namespace Longrail.Physics.Contacts;

/// <summary>Ball in a yielding cushion: the yielding law, a stretch at a time.</summary>
/// <remarks>
/// The shot's loop moves a pressed ball on by stretches of a fraction of the contact time, so that whatever else
/// happens meanwhile - a second ball, another cushion, a drop - happens to a ball that is still in the rubber. Within a
/// stretch fourth-order Runge-Kutta steps end where the law changes: deepest point, way out, a slip that dies, a stuck
/// contact that lets go.
/// </remarks>
internal static class CushionRubber
{
    /// <summary>The deepest point is met when the speed into the rubber is below this part of
    /// <see cref="StickModes.Still"/>.</summary>
    private const double TurnFraction = 1e-3;

    /// <summary>A depth is met (the touch line, or the old deepest point) within this, metres: rounding of coordinates
    /// of a few metres.</summary>
    private const double DepthRounding = 1e-13;

    /// <summary>More steps than a stretch takes unless a slip hovers near zero.</summary>
    private const int UsualSteps = 40;

    /// <summary>More steps than a stretch can need; what is left of the stretch is then left to the next one.</summary>
    private const int StepLimit = 1000;

    /// <summary>Moves a pressed ball on.</summary>
    /// <param name="ball">The ball; moved on.</param>
    /// <param name="slot">The piece of rubber; remembers its depth.</param>
    /// <param name="modes">Which contacts stick; carried from stretch to stretch.</param>
    /// <param name="pieces">The table's pieces of cushion.</param>
    /// <param name="law">The rubber.</param>
    /// <param name="stretch">Longest time to move on, seconds.</param>
    /// <param name="lift">Added to: upward speed where the bed would have had to pull, m/s.</param>
    /// <param name="left">Whether the ball has come out.</param>
    /// <returns>The time moved on, seconds.</returns>
    internal static double Advance(
        ref PressedBall ball, ref RubberSlot slot, ref StickModes modes, RubberPiece[] pieces, in RubberLaw law, double stretch,
        ref double lift, out bool left)
    {
        ref readonly RubberPiece piece = ref pieces[slot.Piece];
        double elapsed = 0;
        left = false;
        modes.ScaleTo(Math.Max(ball.Velocity.Length, ball.Surface.Length));
        for (int steps = 0; elapsed < stretch && !left && steps < StepLimit; steps++)
        {
            double step = stretch - elapsed;
            step = Step(ref ball, ref slot, ref modes, piece, law, step, steps > UsualSteps, ref lift, out left);
            elapsed += step;
        }

        return elapsed;
    }

    private static double Step(
        ref PressedBall ball, ref RubberSlot slot, ref StickModes modes, in RubberPiece piece, in RubberLaw law, double step,
        bool hovering, ref double lift, out bool left)
    {
        left = false;
        double depth = -piece.Gap(ball.Position, law.Reach, out Vec2 into);
        LocalMotion u = ball.Seen(into);
        double turn = TurnFraction * modes.Still;
        if (!slot.Returning && u.Vy <= turn && depth > DepthRounding)
        {
            slot.TurnBack(depth, law);
        }
        else if (slot.Returning && u.Vy > turn && depth >= slot.Deepest - DepthRounding)
        {
            slot.Returning = false;
        }

        if (u.Vy <= 0 && depth <= DepthRounding)
        {
            left = true;
            return 0;
        }

        bool returning = slot.Returning;
        bool loses = slot.Loses;
        double normal = law.Force(depth, loses);
        double slack = StickSlip.Slack(normal, law.Gravity, law.Rounding);
        NoseBedForces forces = StickSlip.Decide(ref u, normal, law.Gravity, law.Friction, slack, law.LongestStep, hovering, ref modes);
        ball = ball.Moving(u, into);
        LocalMotion rates = forces.Rates(normal, law.Friction);
        PressedBall k1 = PressedBall.Rate(ball.Velocity, rates, into);
        step = StickSlip.LongestStep(u, rates, forces, normal, law.Friction, modes, step);
        double noseMargin = modes.NoseSticks ? forces.NoseMargin(normal, law.Friction) : 0;
        double bedMargin = modes.BedSticks ? forces.BedMargin(law.Friction) : 0;

        for (int attempt = 0; ; attempt++)
        {
            PressedBall k2 = Rate(ball.Plus(k1, 0.5 * step), loses, modes, piece, law);
            PressedBall k3 = Rate(ball.Plus(k2, 0.5 * step), loses, modes, piece, law);
            PressedBall k4 = Rate(ball.Plus(k3, step), loses, modes, piece, law);
            PressedBall end = ball.Plus(k1, step / 6).Plus(k2, step / 3).Plus(k3, step / 3).Plus(k4, step / 6);
            double endDepth = -piece.Gap(end.Position, law.Reach, out Vec2 endInto);
            double endSpeed = end.Velocity.Dot(endInto);

            double shorter = 1.0;
            if (attempt < 10)
            {
                if (!returning && u.Vy > 0 && endSpeed < -turn) shorter = u.Vy / (u.Vy - endSpeed);
                if (returning && endDepth < -DepthRounding && endSpeed < 0) shorter = WayOut(depth, endDepth, u.Vy, step);
                if (returning && endSpeed > 0 && endDepth > slot.Deepest + DepthRounding)
                    shorter = (slot.Deepest - depth) / (endDepth - depth);
                double held = StickSlip.FractionHeld(
                    end.Seen(endInto), law.Force(endDepth, loses), law.Gravity, law.Friction, slack, modes, noseMargin, bedMargin);
                shorter = Math.Min(shorter, held);
            }

            if (shorter >= 1.0)
            {
                ball = end;
                lift += step * forces.Lift;
                left = returning && endDepth <= DepthRounding && endSpeed <= 0;
                return step;
            }

            step *= shorter;
        }
    }

    private static PressedBall Rate(
        in PressedBall ball, bool loses, in StickModes modes, in RubberPiece piece, in RubberLaw law)
    {
        double depth = -piece.Gap(ball.Position, law.Reach, out Vec2 into);
        double normal = law.Force(depth, loses);
        LocalMotion rates = NoseBedForces.At(ball.Seen(into), normal, law.Gravity, law.Friction, modes).Rates(normal, law.Friction);
        return PressedBall.Rate(ball.Velocity, rates, into);
    }

    /// <summary>Part of the step after which the depth is zero; the depth is taken as a parabola through start, its
    /// slope, and the end.</summary>
    private static double WayOut(double depth, double endDepth, double speedIn, double step)
    {
        double b = speedIn * step;
        double a = endDepth - depth - b;
        double discriminant = b * b - 4 * a * depth;
        if (discriminant >= 0)
        {
            double root = Math.Sqrt(discriminant);
            double fraction = b <= 0 ? 2 * depth / (-b + root) : a < 0 ? (-b - root) / (2 * a) : double.NaN;
            if (fraction is > 0 and < 1) return fraction;
        }

        return depth > 0 ? depth / (depth - endDepth) : 0.5;
    }
}
