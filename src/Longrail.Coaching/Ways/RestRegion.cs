using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Ways;

/// <summary>Where the cue ball stops when the ball is made: mean and the ellipse that holds nine in ten.</summary>
/// <param name="Mean">Mean place, metres.</param>
/// <param name="HalfLength">Longer half-axis, metres.</param>
/// <param name="HalfWidth">Shorter half-axis, metres.</param>
/// <param name="Direction">Direction of the longer axis, radians counter-clockwise from +x.</param>
/// <param name="Places">The places themselves, metres, for the picture; not more than a few hundred.</param>
public sealed record RestRegion(
    Vec2 Mean, double HalfLength, double HalfWidth, double Direction, IReadOnlyList<Vec2> Places);
