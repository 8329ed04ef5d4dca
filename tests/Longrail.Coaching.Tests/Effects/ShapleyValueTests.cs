using System.Numerics;
using CsCheck;
using Longrail.Coaching.Effects.Games;

namespace Longrail.Coaching.Tests.Effects;

public class ShapleyValueTests
{
    // Sums of a few dozen products of numbers up to 100.
    private const double Rounding = 1e-11;

    private static readonly Gen<double[]> _game =
        from players in Gen.Int[1, 6]
        from worth in Gen.Double[-100, 100].Array[1 << players]
        select worth;

    // Runways of 40, 50, ... 90: a set needs the longest of its own. S. C. Littlechild and G. Owen, "A simple
    // expression for the Shapley value in a special case", Management Science 20, 370 (1973), give the rule (each
    // stretch is paid in equal parts by all who need it); these numbers: Mathematics Stack Exchange, question 4152535.
    [Fact]
    public void Six_pilots_share_a_runway_as_published()
    {
        double[] costs = [40, 50, 60, 70, 80, 90];

        double[] shares = ShapleyValue.Of(
            Worth(6, set => Members(set, 6).Select(i => costs[i]).DefaultIfEmpty().Max()));

        Near([40 / 6.0, 52 / 6.0, 67 / 6.0, 87 / 6.0, 117 / 6.0, 177 / 6.0], shares, 1e-12);
    }

    // A game given by its table: worths of {1} {2} {3} {12} {13} {23} {123}. Wiskunde Optiu (Tilburg University and
    // partners), cooperative games, "Onderhoudsspel": shares 1 2/3, 5 2/3, 12 2/3.
    [Fact]
    public void A_game_given_by_its_table_is_shared_as_published()
    {
        double[] worth = [0, 5, 9, 9, 16, 16, 20, 20];

        Near([5 / 3.0, 17 / 3.0, 38 / 3.0], ShapleyValue.Of(worth), 1e-13);
    }

    // One left glove, two right ones; a pair is worth 1. The common textbook example (from memory): 2/3, 1/6, 1/6.
    [Fact]
    public void Who_has_the_rare_glove_gets_two_thirds()
    {
        double[] worth = Worth(3, set => (set & 1) != 0 && (set & 6) != 0 ? 1 : 0);

        Near([2 / 3.0, 1 / 6.0, 1 / 6.0], ShapleyValue.Of(worth), 1e-15);
    }

    // The Security Council since 1965: five with a veto, ten without, nine votes needed. The index of L. S. Shapley and
    // M. Shubik, Am. Polit. Sci. Rev. 48, 787 (1954); 421/2145 and 4/2145 from memory.
    [Fact]
    public void Fifteen_votes_with_five_vetoes_have_the_published_power()
    {
        double[] power = ShapleyValue.Of(
            Worth(15, set => (set & 31) == 31 && BitOperations.PopCount((uint)set) >= 9 ? 1 : 0));

        Assert.All(power[..5], p => Assert.Equal(421.0 / 2145, p, 1e-12));
        Assert.All(power[5..], p => Assert.Equal(4.0 / 2145, p, 1e-12));
    }

    [Fact]
    public void Shares_add_up_to_what_all_make_together() => _game.Sample(worth =>
        Math.Abs(ShapleyValue.Of(worth).Sum() - (worth[^1] - worth[0])) < Rounding);

    [Fact]
    public void A_share_is_the_average_over_all_orders() =>
        Gen.Select(Gen.Int[1, 5], Gen.Double[-100, 100].Array[32]).Sample((players, numbers) =>
        {
            double[] worth = numbers[..(1 << players)];
            Near(OverAllOrders(worth, players), ShapleyValue.Of(worth), Rounding);
        });

    [Fact]
    public void Causes_that_act_alike_share_alike() => _game.Where(worth => worth.Length >= 4).Sample(worth =>
    {
        // Made alike: a set's worth may depend on how many of the first two are in it, not on which.
        double[] alike = [.. worth.Select((_, set) => worth[(set & 3) == 2 ? (set ^ 3) : set])];
        double[] shares = ShapleyValue.Of(alike);
        Assert.Equal(shares[0], shares[1], Rounding);
    });

