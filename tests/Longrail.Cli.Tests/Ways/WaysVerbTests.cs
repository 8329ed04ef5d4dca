using System.Text.Json;
using System.Xml.Linq;
using Longrail.TestKit.Snapshots;

namespace Longrail.Cli.Tests.Ways;

/// <summary>The verb as a user meets it. One small search is shared: the text and the JSON of one question.</summary>
public sealed class WaysVerbTests : IDisposable
{
    private static readonly string[] _question =
        ["ways", CliRun.Scene("first-bank.json"), "--ball", "9", "--rails", "1", "--kick-rails", "0", "--pocket", "left-side"];

    private static readonly Lazy<CliRun> _text = new(() => CliRun.Of("", _question));

    private readonly string _folder = Directory.CreateTempSubdirectory("longrail-ways-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Ways_are_a_table_with_the_best_first_told_in_full()
    {
        CliRun run = _text.Value;

        Assert.Equal((ExitCode.Done, ""), (run.ExitCode, run.Error));
        string[] lines = run.Output.Split('\n');
        Assert.Contains(lines, line => line.StartsWith("A  ", StringComparison.Ordinal) && line.Contains("cross-side bank off right into left-side"));
        Assert.Contains(lines, line => line.StartsWith("A: cross-side bank", StringComparison.Ordinal));
        Assert.All(["  aim ", "  speed ", "  tip ", "  leeway ", "  made ", "  rests "],
            start => Assert.Contains(lines, line => line.StartsWith(start, StringComparison.Ordinal)));
        Assert.DoesNotContain('\u001b', run.Output);
    }

    [Fact]
    public void The_text_looks_as_approved() => Snapshot.Matches(_text.Value.Output, "txt");

    [Fact]
    public void The_help_looks_as_approved() => Snapshot.Matches(CliRun.Of("", "ways", "--help").Output, "txt");

    [Fact]
    public void Saved_ways_and_the_scenes_in_the_json_are_played_by_shoot_as_they_say()
    {
        string saved = Path.Combine(_folder, "ways");
        CliRun run = CliRun.Of("", [.. _question, "--json", "--save", saved, "--threads", "1"]);

        Assert.Equal((ExitCode.Done, ""), (run.ExitCode, run.Error));
        using var answer = JsonDocument.Parse(run.Output);
        JsonElement[] ways = [.. answer.RootElement.GetProperty("ways").EnumerateArray()];
        string[] files = [.. Directory.GetFiles(saved).Order(StringComparer.Ordinal)];
        Assert.NotEmpty(ways);
        Assert.Equal(ways.Length, files.Length);
        Assert.Equal("A-cross-side-bank-off-right-into-left-side", Path.GetFileName(files[0])[..42]);
        for (int k = 0; k < ways.Length; k++)
        {
            string outcome = Played("", files[k]);
            Assert.Equal(outcome, Played(ways[k].GetProperty("scene").GetRawText(), "-"));
            AssertGoesBy(ways[k].GetProperty("route"), outcome);
        }
    }

    [Fact]
    public void A_picture_is_drawn_beside_the_list()
    {
        string picture = Path.Combine(_folder, "ways.svg");

        CliRun run = CliRun.Of("", [.. _question, "--picture", picture]);

        Assert.Equal(_text.Value.Output, run.Output);
        Assert.Equal("svg", XElement.Load(picture).Name.LocalName);
    }

    [Fact]
    public void No_way_at_all_is_an_explained_empty_list_and_no_error()
    {
        // The 9 stands behind a wall of balls, frozen into the corner's long cushion: no straight pot along the table.
        CliRun run = CliRun.Of(Walled, "ways", "-", "--ball", "9", "--rails", "0", "--kick-rails", "0", "--pocket", "head-left");

        Assert.Equal((ExitCode.Done, ""), (run.ExitCode, run.Error));
        Assert.Contains("No way was found to make 9.", run.Output);
        Assert.Contains("Not playable:", run.Output);
    }

    [Theory]
    [InlineData("--ball 7", "--ball: there is no ball \"7\"; allowed: 9")]
    [InlineData("--ball cue", "--ball: \"cue\" is the ball that is struck; allowed: 9")]
    [InlineData("--ball 9 --next 9", "--next: \"9\" is the ball to make now")]
    [InlineData("--ball 9 --next cue", "--next: \"cue\" is the ball that is struck")]
    [InlineData("", "--ball: no ball is named")]
    [InlineData("--ball 9 --rails 4", "--rails: \"4\"; allowed: a number from 0 to 3, or a range as 0..2")]
    [InlineData("--ball 9 --rails 2..1", "--rails: \"2..1\"")]
    [InlineData("--ball 9 --rails many", "--rails: \"many\"")]
    [InlineData("--ball 9 --kick-rails 3", "--kick-rails: \"3\"; allowed: a number from 0 to 2")]
    [InlineData("--ball 9 --pocket left-sid", "--pocket: \"left-sid\"; allowed: head-right, head-left, right-side, left-side, foot-right, foot-left; did you mean \"left-side\"?")]
    [InlineData("--ball 9 --order best", "--order: \"best\"; allowed: plan, odds, leeway, kiss, speed, rails")]
    [InlineData("--ball 9 --seed -1", "seed")]
    [InlineData("--ball 9 --threads 0", "--threads: \"0\"; allowed: a number, 1 or more")]
    [InlineData("--ball 9 --budget 0", "--budget: \"0\"; allowed: a time as \"2 s\", more than 0")]
    [InlineData("--ball 9 --budget 2m", "--budget: \"2m\"")]
    [InlineData("--ball 9 --top 0", "--top: \"0\"")]
    [InlineData("--ball 9 --player nobody", "--player: there is no player and no file \"nobody\"; allowed: beginner, club, county, national, or a player file")]
    [InlineData("--ball 9 --picture ways.gif", ".svg, .png or .pdf")]
    public void A_wrong_question_says_what_is_allowed(string args, string told)
    {
        CliRun run = CliRun.Of("", ["ways", CliRun.Scene("first-bank.json"), .. args.Split(' ', StringSplitOptions.RemoveEmptyEntries)]);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains(told, run.Error);
        Assert.Empty(run.Output);
        Assert.DoesNotContain("   at ", run.Error);
    }

    [Theory]
    [InlineData("""{ "table": { "pockets": "none" }, "balls": [ { "id": "cue", "x": 1, "y": 0.5 }, { "id": "9", "x": 2, "y": 0.5 } ] }""", "has no pockets")]
    [InlineData("""{ "balls": [ { "id": "5", "x": 1, "y": 0.5 }, { "id": "9", "x": 2, "y": 0.5 } ] }""", "there is no cue ball")]
    [InlineData("""{ "balls": [ ] }""", "there is no ball on the table")]
    public void A_layout_without_what_it_takes_is_refused(string scene, string told)
    {
        CliRun run = CliRun.Of(scene, "ways", "-", "--ball", "9");

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains(told, run.Error);
        Assert.Empty(run.Output);
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_told_before_the_search()
    {
        string file = Path.Combine(_folder, "file");
        File.WriteAllText(file, "");

        CliRun run = CliRun.Of("", [.. _question, "--save", file]);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.StartsWith("longrail: --save: ", run.Error);
        Assert.Empty(run.Output);
    }

    private const string Walled = """
        {
          "balls": [
            { "id": "cue", "x": 2.2, "y": 0.3 },
            { "id": "9", "x": 0.6, "y": 1.0 },
            { "id": "1", "x": 0.25, "y": 1.1 }, { "id": "2", "x": 0.31, "y": 1.16 },
            { "id": "3", "x": 0.19, "y": 1.04 }, { "id": "4", "x": 0.37, "y": 1.22 }
          ]
        }
        """;

    private static string Played(string input, string file)
    {
        CliRun run = CliRun.Of(input, "shoot", file, "--json");
        Assert.Equal((ExitCode.Done, ""), (run.ExitCode, run.Error));
        return run.Output;
    }

    // The cushions of the object ball before it drops, in order, and the pocket.
    private static void AssertGoesBy(JsonElement route, string outcome)
    {
        using var played = JsonDocument.Parse(outcome);
        JsonElement[] events =
        [
            .. played.RootElement.GetProperty("events").EnumerateArray()
                .Where(e => e.GetProperty("balls").EnumerateArray().Any(ball => ball.GetString() == "9")),
        ];
        JsonElement drop = Assert.Single(events, e => e.GetProperty("kind").GetString() == "pocketed");
        Assert.Equal(route.GetProperty("pocket").GetString(), drop.GetProperty("pocket").GetString());
        Assert.Equal(
            route.GetProperty("objectBall").EnumerateArray().Select(cushion => cushion.GetString()),
            events.Where(e => e.GetProperty("kind").GetString() == "cushion").Select(e => e.GetProperty("cushion").GetString()));
    }
}
