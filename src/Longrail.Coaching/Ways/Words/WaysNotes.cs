using Longrail.Coaching.Contrasts;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Coaching.Ways.Words;

/// <summary>What must be said beside an answer's table, wherever that is shown.</summary>
public static class WaysNotes
{
    /// <summary>What stands above a list that is not the whole.</summary>
    public const string PartialMark =
        "Stopped before the search was done: ways may be missing, and their order may change.";

    private const int NamedInAGroup = 4;

    /// <summary>Why the other routes cannot be played, a line for each reason, the most telling first.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> NotPlayable(WaysAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return
        [
            .. answer.NotPlayable.OrderBy(way => way.Route.CueBall.Count).ThenBy(way => way.Route.ObjectBall.Count)
                .GroupBy(way => (way.Reason, way.Ball))
                .OrderBy(group => group.First().Route.CueBall.Count).ThenBy(group => Rank(group.Key.Reason))
                .ThenBy(group => group.Key.Ball, StringComparer.Ordinal)
                .Select(group => $"{WayWords.Of(group.First())}: {Named([.. group])}"),
        ];
    }

    /// <summary>What a real table may do with a way that the program does not follow: each caution with the letters of
    /// the ways that it is about.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="most">How many of its ways are looked at, from the first.</param>
    public static IReadOnlyList<string> Cautions(WaysAnswer answer, int most = int.MaxValue)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return
        [
            .. answer.Ways.Take(most)
                .SelectMany((way, k) => CautionsOf(answer.Request, way).Select(text => (Index: k, Text: text)))
                .GroupBy(caution => CautionGroup.KeyOf(caution.Text))
                .Select(group => $"{Letters(group.Select(caution => caution.Index))}: "
                    + CautionGroup.TextOf([.. group.Select(caution => caution.Text)])),
        ];
    }

    private static string Letters(IEnumerable<int> ways) => string.Join(", ", ways.Distinct().Select(VariantLetter.Of));

    private static IReadOnlyList<string> CautionsOf(WaysRequest request, Way way) =>
        TraceReadings.Of(WayShot.Of(request, way.Stroke.Stroke)).Shot.Cautions;

    // Where the rebounds do not lead there is nothing to learn but that there are many such routes.
    private static string Named(NoWay[] group)
    {
        if (group[0].Reason == NoWayReason.DoesNotLeadThere && group.Length > NamedInAGroup)
        {
            IEnumerable<string> kinds = group.GroupBy(way => WayWords.KindOf(way.Route))
                .Select(kind => $"{WayWords.KindOf(kind.First().Route)} ({kind.Count()})");
            return string.Join(", ", kinds);
        }

        string named = string.Join("; ", group.Take(NamedInAGroup).Select(way => WayWords.Of(way.Route)));
        int more = group.Length - NamedInAGroup;
        return more > 0 ? $"{named}; and {more} more" : named;
    }

    private static int Rank(NoWayReason reason) => reason switch
    {
        NoWayReason.CueBallBlocked => 0,
        NoWayReason.ObjectBallBlocked => 1,
        NoWayReason.DoubleKiss => 2,
        NoWayReason.Scratch => 3,
        NoWayReason.TooThin => 4,
        NoWayReason.RunsOutOfSpeed => 5,
        _ => 6,
    };
}
