using Longrail.Physics.Equipment;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <summary>How a ball ended.</summary>
/// <param name="Phase">At rest, pocketed, or still moving when the run was ended early.</param>
/// <param name="State">Its last state; for a pocketed ball, as it dropped.</param>
/// <param name="Pocket">The pocket, if it dropped.</param>
public readonly record struct BallEnd(MotionPhase Phase, BallState State, PocketName? Pocket);
