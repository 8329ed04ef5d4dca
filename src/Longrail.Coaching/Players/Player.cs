namespace Longrail.Coaching.Players;

/// <summary>How far a player's strokes stray from what was meant: standard deviations of independent normal
/// errors.</summary>
/// <remarks>The presets are assumptions, stated in docs/sources.md; a player file replaces them by what was
/// measured.</remarks>
/// <param name="Name">What the player is called; a pseudonym will do.</param>
/// <param name="Aim">Direction of the stick, radians, not negative; of a soft stroke.</param>
/// <param name="Speed">Speed as a part of the speed meant, not negative, below 1.</param>
/// <param name="TipAcross">Where tip and ball touch, to the side, metres, not negative; of a soft
/// stroke.</param>
/// <param name="TipUp">Where tip and ball touch, up and down, metres, not negative; of a soft stroke.</param>
/// <param name="Elevation">Angle of the stick to the bed, radians, not negative.</param>
/// <param name="HardStroke">The ball speed at which a stroke is hard for this player, m/s, positive: aim and tip then
/// stray by a root of two as much as on a soft stroke, and more beyond (<see cref="Growth"/>). Infinity for a player
/// who hits as straight at any speed.</param>
public sealed record Player(
    string Name, double Aim, double Speed, double TipAcross, double TipUp, double Elevation,
    double HardStroke = Player.UsualHardStroke)
{
    /// <summary>Where a stroke is hard for most, m/s: a firm bank, nine miles an hour (assumption).</summary>
    public const double UsualHardStroke = 4.0;

    /// <summary>How much more aim and tip stray on a stroke than on a soft one: sqrt(1 + (v / HardStroke)^2), two
    /// independent errors of which one grows with the speed. The form is an assumption, as is
    /// the usual size.</summary>
    /// <param name="speed">The ball's speed as it leaves the tip, m/s.</param>
    public double Growth(double speed) => Math.Sqrt(1 + speed * speed / (HardStroke * HardStroke));
}
