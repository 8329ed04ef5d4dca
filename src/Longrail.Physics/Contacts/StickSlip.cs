namespace Longrail.Physics.Contacts;

/// <summary>When nose and bed stick and when they slip.</summary>
internal static class StickSlip
{
    /// <summary>A step towards zero slip goes this part of the way, so that the slip's direction is followed to the end.</summary>
    private const double ApproachFraction = 0.9;

    /// <summary>Sticking needs this much in hand, as a part of the load. A contact on the very edge of Coulomb's law lets go, so that a
    /// step that ends where it lets go is not tried again and again.</summary>
    private const double InHand = 1e-9;

    /// <summary>What a contact must have in hand to stick, in the units of the forces.</summary>
    /// <param name="normal">Normal force at the nose.</param>
    /// <param name="gravity">Weight.</param>
    /// <param name="rounding">How far rounding of the ball's place can change the normal force.</param>
    internal static double Slack(double normal, double gravity, double rounding) => InHand * (normal + gravity) + rounding;

    /// <summary>Decides the modes at the start of a step: a contact without slip sticks if Coulomb's law can hold it.</summary>
    /// <param name="u">Motion in the cushion's frame.</param>
    /// <param name="normal">Normal force at the nose per unit mass.</param>
    /// <param name="gravity">Weight per unit mass.</param>
    /// <param name="law">Angles and coefficients.</param>
    /// <param name="slack">What a contact must have in hand to stick: see <see cref="Slack"/>.</param>
    /// <param name="modes">Changed to what is decided.</param>
    /// <returns>The forces in the modes decided.</returns>
    internal static NoseBedForces Decide(
        in LocalMotion u, double normal, double gravity, in NoseBedLaw law, double slack, ref StickModes modes)
    {
        u.NoseSlip(law, out double noseAlong, out double noseUp);
        u.BedSlip(out double bedAlong, out double bedInto);
        double still = modes.Still * modes.Still;
        bool nose = modes.NoseSticks || noseAlong * noseAlong + noseUp * noseUp <= still;
        bool bed = modes.BedSticks || bedAlong * bedAlong + bedInto * bedInto <= still;
        modes.NoseSticks = nose;
        modes.BedSticks = bed;
        NoseBedForces forces = NoseBedForces.At(u, normal, gravity, law, modes);
        if (!nose && !bed) return forces;
        bool noseHolds = !nose || forces.NoseMargin(normal, law) >= slack;
        bool bedHolds = !bed || forces.BedMargin(law) >= slack;
        if (noseHolds && bedHolds) return forces;

        // Slip sets in against the friction that would have been needed.
        if (!noseHolds) Against(forces.NoseAlong, forces.NoseUp, out modes.NoseX, out modes.NoseY);
        if (!bedHolds) Against(forces.BedAlong, forces.BedInto, out modes.BedX, out modes.BedY);
        if (nose && bed && (noseHolds || bedHolds))
        {
            // One lets go; the other may still hold once it has.
            modes.NoseSticks = noseHolds;
            modes.BedSticks = bedHolds;
            forces = NoseBedForces.At(u, normal, gravity, law, modes);
            bool holds = noseHolds ? forces.NoseMargin(normal, law) >= slack : forces.BedMargin(law) >= slack;
            if (holds) return forces;
            if (noseHolds) Against(forces.NoseAlong, forces.NoseUp, out modes.NoseX, out modes.NoseY);
            else Against(forces.BedAlong, forces.BedInto, out modes.BedX, out modes.BedY);
        }
        else if (nose && bed)
        {
            // Neither holds with the other; the bed alone may (it carries the weight even before the rubber pushes).
            modes.NoseSticks = false;
            forces = NoseBedForces.At(u, normal, gravity, law, modes);
            if (forces.BedMargin(law) >= slack) return forces;
        }

        modes.NoseSticks = false;
        modes.BedSticks = false;
        return NoseBedForces.At(u, normal, gravity, law, modes);
    }

    /// <summary>The longest step that does not carry a slip past zero.</summary>
    internal static double LongestStep(in LocalMotion u, in LocalMotion rates, in NoseBedLaw law, in StickModes modes, double step)
    {
        if (!modes.NoseSticks)
        {
            u.NoseSlip(law, out double x, out double y);
            rates.NoseSlip(law, out double dx, out double dy);
            step = Approach(x, y, dx, dy, modes.Still, step);
        }

        if (!modes.BedSticks)
        {
            u.BedSlip(out double x, out double y);
            rates.BedSlip(out double dx, out double dy);
            step = Approach(x, y, dx, dy, modes.Still, step);
        }

        return step;
    }

    /// <summary>Part of a step after which a stuck contact lets go, judged by what it has in hand at both ends; 1 if it holds.</summary>
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

    private static double Held(double start, double end, double slack) => end < -slack ? start / (start - end) : 1.0;

    private static double Approach(double x, double y, double dx, double dy, double still, double step)
    {
        double square = x * x + y * y;
        if (square <= still * still) return step;
        double closing = -(x * dx + y * dy);
        if (closing <= 0) return step;
        return Math.Min(step, ApproachFraction * square / closing);
    }

    private static void Against(double x, double y, out double directionX, out double directionY)
    {
        double length = Math.Sqrt(x * x + y * y);
        directionX = length > 0 ? -x / length : 0;
        directionY = length > 0 ? -y / length : 0;
    }
}
