using System.Globalization;
using Longrail.Physics.Equipment;
using Longrail.Scenes.Units;

namespace Longrail.Workbench.Tables;

/// <summary>Numbers as a field shows them, and what is typed there as a scene reads it.</summary>
internal static class Shown
{
    private static readonly double _inch = Factor("in");
    private static readonly double _centimetre = Factor("cm");
    private static readonly double _degree = Factor("deg");

    /// <summary>The name of a unit of length.</summary>
    public static string Of(LengthUnit unit) => unit switch
    {
        LengthUnit.Inches => "in",
        LengthUnit.Centimetres => "cm",
        _ => "diamonds",
    };

    /// <summary>A place along the table.</summary>
    public static string Along(double metres, LengthUnit unit, TableSpec table) =>
        Place(metres, unit, table.DiamondAlong);

    /// <summary>A place across the table.</summary>
    public static string Across(double metres, LengthUnit unit, TableSpec table) =>
        Place(metres, unit, table.DiamondAcross);

    /// <summary>An angle in degrees.</summary>
    public static string Degrees(double radians) => Number(radians / _degree, "0.00");

    /// <summary>A speed.</summary>
    public static string Speed(double metresPerSecond, string unit) => Number(metresPerSecond / Factor(unit), "0.00");

    /// <summary>A number as shown, never "-0".</summary>
    public static string Number(double value, string format)
    {
        string text = value.ToString(format, CultureInfo.InvariantCulture);
        return text.StartsWith('-') && text.AsSpan(1).IndexOfAnyExcept('0', '.') < 0 ? text[1..] : text;
    }

    /// <summary>A number as a scene reads it, SI or plain, to a tenth of a micrometre, a microradian.</summary>
    public static string Exact(double value) => Number(value, "0.#######");

    /// <summary>What was typed, with the field's unit if it has none of its own.</summary>
    public static string Typed(string text, string unit)
    {
        string trimmed = text.Trim();
        bool isBare = trimmed.Length > 0 && (char.IsAsciiDigit(trimmed[^1]) || trimmed[^1] == '.');
        return isBare && unit.Length > 0 ? $"{trimmed} {unit}" : trimmed;
    }

    /// <summary>SI units in one unit of that name.</summary>
    public static double Factor(string unit) => UnitTable.Units.First(one => one.Name == unit).Factor;

    private static string Place(double metres, LengthUnit unit, double diamond) => unit switch
    {
        LengthUnit.Inches => Number(metres / _inch, "0.00"),
        LengthUnit.Centimetres => Number(metres / _centimetre, "0.00"),
        _ => Number(metres / diamond, "0.000"),
    };
}
