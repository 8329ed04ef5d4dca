using Longrail.Coaching.Players;
using Longrail.Physics.Contacts;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Kisses;

/// <summary>How can this stroke be changed so that cue ball and object ball do not meet again?</summary>
/// <param name="Setup">Equipment and balls at rest.</param>
/// <param name="CueBall">Index of the cue ball.</param>
/// <param name="ObjectBall">Index of the ball to make.</param>
/// <param name="BallNames">Names of the balls, in the order of the set-up.</param>
/// <param name="Player">Whose stroke; decides between other routes.</param>
/// <param name="Stroke">The stroke that kisses, or comes too near.</param>
/// <param name="Route">The route that it is meant to make the ball by.</param>
/// <param name="Clearance">The gap that is wanted, metres, positive.</param>
/// <param name="Others">Other ways that were found, to change to; may be empty.</param>
public sealed record KissQuestion(
    ShotSetup Setup, int CueBall, int ObjectBall, IReadOnlyList<string> BallNames, Player Player, Stroke Stroke,
    WayRoute Route, double Clearance, IReadOnlyList<FoundWay> Others)
{
    /// <summary>A gap to be content with, metres: half an inch, a quarter of a ball nearly (assumption).</summary>
    public const double UsualClearance = 0.0127;
}
