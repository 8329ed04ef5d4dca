namespace Longrail.Physics.Shots.Aims;

/// <summary>What came of looking for an aim.</summary>
/// <param name="Failure">Why there is none, or <see cref="AimFailure.None"/>.</param>
/// <param name="Aim">Direction of the stick, radians counter-clockwise from +x; meaningful only when found.</param>
/// <param name="InTheWay">Index of the ball in the way, where that is the reason.</param>
/// <param name="ClosestMiss">For a bank that misses: the least distance from the pocket's middle that was found,
/// metres.</param>
public readonly record struct AimSolution(AimFailure Failure, double Aim, int? InTheWay = null, double? ClosestMiss = null)
{
    /// <summary>Whether there is an aim.</summary>
    public bool Found => Failure == AimFailure.None;
}
