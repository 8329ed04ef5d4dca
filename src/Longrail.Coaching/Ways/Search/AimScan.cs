using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Ways.Search;

/// <summary>Every aim round the table at one speed and tip position, for all pockets and routes at once.</summary>
/// <remarks>
/// A first look goes round the table in even steps. Between two neighbours another shot is played for as long as they
/// differ in a way that may hide a window: the object ball lies between their ways; they meet it at places too far
/// apart; one of them makes the ball; or the object ball, after the same cushions, reaches the edge of the table on
/// either side of a pocket. So a window much narrower than the steps is not lost.
/// </remarks>
internal sealed class AimScan
{
    private readonly StrokePlayer _player;
    private readonly RouteRules _rules;
    private readonly RouteWish _wish;
    private readonly GridNode _node;
    private readonly double _elevation;
    private readonly double _squirt;
    private readonly CancellationToken _stop;
    private readonly List<SeenShot> _samples = new(2048);

    internal AimScan(
        StrokePlayer player, RouteRules rules, RouteWish wish, GridNode node, double elevation,
        CancellationToken stop)
    {
        _player = player;
        _rules = rules;
        _wish = wish;
        _node = node;
        _elevation = elevation;
        _stop = stop;
        _squirt = player.Squirt(node.Stroke(0, elevation));
    }

    /// <summary>The windows in which a wished route makes the ball, once <see cref="Run"/> has been called.</summary>
    internal List<RouteWindow> Windows { get; } = [];

    /// <summary>Wished routes that were seen to make the ball and scratch.</summary>
    internal HashSet<RouteKey> Scratched { get; } = [];

    /// <summary>Looks round the table.</summary>
    internal void Run()
    {
        // The seam lies where no straight way to the object ball is.
        double start = (_rules.ObjectBallStart - _rules.CueBallStart).Angle + 1.9;
        int steps = (int)Math.Ceiling(2 * Math.PI / SearchResolution.Round);
        SeenShot first = At(start);
        SeenShot last = first;
        _samples.Add(first);
        for (int i = 1; i <= steps && !_stop.IsCancellationRequested; i++)
        {
            double direction = start + i * (2 * Math.PI / steps);
            SeenShot next = first;
            if (i < steps) next = At(direction);
            else next.Direction = direction;
            Between(last, next);
            _samples.Add(next);
            last = next;
        }

        Collect();
    }

    private SeenShot At(double direction)
    {
        SeenShot shot = _player.PlayToTheDrop(_node.Stroke(direction - _squirt, _elevation));
        shot.Direction = direction;
        return shot;
    }

    private SeenShot ToTheEnd(double direction) => _player.Play(_node.Stroke(direction - _squirt, _elevation));

    /// <summary>Looks between two neighbours for as long as there is reason to; adds what it sees in order.</summary>
    private void Between(in SeenShot low, in SeenShot high)
    {
        double part = PartToLookAt(low, high);
        if (part <= 0) return;
        SeenShot middle = At(low.Direction + part * (high.Direction - low.Direction));
        Between(low, middle);
        _samples.Add(middle);
        Between(middle, high);
    }

    /// <summary>Where between two neighbours the next shot is to be played, as a part of the way; 0 if
    /// nowhere.</summary>
    private double PartToLookAt(in SeenShot low, in SeenShot high)
    {
        double width = high.Direction - low.Direction;
        if (width < SearchResolution.Pocket) return 0;
        if (!low.Met && !high.Met) return NeitherMeets(low, high, width) ? 0.5 : 0;
        if (low.Met != high.Met) return OneMeets(low.Met ? low : high, width) ? 0.5 : 0;
        if (low.CueBall != high.CueBall) return width > 0.1 * SearchResolution.BeforeMeeting ? 0.5 : 0;
        double step = low.CueBall.Count == 0 ? SearchResolution.DirectStep : SearchResolution.KickStep;
        double apart = Math.Abs(low.Offset - high.Offset);
        if (apart > step) return 0.5;
        bool lowMakes = _wish.Wants(low);
        bool highMakes = _wish.Wants(high);
        bool same = low.Fate == high.Fate && lowMakes == highMakes && (!lowMakes || low.Route == high.Route);
        if (same && lowMakes) return 0;
        if ((lowMakes || highMakes) && width > SearchResolution.Edge) return 0.5;
        if (PocketBetween(low, high) is > 0 and var part) return part;
        bool sameWay = low.Fate == high.Fate && low.Other == high.Other && low.AllTouched == high.AllTouched;
        return !sameWay && apart > 0.25 * step ? 0.5 : 0;
    }

