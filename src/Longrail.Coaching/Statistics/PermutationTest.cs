using MathNet.Numerics;
using MathNet.Numerics.Random;

namespace Longrail.Coaching.Statistics;

/// <summary>How often would merely dealing the conditions out otherwise have parted the groups as much?</summary>
/// <remarks>
/// The conditions are dealt out again within each block, as they were dealt out in the trial, each value keeping its
/// covariate. What is compared is the F ratio of the groups (adjusted for the covariate where there is one), which for
/// two groups orders the dealings as the size of the difference does. All dealings are counted where there are few;
/// else a seeded sample, with the one seen counted in (B. Phipson, G. K. Smyth, Stat. Appl. Genet. Mol. Biol. 9, 39
/// (2010)), so that a chance of 0 is never reported. Source of the idea: R. A. Fisher, The Design of Experiments
/// (1935).
/// </remarks>
/// <param name="P">Chance of a dealing that parts the groups at least as much.</param>
/// <param name="Dealings">How many were looked at.</param>
/// <param name="IsExact">Whether these are all there are.</param>
public sealed record PermutationTest(double P, int Dealings, bool IsExact)
{
    /// <summary>Up to so many dealings all are counted.</summary>
    public const int MostCounted = 100_000;

    /// <summary>So many are sampled where there are more.</summary>
    public const int Sampled = 9_999;

    // Dealings equal by symmetry may differ in their last digits.
    private const double Tie = 1 - 1e-9;

    /// <summary>Runs the test.</summary>
    /// <param name="pairs">Each shot's value and covariate; a covariate that is 0 throughout counts as none.</param>
    /// <param name="groups">Each shot's condition, from 0.</param>
    /// <param name="blocks">Each shot's block, or null for one block.</param>
    /// <param name="seed">Seed of the sample.</param>
    /// <exception cref="ArgumentException">The lists do not match or are empty.</exception>
    public static PermutationTest Of(
        IReadOnlyList<CovariatePair> pairs, IReadOnlyList<int> groups, IReadOnlyList<int>? blocks, int seed)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        ArgumentNullException.ThrowIfNull(groups);
        if (pairs.Count == 0 || groups.Count != pairs.Count || (blocks is not null && blocks.Count != pairs.Count))
            throw new ArgumentException("Each shot has a value, a condition and a block.");
        int[][] places =
        [
            .. Enumerable.Range(0, pairs.Count).GroupBy(i => blocks?[i] ?? 0).Select(block => block.ToArray()),
        ];
        int[] dealt = [.. groups];
        var ratio = new GroupRatio(pairs, groups.Max() + 1);
        double seen = ratio.Of(dealt);
        return NumberOfDealings(places, dealt) <= MostCounted
            ? CountAll(places, dealt, ratio, seen)
            : Sample(places, dealt, ratio, seen, seed);
    }

    private static double NumberOfDealings(int[][] places, int[] dealt) => places
        .Select(block => SpecialFunctions.FactorialLn(block.Length)
            - block.GroupBy(i => dealt[i]).Sum(group => SpecialFunctions.FactorialLn(group.Count())))
        .Aggregate(1.0, (product, ln) => product * Math.Round(Math.Exp(ln)));

    private static PermutationTest CountAll(int[][] places, int[] dealt, GroupRatio ratio, double seen)
    {
        int all = 0;
        int extreme = 0;
        Deal(0);
        return new PermutationTest((double)extreme / all, all, IsExact: true);

        void Deal(int block)
        {
            if (block == places.Length)
            {
                all++;
                if (ratio.Of(dealt) >= seen * Tie) extreme++;
                return;
            }

            int[] labels = [.. places[block].Select(i => dealt[i]).Order()];
            int[] before = [.. places[block].Select(i => dealt[i])];
            do
            {
                for (int k = 0; k < labels.Length; k++) dealt[places[block][k]] = labels[k];
                Deal(block + 1);
            }
            while (NextArrangement(labels));
            for (int k = 0; k < before.Length; k++) dealt[places[block][k]] = before[k];
        }
    }

    private static PermutationTest Sample(int[][] places, int[] dealt, GroupRatio ratio, double seen, int seed)
    {
        // Not shared between threads: the lock would cost more than the numbers.
        var random = new MersenneTwister(seed, threadSafe: false);
        int extreme = 1;
        for (int round = 0; round < Sampled; round++)
        {
            foreach (int[] block in places)
            {
                for (int k = block.Length - 1; k > 0; k--)
                {
                    // A place is drawn with 32 bits: no place is favoured by more than one in a hundred million.
                    int other = (int)((k + 1) * random.NextDouble());
                    (dealt[block[k]], dealt[block[other]]) = (dealt[block[other]], dealt[block[k]]);
                }
            }

            if (ratio.Of(dealt) >= seen * Tie) extreme++;
        }

        return new PermutationTest((double)extreme / (Sampled + 1), Sampled, IsExact: false);
    }

    // The next arrangement in alphabetical order, equal labels taken as equal.
    private static bool NextArrangement(int[] labels)
    {
        int rise = labels.Length - 2;
        while (rise >= 0 && labels[rise] >= labels[rise + 1]) rise--;
        if (rise < 0) return false;
        int larger = labels.Length - 1;
        while (labels[larger] <= labels[rise]) larger--;
        (labels[rise], labels[larger]) = (labels[larger], labels[rise]);
        Array.Reverse(labels, rise + 1, labels.Length - rise - 1);
        return true;
    }
}
