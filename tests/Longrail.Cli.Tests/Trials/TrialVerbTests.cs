using System.Globalization;
using System.Text.Json;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Longrail.Cli.Tests.Trials;

public sealed class TrialVerbTests : IDisposable
{
    private static readonly string _scene = CliRun.Scene("trials/clean-or-dirty.json");
    private static readonly string _plan = CliRun.Scene("trials/clean-or-dirty.plan.json");
    private static readonly string _results = CliRun.Scene("trials/clean-or-dirty.csv");

    private readonly string _folder = Directory.CreateTempSubdirectory("longrail-trials-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_plan_of_the_repository_is_the_one_that_the_program_makes()
    {
        CliRun run = CliRun.Of("", "trial", "plan", _scene, "--vary", "ballSet.state=clean,dirty", "--player",
            CliRun.Scene("players/robin.json"), "--json");
        Assert.Equal((ExitCode.Done, ""), (run.ExitCode, run.Error));
        if (Environment.GetEnvironmentVariable("UPDATE_SNAPSHOTS") == "1") File.WriteAllText(_plan, run.Output);
        using var made = JsonDocument.Parse(run.Output);
        using var kept = JsonDocument.Parse(File.ReadAllText(_plan));
        // Of the figures only those that are decisions are held to the digit: sines differ between machines.
        string[] fields = ["measure", "usesSpeed", "shots", "looks", "order", "seed", "ball", "target"];
        Assert.All(fields, field => Assert.Equal(
            kept.RootElement.GetProperty(field).GetRawText(), made.RootElement.GetProperty(field).GetRawText()));
    }

    [Fact]
    public void A_plan_goes_through_a_pipe()
    {
        CliRun plan =
            CliRun.Of(File.ReadAllText(_scene), "trial", "plan", "-", "--vary", "ballSet.state=dirty", "--json");
        CliRun sheet = CliRun.Of(plan.Output, "trial", "sheet", "-");
        Assert.Equal((ExitCode.Done, ""), (sheet.ExitCode, sheet.Error));
        Assert.Contains("A: ballSet.state = clean", sheet.Output, StringComparison.Ordinal);
    }

    // Set-up and order on paper are those of the plan: the words are read back from the PDF with another library.
    [Theory]
    [InlineData("a4", 595.3, 841.9)]
    [InlineData("letter", 612, 792)]
    public void The_printed_sheet_shows_set_up_and_order(string paper, double width, double height)
    {
        string path = Path.Combine(_folder, "sheet.pdf");
        CliRun run = CliRun.Of("", "trial", "sheet", _plan, "--picture", path, "--paper", paper);
        Assert.Equal((ExitCode.Done, ""), (run.ExitCode, run.Error));
        using PdfDocument pdf = PdfDocument.Open(path);
        Page page = Assert.Single(pdf.GetPages());
        // ISO 216 and 8 1/2 x 11 in, in points; the renderer rounds up to whole pixels, 3/4 of a point.
        Assert.Equal(width, page.Width, 0.75);
        Assert.Equal(height, page.Height, 0.75);
        string[] words = [.. page.GetWords().Select(word => word.Text)];
        // The cue ball at 1.6 along, 2.2 across on 2540 x 1270 mm: 508 and 698.5 mm, rounded to even.
        foreach (string word in (string[])["1.60", "2.20", "508", "2.60", "826", "landing", "dirty"])
            Assert.Contains(word, words);
        string order =
            string.Concat(run.Output.Split('\n').Skip(4).SelectMany(line => line.Where(c => c is 'A' or 'B')));
        IEnumerable<(double X, double Y, string Text)> letters = page.Letters
            .Where(letter => letter.Value is "A" or "B" && letter.PointSize > 9 && letter.Location.Y < 0.62 * height)
            .Select(letter => (letter.Location.X, letter.Location.Y, letter.Value));
        string printed =
            string.Concat(letters.OrderBy(l => l.X > width / 2).ThenByDescending(l => l.Y).Select(l => l.Text));
        Assert.Equal(order, printed);
    }

    [Fact]
    public void A_long_sheet_has_several_pages()
    {
        string plan = Path.Combine(_folder, "plan.json");
        CliRun made = CliRun.Of(
            "", "trial", "plan", CliRun.Scene("first-bank.json"), "--vary", "ballSet.state=polished,clean", "--looks",
                "2", "--json");
        File.WriteAllText(plan, made.Output);
        CliRun run = CliRun.Of("", "trial", "sheet", plan, "--picture", Path.Combine(_folder, "sheet.svg"));
        Assert.Equal((ExitCode.Done, ""), (run.ExitCode, run.Error));
        Assert.True(File.Exists(Path.Combine(_folder, "sheet-2.svg")));
        string pages = string.Concat(Directory.EnumerateFiles(_folder, "*.svg").Select(File.ReadAllText));
        Assert.Contains("look 1 of 2", pages, StringComparison.Ordinal);
    }

    [Fact]
    public void Filled_in_results_are_never_written_over()
    {
        string path = Path.Combine(_folder, "results.csv");
        Assert.Equal(ExitCode.Done, CliRun.Of("", "trial", "sheet", _plan, "--results", path).ExitCode);
        string[] rows = File.ReadAllLines(path);
        Assert.Equal("shot,condition,landing_mm,speed_mps,made,note", rows[0]);
        File.AppendAllText(path, "29,A,1200,2.5,1,\n");
        CliRun again = CliRun.Of("", "trial", "sheet", _plan, "--results", path);
        Assert.Equal(ExitCode.Failed, again.ExitCode);
        Assert.Contains("is there already", again.Error, StringComparison.Ordinal);
        Assert.Equal(rows.Length + 1, File.ReadAllLines(path).Length);
    }

    [Fact]
    public void Results_are_weighed_as_text_json_and_picture()
    {
        string picture = Path.Combine(_folder, "weighed.svg");
        CliRun text = CliRun.Of("", "trial", "weigh", _results, "--plan", _plan, "--picture", picture);
        Assert.Equal((ExitCode.Done, ""), (text.ExitCode, text.Error));
        Assert.Contains("With this player, table and shot", text.Output, StringComparison.Ordinal);
        CliRun json = CliRun.Of(File.ReadAllText(_results), "trial", "weigh", "-", "--plan", _plan, "--json");
        using var result = JsonDocument.Parse(json.Output);
        JsonElement comparison = result.RootElement.GetProperty("comparisons")[0];
        string adjusted = (1000 * comparison.GetProperty("adjusted").GetProperty("difference").GetDouble())
            .ToString("+0", CultureInfo.InvariantCulture);
        Assert.Contains($"{adjusted} mm", text.Output, StringComparison.Ordinal);
        Assert.Contains("at the same speed", File.ReadAllText(picture), StringComparison.Ordinal);
    }

    [Fact]
    public void Peeking_is_refused_with_status_one()
    {
        string half = string.Join('\n', File.ReadAllLines(_results).Take(20));
        CliRun run = CliRun.Of(half, "trial", "weigh", "-", "--plan", _plan);
        Assert.Equal((ExitCode.Failed, ""), (run.ExitCode, run.Output));
        Assert.Contains("not weighed", run.Error, StringComparison.Ordinal);
        Assert.Contains("19 %", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("trial plan SCENE", "--vary: nothing is varied")]
    [InlineData("trial plan SCENE --vary ballSet.state=clean,dirty --power 2",
        "--power: \"2\"; allowed: a chance from 0.5 to 0.999")]
    [InlineData("trial plan SCENE --vary ballSet.state=clean,dirty --looks 11", "--looks: 11; allowed: 1 to 10")]
    [InlineData("trial plan SCENE --vary ballSet.state=clean,dirty --reading 10",
        "--reading: \"10\"; allowed: a length with its unit")]
    [InlineData("trial plan SCENE --vary ballSet.state=clean,dirty --order random",
        "--order: \"random\"; allowed: abba, blocks")]
    [InlineData("trial plan SCENE --vary ballSet.state=clean,dirty --player nobody", "nobody")]
    [InlineData("trial plan SCENE --vary ballSet.state=clean,filthy", "filthy")]
    [InlineData("trial sheet SCENE", "trial's plan")]
    [InlineData("trial sheet no-such.json", "there is no such file")]
    [InlineData("trial sheet PLAN --paper a5", "--paper: \"a5\"; allowed: a4, letter")]
    [InlineData("trial sheet PLAN --results r.txt", "--results: \"r.txt\"; allowed: a name that ends in .csv")]
    [InlineData("trial weigh PLAN --plan PLAN", "there is no such column")]
    [InlineData("trial weigh no-such.csv", "there is no such file")]
    [InlineData("trial weigh PLAN --picture w.jpg", "--picture")]
    public void Bad_usage_is_told_with_status_two(string line, string told)
    {
        string[] words =
            [.. line.Split(' ').Select(word => word switch { "SCENE" => _scene, "PLAN" => _plan, _ => word })];
        CliRun run = CliRun.Of("", words);
        Assert.Equal((ExitCode.BadInput, ""), (run.ExitCode, run.Output));
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
    }
}
