using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Coaching.Ways.Search;

/// <summary>What the watch has to know: which balls, how many cushions, where the pockets are.</summary>
internal sealed class RouteRules
{
    private readonly double[] _halfOpenings = new double[6];
    private readonly bool _hasPockets;

    internal RouteRules(WaySearchRequest request)
    {
        CueBall = request.CueBall;
        ObjectBall = request.ObjectBall;
        MostRails = request.MostRails;
        MostKickRails = request.MostKickRails;
        CueBallStart = request.Setup.Balls[CueBall].Start.Position;
        ObjectBallStart = request.Setup.Balls[ObjectBall].Start.Position;
        ObjectBallRadius = request.Setup.Balls[ObjectBall].Radius;
        TableSpec table = request.Setup.Equipment.Table;
        Edge = new TableEdge(table);
        if (table.Corner is not { } corner || table.Side is not { } side) return;
        _hasPockets = true;
        for (int i = 0; i < 6; i++)
        {
            bool isSide = (PocketName)i is PocketName.LeftSide or PocketName.RightSide;
            _halfOpenings[i] = isSide ? 0.5 * side.Mouth : corner.Mouth / Math.Sqrt(2);
        }
    }

    internal int CueBall { get; }

    internal int ObjectBall { get; }

    internal int MostRails { get; }

    internal int MostKickRails { get; }

    internal Vec2 CueBallStart { get; }

    internal Vec2 ObjectBallStart { get; }

    internal double ObjectBallRadius { get; }

    internal TableEdge Edge { get; }

    /// <summary>The pockets that a touch of a cushion leads along into, one bit each.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="ball">The ball at the touch.</param>
    internal int LeadsInto(CushionName cushion, in BallState ball)
    {
        if (!_hasPockets) return 0;
        Vec2 v = ball.Velocity;
        double across = cushion is CushionName.Head or CushionName.Foot ? v.X : v.Y;
        bool glances = Math.Abs(across) < RouteWatch.Glancing * v.Length;
        double place = Edge.Place(cushion, ball.Position);
        int pockets = 0;
        for (int i = 0; i < 6; i++)
        {
            var pocket = (PocketName)i;
            if (!TableEdge.Borders(cushion, pocket)) continue;
            double near = _halfOpenings[i] + 2 * ObjectBallRadius;
            if (glances || Math.Abs(Edge.From(place, Edge.Place(pocket))) < near) pockets |= 1 << i;
        }

        return pockets;
    }
}