    private static bool NeitherMeets(in SeenShot low, in SeenShot high, double width)
    {
        bool same = low.Fate == high.Fate && low.Other == high.Other && low.CueBall == high.CueBall;
        if (!same && width > SearchResolution.BeforeMeeting) return true;
        if (width < 2 * SearchResolution.Edge) return false;
        int legs = Math.Min(low.CueBall.CommonWith(high.CueBall), 2);
        for (int leg = 0; leg <= legs; leg++)
        {
            if (low.Sides[leg] * high.Sides[leg] < 0) return true;
        }

        return false;
    }

    private static bool OneMeets(in SeenShot meets, double width)
    {
        double thinnest = meets.CueBall.Count == 0 ? SearchResolution.Thinnest : SearchResolution.ThinnestKick;
        return width > SearchResolution.Edge && Math.Abs(meets.Offset) < thinnest;
    }

    /// <summary>Where between two neighbours the object ball's way may cross a pocket, as a part of the way; 0 if it
    /// does not.</summary>
    private double PocketBetween(in SeenShot low, in SeenShot high)
    {
        int common = low.AllTouched.CommonWith(high.AllTouched);
        int levels = Math.Min(Math.Min(low.EdgeCount, high.EdgeCount), Math.Min(common, _rules.MostRails) + 1);
        for (int level = 0; level < levels; level++)
        {
            double way = _rules.Edge.From(low.Edge[level], high.Edge[level]);
            // More than a third of the way round is no neighbour.
            if (way == 0 || Math.Abs(way) > _rules.Edge.Around / 3) continue;
            foreach (PocketName pocket in _wish.Pockets)
            {
                double part = _rules.Edge.From(low.Edge[level], _rules.Edge.Place(pocket)) / way;
                if (part is > 0 and < 1) return Math.Clamp(part, 0.2, 0.8);
            }
        }

        return 0;
    }

    /// <summary>Runs of shots that send the object ball down by one route become windows; their edges are taken half
    /// way to the neighbours.</summary>
    private void Collect()
    {
        for (int first = 0; first < _samples.Count; first++)
        {
            if (!_wish.Wants(_samples[first])) continue;
            RouteKey route = _samples[first].Route;
            int last = first;
            while (last + 1 < _samples.Count && _wish.Wants(_samples[last + 1]) && _samples[last + 1].Route == route)
                last++;
            double from = first == 0
                ? _samples[0].Direction
                : 0.5 * (_samples[first].Direction + _samples[first - 1].Direction);
            double to = last + 1 == _samples.Count
                ? _samples[last].Direction
                : 0.5 * (_samples[last].Direction + _samples[last + 1].Direction);
            TakeOutScratches(route, from, to);
            first = last;
        }
    }

    /// <summary>Leaves of a window what does not send the cue ball down as well.</summary>
    private void TakeOutScratches(RouteKey route, double from, double to)
    {
        int parts = Math.Clamp((int)Math.Ceiling((to - from) / SearchResolution.Scratch), 2, 16);
        double begun = double.NaN;
        double last = double.NaN;
        bool made = false;
        for (int i = 0; i < parts; i++)
        {
            double direction = from + (i + 0.5) * (to - from) / parts;
            SeenShot shot = ToTheEnd(direction);
            if (shot.Fate == ShotFate.Scratch) Scratched.Add(route);
            bool makes = shot.Makes(route);
            if (i == 0) begun = makes ? from : double.NaN;
            else if (makes != made)
            {
                double edge = ScratchEdge(route, last, direction, made);
                if (makes) begun = edge;
                else Add(route, begun, edge);
            }

            last = direction;
            made = makes;
        }

        if (made) Add(route, begun, to);
    }

    private double ScratchEdge(RouteKey route, double low, double high, bool lowMakes)
    {
        while (high - low > SearchResolution.Edge)
        {
            double middle = 0.5 * (low + high);
            if (ToTheEnd(middle).Makes(route) == lowMakes) low = middle;
            else high = middle;
        }

        return 0.5 * (low + high);
    }

    private void Add(RouteKey route, double from, double to)
    {
        double aim = Math.IEEERemainder(from - _squirt, 2 * Math.PI);
        var window = new AimWindow(_node.Speed, _node.TipRight, _node.TipAbove, aim, aim + (to - from));
        Windows.Add(new RouteWindow(route, _node, window));
    }
}
