using Longrail.Physics.Equipment;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Drawing.Sheets;

/// <summary>What the inset of the ball's face seen along the stick shows.</summary>
/// <param name="Reading">The stroke.</param>
/// <param name="Cue">The cue and its tip.</param>
/// <param name="BallRadius">The ball's radius, metres.</param>
internal sealed record TipView(TipReading Reading, CueSpec Cue, double BallRadius)
{
    /// <summary>Offset of the contact, in ball radii, that a shift of the shaft by an eighth of the tip's width makes:
    /// the dome of the tip touches nearer to the centre than the shaft's axis stands.</summary>
    internal double EighthTip => Cue.TipDiameter / 8 / (BallRadius + Cue.TipRadius);
}
