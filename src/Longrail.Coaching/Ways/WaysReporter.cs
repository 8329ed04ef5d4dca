using Longrail.Coaching.Ways.Chances;

namespace Longrail.Coaching.Ways;

/// <summary>Tells how far a run has come; may be called from any thread.</summary>
internal sealed class WaysReporter(WaysOrder order, IProgress<WaysProgress>? progress)
{
    private readonly Lock _lock = new();
    private readonly Dictionary<WayRoute, Way> _ways = [];
    private IReadOnlyList<Way> _ranked = [];
    private string _stage = "searching";
    private double _done;

    /// <summary>Whether anybody is told.</summary>
    internal bool IsWatched => progress is not null;

    /// <summary>A way's odds are known, or known better than before.</summary>
    internal void Add(Way way)
    {
        if (progress is null)
            return;
        lock (_lock)
        {
            _ways[way.Route] = way;
            _ranked = WayRanking.Ranked([.. _ways.Values], order);
            Report();
        }
    }

    /// <summary>The progress of one stage as a part of the whole.</summary>
    internal IProgress<double> Part(string stage, double from, double to) => new Stage(part =>
    {
        lock (_lock)
        {
            _stage = stage;
            _done = Math.Max(_done, from + (to - from) * Math.Clamp(part, 0, 1));
            Report();
        }
    });

    private void Report() => progress?.Report(new WaysProgress(_done, _stage, _ranked));

    private sealed class Stage(Action<double> report) : IProgress<double>
    {
        public void Report(double value) => report(value);
    }
}
