namespace Longrail.Drawing.Svg;

/// <summary>How a text is set.</summary>
/// <param name="Size">Type size, sheet units.</param>
/// <param name="Colour">Colour, "#rrggbb".</param>
/// <param name="Bold">Whether it is bold.</param>
/// <param name="Anchor">Which part of it stands at its point.</param>
public readonly record struct TextStyle(
    double Size, string Colour, bool Bold = false, TextAnchor Anchor = TextAnchor.Start);
