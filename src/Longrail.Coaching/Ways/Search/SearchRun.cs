namespace Longrail.Coaching.Ways.Search;

/// <summary>One run of the search: the nodes shared out over threads, then the routes.</summary>
/// <remarks>Each node and each route is worked out by itself from the request alone and put in its place, so the result
/// does not depend on the threads.</remarks>
internal sealed class SearchRun
{
    /// <summary>The nodes' part of the progress, about their part of the time.</summary>
    private const double NodesPart = 0.7;

    private const double WaysPart = 0.27;

    /// <summary>So many nodes, centre ball at middling speeds, show what they find at once.</summary>
    private const int ShownAtOnce = 3;

    private readonly WaySearchRequest _request;
    private readonly Action<FoundWay>? _found;
    private readonly IProgress<double>? _progress;
    private readonly CancellationToken _stop;
    private readonly RouteRules _rules;
    private readonly RouteWish _wish;
    private readonly StrokeGrid _grid;
    private readonly Lock _lock = new();
    private readonly HashSet<RouteKey> _seen = [];
    private readonly Dictionary<RouteKey, FoundStroke> _firstStrokes = [];
    private readonly HashSet<RouteKey> _scratched = [];
    private readonly List<RouteWindow>?[] _windows;
    private int _nodesDone;
    private long _played;

    internal SearchRun(
        WaySearchRequest request, Action<FoundWay>? found, IProgress<double>? progress, CancellationToken stop)
    {
        _request = request;
        _found = found;
        _progress = progress;
        _stop = stop;
        _rules = new RouteRules(request);
        _wish = new RouteWish(request);
        _grid = new StrokeGrid(request);
        _windows = new List<RouteWindow>[_grid.Nodes.Length];
    }

    internal WaySearchResult Run()
    {
        // A set-up that no table could hold is refused here, before other threads see it.
        new StrokePlayer(_request, _rules).PlayToTheDrop(_grid.Nodes[0].Stroke(0, _request.Elevation));
        Share(_grid.Nodes.Length, Scan);
        Dictionary<RouteKey, List<RouteWindow>> byRoute = ByRoute();
        FoundWay[] ways = Ways(byRoute);
        bool partial = _stop.IsCancellationRequested;
        NoWay[] notPlayable = partial ? [] : NotPlayable(ways);
        Report(1);
        return new WaySearchResult(ways, notPlayable, partial, _played);
    }

    private FoundWay[] Ways(Dictionary<RouteKey, List<RouteWindow>> byRoute)
    {
        RouteKey[] routes = [.. byRoute.Keys.Order()];
        var ways = new FoundWay?[routes.Length];
        int done = 0;
        Share(routes.Length, (i, player) =>
        {
            ways[i] = Way(player, routes[i], byRoute[routes[i]]);
            Show(ways[i]);
            Report(NodesPart + (WaysPart * Interlocked.Increment(ref done) / routes.Length));
        });
        // Stopped early: what has been shown with one stroke stays.
        for (int i = 0; i < routes.Length && _stop.IsCancellationRequested; i++)
        {
            if (ways[i] is null && _firstStrokes.TryGetValue(routes[i], out FoundStroke? stroke))
                ways[i] = Way(routes[i], [stroke], byRoute[routes[i]]);
        }

        return [.. ways.OfType<FoundWay>()];
    }

    private NoWay[] NotPlayable(FoundWay[] ways)
    {
        HashSet<RouteKey> found = [.. ways.Select(way => RouteKey.Of(way.Route))];
        GeometricWay[] others = [.. new RouteGeometry(_request).Ways(_wish).Where(way => !found.Contains(way.Route))];
        var finder = new NoWayFinder(_request, _grid);
        var reasons = new NoWay[others.Length];
        Share(
            others.Length,
            (i, player) => reasons[i] = finder.Of(others[i], _scratched.Contains(others[i].Route), player));
        return [.. reasons.OfType<NoWay>().OrderBy(no => RouteKey.Of(no.Route))];
    }

