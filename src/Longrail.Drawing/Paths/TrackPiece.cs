using Longrail.Physics.Motion;

namespace Longrail.Drawing.Paths;

/// <summary>A stretch of a ball's way in one phase of motion, as points close enough together to be joined by straight
/// lines.</summary>
/// <param name="Phase">How the ball moves.</param>
/// <param name="Start">When it begins, seconds.</param>
/// <param name="End">When it ends, seconds.</param>
/// <param name="Points">Points on it, at least two, the first at the start and the last at the end.</param>
internal sealed record TrackPiece(MotionPhase Phase, double Start, double End, IReadOnlyList<TablePoint> Points);
