namespace Longrail.Physics.Shots.Readings;

/// <summary>A rebound off a cushion, in the trade's terms. Angles are from the cushion's normal, degrees, 0 straight
/// in, never negative on the way in; a negative way out means that the ball came back on the side it came
/// from.</summary>
/// <param name="AngleInDegrees">Angle on arrival.</param>
/// <param name="AngleOutDegrees">Angle on leaving the rubber.</param>
/// <param name="AngleAfterCurveDegrees">Angle once the cloth has brought the ball to rolling (if nothing else is met
/// before).</param>
/// <param name="SpeedIn">Speed on arrival, m/s.</param>
/// <param name="SpeedOut">Speed on leaving the rubber, m/s.</param>
/// <param name="SpeedAfterCurve">Speed once the ball rolls, m/s.</param>
/// <param name="TouchDiamonds">Where the ball's centre stands at the touch, in diamonds along this cushion (along: from
/// the head; across: from the right).</param>
/// <param name="LeaveDiamonds">Where it stands as it leaves the rubber.</param>
/// <param name="LandingCushion">The cushion whose line the ball's centre reaches next ("head", "foot", "left",
/// "right"), or null if it stops, meets a ball or drops before, and after a jaw.</param>
/// <param name="LandingDiamonds">Where it reaches that line, in diamonds along it.</param>
/// <param name="MirrorLandingDiamonds">Where a ball leaving the touch point at the angle at which it came in would
/// reach that line.</param>
/// <param name="LongOfMirrorDiamonds">By how much the rebound lands longer than the mirror, in diamonds of that line:
/// positive is long, negative short.</param>
/// <param name="RollRatioIn">R w / v along the way on arrival: 1 rolling, 0 skidding without spin.</param>
/// <param name="SideIn">Side on arrival as a tip offset b/R (0.4 R w_z / v): positive is running side, negative
/// reverse.</param>
/// <param name="SideOut">Side on leaving as a tip offset b/R at the speed out: positive turns the same way as running
/// side did.</param>
/// <param name="DepthMillimetres">How deep the ball sank into the rubber.</param>
/// <param name="StripeTurnDegrees">How far the ball has turned since its last contact.</param>
/// <param name="StripeOffSlideDegrees">Tilt of the ball's stripe axis against where a pure slide would have left it;
/// null without a stripe.</param>
/// <param name="StripeOffRollDegrees">Tilt of the ball's stripe axis against where a pure roll would have brought it;
/// null without a stripe.</param>
public sealed record CushionReading(
    double AngleInDegrees, double AngleOutDegrees, double AngleAfterCurveDegrees,
    double SpeedIn, double SpeedOut, double SpeedAfterCurve,
    double TouchDiamonds, double LeaveDiamonds,
    string? LandingCushion, double? LandingDiamonds, double? MirrorLandingDiamonds, double? LongOfMirrorDiamonds,
    double RollRatioIn, double SideIn, double SideOut, double DepthMillimetres,
    double StripeTurnDegrees, double? StripeOffSlideDegrees, double? StripeOffRollDegrees);
