namespace Longrail.Coaching.Trials;

/// <summary>One of a player's strokes, as it would be written down.</summary>
/// <param name="Landing">Metres along the target cushion; NaN where there is none.</param>
/// <param name="Speed">The cue ball's speed as it was read, m/s.</param>
/// <param name="Made">Whether the ball went down where it should.</param>
internal readonly record struct SimulatedShot(double Landing, double Speed, bool Made);
