using System.Buffers.Text;
using System.Text;

namespace Longrail.Scenes.Units;

/// <summary>Reads quantities written as text: "50 in", "2 1/4 in", "-1/8 tip", "0.2 R", "63.5 %", "12 deg
/// left".</summary>
public static class QuantityText
{
    /// <summary>Reads a quantity.</summary>
    /// <param name="utf8">The text in UTF-8.</param>
    /// <param name="kind">What the field holds.</param>
    /// <param name="quantity">The quantity; 0 if there is a problem.</param>
    public static QuantityTextProblem Parse(ReadOnlySpan<byte> utf8, QuantityKind kind, out Quantity quantity)
    {
        quantity = default;
        ReadOnlySpan<byte> rest = Trim(utf8);
        QuantityTextProblem problem = ReadNumber(ref rest, out double number);
        if (problem != QuantityTextProblem.None)
            return problem;

        // Directions belong to cut angles only; everything else ends with the unit.
        double sign = 1.0;
        if (kind == QuantityKind.CutAngle)
            sign = ReadDirection(ref rest);

        if (rest.IsEmpty)
        {
            if (!kind.IsPlainNumber)
                return QuantityTextProblem.NoUnit;
            quantity = new Quantity(number);
            return QuantityTextProblem.None;
        }

        UnitDefinition? unit = UnitTable.Find(rest);
        if (unit is null)
            return rest.Contains((byte)' ') ? QuantityTextProblem.UnknownWord : QuantityTextProblem.UnknownUnit;
        if (!kind.Accepts(unit.Dimension))
            return QuantityTextProblem.WrongUnit;
        quantity = Of(sign * number, unit, kind);
        return double.IsFinite(quantity.Value) ? QuantityTextProblem.None : QuantityTextProblem.NotFinite;
    }

    /// <summary>Reads a quantity.</summary>
    /// <param name="text">The text.</param>
    /// <param name="kind">What the field holds.</param>
    /// <param name="quantity">The quantity; 0 if there is a problem.</param>
    public static QuantityTextProblem Parse(string text, QuantityKind kind, out Quantity quantity) =>
        Parse(Encoding.UTF8.GetBytes(text), kind, out quantity);

    /// <summary>What follows the number in a text: the unit, as far as it can be told.</summary>
    public static string UnitPart(ReadOnlySpan<byte> utf8)
    {
        ReadOnlySpan<byte> rest = Trim(utf8);
        _ = ReadNumber(ref rest, out _);
        return Encoding.UTF8.GetString(rest);
    }

    private static Quantity Of(double number, UnitDefinition unit, QuantityKind kind) => unit.Dimension switch
    {
        Dimension.BallRadius => new Quantity(number, RelativeUnit.BallRadius),
        Dimension.BallDiameter => new Quantity(number, RelativeUnit.BallDiameter),
        Dimension.TipWidth => new Quantity(number, RelativeUnit.TipWidth),
        Dimension.Diamond => new Quantity(number, RelativeUnit.Diamond),
        // A percentage of a height is one of the ball's diameter, as the rules of the game give it.
        Dimension.Ratio when kind == QuantityKind.BallHeight =>
            new Quantity(number * unit.Factor, RelativeUnit.BallDiameter),
        _ => new Quantity(number * unit.Factor),
    };

    // number = [sign] decimal | [sign] whole "/" whole | [sign] whole " " whole "/" whole
    private static QuantityTextProblem ReadNumber(ref ReadOnlySpan<byte> rest, out double number)
    {
        number = 0;
        double sign = 1.0;
        if (!rest.IsEmpty && rest[0] is (byte)'-' or (byte)'+')
        {
            sign = rest[0] == (byte)'-' ? -1.0 : 1.0;
            rest = rest[1..];
        }

        if (rest.IsEmpty || (rest[0] is < (byte)'0' or > (byte)'9' && rest[0] != (byte)'.'))
            return NamesInfinityOrNaN(rest) ? QuantityTextProblem.NotFinite : QuantityTextProblem.NotANumber;
        if (!Utf8Parser.TryParse(rest, out double first, out int used))
            return QuantityTextProblem.NotANumber;
        rest = rest[used..];

        double value = first;
        if (TryReadSlash(ref rest, out double denominator))
            value = first / denominator;
        else if (TryReadFraction(ref rest, out double fraction))
            value = first + fraction;

        number = sign * value;
        rest = Trim(rest);
        return double.IsFinite(number) ? QuantityTextProblem.None : QuantityTextProblem.NotFinite;
    }

    private static bool TryReadSlash(ref ReadOnlySpan<byte> rest, out double denominator)
    {
        denominator = 0;
        if (rest.Length < 2 || rest[0] != (byte)'/' || rest[1] is < (byte)'0' or > (byte)'9')
            return false;
        if (!Utf8Parser.TryParse(rest[1..], out uint whole, out int used))
            return false;
        denominator = whole;
        rest = rest[(1 + used)..];
        return true;
    }

    private static bool TryReadFraction(ref ReadOnlySpan<byte> rest, out double fraction)
    {
        fraction = 0;
        ReadOnlySpan<byte> tail = Trim(rest);
        if (tail.Length == rest.Length || tail.IsEmpty || tail[0] is < (byte)'0' or > (byte)'9')
            return false;
        if (!Utf8Parser.TryParse(tail, out uint numerator, out int used))
            return false;
        tail = tail[used..];
        if (!TryReadSlash(ref tail, out double denominator))
            return false;
        fraction = numerator / denominator;
        rest = tail;
        return true;
    }

    private static double ReadDirection(ref ReadOnlySpan<byte> rest)
    {
        if (rest.EndsWith(" left"u8))
        {
            rest = Trim(rest[..^5]);
            return 1.0;
        }

        if (rest.EndsWith(" right"u8))
        {
            rest = Trim(rest[..^6]);
            return -1.0;
        }

        return 1.0;
    }

    private static bool NamesInfinityOrNaN(ReadOnlySpan<byte> rest)
    {
        int space = rest.IndexOf((byte)' ');
        ReadOnlySpan<byte> word = space < 0 ? rest : rest[..space];
        return Ascii.EqualsIgnoreCase(word, "nan"u8)
            || Ascii.EqualsIgnoreCase(word, "infinity"u8)
            || Ascii.EqualsIgnoreCase(word, "inf"u8)
            || word.SequenceEqual("\u221e"u8);
    }

    private static ReadOnlySpan<byte> Trim(ReadOnlySpan<byte> text) => text.Trim(" \t"u8);
}
