using System.Globalization;
using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>The face of the struck ball seen along the stick: where the tip touches, on a grid of eighths of a
/// tip.</summary>
internal static class TipInset
{
    internal static void Draw(SvgWriter svg, SvgPoint centre, double radius, TipView tip, string colour)
    {
        svg.Begin("tip");
        svg.Circle(centre, radius, "#ffffff", new Pen(Ink.Graphite, Ink.Medium));
        double limit = Math.Clamp(tip.Reading.MiscueLimit, 0, 1);
        DrawGrid(svg, centre, radius, limit, tip.EighthTip);
        svg.Circle(centre, radius * limit, null, new Pen(Ink.Soft, Ink.Thin, "10 6"));

        SvgPoint contact = centre.Moved(radius * tip.Reading.OffsetRight, -radius * tip.Reading.OffsetAbove);
        DrawTipOutline(svg, centre, radius, tip, colour);
        svg.Circle(contact, 6.5, colour);

        double line = centre.Y + radius + 1.25 * Ink.Small;
        var style = new TextStyle(Ink.Small, Ink.Graphite, false, TextAnchor.Middle);
        string[] words = tip.Reading is { ShaftRightTips: 0, ShaftAboveTips: 0 }
            ? ["centre"]
            : [Words(tip.Reading.ShaftRightTips, "right", "left"), Words(tip.Reading.ShaftAboveTips, "above", "below")];
        for (int k = 0; k < words.Length; k++)
            svg.Text(new SvgPoint(centre.X, line + 1.2 * k * Ink.Small), words[k], style);
        svg.Text(
            new SvgPoint(centre.X, centre.Y - radius - 18), "seen along the stick", style with { Colour = Ink.Soft });
        svg.End();
    }

    // The tip's rim as it stands before the ball: a circle about the shaft's axis.
    private static void DrawTipOutline(SvgWriter svg, SvgPoint centre, double radius, TipView tip, string colour)
    {
        double perTip = radius * tip.Cue.TipDiameter / tip.BallRadius;
        SvgPoint axis = centre.Moved(perTip * tip.Reading.ShaftRightTips, -perTip * tip.Reading.ShaftAboveTips);
        svg.Circle(axis, perTip / 2, null, new Pen(colour, Ink.Thin));
    }

    private static void DrawGrid(SvgWriter svg, SvgPoint centre, double radius, double limit, double eighth)
    {
        var fine = new SvgPath();
        var half = new SvgPath();
        int count = eighth > 0.005 ? (int)Math.Floor(limit / eighth) : 0;
        for (int k = -count; k <= count; k++)
        {
            double offset = k * eighth;
            double reach = radius * Math.Sqrt(Math.Max(limit * limit - offset * offset, 0));
            double at = radius * offset;
            SvgPath path = k % 4 == 0 ? half : fine;
            path.Move(centre.Moved(at, -reach)).Line(centre.Moved(at, reach));
            path.Move(centre.Moved(-reach, at)).Line(centre.Moved(reach, at));
        }

        svg.Path(fine, null, new Pen(Ink.Ghost, 0.8));
        svg.Path(half, null, new Pen(Ink.Soft, 0.9));
        var cross = new SvgPath()
            .Move(centre.Moved(-radius - 12, 0)).Line(centre.Moved(radius + 12, 0))
            .Move(centre.Moved(0, -radius - 12)).Line(centre.Moved(0, radius + 12));
        svg.Path(cross, null, new Pen(Ink.Soft, Ink.Fine, "22 5 4 5"));
    }

    /// <summary>"1/8 tip right", "0.31 tip above", "0 above".</summary>
    internal static string Words(double tips, string positive, string negative)
    {
        string side = tips >= 0 ? positive : negative;
        double eighths = Math.Abs(tips) * 8;
        double whole = Math.Round(eighths);
        if (Math.Abs(eighths - whole) > 1e-6)
            return string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(tips):0.###} tip {side}");
        return whole == 0 ? $"0 {positive}" : $"{Fraction((int)whole)} tip {side}";
    }

    private static string Fraction(int eighths)
    {
        int whole = eighths / 8;
        int rest = eighths % 8;
        int divisor = rest % 4 == 0 ? 4 : rest % 2 == 0 ? 2 : 1;
        string part = rest == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{rest / divisor}/{8 / divisor}");
        string full = whole == 0 ? "" : whole.ToString(CultureInfo.InvariantCulture);
        return full.Length > 0 && part.Length > 0 ? $"{full} {part}" : full + part;
    }
}
