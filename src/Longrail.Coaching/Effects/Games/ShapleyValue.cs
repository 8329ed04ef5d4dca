using System.Numerics;

namespace Longrail.Coaching.Effects.Games;

/// <summary>Shares of a sum that its causes make together: a cause's share is what it adds when the causes are switched
/// on one after another, averaged over all orders.</summary>
/// <remarks>
/// The only rule under which the shares add up to the whole, causes that act alike share alike, a cause that does
/// nothing gets nothing, and shares of a sum of two effects are the sums of the shares. L. S. Shapley, "A value for
/// n-person games", Contributions to the Theory of Games II, Annals of Mathematics Studies 28, 307 (1953). The split of
/// one cause over its places is G. Owen's value for groups formed beforehand, Lecture Notes in Economics and
/// Mathematical Systems 141, 76 (1977).
/// </remarks>
public static class ShapleyValue
{
    /// <summary>The most causes: their sets are counted one by one.</summary>
    public const int MostPlayers = 20;

    /// <summary>The shares of a game.</summary>
    /// <param name="worth">What each set of causes makes; the index is the set, one bit a cause. Its length is a power
    /// of two.</param>
    /// <returns>One share a cause; their sum is the worth of all minus the worth of none.</returns>
    /// <exception cref="ArgumentException">The length is no power of two, or too large.</exception>
    public static double[] Of(ReadOnlySpan<double> worth)
    {
        int players = PlayersOf(worth.Length);
        double[] weights = Weights(players);
        var shares = new double[players];
        for (int set = 0; set < worth.Length; set++)
        {
            double weight = players == 0 ? 0 : weights[Math.Min(BitOperations.PopCount((uint)set), players - 1)];
            for (int i = 0; i < players; i++)
            {
                int with = set | (1 << i);
                if (with != set)
                    shares[i] += weight * (worth[with] - worth[set]);
            }
        }

        return shares;
    }

    /// <summary>The split of one cause's share over the places where it acts: the other causes are on or off as a
    /// whole, and within the cause every order of its places counts alike.</summary>
    /// <param name="others">Number of the other causes.</param>
    /// <param name="places">Number of places of this cause.</param>
    /// <param name="worth">What a set of other causes and a set of places make.</param>
    /// <returns>One part a place; their sum is the cause's share in the whole game.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative or too large.</exception>
    public static double[] OverPlaces(int others, int places, Func<int, int, double> worth)
    {
        ArgumentNullException.ThrowIfNull(worth);
        ArgumentOutOfRangeException.ThrowIfNegative(others);
        ArgumentOutOfRangeException.ThrowIfLessThan(places, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(others + places, MostPlayers);
        double[] weights = Weights(others + 1);
        var parts = new double[places];
        var worths = new double[1 << places];
        for (int set = 0; set < 1 << others; set++)
        {
            for (int at = 0; at < worths.Length; at++)
                worths[at] = worth(set, at);
            double[] here = Of(worths);
            for (int k = 0; k < places; k++)
                parts[k] += weights[BitOperations.PopCount((uint)set)] * here[k];
        }

        return parts;
    }

    private static int PlayersOf(int sets)
    {
        if (!BitOperations.IsPow2(sets) || sets > 1 << MostPlayers)
        {
            throw new ArgumentException(
                $"A game has one worth for each set of its causes, up to {MostPlayers} of them: not {sets}.");
        }

        return BitOperations.Log2((uint)sets);
    }

    // Of all orders of n causes, the part in which a given one comes right after a given set of s others:
    // s! (n - 1 - s)! / n! = 1 / (n binomial(n - 1, s)).
    private static double[] Weights(int players)
    {
        var weights = new double[players];
        double binomial = 1;
        for (int s = 0; s < players; s++)
        {
            weights[s] = 1 / (players * binomial);
            binomial = binomial * (players - 1 - s) / (s + 1);
        }

        return weights;
    }
}
