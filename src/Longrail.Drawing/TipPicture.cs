using Longrail.Drawing.Sheets;
using Longrail.Drawing.Svg;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Drawing;

/// <summary>Draws the face of the struck ball seen along the stick, with the tip on it.</summary>
public static class TipPicture
{
    /// <summary>Width of the sheet.</summary>
    public const double Width = 360;

    /// <summary>Height of the sheet.</summary>
    public const double Height = 392;

    private const double Radius = 140;
    private static readonly SvgPoint _centre = new(Width / 2, 182);

    /// <summary>The picture as a part: elements of SVG without a sheet around them.</summary>
    /// <param name="tip">The stroke.</param>
    /// <param name="cue">The cue and its tip.</param>
    /// <param name="ballRadius">The ball's radius, metres, positive.</param>
    public static string Draw(TipReading tip, CueSpec cue, double ballRadius)
    {
        var svg = SvgWriter.Part();
        TipInset.Draw(svg, _centre, Radius, new TipView(tip, cue, ballRadius), Ink.Colours[1]);
        return svg.FinishPart();
    }

    /// <summary>Where a contact lies on the sheet.</summary>
    /// <param name="right">To the right of the centre, in ball radii.</param>
    /// <param name="above">Above the centre, in ball radii.</param>
    public static SvgPoint ToSheet(double right, double above) => _centre.Moved(Radius * right, -Radius * above);

    /// <summary>The contact that lies at a point on the sheet, in ball radii.</summary>
    /// <param name="at">The point.</param>
    public static (double Right, double Above) ToOffset(SvgPoint at) =>
        ((at.X - _centre.X) / Radius, (_centre.Y - at.Y) / Radius);
}
