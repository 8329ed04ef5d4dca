namespace Longrail.Drawing.Svg;

/// <summary>A line: its colour, width and dashes.</summary>
/// <param name="Colour">Colour, "#rrggbb".</param>
/// <param name="Width">Width, sheet units (tenths of a millimetre), positive.</param>
/// <param name="Dash">Dash lengths as SVG writes them, or null for a full line.</param>
public readonly record struct Pen(string Colour, double Width, string? Dash = null);
