namespace Longrail.Coaching.Players;

/// <summary>How far a player's strokes stray from what was meant: standard deviations of independent normal
/// errors.</summary>
/// <remarks>The presets are assumptions, stated in docs/sources.md; a player file replaces them by what was
/// measured.</remarks>
/// <param name="Name">What the player is called; a pseudonym will do.</param>
/// <param name="Aim">Direction of the stick, radians, not negative.</param>
/// <param name="Speed">Speed as a part of the speed meant, not negative, below 1.</param>
/// <param name="TipAcross">Where tip and ball touch, to the side, metres, not negative.</param>
/// <param name="TipUp">Where tip and ball touch, up and down, metres, not negative.</param>
/// <param name="Elevation">Angle of the stick to the bed, radians, not negative.</param>
public sealed record Player(
    string Name, double Aim, double Speed, double TipAcross, double TipUp, double Elevation);
