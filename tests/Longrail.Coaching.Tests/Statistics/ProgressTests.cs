using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Tests.Statistics;

/// <summary>What a notebook of attempts needs.</summary>
public class ProgressTests
{
    // H. Levitt, J. Acoust. Soc. Am. 49, 467 (1971), table I: 50, 70.7, 79.4 and 84.1 %, and 29.3 % for the mirror
    // rule.
    [Theory]
    [InlineData(1, 1, .5)]
    [InlineData(2, 1, .707)]
    [InlineData(3, 1, .794)]
    [InlineData(4, 1, .841)]
    [InlineData(1, 2, .293)]
    public void Staircases_settle_where_levitt_says(int makes, int misses, double rate) =>
        Assert.Equal(rate, new StaircaseRule(makes, misses).TargetRate, 0.0005);

    [Fact]
    public void A_staircase_without_closed_form_is_refused() =>
        Assert.Throws<InvalidOperationException>(() => new StaircaseRule(2, 2).TargetRate);

    // B. Efron, C. Morris, Sci. Am. 236(5), 119 (1977): successes of 18 players in 45 trials each, and their later
    // rates. Published: c = .212, the first drawn in to .294, the last to .242.
    [Fact]
    public void Efron_and_morris_averages_draw_in_as_published()
    {
        int[] hits = [18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7];
        double[] shares = [.. hits.Select(k => k / 45.0)];
        double mean = shares.Average();
        Assert.Equal(.2654, mean, 0.00005);
        double variance = mean * (1 - mean) / 45;
        Assert.Equal(.004333, variance, 0.0000005);
        var drawn = Shrinkage.Of(shares, variance);
        Assert.Equal(.212, drawn.Kept, 0.0005);
        Assert.Equal(.294, drawn.Values[0], 0.0005);
        Assert.Equal(.242, drawn.Values[^1], 0.0005);
    }

    [Fact]
    public void Averages_no_farther_apart_than_chance_become_one()
    {
        var drawn = Shrinkage.Of([.5, .51, .49, .5], 0.005);
        Assert.Equal(0, drawn.Kept);
        Assert.All(drawn.Values, value => Assert.Equal(.5, value, 1e-12));
        Assert.Throws<ArgumentException>(() => Shrinkage.Of([.1, .2, .3], 0.01));
    }

    // Published example: twenty students, hours of study against passing; it stands in textbooks and encyclopaedias.
    [Fact]
    public void The_twenty_students_fit_as_published()
    {
        double[] hours =
            [.5, .75, 1, 1.25, 1.5, 1.75, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.25, 3.5, 4, 4.25, 4.5, 4.75, 5, 5.5];
        bool[] passed =
        [
            false, false, false, false, false, false, true, false, true, false, true, false, true, false, true, true,
            true, true, true, true,
        ];
        LogisticFit fit = LogisticFit.Of([.. hours.Select(h => (double[])[h])], passed);
        Assert.Equal(LogisticOutcome.Converged, fit.Outcome);
        Assert.Equal(-4.077713, fit.Coefficients[0], 0.0000005);
        Assert.Equal(1.504645, fit.Coefficients[1], 0.0000005);
        Assert.Equal(1.760994, fit.StandardErrors[0], 0.000001);
        Assert.Equal(.628721, fit.StandardErrors[1], 0.000001);
        Assert.Equal(27.72589, fit.NullDeviance, 0.000005);
        Assert.Equal(16.05976, fit.Deviance, 0.000005);
        Assert.Equal(.000636, fit.P, 0.0000005);
        Assert.Equal(.2557, fit.Chance([2]), 0.00005);
        Assert.Equal(.8744, fit.Chance([4]), 0.00005);
        Assert.True(fit.ChanceWithin([4]).Holds(fit.Chance([4])));
    }

