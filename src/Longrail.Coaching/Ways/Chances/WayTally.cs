using Longrail.Coaching.Statistics;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>Counts how a player's strokes of a way turned out.</summary>
internal sealed class WayTally
{
    private readonly List<IReadOnlyList<Vec2?>> _layouts = [];
    private readonly List<double> _gaps = [];
    private int _met;
    private int _kisses;

    /// <summary>How often the ball was made.</summary>
    public int Made => _layouts.Count;

    /// <summary>How often the cue ball went down.</summary>
    public int Scratches { get; private set; }

    /// <summary>How the balls lie after each made ball.</summary>
    public IReadOnlyList<IReadOnlyList<Vec2?>> Layouts => _layouts;

    /// <summary>Counts one more.</summary>
    public void Add(Trial trial)
    {
        if (trial.Places is { } places) _layouts.Add(places);
        if (trial.Scratched) Scratches++;
        if (trial.Met) _met++;
        if (trial.Kissed) _kisses++;
        if (trial.Gap is { } gap) _gaps.Add(gap);
    }

    /// <summary>Where the cue ball stopped when the ball was made.</summary>
    public IReadOnlyList<Vec2> RestPlaces(int cueBall) => _layouts.ConvertAll(places => places[cueBall]!.Value);

    /// <summary>The kiss gap and its spread; null if cue ball and object ball never part.</summary>
    /// <param name="meant">The gap of the stroke as it was meant.</param>
    public KissSpread? Kiss(double? meant)
    {
        if (meant is null || _gaps.Count == 0) return null;
        _gaps.Sort();
        return new KissSpread(meant.Value, Part(0.05), Part(0.95), Odds.Of(_kisses, _met));

        // The value at a part of the way through the sorted gaps, drawn straight between neighbours.
        double Part(double part)
        {
            double at = part * (_gaps.Count - 1);
            int below = (int)at;
            int above = Math.Min(below + 1, _gaps.Count - 1);
            return _gaps[below] + (at - below) * (_gaps[above] - _gaps[below]);
        }
    }
}
