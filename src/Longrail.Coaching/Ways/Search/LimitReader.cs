using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Ways.Search;

/// <summary>Says why a shot does not make the ball by a route.</summary>
/// <param name="rules">The layout.</param>
/// <param name="names">The balls' names.</param>
internal sealed class LimitReader(RouteRules rules, IReadOnlyList<string> names)
{
    /// <summary>Farther from the pocket than this along the edge it is not the jaw that turned the ball away, metres:
    /// six balls or so.</summary>
    private const double JawReach = 0.35;

    internal (LeewayLimit Limit, string? Ball) Of(RouteKey route, in SeenShot shot)
    {
        switch (shot.Fate)
        {
            case ShotFate.OtherBallFirst or ShotFate.ObjectBallMeetsOther:
                return (LeewayLimit.OtherBall, names[shot.Other]);
            case ShotFate.DoubleKiss:
                return (LeewayLimit.DoubleKiss, null);
            case ShotFate.Scratch when shot.Route == route:
                return (LeewayLimit.Scratch, null);
            case ShotFate.CueBallStops:
                return (LeewayLimit.TooSlow, null);
            case ShotFate.ObjectBallStops when shot.EdgeCount <= shot.AllTouched.Count:
                return (LeewayLimit.TooSlow, null);
        }

        if (!shot.Met) return (LeewayLimit.MissedBall, null);
        int rails = route.ObjectBall.Count;
        bool sameWay = shot.CueBall == route.CueBall && shot.AllTouched.CommonWith(route.ObjectBall) == rails;
        if (!sameWay || shot.EdgeCount <= rails) return (LeewayLimit.OtherCushion, null);
        double past = rules.Edge.From(rules.Edge.Place(route.Pocket), shot.Edge[rails]);
        if (Math.Abs(past) > JawReach) return (LeewayLimit.OtherCushion, null);
        Vec2 from = rails == 0 ? rules.ObjectBallStart : rules.Edge.Point(shot.Edge[rails - 1]);
        Vec2 side = rules.Edge.Point(rules.Edge.Place(route.Pocket) + 0.05 * Math.Sign(past));
        Vec2 otherSide = rules.Edge.Point(rules.Edge.Place(route.Pocket) - 0.05 * Math.Sign(past));
        bool near = from.DistanceTo(side) <= from.DistanceTo(otherSide);
        return (near ? LeewayLimit.NearJaw : LeewayLimit.FarJaw, null);
    }
}
