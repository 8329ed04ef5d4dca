using Longrail.Coaching.Statistics;
using MathNet.Numerics.Random;

namespace Longrail.Coaching.Tests.Statistics;

public class PermutationTestTests
{
    // R. A. Fisher, The Design of Experiments (1935), section 21: Darwin's fifteen pairs of maize, differences in
    // eighths of an inch; in 863 of the 32,768 ways to give them signs their sum is as large as seen, so 1,726 count
    // both ways.
    [Fact]
    public void Darwins_maize_comes_out_as_fisher_counted_it()
    {
        int[] differences = [49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48];
        CovariatePair[] pairs = [.. differences.SelectMany(d => (CovariatePair[])[new(0, 0), new(0, d)])];
        int[] groups = [.. differences.SelectMany(_ => (int[])[0, 1])];
        int[] blocks = [.. differences.SelectMany((_, k) => (int[])[k, k])];
        var test = PermutationTest.Of(pairs, groups, blocks, seed: 1);
        Assert.True(test.IsExact);
        Assert.Equal(32_768, test.Dealings);
        Assert.Equal(2 * 863 / 32_768.0, test.P, 1e-12);
    }

    // For makes and misses the test is Fisher's exact one: the tea-tasting, 34 of 70.
    [Fact]
    public void Makes_and_misses_give_fishers_exact_test()
    {
        double[] made = [1, 1, 1, 0, 1, 0, 0, 0];
        var test =
            PermutationTest.Of([.. made.Select(y => new CovariatePair(0, y))], [0, 0, 0, 0, 1, 1, 1, 1], null, 1);
        Assert.Equal((34 / 70.0, 70), (test.P, test.Dealings));
    }

    [Fact]
    public void A_sample_of_dealings_agrees_with_all_of_them()
    {
        // 924 dealings of 12 shots counted; the same values twice over need a sample. Both are tests of one question,
        // so the sampled chance must lie within four standard errors of Student's, which is near for normal values.
        var random = new MersenneTwister(5);
        double[] z = [.. random.NextDoubles(60).Select(u => MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, u))];
        CovariatePair[] pairs = [.. z.Select((y, i) => new CovariatePair(0, y + (i < 30 ? 0.5 : 0)))];
        int[] groups = [.. z.Select((_, i) => i < 30 ? 0 : 1)];
        var test = PermutationTest.Of(pairs, groups, null, seed: 7);
        Assert.False(test.IsExact);
        Assert.Equal(test, PermutationTest.Of(pairs, groups, null, seed: 7));
        double p = MeanDifference.Pooled(
            SampleSummary.Of([.. pairs.Take(30).Select(v => v.Value)]),
            SampleSummary.Of([.. pairs.Skip(30).Select(v => v.Value)])).P;
        Assert.Equal(p, test.P, 4 * Math.Sqrt(p * (1 - p) / PermutationTest.Sampled) + 0.005);
    }

    [Fact]
    public void The_covariate_goes_along_with_its_shot()
    {
        // Landing is speed alone; the groups differ in speed only. As it stands the difference is large; adjusted,
        // none.
        CovariatePair[] pairs = [new(1, 10.1), new(2, 19.8), new(3, 30.2), new(4, 39.9), new(5, 50.2), new(6, 59.8)];
        int[] groups = [0, 0, 0, 1, 1, 1];
        CovariatePair[] blind = [.. pairs.Select(p => p with { Covariate = 0 })];
        Assert.Equal(0.1, PermutationTest.Of(blind, groups, null, 1).P, 1e-12);
        Assert.True(PermutationTest.Of(pairs, groups, null, 1).P > 0.5);
    }

    // 2,000 trials without an effect, 8 shots each: at a true rate of 2/70 (the rarest outcome that is counted exactly
    // below 5 % in steps of 1/35) the binomial 99.9 % range is 17 to 107 of 2,000 for any rate from 0.0143 to 0.05.
    [Fact]
    public void False_alarms_stay_at_or_below_the_level()
    {
        var random = new MersenneTwister(11);
        int alarms = 0;
        for (int trial = 0; trial < 2000; trial++)
        {
            CovariatePair[] pairs = [.. random.NextDoubles(8).Select(u => new CovariatePair(0, u * u))];
            if (PermutationTest.Of(pairs, [0, 1, 1, 0, 0, 1, 1, 0], null, 1).P <= 0.05) alarms++;
        }

        // The exact test rejects with chance floor(0.05 * 35) / 35 = 1/35: 57 of 2,000, deviation 7.4, four of them.
        Assert.InRange(alarms, 57 - 30, 57 + 30);
    }
}
