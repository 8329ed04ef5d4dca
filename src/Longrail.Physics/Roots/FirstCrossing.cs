namespace Longrail.Physics.Roots;

/// <summary>First time at which a polynomial gap is closed and closing. Pure algebra: what the gap means is the
/// caller's business.</summary>
/// <remarks>
/// A gap g(t) counts as crossed at the first t in [0, limit] with g(t) &lt;= 0 and g'(t) &lt;= -fall, where fall &gt;=
/// 0 is the slowest closing that counts. So a gap that rounding has made slightly negative but that opens again is no
/// crossing (Bannerman et al., Comput. Part. Mech. 1, 191 (2014)), and two things that rest against each other do not
/// meet for ever. What closes more gently still counts once it has sunk in by a given amount. "Never" is positive
/// infinity.
/// <para>The quartic is split at its stationary points, which are the roots of a cubic split at its own: every interval
/// is monotone, so a sign change holds exactly one root and bracketed Newton steps cannot miss it or leave it.</para>
/// </remarks>
public static class FirstCrossing
{
    /// <summary>Crossing of c0 + c1 t + c2 t^2.</summary>
    /// <param name="c0">Value at 0.</param>
    /// <param name="c1">First-order coefficient.</param>
    /// <param name="c2">Second-order coefficient.</param>
    /// <param name="limit">Last time of interest; may be infinite.</param>
    /// <param name="fall">Slowest closing that counts, not negative.</param>
    public static double Quadratic(double c0, double c1, double c2, double limit, double fall = 0.0)
    {
        double time = 0.0;
        if (c0 > 0)
        {
            time = FallingRoot(c0, c1, c2);
            if (!(time <= limit)) return double.PositiveInfinity;
        }

        // The slope at the crossing; if too gentle, wait until it is steep enough, provided the gap stays closed.
        double slope = c1 + 2 * c2 * time;
        if (slope < 0 && slope <= -fall) return time;
        if (!(c2 < 0)) return double.PositiveInfinity;
        double steepEnough = (-fall - c1) / (2 * c2);
        if (steepEnough < time) steepEnough = time;
        if (c0 + steepEnough * (c1 + steepEnough * c2) > 0)
        {
            // It opened again in between, so it closes later, and steeper.
            steepEnough = FallingRoot(c0, c1, c2);
        }

        return steepEnough <= limit ? steepEnough : double.PositiveInfinity;
    }

    /// <summary>Crossing of c0 + c1 t + c2 t^2 + c3 t^3 + c4 t^4.</summary>
    /// <param name="c0">Value at 0.</param>
    /// <param name="c1">First-order coefficient.</param>
    /// <param name="c2">Second-order coefficient.</param>
    /// <param name="c3">Third-order coefficient.</param>
    /// <param name="c4">Fourth-order coefficient.</param>
    /// <param name="limit">Last time of interest, finite.</param>
    /// <param name="fall">Slowest closing that counts, not negative.</param>
    /// <param name="sink">How far a gap that closes more gently may sink below zero, or below its value at 0 if that is
    /// negative, before it counts after all; infinite for ever.</param>
    public static double Quartic(
        double c0, double c1, double c2, double c3, double c4, double limit, double fall = 0.0,
        double sink = double.PositiveInfinity)
    {
        var gap = new Quartic(c0, c1, c2, c3, c4);
        double steep = Steep(gap, c0, limit, fall, out bool gentle);
        if (!gentle || double.IsPositiveInfinity(sink)) return steep;
        double bottom = Math.Min(c0, 0.0) - sink;
        double deep = new Quartic(c0 - bottom, c1, c2, c3, c4).FirstAtOrBelowZero(0.0, c0 - bottom, Math.Min(limit, steep));
        return Math.Min(steep, deep);
    }

    /// <summary>First time the gap is closed and closing fast enough; <paramref name="gentle"/> when it was closed too
    /// gently before.</summary>
    private static double Steep(in Quartic gap, double c0, double limit, double fall, out bool gentle)
    {
        gentle = false;
        double from = 0.0;
        double valueFrom = c0;
        while (true)
        {
            double crossing = gap.FirstAtOrBelowZero(from, valueFrom, limit);
            if (double.IsPositiveInfinity(crossing)) return crossing;
            double slope = gap.Slope(crossing);
            if (slope < 0 && slope <= -fall) return crossing;

            gentle = true;

            // Closed, but not closing fast enough: wait for the slope, and look whether the gap is still closed then.
            double steepEnough = gap.FirstSlopeBelow(-fall, crossing, limit);
            if (double.IsPositiveInfinity(steepEnough)) return steepEnough;
            double value = gap.Value(steepEnough);
            if (value <= 0) return steepEnough;
            from = steepEnough;
            valueFrom = value;
        }
    }

    /// <summary>The root at which a quadratic that is positive at 0 first falls to zero; infinity if it never
    /// does.</summary>
    private static double FallingRoot(double c0, double c1, double c2)
    {
        if (c2 == 0) return c1 < 0 ? -c0 / c1 : double.PositiveInfinity;
        double discriminant = c1 * c1 - 4 * c2 * c0;
        if (discriminant < 0) return double.PositiveInfinity;
        double root = Math.Sqrt(discriminant);
        // Both forms avoid the cancellation of -b + sqrt(b^2 - 4ac) by choosing on the sign of b.
        if (c1 <= 0)
        {
            double q = -c1 + root;
            return q > 0 ? 2 * c0 / q : double.PositiveInfinity;
        }

        return c2 < 0 ? (-c1 - root) / (2 * c2) : double.PositiveInfinity;
    }
}
