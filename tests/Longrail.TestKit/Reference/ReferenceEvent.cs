using Longrail.Physics.Equipment;
using Longrail.Physics.Motion;

namespace Longrail.TestKit.Reference;

/// <summary>A contact that the reference integrator found.</summary>
/// <param name="Time">When it began, seconds.</param>
/// <param name="Duration">How long it lasted, seconds.</param>
/// <param name="Ball">The ball.</param>
/// <param name="Other">The other ball, or null at a cushion.</param>
/// <param name="Cushion">The cushion, or null between balls.</param>
/// <param name="Before">State of the ball before.</param>
/// <param name="After">State of the ball after.</param>
public sealed record ReferenceEvent(
    double Time, double Duration, int Ball, int? Other, CushionName? Cushion, BallState Before, BallState After);
