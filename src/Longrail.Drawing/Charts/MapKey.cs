using Longrail.Coaching.Charts;
using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Charts;

/// <summary>The key of a map's colours.</summary>
internal static class MapKey
{
    private const double Box = 128;
    private const double BoxHeight = 40;

    internal static void Draw(SvgWriter svg, OddsMap map, double x, double y)
    {
        MapMeasure measure = map.Request.Measure;
        IReadOnlyList<double> bands = MapScale.Bands(measure);
        string heading = measure == MapMeasure.Odds
            ? "chance that the bank is made and the cue ball kept"
            : "leeway of the aim either way, degrees";
        svg.Begin("key");
        svg.Text(new SvgPoint(x, y + Ink.Small), heading, new TextStyle(Ink.Small, Ink.Graphite, Bold: true));
        double top = y + 1.5 * Ink.Small;
        for (int k = 0; k < bands.Count; k++)
        {
            double left = x + k * Box;
            svg.Rectangle(left, top, Box, BoxHeight, MapScale.BandColour(k, bands.Count), new Pen(Ink.Soft, 0.8));
            svg.Text(
                new SvgPoint(left, top + BoxHeight + 1.15 * Ink.Small), MapScale.Label(measure, bands[k]),
                new TextStyle(Ink.Small, Ink.Soft, false, k == 0 ? TextAnchor.Start : TextAnchor.Middle));
        }

        string end = measure == MapMeasure.Odds ? "100 %" : "more";
        svg.Text(
            new SvgPoint(x + bands.Count * Box, top + BoxHeight + 1.15 * Ink.Small), end,
            new TextStyle(Ink.Small, Ink.Soft, false, TextAnchor.End));
        svg.End();
    }
}
