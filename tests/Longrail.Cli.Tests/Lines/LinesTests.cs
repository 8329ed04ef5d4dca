using System.Globalization;
using System.Text;
using System.Text.Json;
using Longrail.Cli.Lines;
using Longrail.Physics.Shots;
using Longrail.Scenes.Outcomes;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Writing;

namespace Longrail.Cli.Tests.Lines;

public sealed class LinesTests
{
    [Fact]
    public void Answers_come_in_order_and_are_those_of_scenes_played_alone()
    {
        string[] scenes = [.. Enumerable.Range(0, 500).Select(Scene)];
        CliRun run = CliRun.Of(string.Join("\n", scenes), "shoot", "-", "--lines");
        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.Equal(scenes.Select(Alone), run.Lines());
    }

    [Fact]
    public void A_bad_line_is_answered_by_an_error_and_the_rest_is_played()
    {
        const string OutsideTheTable = """{"balls":[{"id":"cue","x":1,"y":7}]}""";
        const string CutOff = """{"balls":[{"id":""";
        string input = string.Join("\n", Scene(0), OutsideTheTable, "", Scene(1), CutOff);
        CliRun run = CliRun.Of(input, "shoot", "-", "--lines");
        Assert.Equal(ExitCode.Failed, run.ExitCode);
        Assert.Contains("2 lines could not be played", run.Error);
        string[] answers = run.Lines();
        Assert.Equal(["outcome/1", "error/1", "outcome/1", "error/1"], answers.Select(FormatOf));
        Assert.Equal([2, 5], answers.Where(answer => FormatOf(answer) == "error/1").Select(LineOf));
        using var error = JsonDocument.Parse(answers[1]);
        JsonElement first = error.RootElement.GetProperty("errors")[0];
        Assert.Equal("balls[0]", first.GetProperty("path").GetString());
        Assert.Contains("too far over the left cushion", first.GetProperty("problem").GetString());
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\n\n\n")]
    [InlineData("\n \t \n")]
    public void Lines_may_end_and_be_parted_in_more_than_one_way(string parting)
    {
        CliRun run = CliRun.Of(Scene(1) + parting + Scene(2) + parting, "shoot", "-", "--lines");
        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.Equal([Alone(Scene(1)), Alone(Scene(2))], run.Lines());
    }

    [Fact]
    public void No_input_gives_no_output()
    {
        CliRun run = CliRun.Of("", "shoot", "-", "--lines");
        Assert.Equal((ExitCode.Done, "", ""), (run.ExitCode, run.Output, run.Error));
    }

    [Fact]
    public void A_file_of_lines_is_played_like_standard_input()
    {
        string file = Path.Combine(Path.GetTempPath(), $"longrail-lines-{Guid.NewGuid():N}.jsonl");
        File.WriteAllText(file, Scene(3) + "\n" + Scene(4));
        try
        {
            Assert.Equal([Alone(Scene(3)), Alone(Scene(4))], CliRun.Of("", "shoot", file, "--lines").Lines());
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public void Lines_that_arrive_in_pieces_are_put_together()
    {
        byte[] text = Encoding.UTF8.GetBytes(Scene(5) + "\n" + Scene(6) + "\n" + Scene(7));
        byte[][] pieces = [.. text.Chunk(7)];
        CliRun run = CliRun.Of(new PieceStream(pieces), "shoot", "-", "--lines");
        Assert.Equal([Alone(Scene(5)), Alone(Scene(6)), Alone(Scene(7))], run.Lines());
    }

    [Fact]
    public void A_line_that_is_too_long_is_refused_and_the_next_one_is_played()
    {
        byte[] before = Encoding.UTF8.GetBytes(Scene(8) + "\n");
        byte[] after = Encoding.UTF8.GetBytes("\n" + Scene(9) + "\n");
        byte[][] pieces = [before, .. Enumerable.Repeat(Encoding.UTF8.GetBytes(new string('x', 4_000)), 800), after];
        CliRun run = CliRun.Of(new PieceStream(pieces), "shoot", "-", "--lines");
        Assert.Equal(ExitCode.Failed, run.ExitCode);
        Assert.Equal(["outcome/1", "error/1", "outcome/1"], run.Lines().Select(FormatOf));
        Assert.Contains("more than 1000000 bytes long", run.Lines()[1]);
        Assert.Equal(2, LineOf(run.Lines()[1]));
        Assert.Equal(Alone(Scene(9)), run.Lines()[2]);
    }

    [Theory]
    [InlineData(1_000_000)]
    [InlineData(1_000_001)]
    public void A_line_of_just_the_largest_size_is_read_and_one_byte_more_is_not(int size)
    {
        string line = Scene(1).PadRight(size);
        string answer = Assert.Single(CliRun.Of(line + "\n", "shoot", "-", "--lines").Lines());
        Assert.Equal(size == 1_000_000 ? "outcome/1" : "error/1", FormatOf(answer));
    }

    [Fact]
    public void A_gigabyte_on_one_line_takes_little_memory()
    {
        long allocated = GC.GetTotalAllocatedBytes(precise: true);
        using var noise = new LongStream(1_000_000_000, memory => memory.Span.Fill((byte)'x'));
        CliRun run = CliRun.Of(noise, "shoot", "-", "--lines");
        Assert.Equal(ExitCode.Failed, run.ExitCode);
        Assert.Single(run.Lines());
        Assert.Equal(1_000_000_000, noise.Taken);

        // Buffers for a line of a megabyte, doubled as it grows, and nothing for what follows. Other tests allocate
        // meanwhile.
        Assert.InRange(GC.GetTotalAllocatedBytes(precise: true) - allocated, 0, 400_000_000);
    }

    [Fact]
    public void Nothing_is_computed_any_more_when_nobody_reads()
    {
        byte[] line = Encoding.UTF8.GetBytes(Scene(1) + "\n");
        using var endless = new LongStream(long.MaxValue, memory => Repeat(line, memory.Span));
        using var output = new ClosingStream(after: 100_000);
        Assert.Throws<OutputClosedException>(
            () => new LinePlayer(ShotOptions.Default).Play(endless, output, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void A_run_can_be_interrupted()
    {
        byte[] line = Encoding.UTF8.GetBytes(Scene(1) + "\n");
        using var endless = new LongStream(long.MaxValue, memory => Repeat(line, memory.Span));
        using var interrupted = new CancellationTokenSource(TimeSpan.FromMilliseconds(100));
        using var error = new StringWriter();
        var streams = new ProgramStreams(endless, Stream.Null, error, interrupted.Token);
        int exitCode = LongrailApp.Run(["shoot", "-", "--lines"], streams);
        Assert.Equal(ExitCode.Interrupted, exitCode);
        Assert.Empty(error.ToString());
    }

    // Whole lines only, or the pieces of one line would not fit together.
    private static void Repeat(byte[] line, Span<byte> span)
    {
        span.Fill((byte)'\n');
        for (int start = 0; start + line.Length <= span.Length; start += line.Length)
            line.CopyTo(span[start..]);
    }

    private static string Scene(int number)
    {
        string aim = (0.4 + 0.0003 * number).ToString("R", CultureInfo.InvariantCulture);
        string speed = (1 + 0.004 * number).ToString("R", CultureInfo.InvariantCulture);
        const string Balls = """[{"id":"cue","x":0.7,"y":0.4},{"id":"9","x":1.1,"y":0.6}]""";
        return $$"""{"title":"{{number}}","balls":{{Balls}},"stroke":{"aim":{{aim}},"speed":{{speed}} } }""";
    }

    private static string Alone(string scene)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, JsonForm.OneLine))
            OutcomeWriter.Write(json, Outcome.Of(SceneReader.ReadReady(Encoding.UTF8.GetBytes(scene)).Ready!));
        return Encoding.UTF8.GetString(buffer.ToArray());
    }

    private static string? FormatOf(string answer)
    {
        using var parsed = JsonDocument.Parse(answer);
        return parsed.RootElement.GetProperty("longrail").GetString();
    }

    private static int LineOf(string answer)
    {
        using var parsed = JsonDocument.Parse(answer);
        return parsed.RootElement.GetProperty("line").GetInt32();
    }
}
