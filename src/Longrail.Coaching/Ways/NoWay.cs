namespace Longrail.Coaching.Ways;

/// <summary>A route that cannot be played, and why.</summary>
/// <param name="Route">The route.</param>
/// <param name="Reason">Why not.</param>
/// <param name="Ball">The ball in the way, where that is the reason.</param>
public sealed record NoWay(WayRoute Route, NoWayReason Reason, string? Ball = null);
