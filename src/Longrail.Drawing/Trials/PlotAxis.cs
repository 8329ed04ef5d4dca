using System.Globalization;

namespace Longrail.Drawing.Trials;

/// <summary>One axis of a plot: values to sheet units, and round numbers for its ticks.</summary>
internal sealed class PlotAxis
{
    private readonly double _from;
    private readonly double _scale;

    /// <summary>An axis that has room for all values and a little more.</summary>
    /// <param name="values">At least one.</param>
    /// <param name="from">Sheet place of the low end.</param>
    /// <param name="to">Sheet place of the high end; may lie before <paramref name="from"/>.</param>
    /// <param name="ticks">About how many ticks.</param>
    internal PlotAxis(IEnumerable<double> values, double from, double to, int ticks = 6)
    {
        double[] all = [.. values];
        (double low, double high) = (all.Min(), all.Max());
        double span = high - low;
        // Values that are all alike still need an axis.
        double pad = span > 0 ? 0.06 * span : Math.Max(1e-3, 0.1 * Math.Abs(low));
        (Low, High) = (low - pad, high + pad);
        _from = from;
        _scale = (to - from) / (High - Low);
        Step = RoundStep((High - Low) / ticks);
    }

    internal double Low { get; }

    internal double High { get; }

    internal double Step { get; }

    internal double At(double value) => _from + _scale * (value - Low);

    /// <summary>Places of the ticks, with their numbers.</summary>
    internal IEnumerable<(double Value, string Text)> Ticks()
    {
        int decimals = Math.Max(0, (int)Math.Ceiling(-Math.Log10(Step) - 1e-9));
        string format = "0." + new string('0', decimals);
        for (double k = Math.Ceiling(Low / Step - 1e-9); k * Step <= High; k++)
        {
            double value = k * Step;
            yield return (value, (value == 0 ? 0 : value).ToString(format.TrimEnd('.'), CultureInfo.InvariantCulture));
        }
    }

    // 1, 2 or 5 times a power of ten.
    private static double RoundStep(double rough)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double lead = rough / power;
        return power * (lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10);
    }
}
