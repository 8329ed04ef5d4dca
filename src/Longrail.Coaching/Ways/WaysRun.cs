using System.Collections.Concurrent;

namespace Longrail.Coaching.Ways;

/// <summary>One run: the search, and the odds of each way as it turns up.</summary>
/// <remarks>The odds of a way depend on the question and the way alone, and ways are put together in the search's own
/// order, so the answer does not depend on which thread did what. Only where the run was stopped does it.</remarks>
internal sealed class WaysRun
{
    /// <summary>Strokes from which odds are counted: about 3 % either way at the most.</summary>
    internal const int Strokes = 1000;

    /// <summary>Strokes from which the odds of a stopped run are counted, where they were not known yet; their interval
    /// is as wide as it should be.</summary>
    internal const int StrokesInAHurry = 100;

    // What a search takes of the whole; the odds take the rest.
    private const double SearchPart = 0.6;

    // Time for what a stopped run still has to tell.
    private static readonly TimeSpan _lastWords = TimeSpan.FromSeconds(0.4);

    private readonly WaysQuestion _question;
    private readonly WaysParts _parts;
    private readonly WaysReporter _reporter;
    private readonly CancellationToken _stop;
    private readonly ConcurrentDictionary<FoundWay, Lazy<Way?>> _odds = new(ReferenceEqualityComparer.Instance);

    internal WaysRun(
        WaysQuestion question, WaysParts parts, IProgress<WaysProgress>? progress, CancellationToken stop)
    {
        _question = question;
        _parts = parts;
        _reporter = new WaysReporter(question.Request.Order, progress);
        _stop = stop;
    }

    private int Threads => _question.Request.Threads;

    internal WaysAnswer Answer()
    {
        WaysFound found = Search();
        AddOdds(found.Ways);
        Way?[] ways = [.. found.Ways.Select(way => _odds.TryGetValue(way, out Lazy<Way?>? odds) ? odds.Value : null)];
        bool stopped = found.IsPartial || ways.Contains(null);
        if (stopped)
            AddInAHurry(found.Ways, ways);

        IReadOnlyList<Way> ranked = WaysOrdering.Of([.. ways.OfType<Way>()], _question.Request.Order);
        string? reason = ranked.Count < 2 ? null : WaysOrdering.Reason(ranked[0], ranked[1], _question.Request);
        return new WaysAnswer(_question.Request, ranked, found.NotPlayable, reason, stopped, found.ShotsPlayed);
    }

    // With more than one thread, one looks after the odds while the others search, so that the first ways are there
    // early.
    private WaysFound Search()
    {
        using var queue = new BlockingCollection<FoundWay>();
        Task? early = Threads > 1 ? Task.Run(() => AddOddsEarly(queue), CancellationToken.None) : null;
        try
        {
            return _parts.Search(
                _question,
                way =>
                {
                    _reporter.Found();
                    if (early is null)
                        _ = OddsOf(way).Value;
                    else
                        queue.Add(way);
                },
                _reporter.Part("searching", 0, SearchPart),
                _stop);
        }
        finally
        {
            queue.CompleteAdding();
            early?.GetAwaiter().GetResult();
        }
    }

    private void AddOddsEarly(BlockingCollection<FoundWay> queue)
    {
        foreach (FoundWay way in queue.GetConsumingEnumerable())
        {
            // Once the search is over all threads go through what is left.
            if (queue.IsAddingCompleted)
                return;
            _ = OddsOf(way).Value;
        }
    }

    private void AddOdds(IReadOnlyList<FoundWay> ways)
    {
        IProgress<double> progress = _reporter.Part("odds", SearchPart, 1);
        int done = 0;
        var options = new ParallelOptions { MaxDegreeOfParallelism = Threads };
        Parallel.ForEach(Partitioner.Create(ways, EnumerablePartitionerOptions.NoBuffering), options, way =>
        {
            _ = OddsOf(way).Value;
            progress.Report((double)Interlocked.Increment(ref done) / ways.Count);
        });
    }

    private Lazy<Way?> OddsOf(FoundWay way) => _odds.GetOrAdd(way, key => new Lazy<Way?>(() => Odds(key, Strokes, _stop)));

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

    // A stopped run tells what it knows: ways that were found get odds from fewer strokes while there is time.
    private void AddInAHurry(IReadOnlyList<FoundWay> found, Way?[] ways)
    {
        using var hurry = new CancellationTokenSource(_lastWords);
        var options = new ParallelOptions { MaxDegreeOfParallelism = Threads };
        IEnumerable<int> missing = Enumerable.Range(0, ways.Length).Where(i => ways[i] is null);
        Parallel.ForEach(
            Partitioner.Create(missing, EnumerablePartitionerOptions.NoBuffering), options,
            i => ways[i] = Odds(found[i], StrokesInAHurry, hurry.Token));
    }
}
