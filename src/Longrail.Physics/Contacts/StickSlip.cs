namespace Longrail.Physics.Contacts;

/// <summary>When nose and bed stick and when they slip.</summary>
internal static class StickSlip
{
    /// <summary>A step towards zero slip goes this part of the way, so that the slip's direction is followed to the
    /// end.</summary>
    private const double ApproachFraction = 0.5;

    /// <summary>Sticking needs this much in hand, as a part of the load. A contact on the very edge of Coulomb's law
    /// lets go, so that a step that ends where it lets go is not tried again and again.</summary>
    private const double InHand = 1e-9;

    /// <summary>Rounds of the search for the direction in which slip sets out.</summary>
    private const int SettleRounds = 6;

    /// <summary>Largest turn of a slip in a step, radians; fourth order follows it to about 1e-5 of the slip.</summary>
    private const double TurnStep = 0.12;

    /// <summary>Step times rate of settling of a slip's direction; Runge-Kutta's fourth order is stable up to
    /// 2.78.</summary>
    private const double SettleStep = 2.0;

    /// <summary>A slip whose turning would need steps this much shorter than usual is taken as settled while it sets
    /// out.</summary>
    private const double SettledAt = 1.0 / 16;

    /// <summary>Friction shortens and turns a slip at 7/2 of its own size along the rail and at the bed; a little less
    /// up the face.</summary>
    private const double SlipResponse = 3.5;

    /// <summary>What a contact must have in hand to stick, in the units of the forces.</summary>
    /// <param name="normal">Normal force at the nose.</param>
    /// <param name="gravity">Weight.</param>
    /// <param name="rounding">How far rounding of the ball's place can change the normal force.</param>
    internal static double Slack(double normal, double gravity, double rounding) => InHand * (normal + gravity) + rounding;

    /// <summary>Decides the modes at the start of a step: a contact whose slip is all but gone sticks if Coulomb's law
    /// can hold it, else it slips on.</summary>
    /// <remarks>When a contact begins to stick, what is left of its slip is taken out by the friction impulse that does
    /// just that. Its size hardly depends on the way in which the slip dies.</remarks>
    /// <param name="u">Motion in the cushion's frame; changed by as much as a dying slip.</param>
    /// <param name="normal">Normal force at the nose per unit mass.</param>
    /// <param name="gravity">Weight per unit mass.</param>
    /// <param name="law">Angles and coefficients.</param>
    /// <param name="slack">What a contact must have in hand to stick: see <see cref="Slack"/>.</param>
    /// <param name="step">The usual step, in the units of the rates.</param>
    /// <param name="hovering">Whether so many steps have been taken that a slip must be hovering near zero.</param>
    /// <param name="modes">Changed to what is decided.</param>
    /// <returns>The forces in the modes decided.</returns>
    internal static NoseBedForces Decide(
        ref LocalMotion u, double normal, double gravity, in NoseBedLaw law, double slack, double step, bool hovering,
        ref StickModes modes)
    {
        bool noseStuck = modes.NoseSticks;
        bool bedStuck = modes.BedSticks;
        u.NoseSlip(law, out double x, out double y);
        double noseSlip = Math.Sqrt(x * x + y * y);
        u.BedSlip(out x, out y);
        double bedSlip = Math.Sqrt(x * x + y * y);
        bool nose = noseStuck || noseSlip <= modes.Slow;
        bool bed = bedStuck || bedSlip <= modes.Slow;
        if (!nose && !bed)
        {
            NoseBedForces slipping = NoseBedForces.At(u, normal, gravity, law, modes);
            return Settle(u, slipping, normal, gravity, law, step, hovering, noseSlip, bedSlip, ref modes);
        }

        // Slip sets out against the friction that sticking would have needed.
        StickModes held = modes;
        held.NoseSticks = nose;
        held.BedSticks = bed;
        NoseBedForces needed = NoseBedForces.At(u, normal, gravity, law, held);
        if (nose && (noseStuck || noseSlip <= modes.Still)) Toward(-needed.NoseAlong, -needed.NoseUp, ref held.NoseX, ref held.NoseY);
        if (bed && (bedStuck || bedSlip <= modes.Still)) Toward(-needed.BedAlong, -needed.BedInto, ref held.BedX, ref held.BedY);

        // Everything that may stick; else one of the two, first the one that has been sticking; else none.
        bool noseFirst = noseStuck && !bedStuck;
        ReadOnlySpan<(bool Nose, bool Bed)> ways = [(nose, bed), (nose && noseFirst, bed && !noseFirst), (nose && !noseFirst, bed && noseFirst)];
        for (int i = 0; i < (nose && bed ? 3 : 1); i++)
        {
            StickModes tried = held;
            (tried.NoseSticks, tried.BedSticks) = ways[i];
            tried.NoseSetsOut |= nose && !tried.NoseSticks && noseStuck;
            tried.BedSetsOut |= bed && !tried.BedSticks && bedStuck;
            NoseBedForces forces = NoseBedForces.At(u, normal, gravity, law, tried);
            forces = Settle(u, forces, normal, gravity, law, step, hovering, noseSlip, bedSlip, ref tried);
            if (tried.NoseSticks && forces.NoseMargin(normal, law) < slack) continue;
            if (tried.BedSticks && forces.BedMargin(law) < slack) continue;
            modes = tried;
            if (modes.NoseSticks && !noseStuck) u = StopNoseSlip(u, law, modes.BedSticks && bedStuck);
            if (modes.BedSticks && !bedStuck) u = StopBedSlip(u, law, modes.NoseSticks);
            return forces;
        }

        modes = held;
        modes.NoseSetsOut |= noseStuck;
        modes.BedSetsOut |= bedStuck;
        modes.NoseSticks = modes.BedSticks = false;
        NoseBedForces free = NoseBedForces.At(u, normal, gravity, law, modes);
        return Settle(u, free, normal, gravity, law, step, hovering, noseSlip, bedSlip, ref modes);
    }

