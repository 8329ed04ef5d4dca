namespace Longrail.Coaching.Statistics;

/// <summary>Chances of a normal error.</summary>
public static class NormalLaw
{
    /// <summary>The chance that a normal error stays within a number of its deviations, either way: erf(x / sqrt
    /// 2).</summary>
    /// <remarks>M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), formula 7.1.26, whose error
    /// is at most 1.5e-7.</remarks>
    /// <param name="deviations">How many deviations; below 0 counts as 0.</param>
    public static double Within(double deviations)
    {
        if (!(deviations > 0)) return 0;
        double x = deviations / Math.Sqrt(2);
        double t = 1 / (1 + 0.3275911 * x);
        double sum = ((((1.061405429 * t - 1.453152027) * t + 1.421413741) * t - 0.284496736) * t + 0.254829592) * t;
        return 1 - sum * Math.Exp(-x * x);
    }
}
