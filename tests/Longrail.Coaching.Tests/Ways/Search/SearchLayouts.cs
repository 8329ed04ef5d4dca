using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Longrail.Coaching.Players;
using Longrail.Coaching.Ways.Search;
using Longrail.Physics.Contacts;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Reading;

namespace Longrail.Coaching.Tests.Ways.Search;

/// <summary>The layouts of scenes/layouts, and the search of each, done once for all tests.</summary>
internal static class SearchLayouts
{
    private static readonly ConcurrentDictionary<string, Lazy<WaySearchResult>> _results = new();

    /// <summary>Errors of about the size of a club player's, written out so that a change of the presets does not change
    /// what is checked.</summary>
    internal static Player Club { get; } = new("club", 0.003, 0.06, 0.0008, 0.0015, 0.02);

    /// <summary>All layouts; in each the cue ball is the first ball and the object ball the second.</summary>
    internal static TheoryData<string> Names() =>
        [.. Directory.EnumerateFiles(Folder(), "*.json").Order().Select(path => Path.GetFileNameWithoutExtension(path))];

    internal static WaySearchRequest Request(string name, int rails = 2, int kicks = 2, int threads = 2)
    {
        SceneCompilation compilation = SceneReader.ReadReady(File.ReadAllBytes(Path.Combine(Folder(), name + ".json")));
        Assert.True(compilation.Ready is not null, string.Join("\n", compilation.Errors));
        ReadyScene ready = compilation.Ready;
        return new WaySearchRequest(ready.Setup, 0, 1, ready.BallIds, 0, rails, kicks, null, 0, Club, threads);
    }

    /// <summary>The whole search of a layout: all pockets, up to two cushions of either ball.</summary>
    internal static WaySearchResult Result(string name) => _results.GetOrAdd(
        name, static name => new Lazy<WaySearchResult>(() => Run(Request(name)))).Value;

    internal static WaySearchResult Run(WaySearchRequest request) =>
        WaySearch.Run(request, stop: TestContext.Current.CancellationToken);

    /// <summary>A stroke as <c>shoot</c> plays it: to the end, with the trace.</summary>
    internal static Trace Shoot(WaySearchRequest request, Stroke stroke)
    {
        ShotBall cueBall = request.Setup.Balls[request.CueBall];
        TipResult struck = TipContact.Strike(stroke, cueBall.Radius, cueBall.Mass, request.Setup.Equipment.Cue);
        ShotBall[] balls = [.. request.Setup.Balls];
        balls[request.CueBall] = cueBall with
        {
            Start = new BallState(cueBall.Start.Position, struck.Velocity, struck.Spin),
        };
        return ShotRunner.Run(
            request.Setup with { Balls = balls, Stroke = new StrokeRecord(request.CueBall, stroke, struck) });
    }

    private static string Folder([CallerFilePath] string file = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", "..", "..", "..", "scenes", "layouts"));
}
