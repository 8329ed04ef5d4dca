using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Tests.Statistics;

public class ShotsNeededTests
{
    // J. L. Fleiss, Statistical Methods for Rates and Proportions (2nd ed., 1981), chapter 3 and table A.3, recomputed
    // from the formula; .5 against .7 needs 92.999, which some calculators print as 94.
    [Theory]
    [InlineData(.5, .6, 388, 408, 519, 538)]
    [InlineData(.5, .7, 93, 103, 124, 134)]
    [InlineData(.5, .8, 39, 45, 52, 58)]
    [InlineData(.6, .8, 82, 91, 109, 119)]
    [InlineData(.7, .9, 62, 72, 82, 92)]
    public void Two_chances_need_the_published_numbers(double p1, double p2, int at80, int cc80, int at90, int cc90)
    {
        Assert.Equal(at80, Math.Ceiling(ShotsNeeded.ForChances(p1, p2, 0.8)));
        Assert.Equal(cc80, Math.Ceiling(ShotsNeeded.ForChancesCorrected(p1, p2, 0.8)));
        Assert.Equal(at90, Math.Ceiling(ShotsNeeded.ForChances(p1, p2, 0.9)));
        Assert.Equal(cc90, Math.Ceiling(ShotsNeeded.ForChancesCorrected(p1, p2, 0.9)));
        Assert.Equal(92.999, ShotsNeeded.ForChances(.5, .7, .8), 0.0005);
    }

    // J. Cohen, Statistical Power Analysis for the Behavioral Sciences (2nd ed., 1988), table 2.4.1: two-sided 5 %. His
    // 393 for 0.2 is rounded from 393.4; 394 is the least number with 80 %.
    [Theory]
    [InlineData(.2, 394, 527)]
    [InlineData(.5, 64, 86)]
    [InlineData(.8, 26, 34)]
    [InlineData(1.0, 17, 23)]
    public void Two_means_need_the_published_numbers(double shift, int at80, int at90)
    {
        Assert.Equal(at80, ShotsNeeded.ForMeans(shift, 0.8));
        Assert.Equal(at90, ShotsNeeded.ForMeans(shift, 0.9));
    }

    // Textbook value: power 0.8015 for 64 of each at d = 0.5, two-sided 5 %.
    [Fact]
    public void Power_of_students_test_comes_out() =>
        Assert.Equal(0.8015, ShotsNeeded.PowerForMeans(64, 0.5), 0.00005);

    // The limits that power must have: the level without a difference; the normal law for very many shots.
    [Fact]
    public void Power_has_its_limits()
    {
        Assert.Equal(0.05, ShotsNeeded.PowerForMeans(10, 0), 1e-9);
        double far = 0.02 * Math.Sqrt(20_000 / 2.0);
        double normal = MathNet.Numerics.Distributions.Normal.CDF(0, 1, far - 1.959963984540054)
            + MathNet.Numerics.Distributions.Normal.CDF(0, 1, -far - 1.959963984540054);
        // Student's limit exceeds the normal one by z (z^2 + 1) / (4 f), 6e-5 here, times a density of 0.4 at most.
        Assert.Equal(normal, ShotsNeeded.PowerForMeans(20_000, 0.02), 3e-5);
        Assert.Equal(0.05, ShotsNeeded.PowerForSpreads(20, 1), 1e-9);
    }

    // G. F. Borm and others, J. Clin. Epidemiol. 60, 1234 (2007): a covariate with correlation r saves the part r^2.
    [Fact]
    public void A_covariate_saves_the_part_that_it_explains()
    {
        int without = ShotsNeeded.ForMeans(0.3, 0.8);
        int with = ShotsNeeded.ForMeans(0.3, 0.8, explained: 0.5);
        Assert.InRange(with, 0.5 * without, 0.5 * without + 2);
    }

    // Recomputed by counting every pair of outcomes.
    [Theory]
    [InlineData(20, .7, .245, .0005)]
    [InlineData(20, .8, .53, .005)]
    [InlineData(50, .7, .546, .0005)]
    [InlineData(50, .8, .895, .0005)]
    [InlineData(100, .7, .83, .005)]
    [InlineData(100, .8, .995, .0005)]
    public void Newcombes_rule_sees_as_little_as_told(int shots, double chance, double power, double tolerance) =>
        Assert.Equal(power, ShotsNeeded.PowerOfNewcombe(shots, .5, chance), tolerance);

    // If a make is a landing within w of the middle, makes 2 Phi(w/s) - 1: from 50 to 70 % the spread falls to 0.651,
    // and about 44 shots of each see that, where makes and misses need 93.
    [Fact]
    public void Distance_tells_sooner_than_makes()
    {
        double Width(double made) => MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, (1 + made) / 2);
        double ratio = Width(.7) / Width(.5);
        Assert.Equal(1 / .651, ratio, 0.0015);
        Assert.Equal(2.36, ratio * ratio, 0.005);
        Assert.InRange(ShotsNeeded.ForSpreads(ratio, 0.8), 43, 45);
    }

    [Fact]
    public void What_does_not_differ_is_never_seen()
    {
        Assert.True(double.IsPositiveInfinity(ShotsNeeded.ForChances(.5, .5, .8)));
        Assert.Equal(ShotsNeeded.Most, ShotsNeeded.ForMeans(0, .8));
    }
}
