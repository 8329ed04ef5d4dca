using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Outcomes;
using Longrail.Scenes.Schemas;
using NJsonSchema;

namespace Longrail.Scenes.Tests.Outcomes;

public sealed class OutcomeTests
{
    private static readonly JsonSchema _schema =
        JsonSchema.FromJsonAsync(Encoding.UTF8.GetString(OutcomeSchema.ToUtf8())).GetAwaiter().GetResult();

    [Theory]
    [MemberData(nameof(SceneFiles.Names), MemberType = typeof(SceneFiles))]
    public void The_outcome_of_every_scene_fits_the_schema(string name) =>
        Assert.Empty(_schema.Validate(Encoding.UTF8.GetString(OutcomeOf(name))));

    [Theory]
    [MemberData(nameof(SceneFiles.Names), MemberType = typeof(SceneFiles))]
    public void The_scene_in_an_outcome_played_again_gives_the_same_outcome_byte_for_byte(string name)
    {
        byte[] first = OutcomeOf(name);
        using var parsed = JsonDocument.Parse(first);
        byte[] again = Play(parsed.RootElement.GetProperty("scene").GetRawText());
        Assert.Equal(first, again);
    }

    [Theory]
    [MemberData(nameof(SceneFiles.Names), MemberType = typeof(SceneFiles))]
    public void Lists_of_an_event_follow_its_balls(string name)
    {
        JsonObject outcome = Parse(OutcomeOf(name));
        Assert.All(outcome["events"]!.AsArray(), e =>
        {
            int balls = e!["balls"]!.AsArray().Count;
            Assert.Equal(e["kind"]!.GetValue<string>() == "balls-meet" ? 2 : 1, balls);
            Assert.Equal(balls, e["position"]!.AsArray().Count);
            Assert.Equal(balls, e["before"]!.AsArray().Count);
            Assert.Equal(balls, e["after"]!.AsArray().Count);
            Assert.Equal(e["duration"] is not null, e["positionAfter"] is not null);
        });
    }

    // An orientation is a unit quaternion: its length differs from 1 by rounding only.
    [Fact]
    public void Every_ball_has_its_end_and_its_orientation()
    {
        JsonObject outcome = Parse(OutcomeOf("straight-bank-centre.json"));
        JsonArray balls = outcome["balls"]!.AsArray();
        Assert.Equal(["cue", "9"], balls.Select(ball => ball!["id"]!.GetValue<string>()));
        Assert.All(balls, ball =>
        {
            double[] q = [.. ball!["orientation"]!.AsArray().Select(part => part!.GetValue<double>())];
            Assert.Equal(1.0, q.Sum(part => part * part), 1e-12);
        });
    }

    [Fact]
    public void A_ball_that_is_still_moving_says_how()
    {
        ReadyScene scene = SceneFiles.Ready(SceneFiles.OneBall("\"stroke\":{\"speed\":2}"));
        JsonObject outcome = Parse(OutcomeWriter.ToUtf8(Outcome.Of(scene, new ShotOptions(MaxTime: 0.1))));
        Assert.Equal("time-limit", outcome["ended"]!.GetValue<string>());
        JsonNode ball = outcome["balls"]![0]!;
        Assert.Equal("moving", ball["state"]!.GetValue<string>());

        // A ball struck level at its centre slides, slowed by mu g: v = 2 - 0.2 * 9.80665 * 0.1 (elementary mechanics).
        Assert.Equal(2.0 - 0.2 * 9.80665 * 0.1, ball["velocity"]![0]!.GetValue<double>(), 1e-12);
    }

    [Fact]
    public void Nothing_moves_without_a_stroke()
    {
        JsonObject outcome = Parse(Play(SceneFiles.TwoBalls()));
        Assert.Empty(outcome["events"]!.AsArray());
        Assert.Equal("at-rest", outcome["ended"]!.GetValue<string>());
        Assert.Equal(0.0, outcome["duration"]!.GetValue<double>());
    }

    [Theory]
    [InlineData("events")]
    [InlineData("scene")]
    [InlineData("readings")]
    [InlineData("ended")]
    public void An_outcome_without_one_of_its_parts_does_not_fit_the_schema(string part)
    {
        JsonObject outcome = Parse(OutcomeOf("straight-bank-centre.json"));
        outcome.Remove(part);
        Assert.NotEmpty(_schema.Validate(outcome.ToJsonString()));
    }

    [Fact]
    public void An_outcome_with_a_part_changed_does_not_fit_the_schema()
    {
        Refused(outcome => outcome["ended"] = "tired");
        Refused(outcome => outcome["more"] = 1);
        Refused(outcome => outcome["duration"] = -1);
        Refused(outcome => outcome["events"]![0]!["kind"] = "bounce");
        Refused(outcome => outcome["events"]![0]!["position"]![0]!.AsArray().Add(0));
        Refused(outcome => outcome["events"]![0]!.AsObject().Remove("time"));
        Refused(outcome => outcome["balls"]![0]!["orientation"] = new JsonArray(1, 0, 0));
        Refused(outcome => outcome["scene"]!["cloth"]!["slidingFriction"] = -1);
    }

    // The lists of readings are written by hand; a reading that physics takes and no list names would be lost.
    [Fact]
    public void Every_reading_that_is_taken_is_written()
    {
        JsonObject schema = Parse(OutcomeSchema.ToUtf8());
        JsonArray ofEvents = schema["properties"]!["events"]!["items"]!["properties"]!["readings"]!["anyOf"]!.AsArray();
        Type[] types = [typeof(TipReading), typeof(MeetReading), typeof(CushionReading), typeof(PocketReading)];
        for (int i = 0; i < types.Length; i++)
            Assert.Equal(NamesIn(types[i]), NamesIn(ofEvents[i]!));
        Assert.Equal(NamesIn(typeof(ShotReading)), NamesIn(schema["properties"]!["readings"]!));
    }

    private static void Refused(Action<JsonObject> change)
    {
        JsonObject outcome = Parse(OutcomeOf("straight-bank-centre.json"));
        Assert.Empty(_schema.Validate(outcome.ToJsonString()));
        change(outcome);
        Assert.NotEmpty(_schema.Validate(outcome.ToJsonString()));
    }

    private static string[] NamesIn(Type record) =>
        [.. record.GetProperties().Select(p => JsonNamingPolicy.CamelCase.ConvertName(p.Name)).Order()];

    private static string[] NamesIn(JsonNode schema) =>
        [.. schema["properties"]!.AsObject().Select(p => p.Key).Order()];

    private static JsonObject Parse(byte[] utf8) => JsonNode.Parse(utf8)!.AsObject();

    private static byte[] OutcomeOf(string name) => OutcomeWriter.ToUtf8(SceneFiles.Played(name));

    private static byte[] Play(string scene) => OutcomeWriter.ToUtf8(Outcome.Of(SceneFiles.Ready(scene)));
}
