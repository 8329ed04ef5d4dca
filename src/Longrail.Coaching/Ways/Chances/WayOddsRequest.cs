using Longrail.Coaching.Players;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>What the odds of a way depend on, besides the way.</summary>
/// <param name="Setup">Equipment and balls at rest.</param>
/// <param name="CueBall">Index of the cue ball.</param>
/// <param name="ObjectBall">Index of the ball to make.</param>
/// <param name="NextBall">Index of the ball to play next, or null.</param>
/// <param name="BallNames">Names of the balls, in the order of the set-up.</param>
/// <param name="Player">Whose errors.</param>
/// <param name="Seed">Seed of the random strokes. The strokes of a way depend on it and on the route, on nothing
/// else.</param>
/// <param name="Shots">How many strokes the odds are counted from, positive; 400 give an interval of about 5 percent
/// either way.</param>
/// <param name="Elevation">Angle of the stick to the bed on the next shot, radians.</param>
public sealed record WayOddsRequest(
    ShotSetup Setup, int CueBall, int ObjectBall, int? NextBall, IReadOnlyList<string> BallNames, Player Player,
    ulong Seed, int Shots, double Elevation);
