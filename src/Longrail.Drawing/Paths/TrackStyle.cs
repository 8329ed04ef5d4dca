namespace Longrail.Drawing.Paths;

/// <summary>How a track is drawn.</summary>
/// <param name="Colour">Colour of its lines.</param>
/// <param name="Dash">Dash pattern, or null for full lines.</param>
/// <param name="Width">Width of the single line of a rolling ball, sheet units.</param>
internal readonly record struct TrackStyle(string Colour, string? Dash, double Width);
