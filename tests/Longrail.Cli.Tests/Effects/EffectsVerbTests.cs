using System.Text.Json;
using System.Xml.Linq;
using Longrail.TestKit.Snapshots;

namespace Longrail.Cli.Tests.Effects;

public sealed class EffectsVerbTests : IDisposable
{
    private const string Alone = """
        {
          "title": "Cue ball off the left cushion\u001b[31m",
          "table": { "pockets": "none" },
          "balls": [ { "id": "cue", "x": 0.8, "y": 0.4 } ],
          "stroke": { "aim": "60 deg", "speed": 2.2 }
        }
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("longrail-effects-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_budget_of_a_two_cushion_bank_reads_as_approved()
    {
        CliRun run = CliRun.Of("", "effects", CliRun.Scene("two-cushion-bank.json"));

        Assert.Equal("", run.Error);
        Assert.Equal(ExitCode.Done, run.ExitCode);
        Snapshot.Matches(run.Output, "txt");
    }

    [Fact]
    public void The_budget_of_a_straight_cut_reads_as_approved()
    {
        CliRun run = CliRun.Of("", "effects", CliRun.Scene("corner-cut-dirty.json"), "--unit", "mm");

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Snapshot.Matches(run.Output, "txt");
    }

    [Fact]
    public void A_title_does_not_steer_the_terminal()
    {
        CliRun run = CliRun.Of(Alone, "effects", "-");

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.DoesNotContain('\u001b', run.Output);
        Assert.StartsWith("Cue ball off the left cushion", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_of_the_format_effects_1_and_its_numbers_add_up()
    {
        CliRun run = CliRun.Of("", "effects", CliRun.Scene("first-bank.json"), "--json");

        using var document = JsonDocument.Parse(run.Output);
        JsonElement root = document.RootElement;
        Assert.Equal("effects/1", root.GetProperty("longrail").GetString());
        double Metres(JsonElement amount) => amount.GetProperty("metres").GetDouble();
        double parts = root.GetProperty("effects").EnumerateArray().Sum(effect => Metres(effect.GetProperty("share")));
        Assert.Equal(Metres(root.GetProperty("total")), parts + Metres(root.GetProperty("remainder")), 1e-12);
        Assert.Equal(
            Metres(root.GetProperty("total")),
            Metres(root.GetProperty("shot")) - Metres(root.GetProperty("mirror")), 1e-12);
    }

    [Fact]
    public void A_picture_is_drawn_beside_the_table()
    {
        string picture = Path.Combine(_folder, "effects.svg");

        CliRun run = CliRun.Of(Alone, "effects", "-", "--picture", picture);

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.Contains("roll at the cushion", run.Output, StringComparison.Ordinal);
        Assert.Equal("svg", XElement.Load(picture).Name.LocalName);
    }

    [Fact]
    public void Another_ball_can_be_measured()
    {
        CliRun run = CliRun.Of("", "effects", CliRun.Scene("three-cushion-track.json"), "--ball", "red");

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.Contains("Measured: red, hit by cue", run.Output, StringComparison.Ordinal);
        Assert.Contains("Ball cue had touched something before", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "balls": [ { "id": "cue", "x": 1, "y": 0.6 } ] }""", "nothing is struck or launched")]
    [InlineData(
        """{ "balls": [ { "id": "cue", "x": 1, "y": 0.6 } ], "stroke": { "aim": 0, "speed": 0.2 } }""",
        "stops before it comes to a cushion")]
    public void A_scene_without_a_budget_fails_with_a_reason_and_draws_nothing(string scene, string expected)
    {
        string picture = Path.Combine(_folder, "never.svg");

        CliRun run = CliRun.Of(scene, "effects", "-", "--picture", picture);

        Assert.Equal(ExitCode.Failed, run.ExitCode);
        Assert.Equal("", run.Output);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(picture));
    }

    [Fact]
    public void Half_openings_without_a_pocket_are_refused_with_what_is_allowed()
    {
        CliRun run = CliRun.Of(Alone, "effects", "-", "--unit", "half-openings");

        Assert.Equal(ExitCode.Failed, run.ExitCode);
        Assert.Contains("allowed here: diamonds, mm", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("there is no ball \"7\"; allowed: cue", "--ball", "7")]
    [InlineData("--cushions: \"4\"; allowed: 1, 2, 3", "--cushions", "4")]
    [InlineData("--unit: \"inch\"; allowed: diamonds, mm, half-openings", "--unit", "inch")]
    [InlineData(".svg, .png or .pdf", "--picture", "budget.gif")]
    public void Bad_usage_says_what_is_allowed(string expected, params string[] args)
    {
        CliRun run = CliRun.Of(Alone, ["effects", "-", .. args]);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Equal("", run.Output);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
    }
}
