namespace Longrail.Coaching.Contrasts;

/// <summary>The letters by which the variants of a comparison are known.</summary>
public static class VariantLetter
{
    /// <summary>A, B, ... Z, AA, AB, ...</summary>
    /// <param name="index">0 for the first variant.</param>
    /// <exception cref="ArgumentOutOfRangeException">The index is negative.</exception>
    public static string Of(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        return index < 26 ? ((char)('A' + index)).ToString() : Of(index / 26 - 1) + Of(index % 26);
    }
}
