using System.Globalization;

namespace Longrail.Drawing.Svg;

/// <summary>How a number is written into a picture.</summary>
public static class SvgNumber
{
    /// <summary>At most three decimals, invariant culture, never "-0".</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite: a picture never holds such a
    /// number.</exception>
    public static string Format(double value)
    {
        if (!double.IsFinite(value))
            throw new ArgumentOutOfRangeException(nameof(value), value, "A picture can only hold finite numbers.");

        double rounded = Math.Round(value, 3, MidpointRounding.AwayFromZero);
        return (rounded == 0.0 ? 0.0 : rounded).ToString("0.###", CultureInfo.InvariantCulture);
    }
}
