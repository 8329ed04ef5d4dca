using System.Globalization;

namespace Longrail.Drawing.Svg;

/// <summary>Mixes a colour with white.</summary>
public static class Tint
{
    /// <summary>The colour thinned with white.</summary>
    /// <param name="colour">"#rrggbb".</param>
    /// <param name="strength">How much of it is left, from 0 (white) to 1 (unchanged).</param>
    public static string Of(string colour, double strength)
    {
        int Channel(int at)
        {
            int value = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
            return (int)Math.Round(255 + (value - 255) * strength);
        }

        return string.Create(CultureInfo.InvariantCulture, $"#{Channel(1):x2}{Channel(3):x2}{Channel(5):x2}");
    }
}
