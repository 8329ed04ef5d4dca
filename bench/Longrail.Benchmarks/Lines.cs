using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using BenchmarkDotNet.Attributes;
using Longrail.Cli.Lines;
using Longrail.Physics.Shots;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Outcomes;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Writing;

namespace Longrail.Benchmarks;

/// <summary>Claim: scene text in, outcome text out, as <c>shoot --lines</c> does it. All figures are per
/// scene.</summary>
[MemoryDiagnoser]
public class Lines
{
    private const int Scenes = 2000;
    private readonly ArrayBufferWriter<byte> _answers = new(1 << 20);
    private byte[][] _lines = null!;
    private byte[] _text = null!;

    [GlobalSetup]
    public void Prepare()
    {
        JsonObject scene = SceneLibrary.Json("straight-bank-centre.json");
        _lines = new byte[Scenes][];
        for (int i = 0; i < Scenes; i++)
        {
            // From 1.5 to 3.5 m/s, so that no two lines are the same shot.
            scene["stroke"]!["speed"] = 1.5 + 2.0 * i / Scenes;
            _lines[i] = Encoding.UTF8.GetBytes(scene.ToJsonString() + "\n");
        }

        _text = [.. _lines.SelectMany(line => line)];
        long failed = new LinePlayer(ShotOptions.Default).Play(new MemoryStream(_text), Stream.Null, default);
        SceneLibrary.Require(failed == 0, "lines that can all be played");
    }

    /// <summary>One core: the reading, the shot, its readings and the writing, one scene after the other.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Scenes)]
    public int OneCore()
    {
        using var json = new Utf8JsonWriter(_answers, JsonForm.OneLine);
        int written = 0;
        foreach (byte[] line in _lines)
        {
            _answers.ResetWrittenCount();
            json.Reset(_answers);
            SceneCompilation compilation = SceneReader.ReadReady(line);
            OutcomeWriter.Write(json, Outcome.Of(compilation.Ready!));
            json.Flush();
            written += _answers.WrittenCount;
        }

        return written;
    }

    /// <summary>One core: the reading alone.</summary>
    [Benchmark(OperationsPerInvoke = Scenes)]
    public int ReadingAlone()
    {
        int balls = 0;
        foreach (byte[] line in _lines)
            balls += SceneReader.ReadReady(line).Ready!.Setup.Balls.Count;
        return balls;
    }

    /// <summary>All cores: the player of the command line, from stream to stream.</summary>
    [Benchmark(OperationsPerInvoke = Scenes)]
    public long AllCores() => new LinePlayer(ShotOptions.Default).Play(new MemoryStream(_text), Stream.Null, default);
}
