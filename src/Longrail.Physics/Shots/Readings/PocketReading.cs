namespace Longrail.Physics.Shots.Readings;

/// <summary>A ball going down, in the trade's terms.</summary>
/// <param name="EntryAngleDegrees">Angle between the ball's way at the mouth and the pocket's axis, degrees, positive
/// when it comes from the right of the axis as seen from the table looking into the pocket.</param>
/// <param name="EntryOffsetMillimetres">Where the centre crosses the mouth line: distance from its middle, positive to
/// the right as seen from the table looking into the pocket.</param>
/// <param name="MarginMillimetres">Clear space between the ball and the nearer jaw point at the mouth line; negative if
/// it could only pass by touching a jaw.</param>
/// <param name="Speed">Speed as it drops, m/s.</param>
/// <param name="JawTouches">How often it touched this pocket's jaws since its last other contact.</param>
public sealed record PocketReading(
    double EntryAngleDegrees, double EntryOffsetMillimetres, double MarginMillimetres, double Speed, int JawTouches);
