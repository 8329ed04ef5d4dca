using Longrail.Physics.Contacts;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Ways.Search;

/// <summary>Says why a route that geometry offers has no stroke.</summary>
/// <remarks>
/// In this order: it makes the ball and scratches at every stroke that was seen; another ball stands within a ball's
/// width of the cue ball's line, or of the object ball's; the cut is thinner than is looked for; otherwise a fan of
/// centre-ball strokes about the geometric aim is played at a soft, a middling and the hardest speed, and what goes
/// wrong most often is the reason. Running out of speed counts at the hardest speed only.
/// </remarks>
internal sealed class NoWayFinder(WaySearchRequest request, StrokeGrid grid)
{
    /// <summary>The fan: steps to either side, and their size in the object ball's direction, radians.</summary>
    private const int Steps = 4;

    private const double Step = 2 * SearchResolution.Degree;

    private readonly double _touching = BallContact.Reach(
        request.Setup.Balls[request.CueBall].Radius, request.Setup.Balls[request.ObjectBall].Radius);

    internal NoWay Of(GeometricWay way, bool scratches, StrokePlayer player)
    {
        WayRoute route = way.Route.ToRoute();
        if (scratches) return new NoWay(route, NoWayReason.Scratch);
        if (InTheWay(way.CueBall, request.CueBall) is { } first && way.Cut < Math.PI / 2)
            return new NoWay(route, NoWayReason.CueBallBlocked, request.BallNames[first]);
        if (InTheWay(way.ObjectBall, request.ObjectBall) is { } second)
            return new NoWay(route, NoWayReason.ObjectBallBlocked, request.BallNames[second]);
        if (way.Cut > Math.Asin(SearchResolution.Thinnest)) return new NoWay(route, NoWayReason.TooThin);
        return Vote(way, route, player);
    }

    /// <summary>The first ball that a way runs into, apart from the two that play.</summary>
    private int? InTheWay(Vec2[] corners, int moving)
    {
        for (int leg = 0; leg + 1 < corners.Length; leg++)
        {
            Vec2 way = corners[leg + 1] - corners[leg];
            double length = way.Length;
            int? nearest = null;
            double nearestAlong = double.PositiveInfinity;
            for (int i = 0; i < request.Setup.Balls.Count; i++)
            {
                if (i == request.CueBall || i == request.ObjectBall) continue;
                Vec2 to = request.Setup.Balls[i].Start.Position - corners[leg];
                double along = length > 0 ? Math.Clamp(to.Dot(way) / length, 0, length) : 0;
                Vec2 foot = corners[leg] + (length > 0 ? along / length : 0) * way;
                double reach = BallContact.Reach(request.Setup.Balls[moving].Radius, request.Setup.Balls[i].Radius);
                if (request.Setup.Balls[i].Start.Position.DistanceTo(foot) >= reach || along >= nearestAlong) continue;
                nearest = i;
                nearestAlong = along;
            }

            if (nearest is not null) return nearest;
        }

        return null;
    }

    private NoWay Vote(GeometricWay way, WayRoute route, StrokePlayer player)
    {
        var votes = new SortedDictionary<(NoWayReason Reason, int Ball), int>();
        double[] speeds = [grid.Speeds[1], grid.Speeds[grid.Speeds.Length / 2], grid.Speeds[^1]];
        foreach (double speed in speeds)
        {
            for (int i = -Steps; i <= Steps; i++)
            {
                SeenShot shot = player.Play(new Stroke(Aim(way, i), speed, 0, 0, request.Elevation));
                NoWayReason reason = Reason(way.Route, shot);
                if (reason == NoWayReason.RunsOutOfSpeed && speed < speeds[^1]) continue;
                (NoWayReason, int) key = (reason, shot.Other);
                votes[key] = votes.GetValueOrDefault(key) + 1;
            }
        }

        // Equal counts go to the reason that comes first.
        ((NoWayReason found, int ball), _) = votes.MaxBy(vote => vote.Value);
        bool names = found is NoWayReason.CueBallBlocked or NoWayReason.ObjectBallBlocked;
        return new NoWay(route, found, names ? request.BallNames[ball] : null);
    }

    /// <summary>The aim that sends the object ball so many steps beside the geometric line.</summary>
    private double Aim(GeometricWay way, int steps)
    {
        Vec2 first = way.CueBall[1] - way.CueBall[0];
        if (first == Vec2.Zero) return (way.ObjectBall[1] - way.ObjectBall[0]).Angle + steps * Step;
        double distance = 0;
        for (int i = 0; i + 1 < way.CueBall.Length; i++) distance += way.CueBall[i + 1].DistanceTo(way.CueBall[i]);
        // A ghost ball moved round the object ball by an angle is moved across the way by the touching distance times
        // that angle.
        return first.Angle + steps * Step * _touching * Math.Cos(way.Cut) / Math.Max(distance, _touching);
    }

    private static NoWayReason Reason(RouteKey route, in SeenShot shot) => shot.Fate switch
    {
        ShotFate.OtherBallFirst => NoWayReason.CueBallBlocked,
        ShotFate.CueBallStops => NoWayReason.RunsOutOfSpeed,
        ShotFate.DoubleKiss => NoWayReason.DoubleKiss,
        ShotFate.ObjectBallMeetsOther => NoWayReason.ObjectBallBlocked,
        ShotFate.ObjectBallStops when shot.EdgeCount <= shot.AllTouched.Count
            && shot.AllTouched == route.ObjectBall.First(shot.AllTouched.Count) => NoWayReason.RunsOutOfSpeed,
        ShotFate.Scratch when shot.Route == route => NoWayReason.Scratch,
        _ => shot.Met && Math.Abs(shot.Offset) > SearchResolution.Thinnest
            ? NoWayReason.TooThin
            : NoWayReason.DoesNotLeadThere,
    };
}
