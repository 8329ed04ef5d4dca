using System.Text.Json;

namespace Longrail.Cli.Tests.Verbs;

public sealed class ShootTests
{
    private const string Balls = """[{"id":"cue","x":1.0,"y":0.6}]""";
    private const string OneBall = $$"""{"title":"A ball","balls":{{Balls}},"stroke":{"speed":"2 m/s"} }""";

    [Fact]
    public void A_scene_is_told_event_by_event()
    {
        CliRun run = CliRun.Of("", "shoot", CliRun.Scene("straight-bank-centre.json"));
        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.Empty(run.Error);
        string[] lines = run.Lines();
        Assert.Equal("Straight cross-side bank, without side", lines[0]);
        Assert.Contains("pool-9ft, 2.54 x 1.27 m", lines[1]);
        Assert.Contains(lines, line => line.Contains("cue") && line.Contains("struck, 2.20 m/s (4.9 mph)"));
        Assert.Contains(lines, line => line.Contains("meets 9"));
        Assert.Contains(lines, line => line.Contains("left cushion"));
        Assert.Contains(lines, line => line.StartsWith("At rest after "));
        Assert.Contains(lines, line => line.StartsWith("Diamonds are those of the ball's centre"));
    }

    [Fact]
    public void Standard_input_is_a_file_called_dash() =>
        Assert.StartsWith("A ball\n", CliRun.Of(OneBall, "shoot", "-").Output);

    [Fact]
    public void The_outcome_may_be_had_as_JSON()
    {
        CliRun run = CliRun.Of(OneBall, "shoot", "-", "--json");
        Assert.Equal(ExitCode.Done, run.ExitCode);
        using var outcome = JsonDocument.Parse(run.Output);
        Assert.Equal("outcome/1", outcome.RootElement.GetProperty("longrail").GetString());
        Assert.EndsWith("}\n", run.Output);
    }

    [Fact]
    public void A_shot_may_be_followed_for_a_while_only()
    {
        using var outcome = JsonDocument.Parse(CliRun.Of(OneBall, "shoot", "-", "--json", "--until", "0.5").Output);
        Assert.Equal("time-limit", outcome.RootElement.GetProperty("ended").GetString());
        Assert.Equal(0.5, outcome.RootElement.GetProperty("duration").GetDouble());
        Assert.Contains("Followed for 0.500 s", CliRun.Of(OneBall, "shoot", "-", "--until", "0.5").Output);
    }

    [Fact]
    public void A_scene_without_a_stroke_is_told_too() =>
        Assert.Contains("nothing moves", CliRun.Of($$"""{"balls":{{Balls}} }""", "shoot", "-").Output);

    [Fact]
    public void A_title_cannot_steer_the_terminal()
    {
        CliRun run = CliRun.Of($$"""{"title":"\u001b[2Jgone\u0007","balls":{{Balls}} }""", "shoot", "-");
        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.DoesNotContain(run.Output, c => char.IsControl(c) && c != '\n');
    }

    [Fact]
    public void What_is_wrong_with_a_scene_is_told_with_its_place()
    {
        CliRun run = CliRun.Of("{\n \"bals\": [] }", "shoot", "-");
        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.StartsWith("longrail: standard input:2:2: unknown field \"bals\"", run.Error);
        Assert.Contains("did you mean \"balls\"?", run.Error);
        Assert.Empty(run.Output);
    }

    [Fact]
    public void An_aim_that_does_not_exist_is_no_bad_input_but_cannot_be_computed()
    {
        const string Balls = """[{"id":"cue","x":0.8,"y":0.6},{"id":"9","x":1.5,"y":0.6},{"id":"4","x":1.1,"y":0.6}]""";
        CliRun run = CliRun.Of($$"""{"balls":{{Balls}},"stroke":{"aim":{"at":"9"} } }""", "shoot", "-");
        Assert.Equal(ExitCode.Failed, run.ExitCode);
        Assert.Contains("ball \"4\" is in the way", run.Error);
    }

    [Theory]
    [InlineData("no-such-scene.json", "no such file")]
    [InlineData("no-such-folder/scene.json", "no such folder")]
    [InlineData(".", "folder")]
    [InlineData("a\0b", "cannot read")]
    public void A_file_that_cannot_be_read_is_told(string file, string told)
    {
        CliRun run = CliRun.Of("", "shoot", file);
        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains(told, run.Error);
        Assert.Equal(ExitCode.BadInput, CliRun.Of("", "shoot", file, "--lines").ExitCode);
    }

    [Fact]
    public void A_gigabyte_of_noise_is_refused_after_a_megabyte()
    {
        var random = new Random(1);
        using var noise = new LongStream(1_000_000_000, memory => random.NextBytes(memory.Span));
        CliRun run = CliRun.Of(noise, "shoot", "-");
        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains("more than 1000000 bytes", run.Error);
        Assert.InRange(noise.Taken, 1, 1_100_000);
    }

    [Fact]
    public void Noise_is_refused_as_what_it_is()
    {
        byte[] noise = new byte[5000];
        new Random(2).NextBytes(noise);
        CliRun run = CliRun.Of(new MemoryStream(noise), "shoot", "-");
        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains("UTF-8", run.Error);
    }
}
