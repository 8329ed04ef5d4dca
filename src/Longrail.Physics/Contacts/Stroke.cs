namespace Longrail.Physics.Contacts;

/// <summary>A stroke: where the stick points, how fast, and where tip and ball touch.</summary>
/// <param name="Aim">Direction of the stick seen from above, radians counter-clockwise from +x. Squirt turns the ball
/// away from it.</param>
/// <param name="Speed">Speed of the ball over the cloth as it leaves the tip, m/s, positive.</param>
/// <param name="OffsetRight">Offset of the point of contact to the right of the ball's centre, seen along the stick,
/// metres.</param>
/// <param name="OffsetAbove">Offset of the point of contact above the ball's centre, square to the stick,
/// metres.</param>
/// <param name="Elevation">How far the butt is raised: angle of the stick to the bed, radians, in [0, pi/2).</param>
public readonly record struct Stroke(double Aim, double Speed, double OffsetRight, double OffsetAbove, double Elevation);
