using System.Globalization;
using Longrail.Coaching.Charts;

namespace Longrail.Drawing.Charts;

/// <summary>From a map's number to its colour: bands of one hue that only get darker.</summary>
/// <remarks>Sequential and of falling lightness, so that it reads for all kinds of colour vision and in grey; colours
/// of our own choice.</remarks>
internal static class MapScale
{
    private static readonly (int R, int G, int B)[] _stops =
    [
        (0xf6, 0xf3, 0xe8), (0xcf, 0xde, 0xe0), (0x93, 0xbb, 0xcc), (0x4f, 0x8f, 0xb3), (0x1f, 0x5f, 0x8c),
        (0x0b, 0x2f, 0x4e),
    ];

    private static readonly double[] _odds = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];

    // Leeways of a table differ by a factor of a hundred: the bands grow.
    private static readonly double[] _leeway = [0, 0.02, 0.04, 0.06, 0.09, 0.13, 0.2, 0.3, 0.5, 0.8];

    /// <summary>Where each band begins.</summary>
    internal static IReadOnlyList<double> Bands(MapMeasure measure) => measure == MapMeasure.Odds ? _odds : _leeway;

    /// <summary>The values that contours are drawn at.</summary>
    internal static IReadOnlyList<double> Contours(MapMeasure measure) =>
        measure == MapMeasure.Odds ? [0.2, 0.4, 0.6, 0.8] : [0.04, 0.09, 0.2, 0.5];

    /// <summary>The colour of a value.</summary>
    internal static string Colour(MapMeasure measure, double value)
    {
        IReadOnlyList<double> bands = Bands(measure);
        int band = 0;
        // The last place of a double is no reason for another band.
        while (band + 1 < bands.Count && value >= bands[band + 1] - 1e-12)
            band++;
        return BandColour(band, bands.Count);
    }

    /// <summary>The colour of a band.</summary>
    internal static string BandColour(int band, int count)
    {
        double at = (double)band / (count - 1) * (_stops.Length - 1);
        int below = Math.Min((int)at, _stops.Length - 2);
        double part = at - below;
        int Mixed(int a, int b) => (int)Math.Round(a + part * (b - a));
        (int r, int g, int b) = _stops[below];
        (int r2, int g2, int b2) = _stops[below + 1];
        return string.Create(CultureInfo.InvariantCulture, $"#{Mixed(r, r2):x2}{Mixed(g, g2):x2}{Mixed(b, b2):x2}");
    }

    /// <summary>A value as a label: "40 %", "0.13°".</summary>
    internal static string Label(MapMeasure measure, double value) => measure == MapMeasure.Odds
        ? string.Create(CultureInfo.InvariantCulture, $"{100 * value:0} %")
        : string.Create(CultureInfo.InvariantCulture, $"{value:0.##}°");
}
