using MathNet.Numerics.Distributions;

namespace Longrail.Coaching.Statistics;

/// <summary>Fisher's exact test of two counts: how rare is so uneven a table if both have the same chance?</summary>
/// <remarks>R. A. Fisher, The Design of Experiments (1935), chapter 2. Two-sided as the sum over all tables that are no
/// more likely than the one seen.</remarks>
public static class FisherExact
{
    // Tables that are equally likely by symmetry may differ in their last digits.
    private const double Tie = 1 + 1e-9;

    /// <summary>The chance of a table no more likely than this one.</summary>
    /// <param name="made1">How often the first came off.</param>
    /// <param name="trials1">In how many trials.</param>
    /// <param name="made2">How often the second came off.</param>
    /// <param name="trials2">In how many trials.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is out of range.</exception>
    public static double TwoSided(int made1, int trials1, int made2, int trials2)
    {
        double seen = Chance(made1, trials1, made2, trials2);
        int made = made1 + made2;
        double sum = 0;
        for (int k = Math.Max(0, made - trials2); k <= Math.Min(made, trials1); k++)
        {
            double chance = Chance(k, trials1, made - k, trials2);
            if (chance <= seen * Tie) sum += chance;
        }

        return Math.Min(1, sum);
    }

    /// <summary>The chance that the first comes off at least as often as it did.</summary>
    /// <param name="made1">How often the first came off.</param>
    /// <param name="trials1">In how many trials.</param>
    /// <param name="made2">How often the second came off.</param>
    /// <param name="trials2">In how many trials.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is out of range.</exception>
    public static double FirstLarger(int made1, int trials1, int made2, int trials2)
    {
        int made = made1 + made2;
        double sum = 0;
        for (int k = made1; k <= Math.Min(made, trials1); k++)
            sum += Chance(k, trials1, made - k, trials2);
        return Math.Min(1, sum);
    }

    private static double Chance(int made1, int trials1, int made2, int trials2)
    {
        Proportion.RequireCounts(made1, trials1);
        Proportion.RequireCounts(made2, trials2);
        return Hypergeometric.PMF(trials1 + trials2, made1 + made2, trials1, made1);
    }
}
