namespace Longrail.Coaching.Ways.Search;

/// <summary>A window of a route at a node of the grid.</summary>
/// <param name="Route">The route.</param>
/// <param name="Node">The node.</param>
/// <param name="Window">The window.</param>
internal readonly record struct RouteWindow(RouteKey Route, GridNode Node, AimWindow Window);
