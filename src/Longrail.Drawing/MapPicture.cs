using Longrail.Coaching.Charts;
using Longrail.Drawing.Charts;

namespace Longrail.Drawing;

/// <summary>Draws a map of the table: how good a bank is from each place of the ball.</summary>
public static class MapPicture
{
    /// <summary>The picture as SVG text, A4 across. A pure function: the same input gives the same text.</summary>
    /// <remarks>One colour that only gets darker, with numbered contours over it: it reads for all kinds of colour
    /// vision and in grey.</remarks>
    /// <param name="map">The map.</param>
    /// <param name="date">A date to print, or null: a picture never takes one from the clock.</param>
    public static string Draw(OddsMap map, DateOnly? date = null) => MapSheet.Draw(map, date);

    /// <summary>The table alone, for a small screen or a page that has its own words around it.</summary>
    /// <param name="map">The map.</param>
    public static string DrawPlan(OddsMap map) => MapSheet.DrawPlan(map);
}
