using BenchmarkDotNet.Attributes;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;

namespace Longrail.Benchmarks;

/// <summary>Claim: one ball over three cushions of a pocketed table, to rest.</summary>
[MemoryDiagnoser]
public class OneBallThreeCushions
{
    private readonly BallEnd[] _ends = new BallEnd[1];
    private ShotSetup _setup = null!;

    [Params(CushionLaw.Yielding, CushionLaw.Impulse)]
    public CushionLaw Law { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        _setup = SceneLibrary.Setup("bank-alone-hard.json").Under(Law);
        int cushions = ShotRunner.Run(_setup).Events.Count(e => e.Kind == ShotEventKind.Cushion);
        SceneLibrary.Require(cushions >= 3, "three cushions");
    }

    /// <summary>Only how the ball ends. Must allocate nothing.</summary>
    [Benchmark(Baseline = true)]
    public StopReason RunToEnd() => ShotRunner.RunToEnd(_setup, ShotOptions.Default, _ends);

    /// <summary>With the trace, from which readings and pictures are taken.</summary>
    [Benchmark]
    public Trace Run() => ShotRunner.Run(_setup);
}
