namespace Longrail.Physics.Contacts;

/// <summary>Ball on cushion at an instant: the impulse law.</summary>
/// <remarks>
/// The equations of S. Mathavan, M. R. Jackson and R. M. Parkin, Proc. IMechE C 224, 1863 (2010), integrated over the
/// normal impulse at the nose with friction at nose and bed. Compression lasts until the speed into the cushion is
/// zero; then the cushion gives back e^2 of the work it took (W. J. Stronge's energetic restitution). Where a slip
/// dies, the contact sticks if Coulomb's law can hold it. The result does not depend on mass or size, and with constant
/// coefficients not on speed.
/// </remarks>
internal static class CushionImpulse
{
    /// <summary>Steps over a compression whose friction is mild. Fourth order: the error falls by 16 when this
    /// doubles.</summary>
    private const int StepsToStop = 16;

    /// <summary>More steps than a contact takes unless a slip hovers near zero.</summary>
    private const int UsualSteps = 120;

    /// <summary>Far more steps than any contact takes (tens); ends the loop if friction beyond all reason keeps pulling
    /// the ball in.</summary>
    private const int StepLimit = 2000;

    /// <summary>The motion after the contact.</summary>
    /// <param name="u">Motion on arrival; <see cref="LocalMotion.Vy"/> positive.</param>
    /// <param name="restitution">Energetic restitution, in [0, 1].</param>
    /// <param name="law">Angles and coefficients.</param>
    /// <param name="lift">Upward speed the ball would have got where the bed would have had to pull, m/s.</param>
    internal static LocalMotion Rebound(LocalMotion u, double restitution, in NoseBedLaw law, out double lift)
    {
        StickModes modes = default;
        modes.ScaleTo(u.Largest);
        double stepSize = u.Vy / (law.Cos * StepsToStop);
        double settled = 1e-13 * u.Vy;
        double work = 0;
        lift = 0;
        int steps = 0;

        while (u.Vy > settled && steps++ < StepLimit)
        {
            Step(ref u, ref modes, law, stepSize, steps > UsualSteps, ref work, ref lift, stopAtZeroSpeed: true, stopAtWork: double.NegativeInfinity);
        }

        double left = (1.0 - restitution * restitution) * work;
        double close = 1e-13 * work;
        while (work > left + close && steps++ < StepLimit)
        {
            Step(ref u, ref modes, law, stepSize, steps > UsualSteps, ref work, ref lift, stopAtZeroSpeed: false, stopAtWork: left);
        }

        return u;
    }

    /// <summary>One Runge-Kutta step, shortened to end where the speed is zero, the work is done, or a stuck contact
    /// lets go.</summary>
    private static void Step(
        ref LocalMotion u, ref StickModes modes, in NoseBedLaw law, double step, bool hovering, ref double work,
        ref double lift, bool stopAtZeroSpeed, double stopAtWork)
    {
        double slack = StickSlip.Slack(1.0, 0.0, 0.0);
        NoseBedForces forces = StickSlip.Decide(ref u, 1.0, 0.0, law, slack, step, hovering, ref modes);
        LocalMotion k1 = forces.Rates(1.0, law);
        step = StickSlip.LongestStep(u, k1, forces, 1.0, law, modes, step);
        double noseMargin = modes.NoseSticks ? forces.NoseMargin(1.0, law) : 0;
        double bedMargin = modes.BedSticks ? forces.BedMargin(law) : 0;

        for (int attempt = 0; ; attempt++)
        {
            LocalMotion m2 = u.Plus(k1, 0.5 * step);
            LocalMotion k2 = NoseBedForces.At(m2, 1.0, 0.0, law, modes).Rates(1.0, law);
            LocalMotion m3 = u.Plus(k2, 0.5 * step);
            LocalMotion k3 = NoseBedForces.At(m3, 1.0, 0.0, law, modes).Rates(1.0, law);
            LocalMotion m4 = u.Plus(k3, step);
            LocalMotion k4 = NoseBedForces.At(m4, 1.0, 0.0, law, modes).Rates(1.0, law);
            LocalMotion end = u.Plus(k1, step / 6).Plus(k2, step / 3).Plus(k3, step / 3).Plus(k4, step / 6);
            double endWork = work + step / 6 * law.Cos * (u.Vy + 2 * m2.Vy + 2 * m3.Vy + m4.Vy);

            double shorter = 1.0;
            if (attempt < 8)
            {
                if (stopAtZeroSpeed && end.Vy < -1e-14 * u.Vy) shorter = Math.Min(shorter, u.Vy / (u.Vy - end.Vy));
                if (endWork < stopAtWork - 1e-14 * Math.Abs(work)) shorter = Math.Min(shorter, FractionToWork(u.Vy, end.Vy, work, endWork, stopAtWork));
                shorter = Math.Min(shorter, StickSlip.FractionHeld(end, 1.0, 0.0, law, slack, modes, noseMargin, bedMargin));
            }

            if (shorter >= 1.0)
            {
                u = end;
                work = endWork;
                lift += step * forces.Lift;
                return;
            }

            step *= shorter;
        }
    }

    /// <summary>Part of the step after which the work has fallen to a level; the speed, and so the work's rate, is
    /// taken as linear.</summary>
    private static double FractionToWork(double speedStart, double speedEnd, double work, double endWork, double level)
    {
        double drop = (work - level) / (work - endWork);
        double a = 0.5 * (speedEnd - speedStart);
        double b = speedStart;
        double target = drop * (a + b);
        double discriminant = b * b + 4 * a * target;
        if (discriminant < 0 || a == 0) return drop;
        // Both a, b and the target are negative: the positive root.
        double root = 2 * target / (b - Math.Sqrt(discriminant));
        return root is > 0 and < 1 ? root : drop;
    }
}
