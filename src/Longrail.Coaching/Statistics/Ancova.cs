namespace Longrail.Coaching.Statistics;

/// <summary>Analysis of covariance: groups are compared as if the covariate had been the same in all of them.</summary>
/// <remarks>One slope for all groups; whether that is so is tested beside it. Source: R. A. Fisher, Statistical Methods
/// for Research Workers (4th ed., 1932); G. W. Snedecor, W. G. Cochran, Statistical Methods (6th ed., 1967), chapter
/// 14.</remarks>
public sealed class Ancova
{
    private readonly double[] _counts;
    private readonly double[] _covariates;
    private readonly double[] _values;

    private Ancova(double[] counts, double[] covariates, double[] values, SumsOfProducts within, SumsOfProducts all)
    {
        _counts = counts;
        _covariates = covariates;
        _values = values;
        Within = within;
        All = all;
        GrandCovariate = counts.Zip(covariates, (n, x) => n * x).Sum() / counts.Sum();
    }

    /// <summary>Sums within the groups, added up.</summary>
    public SumsOfProducts Within { get; }

    /// <summary>Sums of all values about their common means.</summary>
    public SumsOfProducts All { get; }

    /// <summary>Mean of the covariate over all values: where the groups are compared.</summary>
    public double GrandCovariate { get; }

    /// <summary>Change of the value for one unit of the covariate.</summary>
    public double Slope => Within.Slope;

    /// <summary>Standard error of the slope.</summary>
    public double SlopeError => Math.Sqrt(MeanSquare / Within.Xx);

    /// <summary>Values less groups less one.</summary>
    public int Freedom => (int)_counts.Sum() - _counts.Length - 1;

    /// <summary>Mean square of what is left.</summary>
    public double MeanSquare => Within.Left / Freedom;

    /// <summary>Does the covariate matter?</summary>
    public FTest Covariate => new(Within.Explained, 1, Within.Left, Freedom);

    /// <summary>Do the groups differ once the covariate is the same?</summary>
    public FTest Adjusted => new(All.Left - Within.Left, _counts.Length - 1, Within.Left, Freedom);

    /// <summary>Do they differ as they stand?</summary>
    public FTest Unadjusted => new(All.Yy - Within.Yy, _counts.Length - 1, Within.Yy, Freedom + 1);

    /// <summary>Is it right to take one slope for all? Null where a group has too few values to have a slope of its
    /// own.</summary>
    public FTest? EqualSlopes { get; private init; }

    /// <summary>Mean of a group as it stands.</summary>
    public double Mean(int group) => _values[group];

    /// <summary>Mean of the covariate in a group.</summary>
    public double CovariateMean(int group) => _covariates[group];

    /// <summary>Mean of a group at <see cref="GrandCovariate"/>.</summary>
    public double AdjustedMean(int group) => _values[group] - Slope * (_covariates[group] - GrandCovariate);

    /// <summary>Standard error of that mean.</summary>
    public double AdjustedMeanError(int group)
    {
        double off = _covariates[group] - GrandCovariate;
        return Math.Sqrt(MeanSquare * (1 / _counts[group] + off * off / Within.Xx));
    }

    /// <summary>One group minus another, at the same covariate.</summary>
    /// <param name="first">Index of the group.</param>
    /// <param name="second">Index of the one that is taken off.</param>
    public MeanDifference Difference(int first, int second)
    {
        double off = _covariates[first] - _covariates[second];
        double error = Math.Sqrt(
            MeanSquare * (1 / _counts[first] + 1 / _counts[second] + off * off / Within.Xx));
        return new MeanDifference(AdjustedMean(first) - AdjustedMean(second), error, Freedom);
    }

    /// <summary>The analysis of groups.</summary>
    /// <param name="groups">Two or more, none empty.</param>
    /// <returns>The analysis, or null where it cannot be made: fewer than two values more than groups, or a covariate
    /// that does not vary within them.</returns>
    /// <exception cref="ArgumentException">Fewer than two groups, or an empty one.</exception>
    public static Ancova? Of(IReadOnlyList<IReadOnlyList<CovariatePair>> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        if (groups.Count < 2 || groups.Any(group => group.Count == 0))
            throw new ArgumentException("Two groups or more are compared, none of them empty.", nameof(groups));
        SumsOfProducts[] own = [.. groups.Select(SumsOfProducts.Of)];
        SumsOfProducts within = own.Aggregate((a, b) => a + b);
        int count = groups.Sum(group => group.Count);
        if (count <= groups.Count + 1 || !(within.Xx > 0)) return null;

        int slopesFreedom = count - 2 * groups.Count;
        bool hasSlopes = slopesFreedom > 0 && own.All(sums => sums.Xx > 0);
        double left = own.Sum(sums => sums.Left);
        return new Ancova(
            [.. groups.Select(group => (double)group.Count)],
            [.. groups.Select(group => group.Average(pair => pair.Covariate))],
            [.. groups.Select(group => group.Average(pair => pair.Value))],
            within,
            SumsOfProducts.Of([.. groups.SelectMany(group => group)]))
        {
            EqualSlopes = hasSlopes ? new FTest(within.Left - left, groups.Count - 1, left, slopesFreedom) : null,
        };
    }
}
