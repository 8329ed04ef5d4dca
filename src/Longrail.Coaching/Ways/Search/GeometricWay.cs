using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Ways.Search;

/// <summary>A route as plain geometry draws it.</summary>
/// <param name="Route">The route.</param>
/// <param name="CueBall">Corners of the cue ball's way, to the ghost ball.</param>
/// <param name="ObjectBall">Corners of the object ball's way, to the middle of the pocket's mouth.</param>
/// <param name="Cut">The cut, radians, without its side.</param>
internal sealed record GeometricWay(RouteKey Route, Vec2[] CueBall, Vec2[] ObjectBall, double Cut);
