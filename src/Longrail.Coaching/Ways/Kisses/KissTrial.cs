namespace Longrail.Coaching.Ways.Kisses;

/// <summary>How one stroke went.</summary>
/// <param name="Makes">Whether it makes the ball by the route, without a kiss.</param>
/// <param name="Kisses">Whether cue ball and object ball meet again.</param>
/// <param name="Gap">How near they come to that, metres; 0 for a kiss; null if they never meet or never part.</param>
/// <param name="Cut">The cut, radians, positive to the left.</param>
internal readonly record struct KissTrial(bool Makes, bool Kisses, double? Gap, double Cut)
{
    /// <summary>Whether it makes the ball with room to spare.</summary>
    public bool Clears(double clearance) => Makes && Gap >= clearance;
}
