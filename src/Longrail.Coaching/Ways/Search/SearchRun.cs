namespace Longrail.Coaching.Ways.Search;

/// <summary>One run of the search: the nodes shared out over threads, then the routes.</summary>
/// <remarks>Each node and each route is worked out by itself from the request alone and put in its place, so the result
/// does not depend on the threads.</remarks>
internal sealed class SearchRun
{
    /// <summary>The nodes' part of the progress, about their part of the time.</summary>
    private const double NodesPart = 0.75;

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
        Share(_grid.Nodes.Length, Scan);
        Dictionary<RouteKey, List<RouteWindow>> byRoute = ByRoute();
        RouteKey[] routes = [.. byRoute.Keys.Order()];
        var ways = new FoundWay?[routes.Length];
        int done = 0;
        Share(routes.Length, (i, player) =>
        {
            ways[i] = Way(player, routes[i], byRoute[routes[i]]);
            Report(NodesPart + (1 - NodesPart) * Interlocked.Increment(ref done) / routes.Length);
        });
        if (_stop.IsCancellationRequested)
        {
            for (int i = 0; i < routes.Length; i++)
            {
                if (ways[i] is null && _firstStrokes.TryGetValue(routes[i], out FoundStroke? stroke))
                    ways[i] = Way(routes[i], [stroke], byRoute[routes[i]]);
            }
        }

        FoundWay[] foundWays = [.. ways.OfType<FoundWay>()];
        return new WaySearchResult(foundWays, [], _stop.IsCancellationRequested, _played);
    }

    private void Scan(int index, StrokePlayer player)
    {
        GridNode node = _grid.Nodes[index];
        List<RouteWindow> windows = new AimScan(player, _rules, _wish, node, _request.Elevation, _stop).Windows();
        if (_stop.IsCancellationRequested) return;
        _windows[index] = windows;
        foreach (RouteKey route in windows.Select(w => w.Route).Distinct().Order()) ShowFirst(player, route, windows);
        Report(NodesPart * Interlocked.Increment(ref _nodesDone) / _grid.Nodes.Length);
    }

    /// <summary>Shows a route that turns up for the first time.</summary>
    private void ShowFirst(StrokePlayer player, RouteKey route, List<RouteWindow> windows)
    {
        lock (_lock)
        {
            if (!_seen.Add(route)) return;
        }

        RouteWindow[] own = [.. windows.Where(w => w.Route == route)];
        if (_stop.IsCancellationRequested) return;
        if (Chooser(player).First(route, own) is not { } stroke) return;
        lock (_lock)
        {
            _firstStrokes[route] = stroke;
            _found?.Invoke(Way(route, [stroke], own));
        }
    }

    private FoundWay? Way(StrokePlayer player, RouteKey route, List<RouteWindow> windows)
    {
        List<FoundStroke> strokes = Chooser(player).Choose(route, windows);
        return strokes.Count == 0 ? null : Way(route, strokes, windows);
    }

    private static FoundWay Way(RouteKey route, IReadOnlyList<FoundStroke> strokes, IEnumerable<RouteWindow> windows) =>
        new(route.ToRoute(), strokes, [.. windows.Select(w => w.Window)]);

    private StrokeChooser Chooser(StrokePlayer player) =>
        new(player, new LeewayFinder(player, _rules, _request.BallNames), _request.Player, _request.Elevation);

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
