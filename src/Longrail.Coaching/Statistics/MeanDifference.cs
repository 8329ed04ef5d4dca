namespace Longrail.Coaching.Statistics;

/// <summary>The difference of two means, with Student's test.</summary>
/// <remarks>Sources: Student, Biometrika 6, 1 (1908); B. L. Welch, Biometrika 34, 28 (1947); NIST/SEMATECH e-Handbook
/// of Statistical Methods, section 7.3.1.</remarks>
/// <param name="Difference">First mean minus second.</param>
/// <param name="StandardError">Its standard error; positive.</param>
/// <param name="Freedom">Degrees of freedom; not whole for Welch's test.</param>
public sealed record MeanDifference(double Difference, double StandardError, double Freedom)
{
    /// <summary>Difference over standard error.</summary>
    public double T => Difference / StandardError;

    /// <summary>Chance of a t at least so far from 0, either way, if the means are equal.</summary>
    public double P => Levels.TwoSided(T, Freedom);

    /// <summary>Interval of the difference.</summary>
    /// <param name="confidence">Between 0 and 1.</param>
    public Interval Within(double confidence = Levels.Usual)
    {
        double half = Levels.Deviate(confidence, Freedom) * StandardError;
        return new Interval(Difference - half, Difference + half);
    }

    /// <summary>Student's test, which takes both spreads for equal.</summary>
    /// <exception cref="ArgumentException">A sample has fewer than two values, or nothing is spread.</exception>
    public static MeanDifference Pooled(SampleSummary first, SampleSummary second)
    {
        RequireSpread(first, second);
        int freedom = first.Count + second.Count - 2;
        double variance = (first.SumOfSquares + second.SumOfSquares) / freedom;
        double error = Math.Sqrt(variance * (1.0 / first.Count + 1.0 / second.Count));
        return new MeanDifference(first.Mean - second.Mean, error, freedom);
    }

    /// <summary>Welch's test, which lets the spreads differ.</summary>
    /// <exception cref="ArgumentException">A sample has fewer than two values, or nothing is spread.</exception>
    public static MeanDifference Welch(SampleSummary first, SampleSummary second)
    {
        RequireSpread(first, second);
        double a = first.Variance / first.Count;
        double b = second.Variance / second.Count;
        double freedom = (a + b) * (a + b) / (a * a / (first.Count - 1) + b * b / (second.Count - 1));
        return new MeanDifference(first.Mean - second.Mean, Math.Sqrt(a + b), freedom);
    }

    /// <summary>The test of pairs: of each pair's own difference.</summary>
    /// <param name="first">First values.</param>
    /// <param name="second">Their partners, in the same order.</param>
    /// <exception cref="ArgumentException">Not as many partners, fewer than two pairs, or all differences
    /// equal.</exception>
    public static MeanDifference Paired(IReadOnlyList<double> first, IReadOnlyList<double> second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (first.Count != second.Count)
            throw new ArgumentException("Each value needs a partner.", nameof(second));
        SampleSummary pairs = SampleSummary.Of([.. first.Zip(second, (a, b) => a - b)]);
        if (pairs.Count < 2 || pairs.Deviation == 0)
            throw new ArgumentException("A test of pairs needs two or more that differ.", nameof(first));
        return new MeanDifference(pairs.Mean, pairs.StandardError, pairs.Count - 1);
    }

    private static void RequireSpread(SampleSummary first, SampleSummary second)
    {
        if (first.Count < 2 || second.Count < 2 || (first.Deviation == 0 && second.Deviation == 0))
            throw new ArgumentException(
                "Two means are compared by their spread: two or more values each, not all alike.");
    }
}
