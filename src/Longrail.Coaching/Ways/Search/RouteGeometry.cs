using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Search;

/// <summary>The routes that plain geometry offers: those of which it is worth saying why they cannot be
/// played.</summary>
/// <remarks>
/// A route is offered when the mirror construction leads the object ball over its cushions, each met between its ends,
/// to the middle of the pocket's mouth, and into it at less than <see cref="CornerEntry"/> or <see cref="SideEntry"/>
/// to its axis; and when the cue ball reaches the object ball for it directly, or over its kick cushions by the same
/// construction. A direct hit that would have to be thinner than is possible is offered too, and called too thin. Kicks
/// are offered for straight pots only: a kick and a bank at once is told when it is found, and not missed when it is
/// not. No route ends on a cushion that runs into its pocket.
/// </remarks>
internal sealed class RouteGeometry
{
    /// <summary>Widest angle to a corner pocket's axis: along the cushions, and a little for the jaw,
    /// radians.</summary>
    internal const double CornerEntry = 48 * SearchResolution.Degree;

    /// <summary>The same of a side pocket.</summary>
    internal const double SideEntry = 62 * SearchResolution.Degree;

    private static readonly CushionName[] _cushions = Enum.GetValues<CushionName>();

    private readonly WaySearchRequest _request;
    private readonly PocketOutline[] _pockets;
    private readonly MirrorPath _objectBallPath;
    private readonly MirrorPath _cueBallPath;
    private readonly Vec2 _objectBall;
    private readonly Vec2 _cueBall;
    private readonly double _touching;

    internal RouteGeometry(WaySearchRequest request)
    {
        _request = request;
        EquipmentSpec equipment = request.Setup.Equipment;
        ShotBall cueBall = request.Setup.Balls[request.CueBall];
        ShotBall objectBall = request.Setup.Balls[request.ObjectBall];
        _pockets = new TableOutline(equipment.Table).Pockets;
        double nose = equipment.Cushion.NoseHeight;
        _objectBallPath = new MirrorPath(equipment.Table, TableOutline.Reach(objectBall.Radius, nose));
        _cueBallPath = new MirrorPath(equipment.Table, TableOutline.Reach(cueBall.Radius, nose));
        _objectBall = objectBall.Start.Position;
        _cueBall = cueBall.Start.Position;
        _touching = BallContact.Reach(cueBall.Radius, objectBall.Radius);
    }

    /// <summary>All that are asked for.</summary>
    internal IEnumerable<GeometricWay> Ways(RouteWish wish)
    {
        foreach (PocketName pocket in wish.Pockets)
        {
            foreach (CushionList rails in Lists(_request.FewestRails, _request.MostRails))
            {
                if (ObjectBallWay(rails, pocket) is not { } corners) continue;
                Vec2 out0 = (corners[1] - corners[0]).Normalized();
                Vec2 ghost = _objectBall - _touching * out0;
                int kicks = rails.Count == 0 ? _request.MostKickRails : 0;
                foreach (CushionList kick in Lists(0, kicks))
                {
                    if (_cueBallPath.Of(_cueBall, kick, ghost) is not { } cueBallWay) continue;
                    double cut = Cut(cueBallWay, out0);
                    if (kick.Count > 0 && Math.Sin(cut) > SearchResolution.ThinnestKick) continue;
                    if (kick.Count > 0 && cut > Math.PI / 2) continue;
                    yield return new GeometricWay(new RouteKey(kick, rails, pocket), cueBallWay, corners, cut);
                }
            }
        }
    }

    private Vec2[]? ObjectBallWay(CushionList rails, PocketName pocket)
    {
        PocketOutline outline = _pockets[(int)pocket];
        if (rails.Count > 0 && TableEdge.Borders(rails[rails.Count - 1], pocket)) return null;
        if (_objectBallPath.Of(_objectBall, rails, outline.MouthCentre) is not { } corners) return null;
        double entry = pocket is PocketName.LeftSide or PocketName.RightSide ? SideEntry : CornerEntry;
        Vec2 last = (corners[^1] - corners[^2]).Normalized();
        return last.Dot(outline.Axis) > Math.Cos(entry) ? corners : null;
    }

    /// <summary>The angle between the cue ball's last leg and the object ball's way, radians, from 0 to pi.</summary>
    private static double Cut(Vec2[] cueBallWay, Vec2 out0)
    {
        Vec2 approach = (cueBallWay[^1] - cueBallWay[^2]).Normalized();
        // Frozen balls: the cue ball stands where the ghost ball is, and goes whichever way it is sent.
        return approach == Vec2.Zero ? 0 : Math.Acos(Math.Clamp(approach.Dot(out0), -1, 1));
    }

    /// <summary>All lists of cushions of some lengths, without one twice in a row.</summary>
    private static IEnumerable<CushionList> Lists(int fewest, int most)
    {
        var ofLength = new List<CushionList> { default };
        for (int length = 0; length <= most; length++)
        {
            if (length >= fewest)
            {
                foreach (CushionList list in ofLength) yield return list;
            }

            ofLength = [.. ofLength.SelectMany(list => _cushions.Where(c => !list.EndsWith(c)).Select(list.With))];
        }
    }
}
