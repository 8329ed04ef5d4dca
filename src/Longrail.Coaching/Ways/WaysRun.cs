using System.Collections.Concurrent;
using Longrail.Coaching.Ways.Chances;
using Longrail.Coaching.Ways.Search;

namespace Longrail.Coaching.Ways;

/// <summary>One run: the search, then the odds of every way.</summary>
/// <remarks>The odds of a way depend on the question and the way alone, and ways are put together in the search's own
/// order, so the answer does not depend on which thread did what. Only where the run was stopped does it.</remarks>
internal sealed class WaysRun
{
    /// <summary>Strokes from which odds are counted: 3 % either way at the most.</summary>
    internal const int Strokes = 1000;

    /// <summary>Strokes from which odds are counted while the search goes on, and for ways whose odds a stopped run did
    /// not come to; their interval is as wide as it should be.</summary>
    internal const int StrokesInAHurry = 80;

    // What a search takes of the whole; the odds take the rest.
    private const double SearchPart = 0.6;

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
        WaySearchResult found = _parts.Search(_question, Early, _reporter.Part("searching", 0, SearchPart), _stop);
        var ways = new Way?[found.Ways.Count];
        AddOdds(found.Ways, ways, Strokes, _stop);
        bool stopped = found.IsPartial || ways.Contains(null);
        if (stopped)
            AddInAHurry(found.Ways, ways);

        IReadOnlyList<Way> ranked = WayRanking.Ranked([.. ways.OfType<Way>()], _question.Request.Order);
        string? reason = ranked.Count < 2 ? null : WayRanking.Reason(ranked[0], ranked[1], _question.Request);
        return new WaysAnswer(_question.Request, ranked, found.NotPlayable, reason, stopped, found.ShotsPlayed);
    }

    // While it is searched, whoever watches sees rough odds of the strokes that were found first.
    private void Early(FoundWay way)
    {
        if (_reporter.IsWatched && Odds(way, StrokesInAHurry, _stop) is { } odds)
            _early[way.Route] = odds;
    }

    private void AddOdds(IReadOnlyList<FoundWay> found, Way?[] ways, int strokes, CancellationToken stop)
    {
        IProgress<double> progress = _reporter.Part("odds", SearchPart, 1);
        int done = 0;
        int[] missing = [.. Enumerable.Range(0, ways.Length).Where(i => ways[i] is null)];
        var options = new ParallelOptions { MaxDegreeOfParallelism = _question.Request.Threads };
        Parallel.ForEach(Partitioner.Create(missing, EnumerablePartitionerOptions.NoBuffering), options, i =>
        {
            ways[i] = Odds(found[i], strokes, stop);
            progress.Report((double)Interlocked.Increment(ref done) / missing.Length);
        });
    }

    // A stopped run tells what it knows: ways that were found get odds from fewer strokes while there is time.
    private void AddInAHurry(IReadOnlyList<FoundWay> found, Way?[] ways)
    {
        for (int i = 0; i < ways.Length; i++)
            ways[i] ??= _early.GetValueOrDefault(found[i].Route);
        using var hurry = new CancellationTokenSource(_lastWords);
        AddOdds(found, ways, StrokesInAHurry, hurry.Token);
    }

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