    private void Scan(int index, StrokePlayer player)
    {
        GridNode node = _grid.Nodes[index];
        var scan = new AimScan(player, _rules, _wish, node, _request.Elevation, _stop);
        scan.Run();
        if (_stop.IsCancellationRequested) return;
        List<RouteWindow> windows = scan.Windows;
        _windows[index] = windows;
        lock (_lock) _scratched.UnionWith(scan.Scratched);
        if (index < ShownAtOnce)
        {
            foreach (RouteKey route in windows.Select(w => w.Route).Distinct().Order()) ShowFirst(route, windows);
        }

        Report(NodesPart * Interlocked.Increment(ref _nodesDone) / _grid.Nodes.Length);
    }

    /// <summary>Shows a route that turns up for the first time.</summary>
    private void ShowFirst(RouteKey route, List<RouteWindow> windows)
    {
        lock (_lock)
        {
            if (!_seen.Add(route)) return;
        }

        RouteWindow[] own = [.. windows.Where(w => w.Route == route)];
        if (_stop.IsCancellationRequested) return;
        // With a player of its own: what is shown first depends on the threads, and must not be counted.
        FoundStroke? stroke = Chooser(new StrokePlayer(_request, _rules)).First(route, own);
        lock (_lock)
        {
            if (stroke is null)
            {
                _seen.Remove(route);
                return;
            }

            _firstStrokes[route] = stroke;
            _found?.Invoke(Way(route, [stroke], own));
        }
    }

    /// <summary>Shows a way unless its route has been shown before.</summary>
    private void Show(FoundWay? way)
    {
        if (way is null) return;
        lock (_lock)
        {
            if (_seen.Add(RouteKey.Of(way.Route))) _found?.Invoke(way);
        }
    }

    private FoundWay? Way(StrokePlayer player, RouteKey route, List<RouteWindow> windows)
    {
        IReadOnlyList<FoundStroke> strokes = Chooser(player).Choose(route, windows);
        return strokes.Count == 0 ? null : Way(route, strokes, windows);
    }

    private static FoundWay Way(RouteKey route, IReadOnlyList<FoundStroke> strokes, IEnumerable<RouteWindow> windows) =>
        new(route.ToRoute(), strokes, [.. windows.Select(w => w.Window)]);

    private StrokeChooser Chooser(StrokePlayer player) =>
        new(new LeewayFinder(player, _rules, _request.BallNames), _request.Player, _request.Elevation, player.Radius);

    private Dictionary<RouteKey, List<RouteWindow>> ByRoute()
    {
        var byRoute = new Dictionary<RouteKey, List<RouteWindow>>();
        foreach (RouteWindow window in _windows.Where(w => w is not null).SelectMany(w => w!))
        {
            if (!byRoute.TryGetValue(window.Route, out List<RouteWindow>? own)) byRoute[window.Route] = own = [];
            own.Add(window);
        }

        return byRoute;
    }

    /// <summary>Shares work out: each thread has its own player and takes the next piece.</summary>
    private void Share(int pieces, Action<int, StrokePlayer> work)
    {
        int next = -1;
        void Worker()
        {
            var player = new StrokePlayer(_request, _rules);
            for (int i = Interlocked.Increment(ref next); i < pieces; i = Interlocked.Increment(ref next))
            {
                if (_stop.IsCancellationRequested) break;
                work(i, player);
            }

            Interlocked.Add(ref _played, player.Played);
        }

        int threads = Math.Min(_request.Threads, Math.Max(pieces, 1));
        Task[] others = [.. Enumerable.Range(1, threads - 1).Select(_ => Task.Run(Worker, CancellationToken.None))];
        try
        {
            Worker();
        }
        finally
        {
            Task.WaitAll(others);
        }
    }

    private void Report(double part) => _progress?.Report(part);
}
