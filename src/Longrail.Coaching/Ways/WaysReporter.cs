namespace Longrail.Coaching.Ways;

/// <summary>Tells how far a run has come; may be called from any thread.</summary>
internal sealed class WaysReporter(WaysOrder order, IProgress<WaysProgress>? progress)
{
    private readonly Lock _lock = new();
    private readonly List<Way> _ways = [];
    private IReadOnlyList<Way> _ranked = [];
    private string _stage = "searching";
    private double _done;
    private int _found;

    /// <summary>A way was found; its odds are not known yet.</summary>
    internal void Found()
    {
        lock (_lock)
        {
            _found++;
            Report();
        }
    }

    /// <summary>A way's odds are known.</summary>
    internal void Add(Way way)
    {
        lock (_lock)
        {
            _ways.Add(way);
            _found = Math.Max(_found, _ways.Count);
            if (progress is not null)
                _ranked = WaysOrdering.Of([.. _ways], order);
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

    private void Report() => progress?.Report(new WaysProgress(_done, _stage, _ranked, _found));

    private sealed class Stage(Action<double> report) : IProgress<double>
    {
        public void Report(double value) => report(value);
    }
}
