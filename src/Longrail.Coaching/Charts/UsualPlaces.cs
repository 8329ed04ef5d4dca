using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Charts;

/// <summary>The lines of places that a chart has where none is asked for: where such banks come up in play.</summary>
internal static class UsualPlaces
{
    /// <summary>The ends of the line, in diamonds.</summary>
    internal static (Vec2 First, Vec2 Last) Of(ChartRoute route)
    {
        // Written for a target on the left or at the foot; turned about for the others.
        (Vec2 first, Vec2 last) = route.Kind switch
        {
            BankKind.CrossSide => (new Vec2(1, 2), new Vec2(3.5, 2)),
            BankKind.CrossCorner => (new Vec2(3, 2), new Vec2(6.5, 2)),
            BankKind.LongRail => (new Vec2(3, 1), new Vec2(3, 3.5)),
            _ => Kick(route),
        };
        bool mirrorAlong = route.Pocket is PocketName.HeadLeft or PocketName.HeadRight;
        bool mirrorAcross = route.Pocket is PocketName.HeadRight or PocketName.FootRight or PocketName.RightSide;
        Vec2 Turned(Vec2 p) => new(mirrorAlong ? 8 - p.X : p.X, mirrorAcross ? 4 - p.Y : p.Y);
        return (Turned(first), Turned(last));
    }

    /// <summary>Where the cue ball of a map stands: two diamonds from the end that the bank does not go to, well away
    /// from its cushion; diamonds.</summary>
    internal static Vec2 CueBall(ChartRoute route) => route.Off switch
    {
        CushionName.Head => new Vec2(6, 2),
        CushionName.Foot => new Vec2(2, 2),
        _ => new Vec2(
            route.Pocket is PocketName.HeadLeft or PocketName.HeadRight ? 6 : 2,
            route.Off == CushionName.Right ? 3 : 1),
    };

    // Along the cushion across from the one that is kicked off.
    private static (Vec2 First, Vec2 Last) Kick(ChartRoute route) => route.Off switch
    {
        CushionName.Left => (new Vec2(1, 1), new Vec2(5, 1)),
        CushionName.Right => (new Vec2(1, 3), new Vec2(5, 3)),
        CushionName.Foot => (new Vec2(2, 0.5), new Vec2(2, 3.5)),
        _ => (new Vec2(6, 0.5), new Vec2(6, 3.5)),
    };
}