    [Fact]
    public void A_cause_that_does_nothing_gets_exactly_nothing() => _game.Sample(worth =>
    {
        double[] idle = [.. worth.Select((_, set) => worth[set & ~1])];
        Assert.Equal(0.0, ShapleyValue.Of(idle)[0]);
    });

    [Fact]
    public void Shares_of_a_sum_are_sums_of_shares() =>
        Gen.Select(Gen.Double[-100, 100].Array[16], Gen.Double[-100, 100].Array[16], Gen.Double[-3, 3])
            .Sample((a, b, factor) =>
            {
                double[] shares = ShapleyValue.Of([.. a.Select((x, k) => x + factor * b[k])]);
                double[] expected = [.. ShapleyValue.Of(a).Zip(ShapleyValue.Of(b), (x, y) => x + factor * y)];
                Near(expected, shares, 10 * Rounding);
            });

    [Fact]
    public void The_parts_of_a_cause_over_its_places_add_up_to_its_share() =>
        Gen.Select(Gen.Int[1, 3], Gen.Int[1, 3], Gen.Double[-100, 100].Array[64]).Sample((others, places, numbers) =>
        {
            double Worth(int set, int at) => numbers[(set << places) | at];
            int all = (1 << places) - 1;
            double[] whole = ShapleyValue.Of(
                [.. Enumerable.Range(0, 2 << others).Select(s => Worth(s >> 1, (s & 1) != 0 ? all : 0))]);

            Assert.Equal(whole[0], ShapleyValue.OverPlaces(others, places, Worth).Sum(), Rounding);
        });

    // Orders in which the places of one cause stand next to each other: what forming groups beforehand means.
    [Fact]
    public void A_part_is_the_average_over_the_orders_that_keep_the_places_together() =>
        Gen.Double[-100, 100].Array[16].Sample(numbers =>
        {
            double Worth(int set, int at) => numbers[(set << 2) | at];
            double[] sums = new double[2];
            foreach (int[] order in Orders([0, 1, 2]))
            {
                foreach (int[] inside in Orders([0, 1]))
                {
                    int before = order.TakeWhile(k => k != 2).Sum(k => 1 << k);
                    sums[inside[0]] += Worth(before, 1 << inside[0]) - Worth(before, 0);
                    sums[inside[1]] += Worth(before, 3) - Worth(before, 1 << inside[0]);
                }
            }

            Near([.. sums.Select(sum => sum / 12)], ShapleyValue.OverPlaces(2, 2, Worth), Rounding);
        });

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(6)]
    public void A_number_of_worths_that_is_no_power_of_two_is_a_callers_mistake(int sets) =>
        Assert.Throws<ArgumentException>(() => ShapleyValue.Of(new double[sets]));

    private static double[] Worth(int players, Func<int, double> worth) =>
        [.. Enumerable.Range(0, 1 << players).Select(worth)];

    private static IEnumerable<int> Members(int set, int players) =>
        Enumerable.Range(0, players).Where(i => (set & (1 << i)) != 0);

    private static double[] OverAllOrders(double[] worth, int players)
    {
        var sums = new double[players];
        int[][] orders = [.. Orders([.. Enumerable.Range(0, players)])];
        foreach (int[] order in orders)
        {
            int set = 0;
            foreach (int i in order)
            {
                sums[i] += worth[set | (1 << i)] - worth[set];
                set |= 1 << i;
            }
        }

        return [.. sums.Select(sum => sum / orders.Length)];
    }

    private static IEnumerable<int[]> Orders(int[] items) => items.Length == 0
        ? [[]]
        : items.SelectMany(first => Orders([.. items.Where(i => i != first)]).Select(rest => (int[])[first, .. rest]));

    private static void Near(double[] expected, double[] actual, double tolerance)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (int k = 0; k < expected.Length; k++)
            Assert.Equal(expected[k], actual[k], tolerance);
    }
}
