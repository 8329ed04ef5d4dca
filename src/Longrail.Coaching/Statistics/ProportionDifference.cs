namespace Longrail.Coaching.Statistics;

/// <summary>Intervals for the difference of two chances, the first minus the second.</summary>
/// <remarks>R. G. Newcombe, Stat. Med. 17, 873 (1998), methods 10 and 11: the ends of two single intervals put together
/// as the sides of a right triangle. It keeps within -1 and 1, and does not collapse where one side never
/// fails.</remarks>
public static class ProportionDifference
{
    /// <summary>Method 10, from Wilson's intervals.</summary>
    /// <param name="made1">How often the first came off.</param>
    /// <param name="trials1">In how many trials; positive.</param>
    /// <param name="made2">How often the second came off.</param>
    /// <param name="trials2">In how many trials; positive.</param>
    /// <param name="confidence">Between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count or the confidence is out of range.</exception>
    public static Interval Newcombe(
        int made1, int trials1, int made2, int trials2, double confidence = Levels.Usual) => Combine(
            Share(made1, trials1), Proportion.Wilson(made1, trials1, confidence),
            Share(made2, trials2), Proportion.Wilson(made2, trials2, confidence));

    /// <summary>Method 11, from Wilson's intervals with continuity correction.</summary>
    /// <param name="made1">How often the first came off.</param>
    /// <param name="trials1">In how many trials; positive.</param>
    /// <param name="made2">How often the second came off.</param>
    /// <param name="trials2">In how many trials; positive.</param>
    /// <param name="confidence">Between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count or the confidence is out of range.</exception>
    public static Interval NewcombeCorrected(
        int made1, int trials1, int made2, int trials2, double confidence = Levels.Usual) => Combine(
            Share(made1, trials1), Proportion.WilsonCorrected(made1, trials1, confidence),
            Share(made2, trials2), Proportion.WilsonCorrected(made2, trials2, confidence));

    private static double Share(int made, int trials)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(trials);
        return (double)made / trials;
    }

    private static Interval Combine(double p1, Interval first, double p2, Interval second) => new(
        p1 - p2 - Hypotenuse(p1 - first.Low, second.High - p2),
        p1 - p2 + Hypotenuse(first.High - p1, p2 - second.Low));

    private static double Hypotenuse(double a, double b) => Math.Sqrt(a * a + b * b);
}
