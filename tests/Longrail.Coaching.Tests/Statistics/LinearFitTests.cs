using Longrail.Coaching.Statistics;
using static Longrail.Coaching.Tests.Statistics.Certified;

namespace Longrail.Coaching.Tests.Statistics;

public class LinearFitTests
{
    // NIST StRD: nine digits are asked for of Norris (lower difficulty).
    [Fact]
    public void Norris_comes_out_as_certified()
    {
        LinearFit fit = LinearFit.Of([.. NistSets.NorrisX.Select(x => (double[])[x])], NistSets.NorrisY)!;
        Digits(9, "-0.262323073774029", fit.Coefficients[0]);
        Digits(9, "1.00211681802045", fit.Coefficients[1]);
        Digits(9, "0.232818234301152", fit.StandardErrors[0]);
        Digits(9, "0.429796848199937E-03", fit.StandardErrors[1]);
        Digits(9, "0.884796396144373", fit.Deviation);
        Digits(9, "26.6173985294224", fit.ResidualSquares);
        Digits(12, "0.999993745883712", fit.RSquared);
        Assert.Equal(34, fit.Freedom);
    }

    // NIST StRD: Longley (higher difficulty); its columns nearly follow from each other, so six digits.
    [Fact]
    public void Longley_comes_out_as_certified()
    {
        LinearFit fit = LinearFit.Of(NistSets.LongleyX, NistSets.LongleyY)!;
        string[] certified =
        [
            "-3482258.63459582", "15.0618722713733", "-0.358191792925910E-01", "-2.02022980381683", "-1.03322686717359",
            "-0.511041056535807E-01", "1829.15146461355",
        ];
        string[] errors =
        [
            "890420.383607373", "84.9149257747669", "0.334910077722432E-01", "0.488399681651699", "0.214274163161675",
            "0.226073200069370", "455.478499142212",
        ];
        for (int j = 0; j < certified.Length; j++)
        {
            Digits(6, certified[j], fit.Coefficients[j]);
            Digits(6, errors[j], fit.StandardErrors[j]);
        }

        Digits(6, "836424.055505915", fit.ResidualSquares);
        Digits(9, "0.995479004577296", fit.RSquared);
        Assert.Equal(9, fit.Freedom);
    }

    [Fact]
    public void Quantities_that_follow_from_each_other_have_no_fit()
    {
        double[][] rows = [[1, 2], [2, 4], [3, 6], [4, 8], [5, 10]];
        Assert.Null(LinearFit.Of(rows, [1, 3, 2, 5, 4]));
        Assert.Null(LinearFit.Of([[3], [3], [3]], [1, 2, 3]));
        Assert.Null(LinearFit.Of([[1], [2]], [1, 2]));
    }
}