    /// <summary>Finds the settled directions of slips that set out, and notes which do no longer.</summary>
    /// <remarks>The direction is a fixed point: the one in which the slip would go without friction against it, given
    /// that friction. It is exact where slip turns round on a line, and found fast because both directions are almost
    /// equally easy (3.5 along, 2.5 + sin^2 up).</remarks>
    private static NoseBedForces Settle(
        in LocalMotion u, in NoseBedForces decided, double normal, double gravity, in NoseBedLaw law, double step, bool hovering,
        double noseSlip, double bedSlip, ref StickModes modes)
    {
        double noseRate = SlipResponse * law.NoseFriction * normal;
        double bedRate = SlipResponse * law.BedFriction * decided.BedLoad;
        modes.NoseSetsOut = SetsOut(modes.NoseSetsOut || hovering, modes.NoseSticks, noseSlip, noseRate, step, modes.Still);
        modes.BedSetsOut = SetsOut(modes.BedSetsOut || hovering, modes.BedSticks, bedSlip, bedRate, step, modes.Still);
        if (!modes.NoseSetsOut && !modes.BedSetsOut) return decided;
        NoseBedForces forces = NoseBedForces.At(u, normal, gravity, law, modes);
        for (int i = 0; i < SettleRounds; i++)
        {
            LocalMotion rates = forces.Rates(normal, law);
            if (modes.NoseSetsOut)
            {
                rates.NoseSlip(law, out double x, out double y);
                Toward(x + noseRate * modes.NoseX, y + noseRate * modes.NoseY, ref modes.NoseX, ref modes.NoseY);
            }

            if (modes.BedSetsOut)
            {
                bedRate = SlipResponse * law.BedFriction * forces.BedLoad;
                rates.BedSlip(out double x, out double y);
                Toward(x + bedRate * modes.BedX, y + bedRate * modes.BedY, ref modes.BedX, ref modes.BedY);
            }

            forces = NoseBedForces.At(u, normal, gravity, law, modes);
        }

        return forces;
    }

    private static bool SetsOut(bool candidate, bool sticks, double slip, double rate, double step, double still) =>
        !sticks && (slip <= still || (candidate && slip < SettledAt * rate * step));

