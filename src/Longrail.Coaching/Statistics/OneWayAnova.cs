namespace Longrail.Coaching.Statistics;

/// <summary>Analysis of variance of several groups: is what lies between them more than what lies within?</summary>
/// <param name="Between">Sum of squares between the groups' means.</param>
/// <param name="BetweenFreedom">Groups less one.</param>
/// <param name="Within">Sum of squares within the groups.</param>
/// <param name="WithinFreedom">Values less groups.</param>
public sealed record OneWayAnova(double Between, int BetweenFreedom, double Within, int WithinFreedom)
{
    /// <summary>Mean square between over mean square within.</summary>
    public double F => Between / BetweenFreedom / (Within / WithinFreedom);

    /// <summary>Chance of so large an F if all groups have the same mean.</summary>
    public double P => Levels.Above(F, BetweenFreedom, WithinFreedom);

    /// <summary>The part of all variation that lies between the groups.</summary>
    public double RSquared => Between / (Between + Within);

    /// <summary>Standard deviation within the groups.</summary>
    public double Deviation => Math.Sqrt(Within / WithinFreedom);

    /// <summary>The analysis of groups of values.</summary>
    /// <param name="groups">Two or more, none empty, more values than groups.</param>
    /// <exception cref="ArgumentException">Too few groups or values.</exception>
    public static OneWayAnova Of(IReadOnlyList<IReadOnlyList<double>> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        int count = groups.Sum(group => group.Count);
        if (groups.Count < 2 || count <= groups.Count)
            throw new ArgumentException(
                "Two groups or more are compared, with more values than groups.", nameof(groups));
        SampleSummary[] samples = [.. groups.Select(SampleSummary.Of)];
        double mean = SampleSummary.Of([.. groups.SelectMany(group => group)]).Mean;
        double between = samples.Sum(sample => sample.Count * (sample.Mean - mean) * (sample.Mean - mean));
        return new OneWayAnova(
            between, groups.Count - 1, samples.Sum(sample => sample.SumOfSquares), count - groups.Count);
    }
}
