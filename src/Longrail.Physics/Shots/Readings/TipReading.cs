namespace Longrail.Physics.Shots.Readings;

/// <summary>A stroke in the trade's terms.</summary>
/// <param name="AimDegrees">Direction of the stick, counter-clockwise from +x (head to foot), degrees.</param>
/// <param name="PathDegrees">Direction in which the ball leaves, degrees.</param>
/// <param name="SquirtDegrees">Path minus stick, positive to the left, degrees.</param>
/// <param name="CueSpeed">Speed of the stick, m/s.</param>
/// <param name="BallSpeed">Speed of the ball, m/s.</param>
/// <param name="OffsetRight">Contact to the right of centre, in ball radii (b/R).</param>
/// <param name="OffsetAbove">Contact above centre, in ball radii (b/R).</param>
/// <param name="ShaftRightTips">The same as a shift of the shaft's axis, in widths of the tip.</param>
/// <param name="ShaftAboveTips">The same upwards, in widths of the tip.</param>
/// <param name="MiscueLimit">Largest offset that this tip holds, in ball radii.</param>
/// <param name="RollRatio">R w / v as the ball leaves: 1 is natural roll, 0 a skid without spin, negative is
/// draw.</param>
/// <param name="SideRatio">R w_z / v as the ball leaves: positive is right side (2.5 times b/R).</param>
public sealed record TipReading(
    double AimDegrees, double PathDegrees, double SquirtDegrees, double CueSpeed, double BallSpeed,
    double OffsetRight, double OffsetAbove, double ShaftRightTips, double ShaftAboveTips, double MiscueLimit,
    double RollRatio, double SideRatio);
