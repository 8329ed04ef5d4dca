using Longrail.Coaching.Statistics;
using static Longrail.Coaching.Tests.Statistics.Certified;

namespace Longrail.Coaching.Tests.Statistics;

public class MeanTests
{
    // Student, Biometrika 6, 1 (1908): extra hours of sleep of ten patients under two drugs.
    private static readonly double[] _first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2.0];
    private static readonly double[] _second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

    // Printed in many textbooks to these digits, after Student (1908).
    [Fact]
    public void Students_sleep_data_give_the_published_tests()
    {
        (SampleSummary a, SampleSummary b) = (SampleSummary.Of(_first), SampleSummary.Of(_second));
        var pooled = MeanDifference.Pooled(a, b);
        Assert.Equal(-1.8608, pooled.T, 0.00005);
        Assert.Equal(18, pooled.Freedom);
        Assert.Equal(0.07919, pooled.P, 0.000005);
        var welch = MeanDifference.Welch(a, b);
        Assert.Equal(17.776, welch.Freedom, 0.0005);
        Assert.Equal(0.07939, welch.P, 0.000005);
        var paired = MeanDifference.Paired(_first, _second);
        Assert.Equal(-4.0621, paired.T, 0.00005);
        Assert.Equal(0.002833, paired.P, 0.0000005);
        Assert.Equal(-2.4598858, paired.Within().Low, 0.00000005);
        Assert.Equal(-0.7001142, paired.Within().High, 0.00000005);
    }

    // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.3, data set AUTO83B, from its summaries.
    [Fact]
    public void The_handbooks_cars_give_the_published_tests()
    {
        var american = new SampleSummary(249, 20.14458, 6.41470);
        var japanese = new SampleSummary(79, 30.48101, 6.10771);
        var pooled = MeanDifference.Pooled(american, japanese);
        Assert.Equal(-12.62059, pooled.T, 0.00005);
        Assert.Equal(326, pooled.Freedom);
        Assert.Equal(1.96727, (pooled.Within().High - pooled.Difference) / pooled.StandardError, 0.000005);
        double deviation = pooled.StandardError / Math.Sqrt(1.0 / 249 + 1.0 / 79);
        Assert.Equal(6.34260, deviation, 0.00001);
        var welch = MeanDifference.Welch(american, japanese);
        Assert.Equal(-12.94627, welch.T, 0.00005);
        Assert.Equal(136.875, welch.Freedom, 0.0005);
    }

    // NIST StRD, one-way analysis of variance, SiRstv (lower difficulty).
    [Fact]
    public void SiRstv_comes_out_as_certified()
    {
        var anova = OneWayAnova.Of(NistSets.SiRstv);
        Digits(8, "1.18046237440255E+00", anova.F);
        Digits(8, "5.11462616000000E-02", anova.Between);
        Digits(8, "2.16636560000000E-01", anova.Within);
        Digits(8, "1.90999039051129E-01", anova.RSquared);
        Digits(8, "1.04076068334656E-01", anova.Deviation);
        Assert.Equal((4, 20), (anova.BetweenFreedom, anova.WithinFreedom));
    }

    [Fact]
    public void Errors_split_into_constant_variable_and_absolute()
    {
        // By hand: mean 2, squares 16 + 4 + 4 + 0 + 4 + 36 = 64 over 5, distances 2 + 0 + 4 + 2 + 0 + 8 = 16 over 6.
        var errors = ErrorSummary.Of([-2, 0, 4, 2, 0, 8]);
        Assert.Equal(2, errors.Constant, 1e-12);
        Assert.Equal(Math.Sqrt(64.0 / 5), errors.Variable, 1e-12);
        Assert.Equal(16.0 / 6, errors.Absolute, 1e-12);
        Assert.Null(ErrorSummary.Of([3]).ConstantWithin);
    }

    // R. A. Fisher's relation: t squared is F for two groups.
    [Fact]
    public void Two_groups_have_the_same_chance_by_t_and_by_f()
    {
        var pooled = MeanDifference.Pooled(SampleSummary.Of(_first), SampleSummary.Of(_second));
        var anova = OneWayAnova.Of([_first, _second]);
        Assert.Equal(pooled.T * pooled.T, anova.F, 1e-10);
        Assert.Equal(pooled.P, anova.P, 1e-10);
    }

    // Chi-squared table: the 2.5 % and 97.5 % points for 9 degrees of freedom are 2.700 and 19.023.
    [Fact]
    public void A_deviations_interval_follows_from_the_chi_squared_table()
    {
        Interval within = new SampleSummary(10, 0, 1).DeviationWithin();
        Assert.Equal(Math.Sqrt(9 / 19.023), within.Low, 0.00005);
        Assert.Equal(Math.Sqrt(9 / 2.700), within.High, 0.0005);
    }

    [Fact]
    public void What_has_no_spread_cannot_be_tested()
    {
        Assert.Throws<ArgumentException>(() =>
            MeanDifference.Welch(SampleSummary.Of([1, 1]), SampleSummary.Of([2, 2])));
        Assert.Throws<ArgumentException>(() => MeanDifference.Pooled(SampleSummary.Of([1]), SampleSummary.Of([1, 2])));
        Assert.Throws<ArgumentException>(() => MeanDifference.Paired([1, 2], [1, 2, 3]));
        Assert.Throws<ArgumentException>(() => SampleSummary.Of([1, double.NaN]));
        Assert.Throws<InvalidOperationException>(() => SampleSummary.Of([1]).MeanWithin());
    }
}
