using Longrail.Coaching.Statistics;
using MathNet.Numerics.Distributions;

namespace Longrail.Coaching.Tests.Statistics;

public class OddsTests
{
    // R. G. Newcombe, Stat. Med. 17, 857 (1998), table I, method 3 (Wilson without continuity correction), four
    // decimals.
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0.0, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    public void The_interval_agrees_with_the_published_table(int made, int trials, double low, double high)
    {
        var odds = Odds.Of(made, trials);

        Assert.Equal(low, odds.Low, 5e-5);
        Assert.Equal(high, odds.High, 5e-5);
    }

    [Fact]
    public void The_interval_lies_about_the_share_and_mirrors_with_it()
    {
        for (int made = 0; made <= 40; made++)
        {
            var odds = Odds.Of(made, 40);
            var missed = Odds.Of(40 - made, 40);

            Assert.InRange(odds.Share, odds.Low, odds.High);
            Assert.Equal(1 - missed.High, odds.Low, 12);
        }
    }

    // A share on Wilson's bounds is by definition 1.96 of its own deviations from what was counted.
    [Fact]
    public void A_bound_is_the_share_that_the_count_is_just_not_surprising_for()
    {
        var odds = Odds.Of(7, 50);

        foreach (double bound in new[] { odds.Low, odds.High })
            Assert.Equal(Normal.InvCDF(0, 1, 0.975), Math.Abs(0.14 - bound) / Math.Sqrt(bound * (1 - bound) / 50), 9);
    }

    // Clopper and Pearson's exact interval never promises too much, so it is the wider one; the two agree to a few
    // percent at a hundred trials.
    [Fact]
    public void The_exact_interval_is_a_little_wider()
    {
        for (int made = 1; made < 400; made += 7)
        {
            var odds = Odds.Of(made, 400);
            double low = Beta.InvCDF(made, 400 - made + 1, 0.025);
            double high = Beta.InvCDF(made + 1, 400 - made, 0.975);

            Assert.True(high - low > odds.High - odds.Low, $"{made}: {high - low} {odds.High - odds.Low}");
            Assert.Equal(low, odds.Low, 0.006);
            Assert.Equal(high, odds.High, 0.006);
        }
    }

    // L. D. Brown, T. T. Cai and A. DasGupta, Stat. Sci. 16, 101 (2001), recommend the interval because its coverage
    // averages its nominal level; computed here by the binomial law.
    [Fact]
    public void Over_all_chances_it_holds_nineteen_times_in_twenty()
    {
        double sum = 0;
        const int Chances = 199;
        for (int i = 1; i <= Chances; i++)
        {
            double chance = i / (Chances + 1.0);
            for (int made = 0; made <= 100; made++)
            {
                var odds = Odds.Of(made, 100);
                if (odds.Low <= chance && chance <= odds.High) sum += Binomial.PMF(chance, 100, made);
            }
        }

        Assert.InRange(sum / Chances, 0.945, 0.96);
    }

    [Fact]
    public void Without_trials_nothing_is_known()
    {
        var odds = Odds.Of(0, 0);

        Assert.Equal((0.0, 1.0), (odds.Low, odds.High));
    }

    [Theory]
    [InlineData(-1, 5)]
    [InlineData(6, 5)]
    [InlineData(0, -1)]
    public void An_impossible_count_is_refused(int made, int trials) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Odds.Of(made, trials));
}
