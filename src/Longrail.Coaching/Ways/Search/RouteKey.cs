using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Ways.Search;

/// <summary>A route as a small value: the search compares and sorts thousands of them.</summary>
/// <param name="CueBall">The cue ball's cushions.</param>
/// <param name="ObjectBall">The object ball's cushions.</param>
/// <param name="Pocket">The pocket.</param>
internal readonly record struct RouteKey(CushionList CueBall, CushionList ObjectBall, PocketName Pocket)
    : IComparable<RouteKey>
{
    internal static RouteKey Of(WayRoute route) =>
        new(CushionList.Of(route.CueBall), CushionList.Of(route.ObjectBall), route.Pocket);

    internal WayRoute ToRoute() => new(CueBall.ToArray(), ObjectBall.ToArray(), Pocket);

    /// <summary>Pocket by pocket; within one the fewer cushions first, a kick after a direct hit.</summary>
    public int CompareTo(RouteKey other)
    {
        int order = Pocket.CompareTo(other.Pocket);
        if (order == 0) order = CueBall.Count.CompareTo(other.CueBall.Count);
        if (order == 0) order = ObjectBall.Count.CompareTo(other.ObjectBall.Count);
        if (order == 0) order = CueBall.Code.CompareTo(other.CueBall.Code);
        return order == 0 ? ObjectBall.Code.CompareTo(other.ObjectBall.Code) : order;
    }
}
