namespace Longrail.Physics.Contacts;

/// <summary>Forces on a ball that touches a cushion nose and the bed at once, per unit mass of the ball.</summary>
/// <remarks>
/// Local frame: x along the nose line, y into the cushion, z up. The nose touches at R (0, cos, sin), the bed at R (0,
/// 0, -1), with sin(theta) = (noseHeight - R)/R. Spins enter as surface speeds a = R w. Slips (Mathavan, Jackson and
/// Parkin 2010): nose s1 = vx + ay sin - az cos, s2 = -vy sin + ax; bed c1 = vx - ay, c2 = vy + ax. The ball does not
/// leave the bed, so the bed carries g + N sin - F2 cos and never pulls. Each contact either slips (Coulomb friction
/// against the slip) or sticks (the friction that keeps the slip's rate at zero, found in closed form because the two
/// directions decouple).
/// </remarks>
internal struct NoseBedForces
{
    /// <summary>Friction at the nose: along the nose line, and up along the tilted face.</summary>
    internal double NoseAlong, NoseUp;

    /// <summary>Friction at the bed along x and y.</summary>
    internal double BedAlong, BedInto;

    /// <summary>Load on the bed; before the clamp at zero in <see cref="Lift"/>.</summary>
    internal double BedLoad;

    /// <summary>By how much the forces would pull the ball off the bed; zero while the bed carries load.</summary>
    internal double Lift;

    /// <summary>Friction for the given modes.</summary>
    /// <param name="u">Motion in the local frame.</param>
    /// <param name="normal">Normal force at the nose per unit mass, m/s^2 (or 1 when impulse is the variable).</param>
    /// <param name="gravity">Weight per unit mass that the bed carries besides, m/s^2.</param>
    /// <param name="law">Angles and coefficients.</param>
    /// <param name="modes">Which contacts stick.</param>
    internal static NoseBedForces At(in LocalMotion u, double normal, double gravity, in NoseBedLaw law, in StickModes modes)
    {
        double s = law.Sin;
        double c = law.Cos;
        NoseBedForces f = default;
        if (modes.NoseSticks && modes.BedSticks)
        {
            f.NoseUp = -normal * c / (1 + s);
            f.BedInto = normal * c / (1 + s);
            f.Load(normal, gravity, s, c);
            return f;
        }

        if (modes.NoseSticks)
        {
            u.BedDirection(modes, out double bx, out double by);
            double lever = 2.5 - s;
            double bed = law.BedFriction;
            f.NoseUp = (-normal * s * c + lever * bed * by * (gravity + normal * s)) / (s * s + 2.5 + lever * bed * by * c);
            f.Load(normal, gravity, s, c);
            f.BedAlong = -bed * bx * f.BedLoad;
            f.BedInto = -bed * by * f.BedLoad;
            f.NoseAlong = -(1 - 2.5 * s) * f.BedAlong / 3.5;
            return f;
        }

        u.NoseDirection(law, modes, out double nx, out double ny);
        f.NoseAlong = -law.NoseFriction * normal * nx;
        f.NoseUp = -law.NoseFriction * normal * ny;
        f.Load(normal, gravity, s, c);
        if (modes.BedSticks)
        {
            f.BedAlong = -f.NoseAlong * (1 - 2.5 * s) / 3.5;
            f.BedInto = (normal * c - f.NoseUp * (2.5 - s)) / 3.5;
        }
        else
        {
            u.BedDirection(modes, out double bx, out double by);
            f.BedAlong = -law.BedFriction * bx * f.BedLoad;
            f.BedInto = -law.BedFriction * by * f.BedLoad;
        }

        return f;
    }

    /// <summary>The rates of change of the motion.</summary>
    internal readonly LocalMotion Rates(double normal, in NoseBedLaw law) => new(
        NoseAlong + BedAlong,
        -normal * law.Cos - NoseUp * law.Sin + BedInto,
        2.5 * (NoseUp + BedInto),
        2.5 * (law.Sin * NoseAlong - BedAlong),
        -2.5 * law.Cos * NoseAlong);

    /// <summary>What the nose could still hold, less what sticking asks of it; negative means that it slips.</summary>
    internal readonly double NoseMargin(double normal, in NoseBedLaw law) =>
        law.NoseFriction * normal - Math.Sqrt(NoseAlong * NoseAlong + NoseUp * NoseUp);

    /// <summary>What the bed could still hold, less what sticking asks of it; negative means that it slips.</summary>
    internal readonly double BedMargin(in NoseBedLaw law) =>
        law.BedFriction * BedLoad - Math.Sqrt(BedAlong * BedAlong + BedInto * BedInto);

    private void Load(double normal, double gravity, double s, double c)
    {
        double load = gravity + normal * s - NoseUp * c;
        BedLoad = load > 0 ? load : 0;
        Lift = load < 0 ? -load : 0;
    }
}
