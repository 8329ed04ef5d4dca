using MathNet.Numerics.Distributions;

namespace Longrail.Coaching.Statistics;

/// <summary>Intervals for a chance, from how often it came off in a number of trials.</summary>
/// <remarks>Sources: E. B. Wilson, J. Am. Stat. Assoc. 22, 209 (1927); C. J. Clopper, E. S. Pearson, Biometrika 26,
/// 404 (1934); compared by R. G. Newcombe, Stat. Med. 17, 857 (1998). The plain normal interval is left out on purpose:
/// for 1 in 29 it reaches below 0, and for 0 in 20 it has no width.</remarks>
public static class Proportion
{
    /// <summary>Wilson's score interval: the chances that the count does not contradict.</summary>
    /// <param name="made">How many came off, from 0 to <paramref name="trials"/>.</param>
    /// <param name="trials">How many there were; without any the interval is all from 0 to 1.</param>
    /// <param name="confidence">Between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count or the confidence is out of range.</exception>
    public static Interval Wilson(int made, int trials, double confidence = Levels.Usual)
    {
        RequireCounts(made, trials);
        double z = Levels.Deviate(confidence);
        if (trials == 0) return new Interval(0, 1);
        double n = trials;
        double p = made / n;
        double centre = (p + z * z / (2 * n)) / (1 + z * z / n);
        double half = z / (1 + z * z / n) * Math.Sqrt(p * (1 - p) / n + z * z / (4 * n * n));
        // At the ends centre and half-width are equal but for rounding.
        return new Interval(made == 0 ? 0 : centre - half, made == trials ? 1 : centre + half);
    }

    /// <summary>The same with a continuity correction: wider, and never too sure for any chance.</summary>
    /// <param name="made">How many came off, from 0 to <paramref name="trials"/>.</param>
    /// <param name="trials">How many there were.</param>
    /// <param name="confidence">Between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count or the confidence is out of range.</exception>
    public static Interval WilsonCorrected(int made, int trials, double confidence = Levels.Usual)
    {
        RequireCounts(made, trials);
        double z = Levels.Deviate(confidence);
        if (trials == 0) return new Interval(0, 1);
        double n = trials;
        double p = made / n;
        double q = 1 - p;
        double low = (2 * n * p + z * z - 1 - z * Math.Sqrt(z * z - 2 - 1 / n + 4 * p * (n * q + 1)))
            / (2 * (n + z * z));
        double high = (2 * n * p + z * z + 1 + z * Math.Sqrt(z * z + 2 - 1 / n + 4 * p * (n * q - 1)))
            / (2 * (n + z * z));
        return new Interval(made == 0 ? 0 : Math.Max(0, low), made == trials ? 1 : Math.Min(1, high));
    }

    /// <summary>The exact interval of Clopper and Pearson: each end is the chance at which so extreme a count would
    /// just be as rare as the confidence leaves.</summary>
    /// <param name="made">How many came off, from 0 to <paramref name="trials"/>.</param>
    /// <param name="trials">How many there were.</param>
    /// <param name="confidence">Between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count or the confidence is out of range.</exception>
    public static Interval Exact(int made, int trials, double confidence = Levels.Usual)
    {
        RequireCounts(made, trials);
        double tail = (1 - Levels.Require(confidence)) / 2;
        double low = made == 0 ? 0 : Beta.InvCDF(made, trials - made + 1, tail);
        double high = made == trials ? 1 : Beta.InvCDF(made + 1, trials - made, 1 - tail);
        return new Interval(low, high);
    }

    internal static void RequireCounts(int made, int trials)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(trials);
        ArgumentOutOfRangeException.ThrowIfNegative(made);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(made, trials);
    }
}
