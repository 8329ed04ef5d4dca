namespace Longrail.Coaching.Ways;

/// <summary>How far aim, speed and tip may each be off, either way, before the ball is missed.</summary>
/// <param name="AimLeft">Aim turned to the left (counter-clockwise), radians.</param>
/// <param name="AimRight">Aim turned to the right, radians.</param>
/// <param name="Slower">Less speed, m/s.</param>
/// <param name="Faster">More speed, m/s.</param>
/// <param name="TipLeft">Contact farther left, metres.</param>
/// <param name="TipRight">Contact farther right, metres.</param>
/// <param name="TipLower">Contact lower, metres.</param>
/// <param name="TipHigher">Contact higher, metres.</param>
public sealed record Leeway(
    LeewaySide AimLeft, LeewaySide AimRight, LeewaySide Slower, LeewaySide Faster,
    LeewaySide TipLeft, LeewaySide TipRight, LeewaySide TipLower, LeewaySide TipHigher);
