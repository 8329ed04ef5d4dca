using Longrail.Coaching.Players;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Search;

/// <summary>What the search is asked for.</summary>
/// <param name="Setup">Equipment and balls. The balls are taken at rest where they stand; a stroke is not
/// looked at.</param>
/// <param name="CueBall">Index of the ball to strike.</param>
/// <param name="ObjectBall">Index of the ball to make; another one.</param>
/// <param name="BallNames">The balls' names, in the order of the set-up.</param>
/// <param name="FewestRails">The fewest cushions of the object ball, from 0.</param>
/// <param name="MostRails">The most cushions of the object ball, to 3.</param>
/// <param name="MostKickRails">The most cushions of the cue ball before it meets the object ball, from 0 to 2.</param>
/// <param name="Pocket">Only this pocket; null for all.</param>
/// <param name="Elevation">How far the butt is raised, radians, in [0, pi/2).</param>
/// <param name="Player">Whose error sizes decide which strokes are best.</param>
/// <param name="Threads">Number of threads, positive; the answer does not depend on it.</param>
public sealed record WaySearchRequest(
    ShotSetup Setup, int CueBall, int ObjectBall, IReadOnlyList<string> BallNames, int FewestRails, int MostRails,
    int MostKickRails, PocketName? Pocket, double Elevation, Player Player, int Threads);
