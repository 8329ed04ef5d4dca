using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Scenes;
using static System.FormattableString;

namespace Longrail.Coaching.Ways.Words;

/// <summary>A stroke in the trade's words.</summary>
public static class StrokeWords
{
    // Exact: 0.44704 m/s in a mile per hour.
    private const double MilePerHour = 0.44704;

    /// <summary>How far the ball would roll on this cloth with nothing in its way, in table lengths: v^2/(2 mu g) over
    /// the length. What cushions take is not in it, nor the skid at the start.</summary>
    /// <param name="speed">Speed, m/s.</param>
    /// <param name="equipment">Table and cloth.</param>
    public static double TableLengths(double speed, EquipmentSpec equipment)
    {
        ArgumentNullException.ThrowIfNull(equipment);
        double deceleration = equipment.Cloth.RollingFriction * equipment.Table.Gravity;
        return speed * speed / (2 * deceleration * equipment.Table.Length);
    }

    /// <summary>A speed: "1.80 m/s (4.0 mph)".</summary>
    /// <param name="speed">Speed, m/s.</param>
    public static string Speed(double speed) => Invariant($"{speed:0.00} m/s ({speed / MilePerHour:0.0} mph)");

    /// <summary>How far the shaft's axis is moved for a contact offset, in eighths of the tip's width.</summary>
    /// <param name="offset">Offset of the contact, metres.</param>
    /// <param name="ballRadius">Ball radius, metres.</param>
    /// <param name="cue">The cue.</param>
    public static double Eighths(double offset, double ballRadius, CueSpec cue)
    {
        ArgumentNullException.ThrowIfNull(cue);
        return 8 * TipContact.ShaftOffset(offset, ballRadius, cue) / cue.TipDiameter;
    }

    /// <summary>Where the tip strikes, in eighths of a tip: "1.5 below, 0.5 right", or "centre".</summary>
    /// <param name="stroke">The stroke.</param>
    /// <param name="ballRadius">Ball radius, metres.</param>
    /// <param name="cue">The cue.</param>
    public static string TipInEighths(Stroke stroke, double ballRadius, CueSpec cue) => Sides(
        Eighths(stroke.OffsetRight, ballRadius, cue), Eighths(stroke.OffsetAbove, ballRadius, cue), "0.0", "");

    /// <summary>Where the tip strikes, in widths of the tip: "1.2 above, 0.5 right", or "centre".</summary>
    /// <param name="stroke">The stroke.</param>
    /// <param name="ballRadius">Ball radius, metres.</param>
    /// <param name="cue">The cue.</param>
    public static string TipInTips(Stroke stroke, double ballRadius, CueSpec cue) => Sides(
        Eighths(stroke.OffsetRight, ballRadius, cue) / 8, Eighths(stroke.OffsetAbove, ballRadius, cue) / 8, "0.0", "");

    /// <summary>Where tip and ball touch, in ball radii: "0.10 R below, 0.05 R right", or "centre".</summary>
    /// <param name="stroke">The stroke.</param>
    /// <param name="ballRadius">Ball radius, metres.</param>
    public static string TipInRadii(Stroke stroke, double ballRadius) =>
        Sides(stroke.OffsetRight / ballRadius, stroke.OffsetAbove / ballRadius, "0.00", " R");

    /// <summary>The point to aim at: "left 3.42".</summary>
    /// <param name="point">The point.</param>
    public static string Aim(AimPoint point) => Invariant($"{TableWords.Of(point.Cushion)} {point.Diamonds:0.00}");

    /// <summary>An angle with its side: "12.3 deg left", or "full" for none.</summary>
    /// <param name="radians">The cut, positive to the left.</param>
    public static string Cut(double radians)
    {
        double degrees = Math.Abs(radians) * (180 / Math.PI);
        return degrees < 0.05 ? "full" : Invariant($"{degrees:0.0} deg {(radians > 0 ? "left" : "right")}");
    }

    // What rounds to nothing is left out.
    private static string Sides(double right, double above, string format, string unit)
    {
        string up = Number(Math.Abs(above), format);
        string side = Number(Math.Abs(right), format);
        string nothing = Number(0, format);
        string vertical = up == nothing ? "" : $"{up}{unit} {(above > 0 ? "above" : "below")}";
        string horizontal = side == nothing ? "" : $"{side}{unit} {(right > 0 ? "right" : "left")}";
        return (vertical.Length, horizontal.Length) switch
        {
            (0, 0) => "centre",
            (_, 0) => vertical,
            (0, _) => horizontal,
            _ => $"{vertical}, {horizontal}",
        };
    }

    private static string Number(double value, string format) =>
        value.ToString(format, System.Globalization.CultureInfo.InvariantCulture);
}
