namespace Longrail.Coaching.Ways;

/// <summary>A route that can be played, with the strokes that play it: what the search hands on to the odds.</summary>
/// <param name="Route">The route.</param>
/// <param name="Strokes">Strokes that differ in speed or tip, the one with the most leeway for its player first; at
/// least one.</param>
/// <param name="Windows">Every range of aims that the search saw make the ball by this route, at the speeds and tip
/// positions of its grid: the making region.</param>
public sealed record FoundWay(
    WayRoute Route, IReadOnlyList<FoundStroke> Strokes, IReadOnlyList<AimWindow> Windows);
