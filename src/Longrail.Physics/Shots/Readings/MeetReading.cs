namespace Longrail.Physics.Shots.Readings;

/// <summary>Two balls meeting, in the trade's terms.</summary>
/// <param name="CutDegrees">Angle from the striker's path (relative to the struck ball) to the line of centres,
/// degrees: positive cuts the struck ball to the left.</param>
/// <param name="HitFraction">How full the hit is: 1 - sin|cut|; 1 is full, 0.5 half a ball, 0 a miss by
/// nothing.</param>
/// <param name="ThrowDegrees">Direction of the impulse on the struck ball minus the line of centres, positive to the
/// left, degrees.</param>
/// <param name="ClosingSpeed">Closing speed along the line of centres, m/s.</param>
/// <param name="SlipSpeed">Speed of one surface over the other at the contact, m/s.</param>
/// <param name="Gripped">Whether the surfaces stopped slipping during the contact (throw is then at its limit).</param>
/// <param name="StrikerRollRatio">R w / v of the striker on arrival, along its way.</param>
/// <param name="StrikerSide">The striker's side on arrival as a tip offset b/R (0.4 R w_z / v): positive is right
/// side.</param>
/// <param name="SideHandedOver">The change of the struck ball's side as a tip offset b/R at its speed after the hit:
/// positive is right side.</param>
/// <param name="StruckSpeed">Speed of the struck ball afterwards, m/s.</param>
/// <param name="StrikerSpeed">Speed of the striker afterwards, m/s.</param>
public sealed record MeetReading(
    double CutDegrees, double HitFraction, double ThrowDegrees, double ClosingSpeed, double SlipSpeed, bool Gripped,
    double StrikerRollRatio, double StrikerSide, double SideHandedOver, double StruckSpeed, double StrikerSpeed);
