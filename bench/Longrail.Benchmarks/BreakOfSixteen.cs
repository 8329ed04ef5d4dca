using System.Text.Json.Nodes;
using BenchmarkDotNet.Attributes;
using Longrail.Physics.Shots;

namespace Longrail.Benchmarks;

/// <summary>Claim: a break of fifteen frozen balls at 9 m/s, to rest.</summary>
[MemoryDiagnoser]
public class BreakOfSixteen
{
    private const int Rows = 5;
    private readonly BallEnd[] _ends = new BallEnd[16];
    private ShotSetup _setup = null!;

    [GlobalSetup]
    public void Prepare()
    {
        _setup = SceneLibrary.Setup(Scene());
        SceneLibrary.Require(_setup.Balls.Count == _ends.Length, "sixteen balls");
    }

    /// <summary>Only how the balls end. Must allocate nothing.</summary>
    [Benchmark(Baseline = true)]
    public StopReason RunToEnd() => ShotRunner.RunToEnd(_setup, ShotOptions.Default, _ends);

    /// <summary>With the trace, from which readings and pictures are taken.</summary>
    [Benchmark]
    public Trace Run() => ShotRunner.Run(_setup);

    // The rack's first ball stands on the foot spot, two diamonds from the foot; the cue ball a little off the middle,
    // so that the two halves do not mirror each other.
    private static JsonObject Scene()
    {
        const double Diameter = 0.05715;
        const double FootSpot = 0.75 * 2.54;
        const double Middle = 0.5 * 1.27;
        var balls = new JsonArray(new JsonObject { ["id"] = "cue", ["x"] = 0.6, ["y"] = Middle + 0.01 });
        for (int row = 0; row < Rows; row++)
        {
            for (int place = 0; place <= row; place++)
            {
                balls.Add(new JsonObject
                {
                    ["id"] = $"{balls.Count}",
                    ["x"] = FootSpot + row * Diameter * Math.Sqrt(0.75),
                    ["y"] = Middle + (place - 0.5 * row) * Diameter,
                });
            }
        }

        return new JsonObject
        {
            ["longrail"] = "scene/1",
            ["table"] = new JsonObject { ["preset"] = "pool-9ft" },
            ["balls"] = balls,
            ["stroke"] = new JsonObject { ["ball"] = "cue", ["aim"] = 0.0, ["speed"] = 9.0 },
        };
    }
}
