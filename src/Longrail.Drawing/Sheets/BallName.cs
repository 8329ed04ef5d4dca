using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>Writes a ball's name: a short one into a plain ball, any other beside it.</summary>
internal static class BallName
{
    private const double Widest = 320;
    private const double Size = Ink.Small;

    /// <summary>Whether a name stands in the ball itself.</summary>
    internal static bool FitsInto(string name, double radius, bool striped) =>
        !striped && TextWidth.Of(SvgText.Clean(name), Size, bold: true) < 1.6 * radius;

    internal static void Draw(
        SvgWriter svg, SvgPoint at, double radius, string name, bool striped, string colour, Occupancy taken)
    {
        string clean = SvgText.Clean(name);
        if (clean.Length == 0)
            return;
        if (FitsInto(name, radius, striped))
        {
            svg.Text(at.Moved(0, Size * Ink.HalfCapital), clean, new TextStyle(Size, colour, true, TextAnchor.Middle));
            return;
        }

        string text = TextWidth.Fit(clean, Widest, Size, bold: true);
        double half = Math.Max(TextWidth.Of(text, Size, bold: true) / 2, 0.6 * Size);
        // A long name would push itself far away as a disc; its middle part keeps the distance.
        double disc = Math.Min(half, 50);
        SvgPoint label = taken.Place(at, radius + disc + 4, disc, new SvgPoint(0, 1));
        svg.Text(label.Moved(0, Size * Ink.HalfCapital), text, new TextStyle(Size, colour, true, TextAnchor.Middle));
    }
}
