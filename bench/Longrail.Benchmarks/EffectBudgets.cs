using System.Text;
using BenchmarkDotNet.Attributes;
using Longrail.Coaching.Effects;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Reading;

namespace Longrail.Benchmarks;

/// <summary>Claim: the effect budget of a bank, with every set of its causes played; off one cushion, and off two and
/// three with the split over the cushions.</summary>
[MemoryDiagnoser]
public class EffectBudgets
{
    private ReadyScene _scene = null!;

    [Params(1, 2, 3)]
    public int Cushions { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        string name = Cushions switch { 1 => "first-bank", 2 => "two-cushion-bank", _ => "three-cushion-track" };
        string text = SceneLibrary.Json(name + ".json").ToJsonString();
        _scene = SceneReader.ReadReady(Encoding.UTF8.GetBytes(text)).Ready!;
        SceneLibrary.Require(Run().Budget?.Cushions.Count == Cushions, $"a bank off {Cushions} cushions");
    }

    [Benchmark]
    public EffectsAnswer Run() => EffectsRunner.Run(_scene);
}
