namespace Longrail.Drawing.Charts;

/// <summary>One scale for all panels of a chart: nothing is compared by eye that is not drawn alike.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
/// <param name="Step">From one tick to the next.</param>
internal readonly record struct ValueScale(double Low, double High, double Step)
{
    private const double Air = 0.06;

    /// <summary>A scale with round steps that holds zero and all values.</summary>
    internal static ValueScale Of(IEnumerable<double> values)
    {
        double low = 0;
        double high = 0;
        foreach (double value in values)
            (low, high) = (Math.Min(low, value), Math.Max(high, value));
        if (low == high)
            (low, high) = (-0.5, 0.5);
        double span = high - low;
        double step = Math.Pow(10, Math.Floor(Math.Log10(span / 4)));
        foreach (double factor in (double[])[1, 2, 5, 10])
        {
            if (span / (factor * step) > 8)
                continue;
            step *= factor;
            break;
        }

        // A little air beyond the outermost values.
        return new ValueScale(low - Air * span, high + Air * span, step);
    }

    /// <summary>The ticks, from the lowest.</summary>
    internal IEnumerable<double> Ticks()
    {
        int first = (int)Math.Ceiling(Low / Step);
        int last = (int)Math.Floor(High / Step);
        for (int k = first; k <= last; k++)
            yield return k * Step;
    }
}
