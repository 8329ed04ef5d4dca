using Longrail.Coaching.Effects.Games;

namespace Longrail.Coaching.Effects.Stages;

/// <summary>The arrivals for all sets of causes, and the shares that follow from them.</summary>
internal sealed class SwitchGame
{
    private readonly StagedShot _staged;
    private readonly EffectTarget _target;
    private readonly int _cushions;
    private readonly List<EffectKind> _players;
    private readonly double[] _places;
    private readonly CancellationToken _stop;

    private SwitchGame(
        StagedShot staged, EffectTarget target, int cushions, List<EffectKind> players, Switches baseline,
        List<EffectKind> alwaysOn, CancellationToken stop)
    {
        _staged = staged;
        _target = target;
        _cushions = cushions;
        _players = players;
        Baseline = baseline;
        AlwaysOn = alwaysOn;
        _stop = stop;
        _places = new double[1 << players.Count];
        for (int set = 0; set < _places.Length; set++)
            _places[set] = Place(Set(players, set));
    }

    /// <summary>What is at work even in the plain mirror bank, because nothing can be compared without.</summary>
    internal Switches Baseline { get; }

    /// <summary>The causes that <see cref="Baseline"/> holds.</summary>
    internal IReadOnlyList<EffectKind> AlwaysOn { get; }

    /// <summary>Where the mirror bank arrives, metres along the target.</summary>
    internal double MirrorPlace => _places[0];

    /// <summary>Where the shot arrives with every cause at work, metres along the target.</summary>
    internal double ModelPlace => _places[^1];

    /// <summary>Computes all arrivals; a cause without which some of them do not exist is left on.</summary>
    /// <returns>Null if the shot does not arrive even with all causes on.</returns>
    internal static SwitchGame? Of(StagedShot staged, ShotChain chain, EffectTarget target, CancellationToken stop)
    {
        int cushions = chain.Cushions.Count;
        List<EffectKind> players = Players(chain);
        var alwaysOn = new List<EffectKind>();
        Switches baseline = Switches.AllOff;
        while (true)
        {
            var game = new SwitchGame(staged, target, cushions, [.. players], baseline, [.. alwaysOn], stop);
            if (double.IsNaN(game.ModelPlace))
                return null;
            if (game.Culprit() is not { } culprit)
                return game;
            players.Remove(culprit);
            alwaysOn.Add(culprit);
            baseline = baseline.And(Switches.Of(culprit, cushions));
        }
    }

    /// <summary>The shares, in the order of the causes.</summary>
    internal IReadOnlyList<EffectShare> Shares()
    {
        double[] shares = ShapleyValue.Of(_places);
        int all = _places.Length - 1;
        return
        [
            .. _players.Select((kind, i) => new EffectShare(
                kind, _target.Sense * shares[i], _target.Sense * (_places[all] - _places[all & ~(1 << i)]),
                _cushions > 1 && Switches.ActsAtCushion(kind) ? OverCushions(i) : [])),
        ];
    }

    // The causes that can play a part in a chain at all.
    private static List<EffectKind> Players(ShotChain chain)
    {
        bool banked = chain.Cushions.Count > 0;
        bool hit = chain.Hit is not null;
        return
        [
            .. Enum.GetValues<EffectKind>().Where(kind => kind switch
            {
                EffectKind.SquirtAndSwerve => chain.SetsOutFree,
                EffectKind.CutThrow or EffectKind.SpinThrow or EffectKind.BallCondition => hit,
                _ => banked,
            }),
        ];
    }

    /// <summary>The cause that is off in most of the sets that do not arrive; null if all arrive.</summary>
    private EffectKind? Culprit()
    {
        int fewest = int.MaxValue;
        EffectKind? culprit = null;
        if (!_places.Any(double.IsNaN))
            return null;
        for (int i = 0; i < _players.Count; i++)
        {
            int stillMissing = 0;
            for (int set = 0; set < _places.Length; set++)
            {
                if ((set & (1 << i)) != 0 && double.IsNaN(_places[set]))
                    stillMissing++;
            }

            if (stillMissing >= fewest)
                continue;
            fewest = stillMissing;
            culprit = _players[i];
        }

        return culprit;
    }

    private double[] OverCushions(int player)
    {
        EffectKind kind = _players[player];
        List<EffectKind> others = [.. _players.Where(other => other != kind)];
        double[] parts = ShapleyValue.OverPlaces(others.Count, _cushions, (set, places) =>
        {
            Switches on = Set(others, set);
            for (int k = 0; k < _cushions; k++)
            {
                if ((places & (1 << k)) != 0)
                    on = on.And(Switches.At(kind, k));
            }

            return Place(on);
        });
        // With a cause on at one cushion and off at the next the ball may fail to arrive, though it does with both.
        return parts.Any(double.IsNaN) ? [] : [.. parts.Select(part => _target.Sense * part)];
    }

    private Switches Set(List<EffectKind> players, int set)
    {
        Switches on = Baseline;
        for (int i = 0; i < players.Count; i++)
        {
            if ((set & (1 << i)) != 0)
                on = on.And(Switches.Of(players[i], _cushions));
        }

        return on;
    }

    private double Place(Switches on)
    {
        _stop.ThrowIfCancellationRequested();
        return _staged.Arrival(on, TargetFinder.LineOf(_target)) is { } point ? _target.PlaceOf(point) : double.NaN;
    }
}
