using System.Text;

namespace Longrail.Drawing.Svg;

/// <summary>Makes any text safe to stand in a picture.</summary>
public static class SvgText
{
    /// <summary>Escapes for XML, and replaces what XML 1.0 forbids (control characters, lone surrogates) and what could
    /// turn the reading order of the rest (bidirectional controls) by U+FFFD. Line breaks and tabs become
    /// spaces.</summary>
    public static string Escape(string text)
    {
        var result = new StringBuilder(text.Length + 16);
        foreach (Rune rune in Clean(text).EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '&': result.Append("&amp;"); break;
                case '<': result.Append("&lt;"); break;
                case '>': result.Append("&gt;"); break;
                case '"': result.Append("&quot;"); break;
                default: result.Append(rune.ToString()); break;
            }
        }

        return result.ToString();
    }

    /// <summary>The text with everything replaced that cannot stand in a picture, not yet escaped.</summary>
    public static string Clean(string text)
    {
        var result = new StringBuilder(text.Length);
        // EnumerateRunes already turns a lone surrogate into U+FFFD.
        foreach (Rune rune in text.EnumerateRunes())
        {
            int c = rune.Value;
            if (c is '\t' or '\n' or '\r')
                result.Append(' ');
            else if (c < 0x20 || c is >= 0x7F and <= 0x9F || IsDirectional(c) || (c & 0xFFFE) == 0xFFFE)
                result.Append('\uFFFD');
            else
                result.Append(rune.ToString());
        }

        return result.ToString();
    }

    private static bool IsDirectional(int c) =>
        c is 0x200E or 0x200F or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);
}
