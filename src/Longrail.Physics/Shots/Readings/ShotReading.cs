namespace Longrail.Physics.Shots.Readings;

/// <summary>The shot as a whole, in the trade's terms.</summary>
/// <param name="StruckBall">Index of the ball that moved first (the cue ball), or null if none did.</param>
/// <param name="FirstBallHit">Index of the first other ball that it touched (the object ball), or null.</param>
/// <param name="KissGapMillimetres">Least clear distance between cue ball and object ball after they part for the first
/// time; 0 if they meet again (a double kiss); null if they never met.</param>
/// <param name="KissGapTime">When that is, seconds.</param>
/// <param name="DoubleKiss">Whether the two met again.</param>
/// <param name="Cautions">What an instructor should be warned of, in whole sentences; empty as a rule.</param>
public sealed record ShotReading(
    int? StruckBall, int? FirstBallHit, double? KissGapMillimetres, double? KissGapTime, bool DoubleKiss,
    IReadOnlyList<string> Cautions);
