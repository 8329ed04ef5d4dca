using System.Globalization;
using CsCheck;

namespace Longrail.TestKit;

/// <summary>Runs a check over many generated cases, always the same ones.</summary>
/// <remarks>Case number i of a seed depends on nothing else, so a failing case can be played again alone, on any
/// number of threads. (CsCheck's own sampling fixes only the first case; its generators are used here, not its
/// runner.)</remarks>
public static class Cases
{
    /// <summary>The seed used where none is given.</summary>
    public const uint Seed = 20261125;

    /// <summary>One case.</summary>
    public static T At<T>(Gen<T> gen, int index, uint seed = Seed)
    {
        ArgumentNullException.ThrowIfNull(gen);
        // The stream must differ in more than its low bits for neighbouring cases to be unlike: spread it by a large
        // odd number.
        ulong state = unchecked((ulong)(index + 1) * 0x9E3779B97F4A7C15UL) ^ seed;
        return gen.Generate(new PCG((uint)index, state), null, out _);
    }

    /// <summary>Checks cases 0 to count - 1 on all processors.</summary>
    /// <param name="gen">How to make a case.</param>
    /// <param name="count">How many.</param>
    /// <param name="check">Throws where a case is wrong.</param>
    /// <param name="describe">Says what a case was.</param>
    /// <param name="size">How large a case is; the smallest failing one is reported.</param>
    /// <param name="seed">Which series of cases.</param>
    /// <exception cref="ExpectationException">Some cases failed; the message describes the smallest of them and
    /// counts the rest.</exception>
    public static void Check<T>(
        Gen<T> gen, int count, Action<T> check, Func<T, string> describe, Func<T, int>? size = null, uint seed = Seed)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(describe);
        List<(int Index, int Size, Exception Error)> failures = [];
        Parallel.For(0, count, index =>
        {
            T item = At(gen, index, seed);
            try
            {
                check(item);
            }
            catch (Exception error) when (error is not OutOfMemoryException)
            {
                lock (failures) failures.Add((index, size?.Invoke(item) ?? 0, error));
            }
        });
        if (failures.Count == 0) return;
        (int first, _, Exception why) = failures.OrderBy(f => f.Size).ThenBy(f => f.Index).First();
        throw new ExpectationException(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{failures.Count} of {count} cases failed (seed {seed}). Case {first}: ") +
            $"{why.Message}\n{describe(At(gen, first, seed))}", why);
    }
}
