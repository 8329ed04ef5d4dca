using MathNet.Numerics.Distributions;
using MathNet.Numerics.RootFinding;

namespace Longrail.Coaching.Statistics;

/// <summary>How many shots of each condition it takes to see a difference that is there.</summary>
/// <remarks>Two conditions with equal numbers, tests two-sided. Sources: J. L. Fleiss, Statistical Methods for Rates
/// and Proportions (2nd ed., 1981), chapter 3; J. L. Fleiss, A. Tytun, H. K. Ury, Biometrics 36, 343 (1980); J. Cohen,
/// Statistical Power Analysis for the Behavioral Sciences (2nd ed., 1988); for the covariate G. F. Borm, J. Fransen, W.
/// A. J. G. Lemmens, J. Clin. Epidemiol. 60, 1234 (2007).</remarks>
public static class ShotsNeeded
{
    /// <summary>More than anybody plays; larger needs are given as this.</summary>
    public const int Most = 1_000_000;

    /// <summary>For two chances: the usual normal formula.</summary>
    /// <param name="chance1">First chance, between 0 and 1.</param>
    /// <param name="chance2">Second chance, between 0 and 1.</param>
    /// <param name="power">How often the difference shall be seen, between 0 and 1.</param>
    /// <param name="level">How often one is seen that is not there, between 0 and 1.</param>
    /// <returns>Shots of each condition, not rounded; infinite where the chances are equal.</returns>
    public static double ForChances(double chance1, double chance2, double power, double level = 0.05)
    {
        double mean = (chance1 + chance2) / 2;
        double alike = Normal.InvCDF(0, 1, 1 - level / 2) * Math.Sqrt(2 * mean * (1 - mean));
        double apart = Normal.InvCDF(0, 1, power)
            * Math.Sqrt(chance1 * (1 - chance1) + chance2 * (1 - chance2));
        double difference = Math.Abs(chance1 - chance2);
        return difference > 0 ? Square((alike + apart) / difference) : double.PositiveInfinity;
    }

    /// <summary>The same with the continuity correction of Fleiss, Tytun and Ury.</summary>
    /// <param name="chance1">First chance, between 0 and 1.</param>
    /// <param name="chance2">Second chance, between 0 and 1.</param>
    /// <param name="power">How often the difference shall be seen, between 0 and 1.</param>
    /// <param name="level">How often one is seen that is not there, between 0 and 1.</param>
    public static double ForChancesCorrected(double chance1, double chance2, double power, double level = 0.05)
    {
        double n = ForChances(chance1, chance2, power, level);
        return double.IsInfinity(n)
            ? n
            : n / 4 * Square(1 + Math.Sqrt(1 + 4 / (n * Math.Abs(chance1 - chance2))));
    }

    /// <summary>For two means, by Student's test.</summary>
    /// <param name="shift">The difference over the standard deviation within a condition.</param>
    /// <param name="power">How often it shall be seen, between 0 and 1.</param>
    /// <param name="level">How often one is seen that is not there.</param>
    /// <param name="explained">The part of the variance within a condition that a covariate takes away, from 0 to below
    /// 1; null without a covariate.</param>
    /// <returns>The least number of shots of each condition, at least 2, at most <see cref="Most"/>.</returns>
    public static int ForMeans(double shift, double power, double level = 0.05, double? explained = null) =>
        Least(n => PowerForMeans(n, shift, level, explained), power, explained is null ? 2 : 3);

    /// <summary>How often Student's test sees a difference of two means.</summary>
    /// <param name="shots">Of each condition, at least 2; 3 with a covariate.</param>
    /// <param name="shift">The difference over the standard deviation within a condition.</param>
    /// <param name="level">How often one is seen that is not there.</param>
    /// <param name="explained">The part of the variance that a covariate takes away; null without a covariate.</param>
    public static double PowerForMeans(int shots, double shift, double level = 0.05, double? explained = null)
    {
        double left = Math.Sqrt(1 - (explained ?? 0));
        int freedom = 2 * shots - (explained is null ? 2 : 3);
        return StudentPower.Of(Math.Abs(shift) / left * Math.Sqrt(shots / 2.0), freedom, level);
    }

    /// <summary>The smallest difference of two means that a number of shots would see.</summary>
    /// <param name="shots">Of each condition, at least 2; 3 with a covariate.</param>
    /// <param name="power">How often it shall be seen, above <paramref name="level"/>, below 1.</param>
    /// <param name="level">How often one is seen that is not there.</param>
    /// <param name="explained">The part of the variance that a covariate takes away; null without a covariate.</param>
    /// <returns>The difference over the standard deviation within a condition.</returns>
    public static double ShiftSeen(int shots, double power, double level = 0.05, double? explained = null) =>
        Brent.FindRoot(shift => PowerForMeans(shots, shift, level, explained) - power, 0, 100, 1e-9);

    /// <summary>For two spreads, by the F test of two variances of normal values.</summary>
    /// <param name="ratio">The larger standard deviation over the smaller, above 1.</param>
    /// <param name="power">How often it shall be seen, between 0 and 1.</param>
    /// <param name="level">How often a difference is seen that is not there.</param>
    /// <returns>The least number of shots of each condition, at least 2, at most <see cref="Most"/>.</returns>
    public static int ForSpreads(double ratio, double power, double level = 0.05) =>
        Least(n => PowerForSpreads(n, ratio, level), power, 2);

    /// <summary>How often the F test sees a difference of two spreads.</summary>
    /// <param name="shots">Of each condition, at least 2.</param>
    /// <param name="ratio">One standard deviation over the other, positive.</param>
    /// <param name="level">How often a difference is seen that is not there.</param>
    public static double PowerForSpreads(int shots, double ratio, double level = 0.05)
    {
        int freedom = shots - 1;
        double limit = FisherSnedecor.InvCDF(freedom, freedom, 1 - level / 2);
        double scale = ratio * ratio;
        return Levels.Above(limit / scale, freedom, freedom) + 1 - Levels.Above(1 / (limit * scale), freedom, freedom);
    }

    /// <summary>How often Newcombe's interval leaves out 0: every pair of counts is tried.</summary>
    /// <param name="shots">Of each condition; the work grows as its square.</param>
    /// <param name="chance1">First chance.</param>
    /// <param name="chance2">Second chance.</param>
    /// <param name="confidence">Of the interval.</param>
    public static double PowerOfNewcombe(int shots, double chance1, double chance2, double confidence = Levels.Usual)
    {
        double power = 0;
        for (int a = 0; a <= shots; a++)
        {
            double first = Binomial.PMF(chance1, shots, a);
            for (int b = 0; b <= shots; b++)
            {
                if (!ProportionDifference.Newcombe(a, shots, b, shots, confidence).Holds(0))
                    power += first * Binomial.PMF(chance2, shots, b);
            }
        }

        return power;
    }

    // The power grows with the number of shots, so halving finds the least one.
    private static int Least(Func<int, double> power, double wanted, int fewest)
    {
        int high = fewest;
        while (high < Most && power(high) < wanted) high = Math.Min(Most, 2 * high);
        int low = fewest - 1;
        while (high - low > 1)
        {
            int middle = low + (high - low) / 2;
            if (power(middle) < wanted) low = middle;
            else high = middle;
        }

        return high;
    }

    private static double Square(double x) => x * x;
}
