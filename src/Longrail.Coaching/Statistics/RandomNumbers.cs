namespace Longrail.Coaching.Statistics;

/// <summary>Random numbers by place instead of by turn: number n of a stream is a function of the stream's key and of
/// n, so that no order of asking, and no number of threads, can change it.</summary>
/// <remarks>The generator is Philox4x32-10 (J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, "Parallel random
/// numbers: as easy as 1, 2, 3", SC11 (2011), doi:10.1145/2063384.2063405); normal numbers by G. E. P. Box and M. E.
/// Muller, Ann. Math. Stat. 29, 610 (1958). Uniform numbers have 32 bits, so a normal one never lies beyond 6.8
/// deviations.</remarks>
/// <param name="Key">The stream.</param>
/// <param name="Part">A part of the stream, when it is asked for more than one purpose.</param>
public readonly record struct RandomNumbers(ulong Key, uint Part)
{
    private const int Rounds = 10;

    /// <summary>Independent standard normal numbers.</summary>
    /// <param name="place">Which of the stream's rows.</param>
    /// <param name="normals">Filled with the first numbers of that row.</param>
    public void Normals(ulong place, Span<double> normals)
    {
        for (int i = 0; i < normals.Length; i += 4)
        {
            (uint a, uint b, uint c, uint d) = Philox(
                (uint)place, (uint)(place >> 32), (uint)(i / 4), Part, (uint)Key, (uint)(Key >> 32));
            Pair(a, b, normals[i..]);
            if (i + 2 < normals.Length) Pair(c, d, normals[(i + 2)..]);
        }
    }

    /// <summary>Mixes a number into a key: every bit of both changes about half the bits of the result.</summary>
    /// <remarks>The finaliser of G. L. Steele, D. Lea and C. H. Flood, "Fast splittable pseudorandom number
    /// generators", OOPSLA (2014), doi:10.1145/2660193.2660195.</remarks>
    /// <param name="key">The key so far.</param>
    /// <param name="number">What is mixed in.</param>
    public static ulong Mixed(ulong key, ulong number)
    {
        ulong z = unchecked((key ^ number) + 0x9E3779B97F4A7C15UL);
        z = unchecked((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL);
        z = unchecked((z ^ (z >> 27)) * 0x94D049BB133111EBUL);
        return z ^ (z >> 31);
    }

    /// <summary>One block of Philox4x32-10.</summary>
    internal static (uint A, uint B, uint C, uint D) Philox(uint a, uint b, uint c, uint d, uint key0, uint key1)
    {
        for (int i = 0; i < Rounds; i++)
        {
            ulong first = 0xD2511F53UL * a;
            ulong second = 0xCD9E8D57UL * c;
            (a, b, c, d) = ((uint)(second >> 32) ^ b ^ key0, (uint)second, (uint)(first >> 32) ^ d ^ key1, (uint)first);
            key0 = unchecked(key0 + 0x9E3779B9U);
            key1 = unchecked(key1 + 0xBB67AE85U);
        }

        return (a, b, c, d);
    }

    private static void Pair(uint a, uint b, Span<double> normals)
    {
        const double Unit = 1.0 / 4294967296.0;
        double radius = Math.Sqrt(-2 * Math.Log((a + 0.5) * Unit));
        (double sin, double cos) = Math.SinCos(2 * Math.PI * (b + 0.5) * Unit);
        normals[0] = radius * cos;
        if (normals.Length > 1) normals[1] = radius * sin;
    }
}
