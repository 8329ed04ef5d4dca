using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Ways.Kisses;

/// <summary>A way round a double kiss: one thing changed, the ball still made.</summary>
/// <param name="Change">What is changed.</param>
/// <param name="Amount">By how much: radians of cut (positive to the left), m/s of speed (positive faster), metres of
/// side (positive to the right) or height (positive up) where tip and ball touch; 0 for another route.</param>
/// <param name="Cost">How big the change is, in steps that a student is told: an eighth of a ball in the hit, a quarter
/// of the speed, a quarter of a tip; another route costs as much as three of them.</param>
/// <param name="Stroke">The stroke that does it.</param>
/// <param name="Route">The route that it goes by.</param>
/// <param name="Gap">The kiss gap then, metres.</param>
public sealed record KissEscape(
    KissChange Change, double Amount, double Cost, Stroke Stroke, WayRoute Route, double Gap);
