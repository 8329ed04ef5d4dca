using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Scenes;

namespace Longrail.Coaching.Ways.Words;

/// <summary>Routes, limits and reasons in the trade's words.</summary>
public static class WayWords
{
    /// <summary>The cut below which a pot is called straight, radians: half a degree, less than a player can see over
    /// a ball's width (common practice, no source).</summary>
    public const double Straight = 0.5 * Math.PI / 180;

    /// <summary>A route: "cross-side bank off right into left-side, natural".</summary>
    /// <param name="route">The route.</param>
    /// <param name="cut">The cut at the contact, radians; null if it is not known: then a pot is only called a
    /// pot.</param>
    /// <param name="crossing">Whether the cue ball crosses the line on which a bank comes back; null if neither word
    /// has a meaning.</param>
    public static string Of(WayRoute route, double? cut = null, bool? crossing = null)
    {
        string into = $"into {TableWords.Of(route.Pocket)}";
        string shot = route.ObjectBall.Count == 0
            ? $"{PotName(cut)} {into}"
            : $"{BankName(route)} off {List(route.ObjectBall)} {into}{Crossing(crossing)}";
        return route.CueBall.Count == 0 ? shot : $"kick off {List(route.CueBall)}, {shot}";
    }

    /// <summary>What kind of shot a route is, without its cushions' names and its pocket: "cross-side bank",
    /// "one-rail kick, pot".</summary>
    /// <param name="route">The route.</param>
    public static string KindOf(WayRoute route)
    {
        string shot = route.ObjectBall.Count == 0 ? "pot" : BankName(route);
        return route.CueBall.Count == 0 ? shot : $"{Count(route.CueBall.Count)}-rail kick, {shot}";
    }

    /// <summary>Whether a bank is a crossing one: the ball is cut against the side to which the bank travels, so that
    /// the cue ball goes over the line on which it comes back. Null for a bank that is neither: straight in, or hit
    /// full.</summary>
    /// <param name="cueBall">Direction of the cue ball as it meets the object ball.</param>
    /// <param name="objectBall">Direction in which the object ball leaves.</param>
    /// <param name="first">The object ball's first cushion.</param>
    public static bool? IsCrossing(Vec2 cueBall, Vec2 objectBall, CushionName first)
    {
        Vec2 into = first switch
        {
            CushionName.Head => new Vec2(-1, 0),
            CushionName.Foot => new Vec2(1, 0),
            CushionName.Left => new Vec2(0, 1),
            _ => new Vec2(0, -1),
        };
        double travel = Math.Asin(Math.Clamp(into.Cross(objectBall.Normalized()), -1, 1));
        double cut = Math.Asin(Math.Clamp(cueBall.Normalized().Cross(objectBall.Normalized()), -1, 1));
        if (Math.Abs(travel) < Straight || Math.Abs(cut) < Straight)
            return null;
        return Math.Sign(travel) != Math.Sign(cut);
    }

    /// <summary>What ends a leeway, as a short word: "far jaw", "8 in the way".</summary>
    public static string Of(LeewaySide side) => side.Limit switch
    {
        LeewayLimit.NearJaw => "near jaw",
        LeewayLimit.FarJaw => "far jaw",
        LeewayLimit.DoubleKiss => "double kiss",
        LeewayLimit.OtherBall => side.Ball is { } ball ? $"meets {ball}" : "meets another ball",
        LeewayLimit.OtherCushion => "another cushion",
        LeewayLimit.TooSlow => "too slow",
        LeewayLimit.MissedBall => "misses the ball",
        LeewayLimit.Miscue => "miscue",
        LeewayLimit.Scratch => "scratch",
        _ => "no miss seen",
    };

    /// <summary>Why a route cannot be played, as the end of a sentence: "8 stands in the cue ball's way".</summary>
    public static string Of(NoWay way)
    {
        string ball = way.Ball ?? "another ball";
        return way.Reason switch
        {
            NoWayReason.CueBallBlocked => $"{ball} stands in the cue ball's way",
            NoWayReason.ObjectBallBlocked => $"{ball} stands in the object ball's way",
            NoWayReason.TooThin => "the hit would be too thin",
            NoWayReason.RunsOutOfSpeed => "runs out of speed",
            NoWayReason.DoubleKiss => "double kiss, whatever speed and tip",
            NoWayReason.Scratch => "scratches, whatever speed and tip",
            _ => "the rebounds do not lead there",
        };
    }

    private static string PotName(double? cut) =>
        cut is not { } angle ? "pot" : Math.Abs(angle) < Straight ? "straight pot" : "cut";

    // Natural and crossing are said of banks only; a bank that is straight in, or hit full, is neither.
    private static string Crossing(bool? crossing) =>
        crossing switch { true => ", crossing", false => ", natural", _ => "" };

    private static string BankName(WayRoute route)
    {
        IReadOnlyList<CushionName> off = route.ObjectBall;
        if (off.Count > 1)
            return $"{Count(off.Count)}-rail bank";
        if (OnCushion(off[0], route.Pocket))
            return "bank";
        bool sidePocket = route.Pocket is PocketName.LeftSide or PocketName.RightSide;
        bool across = off[0] is CushionName.Left or CushionName.Right;
        return (across, sidePocket) switch
        {
            (true, true) => "cross-side bank",
            (true, false) => "cross-corner bank",
            (false, false) => "long-rail bank",
            _ => "bank along the table",
        };
    }

    // A rebound into a pocket at the cushion's own end has no name: it takes a kiss or a jaw to play it.
    private static bool OnCushion(CushionName cushion, PocketName pocket) => cushion switch
    {
        CushionName.Head => pocket is PocketName.HeadLeft or PocketName.HeadRight,
        CushionName.Foot => pocket is PocketName.FootLeft or PocketName.FootRight,
        CushionName.Left => pocket is PocketName.HeadLeft or PocketName.LeftSide or PocketName.FootLeft,
        _ => pocket is PocketName.HeadRight or PocketName.RightSide or PocketName.FootRight,
    };

    private static string List(IReadOnlyList<CushionName> cushions) => cushions.Count switch
    {
        1 => TableWords.Of(cushions[0]),
        2 => $"{TableWords.Of(cushions[0])} and {TableWords.Of(cushions[1])}",
        _ => $"{string.Join(", ", cushions.SkipLast(1).Select(TableWords.Of))} and {TableWords.Of(cushions[^1])}",
    };

    private static string Count(int count) => count switch { 1 => "one", 2 => "two", _ => "three" };
}
