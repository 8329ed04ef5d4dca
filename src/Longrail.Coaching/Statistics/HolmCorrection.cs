namespace Longrail.Coaching.Statistics;

/// <summary>Many questions asked at once: chances corrected so that all answers together hold.</summary>
/// <remarks>S. Holm, Scand. J. Statist. 6, 65 (1979).</remarks>
public static class HolmCorrection
{
    /// <summary>The corrected chances, in the order of the given ones.</summary>
    /// <param name="chances">One for each question, from 0 to 1.</param>
    public static IReadOnlyList<double> Of(IReadOnlyList<double> chances)
    {
        ArgumentNullException.ThrowIfNull(chances);
        double[] corrected = new double[chances.Count];
        double largest = 0;
        int rank = 0;
        foreach (int i in Enumerable.Range(0, chances.Count).OrderBy(i => chances[i]))
        {
            largest = Math.Max(largest, Math.Min(1, (chances.Count - rank++) * chances[i]));
            corrected[i] = largest;
        }

        return corrected;
    }
}
