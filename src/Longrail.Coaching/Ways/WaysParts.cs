using Longrail.Coaching.Ways.Chances;
using Longrail.Coaching.Ways.Kisses;
using Longrail.Coaching.Ways.Search;

namespace Longrail.Coaching.Ways;

/// <summary>What a run puts together; checks hand in parts of their own.</summary>
/// <param name="Search">Finds the ways. Calls back for each as it turns up, one call at a time.</param>
/// <param name="Odds">Fills in one way's odds from so many strokes. The same question, way and number give the same
/// odds.</param>
/// <param name="RoundTheKiss">Finds the changes that get round a way's double kiss, among others to the ways that were
/// found.</param>
internal sealed record WaysParts(
    Func<WaysQuestion, Action<FoundWay>, IProgress<double>, CancellationToken, WaySearchResult> Search,
    Func<WaysQuestion, FoundWay, int, CancellationToken, Way> Odds,
    Func<WaysQuestion, Way, IReadOnlyList<FoundWay>, CancellationToken, IReadOnlyList<KissEscape>> RoundTheKiss)
{
    /// <summary>The parts that answer users.</summary>
    internal static WaysParts Usual { get; } = new(SearchFor, OddsOf, EscapesOf);

    private static WaySearchResult SearchFor(
        WaysQuestion question, Action<FoundWay> found, IProgress<double> progress, CancellationToken stop)
    {
        WaysRequest request = question.Request;
        var search = new WaySearchRequest(
            question.Setup, question.CueBall, question.ObjectBall, request.Scene.BallIds, request.FewestRails,
            request.MostRails, request.MostKickRails, request.Pocket, question.Elevation, request.Player,
            request.Threads);
        return WaySearch.Run(search, found, progress, stop);
    }

    private static Way OddsOf(WaysQuestion question, FoundWay way, int strokes, CancellationToken stop)
    {
        WaysRequest request = question.Request;
        var odds = new WayOddsRequest(
            question.Setup, question.CueBall, question.ObjectBall, question.NextBall, request.Scene.BallIds,
            request.Player, request.Seed, strokes, question.Elevation);
        return WayOdds.Of(odds, way, stop);
    }

    private static IReadOnlyList<KissEscape> EscapesOf(
        WaysQuestion question, Way way, IReadOnlyList<FoundWay> others, CancellationToken stop)
    {
        WaysRequest request = question.Request;
        var kiss = new KissQuestion(
            question.Setup, question.CueBall, question.ObjectBall, request.Scene.BallIds, request.Player,
            way.Stroke.Stroke, way.Route, KissQuestion.UsualClearance, others);
        return KissEscapes.Find(kiss, stop).Escapes;
    }
}
