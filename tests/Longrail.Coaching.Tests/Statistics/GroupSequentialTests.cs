using Longrail.Coaching.Statistics;
using MathNet.Numerics.Random;

namespace Longrail.Coaching.Tests.Statistics;

public class GroupSequentialTests
{
    // S. J. Pocock, Biometrika 64, 191 (1977), and C. Jennison, B. W. Turnbull, Group Sequential Methods (2000), table
    // 2.1.
    [Theory]
    [InlineData(1, 1.960)]
    [InlineData(2, 2.178)]
    [InlineData(3, 2.289)]
    [InlineData(4, 2.361)]
    [InlineData(5, 2.413)]
    [InlineData(10, 2.555)]
    public void Pococks_constants_come_out(int looks, double constant) =>
        Assert.Equal(constant, GroupSequential.Equal(StoppingRule.Pocock, looks).Constant, 0.0005);

    // The same, table 2.3; P. C. O'Brien, T. R. Fleming, Biometrics 35, 549 (1979).
    [Theory]
    [InlineData(1, 1.960)]
    [InlineData(2, 1.977)]
    [InlineData(3, 2.004)]
    [InlineData(4, 2.024)]
    [InlineData(5, 2.040)]
    [InlineData(10, 2.087)]
    public void Constants_of_obrien_and_fleming_come_out(int looks, double constant)
    {
        var plan = GroupSequential.Equal(StoppingRule.OBrienFleming, looks);
        Assert.Equal(constant, plan.Constant, 0.0005);
        Assert.Equal(plan.Constant * Math.Sqrt(looks), plan.Limits[0], 1e-12);
    }

    // A statistics program's manual (SAS/STAT, SEQDESIGN, example "Two-Sided Pocock and O'Brien-Fleming Designs"): four
    // looks, 5 %, power 90 %: at most 118.3143 % of the shots of a single look, and 77.69844 as information at a
    // difference of 0.4, which is 118.3140 %: that far the two printed figures can be trusted.
    [Fact]
    public void The_price_of_pococks_looks_comes_out() =>
        Assert.Equal(1.183143, GroupSequential.Equal(StoppingRule.Pocock, 4).Inflation(0.9), 0.000003);

    // P. Armitage, C. K. McPherson, B. C. Rowe, J. R. Stat. Soc. A 132, 235 (1969), table 2, normal law, 5 %.
    [Theory]
    [InlineData(1, .050)]
    [InlineData(2, .083)]
    [InlineData(3, .107)]
    [InlineData(4, .126)]
    [InlineData(5, .142)]
    [InlineData(10, .193)]
    [InlineData(20, .248)]
    public void Peeking_has_the_published_price(int looks, double alarms) =>
        Assert.Equal(alarms, GroupSequential.FalseAlarmsOfPeeking(looks), 0.0005);

    // 20,000 trials without an effect, looked at by Student's test after 10, 25 and 40 shots of each. Ten times the 5 %
    // is 1,000 with deviation 30.8; four of them, and 100 for the normal limits being used with Student's t.
    [Fact]
    public void Planned_looks_keep_the_false_alarms_also_with_students_test()
    {
        int[] looks = [10, 25, 40];
        var plan = GroupSequential.Of(StoppingRule.Pocock, [.. looks.Select(n => n / 40.0)]);
        var random = new MersenneTwister(3);
        int alarms = 0;
        for (int trial = 0; trial < 20_000; trial++)
        {
            double[] a = Normals(random, 40);
            double[] b = Normals(random, 40);
            bool isAlarm = false;
            for (int k = 0; k < looks.Length && !isAlarm; k++)
            {
                var test = MeanDifference.Pooled(
                    SampleSummary.Of(a[..looks[k]]), SampleSummary.Of(b[..looks[k]]));
                isAlarm = test.P <= plan.NominalLevel(k);
            }

            if (isAlarm) alarms++;
        }

        Assert.InRange(alarms, 1000 - 124 - 100, 1000 + 124 + 100);
    }

    [Fact]
    public void Looks_that_do_not_rise_to_the_end_are_refused()
    {
        Assert.Throws<ArgumentException>(() => GroupSequential.Of(StoppingRule.Pocock, [0.5, 0.5, 1]));
        Assert.Throws<ArgumentException>(() => GroupSequential.Of(StoppingRule.Pocock, [0.5]));
        Assert.Throws<ArgumentException>(() => GroupSequential.Of(StoppingRule.Pocock, []));
    }

    private static double[] Normals(MersenneTwister random, int count) =>
        [.. random.NextDoubles(count).Select(u => MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, u))];
}
