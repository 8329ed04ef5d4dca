using Longrail.Coaching.Statistics;
using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Ways;

/// <summary>The shot on the next ball from where the cue ball stops.</summary>
/// <param name="Pocket">The pocket it would most often be played to.</param>
/// <param name="Cut">The cut from the mean place, radians, positive to the left; null when no straight pot is open
/// from there.</param>
/// <param name="Odds">The chance to pot it, over the places where the cue ball stops.</param>
/// <param name="Plan">The chance of the whole plan: made, no scratch, and the next ball potted, as a share.</param>
public sealed record NextShot(PocketName? Pocket, double? Cut, Odds Odds, double Plan);
