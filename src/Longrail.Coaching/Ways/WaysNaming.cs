using Longrail.Coaching.Ways.Words;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways;

/// <summary>Gives a way its name, for which its stroke is played once.</summary>
internal static class WaysNaming
{
    /// <summary>The way with its words filled in.</summary>
    internal static Way Named(WaysQuestion question, Way way) => way with
    {
        Words = WayWords.Of(way.Route, way.Cut, IsDirectBank(way.Route) ? IsCrossing(question, way) : null),
    };

    // Of a kick, or after many cushions, nobody says natural or crossing.
    private static bool IsDirectBank(WayRoute route) => route.CueBall.Count == 0 && route.ObjectBall.Count is 1 or 2;

    private static bool? IsCrossing(WaysQuestion question, Way way)
    {
        ShotEvent? hit = WayShot.Of(question.Request, way.Stroke.Stroke).Events.FirstOrDefault(e =>
            e.Kind == ShotEventKind.BallsMeet && (e.BallA == question.ObjectBall || e.BallB == question.ObjectBall));
        if (hit is null)
            return null;
        bool isStriker = hit.BallA == question.CueBall;
        Vec2 cue = isStriker ? hit.BeforeA.Velocity : hit.BeforeB!.Value.Velocity;
        Vec2 ball = isStriker ? hit.AfterB!.Value.Velocity : hit.AfterA.Velocity;
        return WayWords.IsCrossing(cue, ball, way.Route.ObjectBall[0]);
    }
}
