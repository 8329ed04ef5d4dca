using CsCheck;
using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Tests.Statistics;

public class AncovaTests
{
    // G. W. Snedecor, W. G. Cochran, Statistical Methods (6th ed., 1967), p. 422: scores before (covariate) and after
    // treatment, three groups of ten. The analysis is printed there and in public manuals of statistics programs.
    private static readonly CovariatePair[][] _leprosy =
    [
        Pairs((11, 6), (8, 0), (5, 2), (14, 8), (19, 11), (6, 4), (10, 13), (6, 1), (11, 8), (3, 0)),
        Pairs((6, 0), (6, 2), (7, 3), (8, 1), (18, 18), (8, 4), (19, 14), (8, 9), (5, 1), (15, 9)),
        Pairs((16, 13), (13, 10), (11, 18), (9, 5), (21, 23), (16, 12), (12, 5), (12, 16), (7, 1), (12, 20)),
    ];

    [Fact]
    public void The_textbooks_three_groups_come_out()
    {
        Ancova ancova = Ancova.Of(_leprosy)!;
        Assert.Equal(0.987183811, ancova.Slope, 0.0000000005);
        Assert.Equal(0.164498, ancova.SlopeError, 0.0000005);
        Assert.Equal(16.0462537, ancova.MeanSquare, 0.00000005);
        Assert.Equal(26, ancova.Freedom);
        Assert.Equal(577.897403, ancova.Covariate.Squares, 0.0000005);
        Assert.Equal(36.0145, ancova.Covariate.F, 0.00005);
        Assert.Equal(68.5537106, ancova.Adjusted.Squares, 0.00000005);
        Assert.Equal(2.1361, ancova.Adjusted.F, 0.00005);
        Assert.Equal(0.138379, ancova.Adjusted.P, 0.0000005);
        Assert.Equal(293.6, ancova.Unadjusted.Squares, 0.05);
        // The published 9.15 sets the unadjusted squares against the error that is left beside the covariate; against
        // their own error, 995.1 / 27, they give 3.98.
        Assert.Equal(9.15, ancova.Unadjusted.Squares / 2 / ancova.MeanSquare, 0.005);
        Assert.Equal(293.6 / 2 / (995.1 / 27), ancova.Unadjusted.F, 0.0001);
        Assert.Equal([5.3, 6.1, 12.3], Enumerable.Range(0, 3).Select(ancova.Mean), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(6.7149635, ancova.AdjustedMean(0), 0.00000005);
        Assert.Equal(6.8239348, ancova.AdjustedMean(1), 0.00000005);
        Assert.Equal(10.1611017, ancova.AdjustedMean(2), 0.00000005);
        Assert.Equal(0.59296, ancova.EqualSlopes!.Value.F, 0.000005);
        Assert.Equal(0.56058, ancova.EqualSlopes!.Value.P, 0.000005);
    }

    // A textbook's sums of squares and products: covariate, product, value; error and error with treatment.
    [Fact]
    public void A_textbooks_sums_of_products_come_out()
    {
        var error = new SumsOfProducts(1066.00, 67.78, 10.26);
        var both = new SumsOfProducts(1627.33, 101.84, 18.73);
        Assert.Equal(5.950, error.Left, 0.0005);
        Assert.Equal(12.357, both.Left, 0.0005);
        Assert.Equal(6.41, both.Left - error.Left, 0.005);
    }

    // An independent way to the same numbers: a regression on the covariate and one column of ones for each further
    // group.
    [Fact]
    public void Covariance_agrees_with_a_regression_on_dummies()
    {
        Gen<CovariatePair> pair = Gen.Select(
            Gen.Double[-3, 3], Gen.Double[-5, 5], (x, y) => new CovariatePair(x, y));
        Gen.Select(pair.Array[4, 9], pair.Array[4, 9]).Sample(
            (a, b) =>
            {
                Ancova ancova = Ancova.Of([a, b])!;
                double[][] rows =
                    [.. a.Select(p => (double[])[p.Covariate, 0]), .. b.Select(p => (double[])[p.Covariate, 1])];
                LinearFit fit = LinearFit.Of(rows, [.. a.Concat(b).Select(p => p.Value)])!;
                MeanDifference difference = ancova.Difference(1, 0);
                // A hundred operations on numbers of order one; the factor for nearly equal covariates.
                Assert.Equal(fit.Coefficients[2], difference.Difference, 1e-8);
                Assert.Equal(fit.StandardErrors[2], difference.StandardError, 1e-8);
                Assert.Equal(fit.ResidualSquares, ancova.Within.Left, 1e-8);
                Assert.Equal(difference.P, ancova.Adjusted.P, 1e-8);
            },
            iter: 200, seed: "0000KqZWJ2y1");
    }

    [Fact]
    public void A_covariate_that_does_not_vary_is_no_covariate() =>
        Assert.Null(Ancova.Of([Pairs((1, 2), (1, 3), (1, 4)), Pairs((1, 5), (1, 6), (1, 8))]));

    [Fact]
    public void An_effect_that_was_the_covariate_all_along_is_taken_off()
    {
        // By construction: landing = 10 speed, and the second group was played one faster.
        Ancova ancova = Ancova.Of([Pairs((1, 10), (2, 21), (3, 29)), Pairs((2, 20), (3, 31), (4, 39))])!;
        Assert.Equal(10, ancova.Mean(1) - ancova.Mean(0), 1e-12);
        Assert.InRange(Math.Abs(ancova.Difference(1, 0).Difference), 0, 0.51);
    }

    private static CovariatePair[] Pairs(params (double X, double Y)[] pairs) =>
        [.. pairs.Select(p => new CovariatePair(p.X, p.Y))];
}
