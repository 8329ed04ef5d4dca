namespace Longrail.Physics.Contacts;

/// <summary>When nose and bed stick and when they slip.</summary>
internal static class StickSlip
{
    /// <summary>A step towards zero slip goes this part of the way, so that the slip's direction is followed to the end.</summary>
    private const double ApproachFraction = 0.9;

    /// <summary>Sticking needs this much in hand, as a part of the load. A contact on the very edge of Coulomb's law lets go, so that a
    /// step that ends where it lets go is not tried again and again.</summary>
    private const double InHand = 1e-9;

    /// <summary>Rounds of the search for the direction in which slip sets out.</summary>
    private const int SetOutRounds = 6;

    /// <summary>Step times rate of turning of a slip; small enough for fourth order to follow it to about 1e-4 of the slip a step.</summary>
    private const double TurnStep = 0.5;

    /// <summary>Step times rate of a creeping contact; Runge-Kutta's fourth order is stable up to 2.78.</summary>
    private const double CreepStep = 1.5;

    /// <summary>What a contact must have in hand to stick, in the units of the forces.</summary>
    /// <param name="normal">Normal force at the nose.</param>
    /// <param name="gravity">Weight.</param>
    /// <param name="rounding">How far rounding of the ball's place can change the normal force.</param>
    internal static double Slack(double normal, double gravity, double rounding) => InHand * (normal + gravity) + rounding;

    /// <summary>Decides the modes at the start of a step: a contact without slip sticks if Coulomb's law can hold it, else it sets out anew.</summary>
    /// <param name="u">Motion in the cushion's frame.</param>
    /// <param name="normal">Normal force at the nose per unit mass.</param>
    /// <param name="gravity">Weight per unit mass.</param>
    /// <param name="law">Angles and coefficients.</param>
    /// <param name="slack">What a contact must have in hand to stick: see <see cref="Slack"/>.</param>
    /// <param name="hovering">Whether so many steps have been taken that a slip must be hovering near zero: it then creeps.</param>
    /// <param name="modes">Changed to what is decided.</param>
    /// <returns>The forces in the modes decided.</returns>
    internal static NoseBedForces Decide(
        in LocalMotion u, double normal, double gravity, in NoseBedLaw law, double slack, bool hovering, ref StickModes modes)
    {
        u.NoseSlip(law, out double x, out double y);
        Classify(x * x + y * y, modes, hovering, ref modes.NoseSticks, ref modes.NoseCreeps);
        u.BedSlip(out x, out y);
        Classify(x * x + y * y, modes, hovering, ref modes.BedSticks, ref modes.BedCreeps);

        // Each round lets go what cannot be held, so there are at most three.
        while (true)
        {
            NoseBedForces forces = NoseBedForces.At(u, normal, gravity, law, modes);
            bool noseHolds = !modes.NoseSticks || forces.NoseMargin(normal, law) >= slack;
            bool bedHolds = !modes.BedSticks || forces.BedMargin(law) >= slack;
            if (noseHolds && bedHolds) return forces;

            // If neither holds with the other, the bed may hold alone: it carries the weight before the rubber pushes.
            if (!noseHolds) NoseSetsOut(u, forces, normal, gravity, law, ref modes);
            else BedSetsOut(u, forces, normal, gravity, law, ref modes);
        }
    }

    /// <summary>Finds the direction in which slip sets out: the one in which friction against it lets it grow.</summary>
    /// <remarks>A fixed point, found by iteration from the direction against the friction that sticking would have needed. It is exact where
    /// slip turns round on a line, and converges fast because the two directions are almost equally easy.</remarks>
    private static void NoseSetsOut(
        in LocalMotion u, in NoseBedForces stuck, double normal, double gravity, in NoseBedLaw law, ref StickModes modes)
    {
        modes.NoseSticks = false;
        Toward(-stuck.NoseAlong, -stuck.NoseUp, ref modes.NoseX, ref modes.NoseY);
        for (int i = 0; i < SetOutRounds; i++)
        {
            LocalMotion rates = NoseBedForces.At(u, normal, gravity, law, modes).Rates(normal, law);
            rates.NoseSlip(law, out double x, out double y);
            if (x * modes.NoseX + y * modes.NoseY <= 0) return;
            Toward(x, y, ref modes.NoseX, ref modes.NoseY);
        }
    }

    private static void BedSetsOut(
        in LocalMotion u, in NoseBedForces stuck, double normal, double gravity, in NoseBedLaw law, ref StickModes modes)
    {
        modes.BedSticks = false;
        Toward(-stuck.BedAlong, -stuck.BedInto, ref modes.BedX, ref modes.BedY);
        for (int i = 0; i < SetOutRounds; i++)
        {
            LocalMotion rates = NoseBedForces.At(u, normal, gravity, law, modes).Rates(normal, law);
            rates.BedSlip(out double x, out double y);
            if (x * modes.BedX + y * modes.BedY <= 0) return;
            Toward(x, y, ref modes.BedX, ref modes.BedY);
        }
    }

    private static void Toward(double x, double y, ref double directionX, ref double directionY)
    {
        double length = Math.Sqrt(x * x + y * y);
        if (!(length > 0)) return;
        directionX = x / length;
        directionY = y / length;
    }

    /// <summary>The longest step that neither carries a slip past zero nor upsets a creeping contact.</summary>
    internal static double LongestStep(
        in LocalMotion u, in LocalMotion rates, in NoseBedForces forces, double normal, in NoseBedLaw law, in StickModes modes, double step)
    {
        if (modes.NoseCreeps)
        {
            step = Math.Min(step, CreepStep * modes.Creep / (3.5 * law.NoseFriction * normal));
        }
        else if (!modes.NoseSticks)
        {
            u.NoseSlip(law, out double x, out double y);
            rates.NoseSlip(law, out double dx, out double dy);
            step = Approach(x, y, dx, dy, law.NoseFriction * normal, modes.Still, step);
        }

        if (modes.BedCreeps)
        {
            step = Math.Min(step, CreepStep * modes.Creep / (3.5 * law.BedFriction * forces.BedLoad));
        }
        else if (!modes.BedSticks)
        {
            u.BedSlip(out double x, out double y);
            rates.BedSlip(out double dx, out double dy);
            step = Approach(x, y, dx, dy, law.BedFriction * forces.BedLoad, modes.Still, step);
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

    private static void Classify(double slipSquared, in StickModes modes, bool hovering, ref bool sticks, ref bool creeps)
    {
        bool slow = slipSquared <= modes.Creep * modes.Creep;
        if (!slow) creeps = false;
        else if (!creeps && slipSquared <= modes.Still * modes.Still) sticks = true;
        else if (hovering && !sticks) creeps = true;
    }

    private static double Held(double start, double end, double slack) => end < -slack ? start / (start - end) : 1.0;

    /// <summary>A step that neither carries a slip past zero nor, where the slip is slow, turns its direction faster than can be followed.</summary>
    private static double Approach(double x, double y, double dx, double dy, double friction, double still, double step)
    {
        double square = x * x + y * y;
        if (square <= still * still) return step;
        double slip = Math.Sqrt(square);
        // Friction turns and shortens the slip at a rate of about 7/2 friction/|slip|.
        step = Math.Min(step, TurnStep * slip / (3.5 * friction));
        double closing = -(x * dx + y * dy);
        return closing > 0 ? Math.Min(step, ApproachFraction * square / closing) : step;
    }
}
