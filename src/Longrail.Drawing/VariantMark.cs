using Longrail.Coaching.Contrasts;
using Longrail.Drawing.Svg;

namespace Longrail.Drawing;

/// <summary>How one variant of a comparison is told from the others: by a letter, a colour and a dash pattern, so that
/// any one of the three is enough.</summary>
/// <param name="Letter">A, B, ... Z, AA, ...</param>
/// <param name="Colour">One of the colours that stay apart for all kinds of colour vision; they repeat, the dashes do
/// not.</param>
/// <param name="Dash">Dash pattern as SVG writes it; null is a full line.</param>
public readonly record struct VariantMark(string Letter, string Colour, string? Dash)
{
    /// <summary>The mark of a variant.</summary>
    /// <param name="index">0 for the first variant.</param>
    /// <exception cref="ArgumentOutOfRangeException">The index is negative.</exception>
    public static VariantMark Of(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        return new VariantMark(VariantLetter.Of(index), Ink.Colours[index % Ink.Colours.Count], DashOf(index));
    }

    // The first is a full line, the next few are told apart at a glance; from there on the index is spelled in binary
    // with long and short dashes between two wide gaps, which never repeats.
    private static string? DashOf(int index) => index switch
    {
        0 => null,
        1 => "28 10",
        2 => "5 8",
        3 => "30 8 5 8",
        4 => "14 10",
        5 => "30 8 5 8 5 8",
        6 => "44 14",
        7 => "14 8 5 8",
        8 => "30 8 14 8",
        _ => string.Join(' ', Convert.ToString(index, 2).Select(bit => bit == '1' ? "22 6" : "4 6")) + " 22 16",
    };
}