    // S. R. Dalal, E. B. Fowlkes, B. Hoadley, J. Am. Stat. Assoc. 84, 945 (1989): 23 flights, temperature (F) against
    // damage; the fit is printed in textbooks.
    [Fact]
    public void The_flights_fit_as_published()
    {
        double[] temperature =
            [66, 70, 69, 68, 67, 72, 73, 70, 57, 63, 70, 78, 67, 53, 67, 75, 70, 81, 76, 79, 75, 76, 58];
        int[] damage = [0, 1, 0, 0, 0, 0, 0, 0, 1, 1, 1, 0, 0, 1, 0, 0, 0, 0, 0, 0, 1, 0, 1];
        LogisticFit fit = LogisticFit.Of(
            [.. temperature.Select(t => (double[])[t])], [.. damage.Select(d => d == 1)]);
        Assert.Equal(15.0429, fit.Coefficients[0], 0.00005);
        Assert.Equal(-.2322, fit.Coefficients[1], 0.00005);
        Assert.Equal(7.3786, fit.StandardErrors[0], 0.0001);
        Assert.Equal(.1082, fit.StandardErrors[1], 0.00005);
        Assert.Equal(20.3152, fit.Deviance, 0.00005);
    }

    [Fact]
    public void Makes_and_misses_that_a_quantity_parts_have_no_fit()
    {
        double[][] rows = [[1], [2], [3], [4]];
        Assert.Equal(LogisticOutcome.Parted, LogisticFit.Of(rows, [false, false, true, true]).Outcome);
        Assert.Equal(LogisticOutcome.Parted, LogisticFit.Of(rows, [true, true, true, true]).Outcome);
    }

    // Closed form: with the same offset for all, the fitted chance is the share.
    [Fact]
    public void An_offset_takes_difficulty_out_of_ability()
    {
        double[][] none = [[], [], [], []];
        LogisticFit fit = LogisticFit.Of(none, [true, true, true, false], [-1, -1, -1, -1]);
        Assert.Equal(.75, fit.Chance([], -1), 1e-9);
        Assert.Equal(Math.Log(3) + 1, fit.Coefficients[0], 1e-9);
    }

    // Closed forms of both scales, and the worked example of the rating handbooks: 1613 against five opponents, 2.5
    // points.
    [Fact]
    public void Ratings_move_as_published()
    {
        Assert.Equal(.6401, Rating.Elo(100, 0), 0.00005);
        Assert.Equal(.7597, Rating.Elo(200, 0), 0.00005);
        Assert.Equal(.9091, Rating.Elo(400, 0), 0.00005);
        Assert.Equal(.7311, Rating.Rasch(1, 0), 0.00005);
        double[] opponents = [1609, 1477, 1388, 1586, 1720];
        Assert.Equal(2.867, opponents.Sum(o => Rating.Elo(1613, o)), 0.0015);
        Assert.Equal(1601, Math.Round(Rating.Updated(1613, opponents, 2.5, 32)));
    }

    // Recomputed by another recursion (on the place of the first miss).
    [Theory]
    [InlineData(20, .6, 4.80, 9)]
    [InlineData(50, .6, 6.53, 11)]
    [InlineData(100, .5, 5.99, 9)]
    [InlineData(100, .6, 7.87, 12)]
    public void Streaks_are_as_long_as_chance_makes_them(int trials, double chance, double expected, int within)
    {
        Assert.Equal(expected, LongestRun.Expected(trials, chance), 0.005);
        Assert.Equal(within, LongestRun.Within(trials, chance));
        // M. F. Schilling, College Math. J. 21, 196 (1990): log(n q) + gamma / ln(1/p) - 1/2, good to a tenth or so.
        double log = Math.Log(1 / chance);
        double near = (Math.Log(trials * (1 - chance)) + 0.5772156649) / log - 0.5;
        Assert.Equal(near, LongestRun.Expected(trials, chance), 0.15);
    }

    // Every one of the 2^10 series of ten counted.
    [Fact]
    public void Streaks_of_ten_agree_with_counting_all_series()
    {
        int[] longest = new int[11];
        for (int series = 0; series < 1024; series++)
        {
            int best = 0;
            int run = 0;
            for (int i = 0; i < 10; i++)
            {
                run = (series >> i & 1) == 1 ? run + 1 : 0;
                best = Math.Max(best, run);
            }

            longest[best]++;
        }

        for (int k = 0; k <= 10; k++)
            Assert.Equal(longest[..(k + 1)].Sum() / 1024.0, LongestRun.AtMost(10, .5, k), 1e-12);
    }

    // S. Holm, Scand. J. Statist. 6, 65 (1979), by hand: sorted .01 .02 .03 .04 times 4, 3, 2, 1, never falling.
    [Fact]
    public void Holms_correction_by_hand() => Assert.Equal(
        [.06, .04, .06, .06], HolmCorrection.Of([.04, .01, .03, .02]), (a, b) => Math.Abs(a - b) < 1e-12);
}
