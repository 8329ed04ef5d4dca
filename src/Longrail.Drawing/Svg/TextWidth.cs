using System.Text;

namespace Longrail.Drawing.Svg;

/// <summary>How wide a text comes out, so that it can be laid out without a font at hand.</summary>
/// <remarks>Advance widths of DejaVu Sans and DejaVu Sans Bold, thousandths of the type size. The usual substitutes are
/// narrower, so a text that fits here fits there too. Letters outside ASCII count as wide ones.</remarks>
public static class TextWidth
{
    private const int First = ' ';
    private const int Other = 840;

    private static readonly short[] _regular =
    [
        318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636, 636,
        636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656,
        557, 863, 748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500, 500, 613,
        635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818,
        592, 592, 525, 636, 337, 636, 838,
    ];

    private static readonly short[] _bold =
    [
        348, 456, 521, 838, 696, 1002, 872, 306, 457, 457, 523, 838, 380, 415, 380, 365, 696, 696, 696, 696, 696, 696,
        696, 696, 696, 696, 400, 400, 838, 838, 838, 580, 1000, 774, 762, 734, 830, 683, 683, 821, 837, 372, 372, 775,
        637, 995, 837, 850, 733, 850, 770, 720, 682, 812, 774, 1103, 771, 724, 725, 457, 365, 457, 838, 500, 500, 675,
        716, 593, 716, 678, 435, 716, 712, 343, 343, 665, 343, 1042, 712, 687, 716, 716, 493, 595, 478, 712, 652, 924,
        645, 652, 582, 712, 365, 712, 838,
    ];

    /// <summary>The width of a text, in the unit of the type size.</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">The type size.</param>
    /// <param name="bold">Whether it is set bold.</param>
    public static double Of(string text, double size, bool bold = false)
    {
        short[] table = bold ? _bold : _regular;
        int sum = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            int index = rune.Value - First;
            // CJK and symbols can be a full type size wide, or a little more.
            sum += index >= 0 && index < table.Length
                ? table[index]
                : rune.Value switch { 0xB0 => 500, > 0x2FFF or 0xFFFD => 1120, _ => Other };
        }

        return sum * size / 1000.0;
    }

    /// <summary>Cuts a text to a width, with an ellipsis where something was cut.</summary>
    public static string Fit(string text, double width, double size, bool bold = false)
    {
        if (Of(text, size, bold) <= width)
            return text;

        var kept = new StringBuilder();
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (Of(kept.ToString() + rune + "…", size, bold) > width)
                break;
            kept.Append(rune.ToString());
        }

        return kept.ToString().TrimEnd() + "…";
    }

    /// <summary>Breaks a text into lines between words (inside a word only where one is wider than a line); what is
    /// left over after the last line is cut with an ellipsis.</summary>
    public static IReadOnlyList<string> Wrap(string text, double width, double size, int lines, bool bold = false)
    {
        var result = new List<string>();
        string rest = text.Trim();
        while (rest.Length > 0 && result.Count < lines - 1 && Of(rest, size, bold) > width)
        {
            int cut = LongestStart(rest, width, size, bold);
            int space = rest.LastIndexOf(' ', Math.Min(cut, rest.Length - 1));
            // Break inside a word only if that word alone fills the line.
            int at = space > 0 ? space : cut;
            result.Add(rest[..at].TrimEnd());
            rest = rest[at..].TrimStart();
        }

        if (rest.Length > 0)
            result.Add(Fit(rest, width, size, bold));
        return result;
    }

    private static int LongestStart(string text, double width, double size, bool bold)
    {
        int length = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            int next = length + rune.Utf16SequenceLength;
            if (Of(text[..next], size, bold) > width && length > 0)
                return length;
            length = next;
        }

        return length;
    }
}
