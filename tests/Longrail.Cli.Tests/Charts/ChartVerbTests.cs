using System.Text;
using System.Text.Json;
using System.Xml.Linq;

namespace Longrail.Cli.Tests.Charts;

public sealed class ChartVerbTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("longrail-chart-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_chart_is_a_table_with_its_key()
    {
        (int exit, string output, string error) = Run(
            "chart", "--bank", "cross-side", "--line", "2,2 to 3,2", "--speeds", "1.3 m/s,3 m/s", "--tips",
            "0,1/8 tip");

        Assert.Equal("", error);
        Assert.Equal(ExitCode.Done, exit);
        Assert.StartsWith("Cross-side bank off the right cushion into left-side\n", output, StringComparison.Ordinal);
        Assert.Contains("pool-9ft, 2.54 x 1.27 m, cloth played-in, balls clean, cushions yielding", output,
            StringComparison.Ordinal);
        Assert.Contains("+ is longer", output, StringComparison.Ordinal);
        Assert.Contains("counted at the nose", output, StringComparison.Ordinal);
        Assert.Contains("\ns a ball stops before it gets there\n", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_negative_tip_is_a_tip_and_not_an_option() => Assert.Equal(
        ExitCode.Done,
        Run("chart", "--bank", "kick", "--line", "2,1 to 3,1", "--speeds", "3", "--tips", "-1/8 tip,0").Exit);

    [Fact]
    public void Json_csv_and_picture_tell_the_same()
    {
        string picture = Path.Combine(_folder, "chart.svg");
        string[] question =
            ["chart", "--bank", "cross-side", "--line", "2,2 to 3,2", "--speeds", "3 m/s", "--tips", "0"];
        (_, string json, _) = Run([.. question, "--json", "--picture", picture, "--date", "2026-11-25"]);
        (_, string csv, _) = Run([.. question, "--csv"]);

        using var document = JsonDocument.Parse(json);
        Assert.Equal("chart/1", document.RootElement.GetProperty("longrail").GetString());
        JsonElement cell = document.RootElement.GetProperty("rows")[0].GetProperty("cells")[0];
        Assert.Contains(
            cell.GetProperty("correctionDiamonds").GetRawText(), csv.Split('\n')[1], StringComparison.Ordinal);
        Assert.Equal("svg", XElement.Load(picture).Name.LocalName);
        Assert.Contains("2026-11-25", File.ReadAllText(picture), StringComparison.Ordinal);
    }

    [Fact]
    public void A_map_shows_a_number_at_each_place()
    {
        (int exit, string output, string error) = Run(
            "chart", "--bank", "cross-side", "--map", "odds", "--player", "national", "--grid", "5x2", "--ball-area",
            "1,0.5 to 6,2.5", "--shots", "20", "--speeds", "2.5 m/s", "--seed", "3");

        Assert.Equal("", error);
        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("The chance in % that the player (national) makes it", output, StringComparison.Ordinal);
        string unbroken = output.ReplaceLineEndings(" ").Replace("   ", " ");
        Assert.Contains("20 shots a place, seed 3; 95 % interval typically", unbroken, StringComparison.Ordinal);
        Assert.Equal(2, output.Split('\n').Count(line => line.Contains(" |", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_scenes_equipment_is_used()
    {
        (int exit, string output, _) = Run(
            "chart", "-", "--bank", "kick", "--target", "9", "--line", "2,1 to 3,1", "--speeds", "3", "--tips", "0");
        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("pool-7ft", output, StringComparison.Ordinal);
        Assert.Contains("Kick off the left cushion to 6, 1.5", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--bank: no bank is named; allowed: cross-side, cross-corner, long-rail, kick")]
    [InlineData("--bank: this table has no pockets", "--bank", "cross-side", "--table", "carom-10ft")]
    [InlineData("--speeds: the number 0 is out of range", "--bank", "cross-side", "--speeds", "0")]
    [InlineData("--grid: a ball at", "--bank", "cross-side", "--grid", "3x3", "--ball-area", "0,0 to 9,4")]
    [InlineData("--date: \"yesterday\"; allowed: year-month-day", "--bank", "cross-side", "--date", "yesterday")]
    [InlineData(
        "--seed: \"-1\"; allowed: a whole number from 0", "--bank", "cross-side", "--map", "odds", "--seed", "-1")]
    [InlineData("--speeds: the text \"-2 mph\"", "--bank", "cross-side", "--speeds", "-2 mph")]
    [InlineData("one form at a time", "--bank", "cross-side", "--json", "--csv")]
    [InlineData(".svg, .png or .pdf", "--bank", "cross-side", "--picture", "chart.gif")]
    [InlineData("--player: only a map has a player", "--bank", "cross-side", "--player", "club")]
    public void Bad_usage_says_what_is_allowed_and_writes_nothing(string expected, params string[] args)
    {
        (int exit, string output, string error) = Run(["chart", .. args]);
        Assert.Equal(ExitCode.BadInput, exit);
        Assert.Equal("", output);
        Assert.Contains(expected, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Interrupted_work_leaves_nothing_half_written()
    {
        string picture = Path.Combine(_folder, "map.svg");
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        (int exit, string output, string error) = Run(
            stop.Token, "chart", "--bank", "cross-side", "--map", "leeway", "--picture", picture);
        Assert.Equal(ExitCode.Interrupted, exit);
        Assert.Equal("", output);
        Assert.Equal("", error);
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder));
    }

    [Fact]
    public void A_progress_bar_is_for_terminals_and_goes_away()
    {
        using var error = new StringWriter();
        var streams =
            new ProgramStreams(Stream.Null, Stream.Null, error, CancellationToken.None) { ErrorIsTerminal = true };
        using (var line = new ProgressLine(streams, TimeSpan.Zero))
        {
            line.Report(0.5);
            line.Report(0.4);
            Assert.Equal("\r[###############...............]  50 %", error.ToString());
        }

        Assert.EndsWith("\r", error.ToString(), StringComparison.Ordinal);
        string before = error.ToString();
        using (var quiet = new ProgressLine(streams with { ErrorIsTerminal = false }, TimeSpan.Zero))
            quiet.Report(0.5);
        Assert.Equal(before, error.ToString());
    }

    private static (int Exit, string Output, string Error) Run(params string[] args) =>
        Run(TestContext.Current.CancellationToken, args);

    private static (int Exit, string Output, string Error) Run(CancellationToken stop, params string[] args)
    {
        const string Scene = """
            { "table": { "preset": "pool-7ft" }, "balls": [
                 { "id": "cue", "along": 2, "across": 1 }, { "id": "9", "along": 6, "across": 1.5 } ] }
            """;
        using var input = new MemoryStream(Encoding.UTF8.GetBytes(Scene));
        using var output = new MemoryStream();
        using var error = new StringWriter();
        int exit = LongrailApp.Run(args, new ProgramStreams(input, output, error, stop));
        return (exit, Encoding.UTF8.GetString(output.ToArray()), error.ToString());
    }
}
