using Longrail.Coaching.Statistics;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Longrail.Coaching.Tests.Statistics;

public class RandomNumbersTests
{
    // Known answers of Philox4x32-10 that come with its authors' library (file kat_vectors), from memory: three rows
    // of 128 bits cannot be met by chance.
    [Theory]
    [InlineData(0u, 0u, 0u, 0u, 0u, 0u, 0x6627e8d5u, 0xe169c58du, 0xbc57ac4cu, 0x9b00dbd8u)]
    [InlineData(
        0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu,
        0x408f276du, 0x41c83b0eu, 0xa20bc7c6u, 0x6d5451fdu)]
    [InlineData(
        0x243f6a88u, 0x85a308d3u, 0x13198a2eu, 0x03707344u, 0xa4093822u, 0x299f31d0u,
        0xd16cfe09u, 0x94fdcceb, 0x5001e420u, 0x24126ea1u)]
    public void The_generator_gives_its_authors_known_answers(
        uint a, uint b, uint c, uint d, uint key0, uint key1, uint r, uint s, uint t, uint u) =>
        Assert.Equal((r, s, t, u), RandomNumbers.Philox(a, b, c, d, key0, key1));

    // Kolmogorov's law: with n numbers the largest distance between the counted and the true law exceeds 1.95 / sqrt n
    // once in a thousand samples (N. Smirnov, Ann. Math. Stat. 19, 279 (1948)).
    [Fact]
    public void Normal_numbers_follow_the_normal_law()
    {
        const int Rows = 4000;
        double[] all = new double[5 * Rows];
        for (int i = 0; i < Rows; i++) new RandomNumbers(7, 1).Normals((ulong)i, all.AsSpan(5 * i, 5));
        Array.Sort(all);

        double distance = 0;
        for (int i = 0; i < all.Length; i++)
        {
            double law = Normal.CDF(0, 1, all[i]);
            distance = Math.Max(distance, Math.Max(law - (double)i / all.Length, (i + 1.0) / all.Length - law));
        }

        Assert.True(distance < 1.95 / Math.Sqrt(all.Length), $"{distance}");
    }

    // A correlation of n independent pairs has a deviation of 1 / sqrt n; 4.4 of them come once in 100 000.
    [Fact]
    public void Numbers_of_one_row_and_of_neighbouring_rows_keys_and_parts_are_independent()
    {
        const int Rows = 4000;
        double limit = 4.4 / Math.Sqrt(Rows);
        double[][] columns = [.. Enumerable.Range(0, 20).Select(_ => new double[Rows])];
        for (int i = 0; i < Rows; i++)
        {
            Fill(new RandomNumbers(7, 1), (ulong)i, 0);
            Fill(new RandomNumbers(7, 1), (ulong)i + 1, 5);
            Fill(new RandomNumbers(8, 1), (ulong)i, 10);
            Fill(new RandomNumbers(7, 2), (ulong)i, 15);

            void Fill(RandomNumbers numbers, ulong row, int from)
            {
                double[] z = new double[5];
                numbers.Normals(row, z);
                for (int k = 0; k < 5; k++) columns[from + k][i] = z[k];
            }
        }

        for (int i = 0; i < 20; i++)
        {
            for (int j = 0; j < i; j++)
                Assert.InRange(MathNet.Numerics.Statistics.Correlation.Pearson(columns[i], columns[j]), -limit, limit);
        }
    }

    [Fact]
    public void A_longer_row_begins_as_the_shorter_one()
    {
        double[] few = new double[3];
        double[] many = new double[9];
        var numbers = new RandomNumbers(1, 2);
        numbers.Normals(5, few);
        numbers.Normals(5, many);

        Assert.Equal(few, many[..3]);
    }

    // The formula's own error bound.
    [Fact]
    public void The_chance_within_some_deviations_is_right_to_the_bound_of_its_formula()
    {
        for (double x = 0; x < 6; x += 0.01)
            Assert.Equal(SpecialFunctions.Erf(x / Math.Sqrt(2)), NormalLaw.Within(x), 1.5e-7);
        Assert.Equal(0, NormalLaw.Within(-1));
    }
}
