using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.TestKit.Reference;

/// <summary>What the reference integrator found.</summary>
/// <param name="Duration">When all was still, or the time limit, seconds.</param>
/// <param name="Events">Contacts in the order in which they ended.</param>
/// <param name="SampleTimes">Times of the recorded states, seconds.</param>
/// <param name="Samples">States at those times, by time and ball.</param>
/// <param name="Orientations">Orientations at those times, by time and ball.</param>
/// <param name="Final">States at the end.</param>
public sealed record ReferenceRun(
    double Duration,
    IReadOnlyList<ReferenceEvent> Events,
    IReadOnlyList<double> SampleTimes,
    IReadOnlyList<IReadOnlyList<BallState>> Samples,
    IReadOnlyList<IReadOnlyList<Rotation>> Orientations,
    IReadOnlyList<BallState> Final);
