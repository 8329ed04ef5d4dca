namespace Longrail.Drawing.Svg;

/// <summary>Paper, pencil and type of every sheet.</summary>
public static class Ink
{
    /// <summary>Warm white paper.</summary>
    public const string Paper = "#fbf8f1";

    /// <summary>The bed, a shade lighter than the paper.</summary>
    public const string Bed = "#fefcf7";

    /// <summary>The wood of the rails, a shade darker than the paper.</summary>
    public const string Rail = "#f3eddf";

    /// <summary>A hole.</summary>
    public const string Hole = "#d5cebf";

    /// <summary>Pencil, pressed.</summary>
    public const string Graphite = "#2b2a28";

    /// <summary>Pencil, light: secondary lines and words. Contrast with the paper above 5 : 1.</summary>
    public const string Soft = "#66625a";

    /// <summary>Pencil, hardly touching: hatching, grids.</summary>
    public const string Faint = "#b5ae9f";

    /// <summary>A ghost of something drawn elsewhere.</summary>
    public const string Ghost = "#cbc4b4";

    /// <summary>Width of outlines.</summary>
    public const double Wide = 5.0;

    /// <summary>Width of paths.</summary>
    public const double Medium = 3.8;

    /// <summary>Width of thin lines.</summary>
    public const double Thin = 2.2;

    /// <summary>Width of hatching and grids.</summary>
    public const double Fine = 1.2;

    /// <summary>Type size of headings: 3.8 mm, 11 points.</summary>
    public const double Heading = 38;

    /// <summary>Type size of running text: 2.7 mm, 7.7 points.</summary>
    public const double Body = 27;

    /// <summary>Type size of the smallest text: 2.3 mm, 6.5 points.</summary>
    public const double Small = 23;

    /// <summary>From the middle of a capital to its base line, as a part of the type size.</summary>
    public const double HalfCapital = 0.365;

    /// <summary>Colours that stay apart for all kinds of colour vision, in the order in which they are used.</summary>
    /// <remarks>Source: M. Okabe, K. Ito, Color Universal Design (2002, revised 2008), jfly.uni-koeln.de/color. Their
    /// yellow is left out: too pale for a line on white paper; black is the paper's own graphite.</remarks>
    public static IReadOnlyList<string> Colours { get; } =
        ["#0072b2", "#d55e00", "#009e73", "#cc79a7", "#e69f00", "#56b4e9"];
}
