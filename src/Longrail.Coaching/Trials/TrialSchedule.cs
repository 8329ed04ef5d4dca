using MathNet.Numerics;
using MathNet.Numerics.Random;

namespace Longrail.Coaching.Trials;

/// <summary>The order in which the conditions are played: drawn by lot from a seed, so that it can be drawn
/// again.</summary>
public static class TrialSchedule
{
    /// <summary>The order of a plan; empty where it has no affordable number of shots.</summary>
    public static IReadOnlyList<TrialTurn> Of(TrialPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Of(plan.Order, plan.Conditions.Count, plan.Shots, plan.Seed);
    }

    /// <summary>An order.</summary>
    /// <param name="order">There and back, or shuffled.</param>
    /// <param name="conditions">How many conditions, at least 2.</param>
    /// <param name="shots">Shots of each condition, even.</param>
    /// <param name="seed">The lot.</param>
    /// <exception cref="ArgumentException">Fewer than two conditions, or an odd number of shots.</exception>
    public static IReadOnlyList<TrialTurn> Of(TrialOrder order, int conditions, int shots, int seed)
    {
        if (conditions < 2 || shots < 0 || shots % 2 != 0)
            throw new ArgumentException("Two conditions or more are played, each an even number of times.");
        var random = new MersenneTwister(seed);
        var turns = new List<TrialTurn>(conditions * shots);
        for (int block = 0; block < shots / 2; block++)
        {
            int[] half = [.. Enumerable.Range(0, conditions)];
            int[] all;
            if (order == TrialOrder.Abba)
            {
                Combinatorics.SelectPermutationInplace(half, random);
                all = [.. half, .. half.Reverse()];
            }
            else
            {
                all = [.. half, .. half];
                Combinatorics.SelectPermutationInplace(all, random);
            }

            foreach (int condition in all) turns.Add(new TrialTurn(turns.Count + 1, block, condition));
        }

        return turns;
    }

    /// <summary>The block of a shot.</summary>
    /// <param name="shot">Its number, from 1.</param>
    /// <param name="conditions">How many conditions.</param>
    public static int BlockOf(int shot, int conditions) => (shot - 1) / (2 * conditions);
}
