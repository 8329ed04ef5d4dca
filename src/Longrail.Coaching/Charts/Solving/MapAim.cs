using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Charts.Solving;

/// <summary>How a bank is aimed from a place at a speed.</summary>
/// <param name="Failure">None, or why it cannot be.</param>
/// <param name="Stroke">The stroke, aimed at the middle of what makes the bank.</param>
/// <param name="Leeway">How far its aim may be off either way, radians.</param>
internal readonly record struct MapAim(NoBank Failure, Stroke Stroke, double Leeway)
{
    internal static MapAim Failed(NoBank failure) => new(failure, default, 0);
}
