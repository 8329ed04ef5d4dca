using System.Globalization;

namespace Longrail.Coaching.Tests.Statistics;

/// <summary>Compares with certified values that are kept as printed.</summary>
internal static class Certified
{
    /// <summary>Asserts that the leading digits agree: the relative difference is at most half a unit of the last of
    /// them.</summary>
    internal static void Digits(int digits, string certified, double value)
    {
        double expected = double.Parse(certified, CultureInfo.InvariantCulture);
        double off = Math.Abs(value - expected) / Math.Abs(expected);
        Assert.True(off <= 0.5 * Math.Pow(10, 1 - digits),
            $"{value:R} for {certified}: {-Math.Log10(off):0.0} digits.");
    }
}
