using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Charts.Solving;

/// <summary>How one trial of a bank went.</summary>
/// <param name="Failure">What went wrong before it could arrive; none if it did, or would have.</param>
/// <param name="Offset">How far from the middle it crosses its line of arrival, metres, positive to the right; null
/// with a failure.</param>
/// <param name="Touch">The ball's centre at its touch, metres.</param>
/// <param name="Incoming">Its velocity there, m/s.</param>
/// <param name="Reached">Whether it really gets there, or only its line does.</param>
/// <param name="Dropped">Whether it went down.</param>
internal readonly record struct Arrival(
    NoBank Failure, double? Offset, Vec2 Touch, Vec2 Incoming, bool Reached, bool Dropped)
{
    internal static Arrival Failed(NoBank failure) => new(failure, null, default, default, false, false);
}
