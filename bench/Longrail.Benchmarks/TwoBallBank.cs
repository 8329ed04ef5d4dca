using BenchmarkDotNet.Attributes;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;

namespace Longrail.Benchmarks;

/// <summary>Claim: cue ball, object ball, one cushion and back across a pocketed table, to rest.</summary>
[MemoryDiagnoser]
public class TwoBallBank
{
    private readonly BallEnd[] _ends = new BallEnd[2];
    private ShotSetup _setup = null!;

    [Params(CushionLaw.Yielding, CushionLaw.Impulse)]
    public CushionLaw Law { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        _setup = SceneLibrary.Setup("straight-bank-centre.json").Under(Law);
        Trace trace = ShotRunner.Run(_setup);
        SceneLibrary.Require(trace.Events.Any(e => e.Kind == ShotEventKind.BallsMeet), "two balls that meet");
        SceneLibrary.Require(trace.Events.Any(e => e is { Kind: ShotEventKind.Cushion, BallA: 1 }), "a bank");
    }

    /// <summary>Only how the balls end. Must allocate nothing.</summary>
    [Benchmark(Baseline = true)]
    public StopReason RunToEnd() => ShotRunner.RunToEnd(_setup, ShotOptions.Default, _ends);

    /// <summary>With the trace, from which readings and pictures are taken.</summary>
    [Benchmark]
    public Trace Run() => ShotRunner.Run(_setup);
}