    /// <summary>Takes the slip at the nose out; the bed's stays as it is where it sticks.</summary>
    private static LocalMotion StopNoseSlip(in LocalMotion u, in NoseBedLaw law, bool bedHeld)
    {
        u.NoseSlip(law, out double along, out double up);
        double s = law.Sin;
        double crossAlong = 1 - 2.5 * s;
        double crossUp = 2.5 - s;
        NoseBedForces impulse = default;
        if (bedHeld)
        {
            impulse.NoseAlong = -along * 3.5 / (12.25 - crossAlong * crossAlong);
            impulse.BedAlong = -crossAlong * impulse.NoseAlong / 3.5;
            impulse.NoseUp = -up * 3.5 / (3.5 * (2.5 + s * s) - crossUp * crossUp);
            impulse.BedInto = -crossUp * impulse.NoseUp / 3.5;
        }
        else
        {
            impulse.NoseAlong = -along / 3.5;
            impulse.NoseUp = -up / (2.5 + s * s);
        }

        return u.Plus(impulse.Rates(0, law), 1.0);
    }

    /// <summary>Takes the slip at the bed out; the nose's stays as it is where it sticks.</summary>
    private static LocalMotion StopBedSlip(in LocalMotion u, in NoseBedLaw law, bool noseHeld)
    {
        u.BedSlip(out double along, out double into);
        double s = law.Sin;
        double crossAlong = 1 - 2.5 * s;
        double crossUp = 2.5 - s;
        NoseBedForces impulse = default;
        if (noseHeld)
        {
            impulse.BedAlong = -along * 3.5 / (12.25 - crossAlong * crossAlong);
            impulse.NoseAlong = -crossAlong * impulse.BedAlong / 3.5;
            impulse.BedInto = -into * (2.5 + s * s) / (3.5 * (2.5 + s * s) - crossUp * crossUp);
            impulse.NoseUp = -crossUp * impulse.BedInto / (2.5 + s * s);
        }
        else
        {
            impulse.BedAlong = -along / 3.5;
            impulse.BedInto = -into / 3.5;
        }

        return u.Plus(impulse.Rates(0, law), 1.0);
    }

    private static void Toward(double x, double y, ref double directionX, ref double directionY)
    {
        double length = Math.Sqrt(x * x + y * y);
        if (!(length > 0)) return;
        directionX = x / length;
        directionY = y / length;
    }

    /// <summary>The longest step that does not carry a slip past zero, nor turns it faster than can be
    /// followed.</summary>
    internal static double LongestStep(
        in LocalMotion u, in LocalMotion rates, in NoseBedForces forces, double normal, in NoseBedLaw law, in StickModes modes, double step)
    {
        if (!modes.NoseSticks)
        {
            u.NoseSlip(law, out double x, out double y);
            rates.NoseSlip(law, out double dx, out double dy);
            double turning = modes.NoseSetsOut ? 0 : SlipResponse * law.NoseFriction * normal;
            step = Approach(x, y, dx, dy, turning, modes.Still, step);
        }

        if (!modes.BedSticks)
        {
            u.BedSlip(out double x, out double y);
            rates.BedSlip(out double dx, out double dy);
            double turning = modes.BedSetsOut ? 0 : SlipResponse * law.BedFriction * forces.BedLoad;
            step = Approach(x, y, dx, dy, turning, modes.Still, step);
        }

        return step;
    }

    /// <summary>Part of a step after which a stuck contact lets go, judged by what it has in hand at both ends; 1 if it
    /// holds.</summary>
    internal static double FractionHeld(
        in LocalMotion end, double normal, double gravity, in NoseBedLaw law, double slack, in StickModes modes,
        double noseMargin, double bedMargin)
    {
        if (!modes.NoseSticks && !modes.BedSticks) return 1.0;
        NoseBedForces forces = NoseBedForces.At(end, normal, gravity, law, modes);
        double fraction = 1.0;
        if (modes.NoseSticks) fraction = Held(noseMargin, forces.NoseMargin(normal, law), slack);
        return modes.BedSticks ? Math.Min(fraction, Held(bedMargin, forces.BedMargin(law), slack)) : fraction;
    }

    private static double Held(double start, double end, double slack) => end < -slack ? Math.Max(start, slack) / (Math.Max(start, slack) - end) : 1.0;

    private static double Approach(double x, double y, double dx, double dy, double turning, double still, double step)
    {
        double square = x * x + y * y;
        if (square <= still * still) return step;
        double closing = -(x * dx + y * dy);
        double turn = Math.Abs(x * dy - y * dx);
        if (turning > 0)
        {
            step = Math.Min(step, SettleStep * Math.Sqrt(square) / turning);
            if (step * turn > TurnStep * square) step = TurnStep * square / turn;
        }

        if (closing <= 0) return step;
        return Math.Min(step, ApproachFraction * square / closing);
    }
}
