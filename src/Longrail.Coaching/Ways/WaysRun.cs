using System.Collections.Concurrent;
using Longrail.Coaching.Ways.Chances;
using Longrail.Coaching.Ways.Kisses;
using Longrail.Coaching.Ways.Search;

namespace Longrail.Coaching.Ways;

/// <summary>One run: the search, rough odds of every way, and full odds of those that come out on top.</summary>
/// <remarks>The odds of a way depend on the question and the way alone, and ways are put together in the search's own
/// order, so the answer does not depend on which thread did what. Only where the run was stopped does it.</remarks>
internal sealed class WaysRun
{
    /// <summary>How many ways at the head of the list get full odds.</summary>
    internal const int FullOdds = 16;

    /// <summary>Strokes from which full odds are counted: 3 % either way at the most. The way's stroke is the one of
    /// its candidates that the player makes most of.</summary>
    internal const int Strokes = 1000;

    /// <summary>Strokes from which rough odds are counted, of the candidate with the most leeway; their interval is as
    /// wide as it should be.</summary>
    internal const int RoughStrokes = 100;

    /// <summary>How many ways at the head of the list are helped round a double kiss.</summary>
    internal const int Helped = 3;

    // A gap that small, or a kiss that often, is in the player's way.
    private const double RareKiss = 0.05;

    // Where the stages end, as parts of the whole.
    private const double SearchEnds = 0.6;
    private const double RoughEnds = 0.75;

    // Time for what a stopped run still has to tell.
    private static readonly TimeSpan _lastWords = TimeSpan.FromSeconds(0.4);

    private readonly WaysQuestion _question;
    private readonly WaysParts _parts;
    private readonly WaysReporter _reporter;
    private readonly CancellationToken _stop;
    private readonly ConcurrentDictionary<WayRoute, Way> _early = new();

    internal WaysRun(
        WaysQuestion question, WaysParts parts, IProgress<WaysProgress>? progress, CancellationToken stop)
    {
        _question = question;
        _parts = parts;
        _reporter = new WaysReporter(question.Request.Order, progress);
        _stop = stop;
    }

    internal WaysAnswer Answer()
    {
        WaySearchResult found = _parts.Search(_question, Early, _reporter.Part("searching", 0, SearchEnds), _stop);
        var ways = new Way?[found.Ways.Count];
        AddRough(found.Ways, ways, _reporter.Part("rough odds", SearchEnds, RoughEnds), _stop);
        bool isWhole = !found.IsPartial && AddFull(found.Ways, ways);
        if (!isWhole)
            AddInAHurry(found.Ways, ways);

        Way[] ranked = RoundTheKiss(Ranked(ways), found.Ways);
        string? reason = ranked.Length < 2 ? null : WayRanking.Reason(ranked[0], ranked[1], _question.Request);
        return new WaysAnswer(_question.Request, ranked, found.NotPlayable, reason, !isWhole, found.ShotsPlayed);
    }

    // While it is searched, whoever watches sees rough odds of the strokes that were found first.
    private void Early(FoundWay way)
    {
        if (_reporter.IsWatched && Rough(way, _stop) is { } odds)
            _early[way.Route] = odds;
    }

    private void AddRough(
        IReadOnlyList<FoundWay> found, Way?[] ways, IProgress<double> progress, CancellationToken stop)
    {
        int[] missing = [.. Enumerable.Range(0, ways.Length).Where(i => ways[i] is null)];
        ForEach(missing, progress, i => ways[i] = Rough(found[i], stop));
    }

    // What comes to the head of the list must have earned it: round by round, until all there have full odds.
    private bool AddFull(IReadOnlyList<FoundWay> found, Way?[] ways)
    {
        IProgress<double> progress = _reporter.Part("odds", RoughEnds, 1);
        var full = new HashSet<WayRoute>();
        while (!ways.Contains(null))
        {
            HashSet<WayRoute> head =
                [.. Ranked(ways).Take(FullOdds).Select(way => way.Route).Where(route => !full.Contains(route))];
            if (head.Count == 0)
                return true;
            int[] next = [.. Enumerable.Range(0, ways.Length).Where(i => head.Contains(found[i].Route))];
            var odds = new Way?[ways.Length];
            ForEach(next, progress, i => odds[i] = Odds(found[i], Strokes, _stop));
            if (next.Any(i => odds[i] is null))
                return false;
            foreach (int i in next)
                ways[i] = odds[i];
            full.UnionWith(head);
        }

        return false;
    }

    // A stopped run tells what it knows: ways that were found get rough odds while there is time.
    private void AddInAHurry(IReadOnlyList<FoundWay> found, Way?[] ways)
    {
        for (int i = 0; i < ways.Length; i++)
            ways[i] ??= _early.GetValueOrDefault(found[i].Route);
        using var hurry = new CancellationTokenSource(_lastWords);
        AddRough(found, ways, _reporter.Part("rough odds", 1, 1), hurry.Token);
    }

    private Way[] RoundTheKiss(IReadOnlyList<Way> ranked, IReadOnlyList<FoundWay> found)
    {
        Way[] ways = [.. ranked];
        int[] threatened =
        [
            .. Enumerable.Range(0, Math.Min(Helped, ways.Length)).Where(i => ways[i].Kiss is { } kiss
                && (kiss.Gap < KissQuestion.UsualClearance || kiss.Kisses.Share > RareKiss)),
        ];
        ForEach(threatened, _reporter.Part("kisses", 1, 1), i =>
        {
            try
            {
                ways[i] = ways[i] with { RoundTheKiss = _parts.RoundTheKiss(_question, ways[i], found, _stop) };
            }
            catch (OperationCanceledException)
            {
                // The way stands without.
            }
        });
        return ways;
    }

    private void ForEach(int[] places, IProgress<double> progress, Action<int> action)
    {
        int done = 0;
        var options = new ParallelOptions { MaxDegreeOfParallelism = _question.Request.Threads };
        Parallel.ForEach(Partitioner.Create(places, EnumerablePartitionerOptions.NoBuffering), options, i =>
        {
            action(i);
            progress.Report((double)Interlocked.Increment(ref done) / places.Length);
        });
    }

    private IReadOnlyList<Way> Ranked(Way?[] ways) => WayRanking.Ranked(ways.OfType<Way>(), _question.Request.Order);

    private Way? Rough(FoundWay way, CancellationToken stop) =>
        Odds(way with { Strokes = [way.Strokes[0]] }, RoughStrokes, stop);

    private Way? Odds(FoundWay way, int strokes, CancellationToken stop)
    {
        if (stop.IsCancellationRequested)
            return null;
        try
        {
            Way odds = WaysNaming.Named(_question, _parts.Odds(_question, way, strokes, stop));
            _reporter.Add(odds);
            return odds;
        }
        catch (OperationCanceledException)
        {
            return null;
        }
    }
}
