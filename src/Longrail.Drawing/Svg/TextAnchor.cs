namespace Longrail.Drawing.Svg;

/// <summary>Which part of a text stands at its point.</summary>
public enum TextAnchor
{
    /// <summary>Its beginning.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
