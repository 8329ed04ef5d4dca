using Longrail.Coaching.Statistics;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>Counts how a player's strokes of a way turned out.</summary>
internal sealed class WayTally
{
    private readonly List<IReadOnlyList<Vec2?>> _layouts = [];
    private readonly List<double> _gaps = [];
    private int _trials;
    private int _followed;
    private int _scratches;
    private int _met;
    private int _kisses;

    /// <summary>The chance to make the ball.</summary>
    public Odds Made => Odds.Of(_layouts.Count, _trials);

    /// <summary>The chance that the cue ball goes down, from the strokes that were followed to their end.</summary>
    public Odds Scratch => Odds.Of(_scratches, _followed);

    /// <summary>How the balls lie after each made ball.</summary>
    public IReadOnlyList<IReadOnlyList<Vec2?>> Layouts => _layouts;

    /// <summary>Counts one more.</summary>
    /// <param name="trial">How the stroke turned out.</param>
    /// <param name="isFollowed">Whether it was followed to its end whatever happened.</param>
    public void Add(Trial trial, bool isFollowed)
    {
        _trials++;
        if (isFollowed) _followed++;
        if (isFollowed && trial.Scratched) _scratches++;
        if (trial.Places is { } places) _layouts.Add(places);
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
