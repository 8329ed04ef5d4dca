namespace Longrail.Coaching.Statistics;

/// <summary>Several averages from few trials each, drawn towards their common mean: on the whole nearer to the truth
/// than the averages themselves. For every ranking of shots or players.</summary>
/// <remarks>B. Efron, C. Morris, Sci. Am. 236(5), 119 (1977).</remarks>
/// <param name="Mean">The common mean.</param>
/// <param name="Kept">How much of each distance from it is kept, from 0 to 1.</param>
/// <param name="Values">The averages, drawn in.</param>
public sealed record Shrinkage(double Mean, double Kept, IReadOnlyList<double> Values)
{
    /// <summary>Draws averages in.</summary>
    /// <param name="averages">Four or more.</param>
    /// <param name="variance">Variance of each about its own truth, positive: p (1 - p) / n for shares.</param>
    /// <exception cref="ArgumentException">Fewer than four: nothing is gained then.</exception>
    public static Shrinkage Of(IReadOnlyList<double> averages, double variance)
    {
        ArgumentNullException.ThrowIfNull(averages);
        if (averages.Count < 4)
            throw new ArgumentException("Drawing in gains nothing for fewer than four averages.", nameof(averages));
        SampleSummary sample = SampleSummary.Of(averages);
        // Never beyond the mean (the "positive part").
        double kept = sample.SumOfSquares > 0
            ? Math.Max(0, 1 - (averages.Count - 3) * variance / sample.SumOfSquares)
            : 0;
        return new Shrinkage(sample.Mean, kept, [.. averages.Select(y => sample.Mean + kept * (y - sample.Mean))]);
    }
}
