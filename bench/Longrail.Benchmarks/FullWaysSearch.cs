using BenchmarkDotNet.Attributes;
using Longrail.Coaching.Players;
using Longrail.Coaching.Ways.Search;
using Longrail.Scenes.Compiling;

namespace Longrail.Benchmarks;

/// <summary>Claim: every way to make one ball among six, all pockets, up to two cushions of either ball, with leeways
/// and without odds; and how soon the first way is shown.</summary>
public class FullWaysSearch
{
    private WaySearchRequest _request = null!;

    [Params(1, 2)]
    public int Threads { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        ReadyScene scene = SceneLibrary.Ready("crowded.json");
        _request = new WaySearchRequest(
            scene.Setup, 0, 1, scene.BallIds, 0, 2, 2, null, 0, PlayerPresets.Default, Threads);
        SceneLibrary.Require(scene.BallIds.Count == 6, "six balls");
    }

    /// <summary>The whole search.</summary>
    [Benchmark(Baseline = true)]
    public WaySearchResult All() => WaySearch.Run(_request);

    /// <summary>Until the first way is shown; the search is stopped there.</summary>
    [Benchmark]
    public WaySearchResult First()
    {
        using var stop = new CancellationTokenSource();
        return WaySearch.Run(_request, _ => stop.Cancel(), null, stop.Token);
    }
}
