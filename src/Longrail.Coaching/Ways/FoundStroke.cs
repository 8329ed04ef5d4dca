using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Ways;

/// <summary>A stroke that makes the ball by a route, as the search found it.</summary>
/// <param name="Stroke">The stroke.</param>
/// <param name="Leeway">How far it may be off.</param>
public sealed record FoundStroke(Stroke Stroke, Leeway Leeway);
