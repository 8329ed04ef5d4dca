using System.Text;
using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Tests.Reading;

public sealed class SceneReaderTests
{
    [Fact]
    public void Comments_and_trailing_commas_may_stand_in_a_scene()
    {
        SceneReading reading = SceneReader.Read(
            """
            // A comment.
            { "balls": [ { "id": "cue", "x": 1.0, /* in metres */ "y": 0.6, }, ], }
            """);
        Assert.Empty(reading.Errors);
        Assert.Equal("cue", Assert.Single(reading.Scene!.Balls).Id);
    }

    [Fact]
    public void A_byte_order_mark_may_stand_before_a_scene() =>
        Assert.Empty(SceneReader.Read([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(SceneFiles.OneBall())]).Errors);

    [Fact]
    public void Escaped_names_and_words_are_the_same_names_and_words() =>
        Assert.Empty(SceneReader.Read(
            """{"b\u0061lls":[{"id":"c\u0075e","x":1,"y":0.6}],"cushion":{"law":"imp\u0075lse"}}""").Errors);

    [Fact]
    public void Any_field_but_balls_may_be_left_out() => Assert.NotNull(SceneFiles.Ready(SceneFiles.OneBall()).Setup);

    [Theory]
    [InlineData("{\"bals\":[]}", "", "unknown field \"bals\"", "\"balls\"")]
    [InlineData("{\"balls\":[{\"id\":\"cue\",\"x\":1,\"z\":0.6}]}", "balls[0]", "unknown field \"z\"", null)]
    [InlineData("{\"balls\":[{\"frozento\":\"left\"}]}", "balls[0]", "unknown field", "\"frozenTo\"")]
    [InlineData("{\"cueSpeed\":2}", "", "unknown field \"cueSpeed\"", "\"stroke.cueSpeed\"")]
    [InlineData("{\"longrail\":\"scene/2\"}", "longrail", "not known here", "\"scene/1\"")]
    [InlineData("{\"table\":{\"preset\":\"pool9ft\"}}", "table.preset", "\"pool9ft\" is not known", "\"pool-9ft\"")]
    [InlineData("{\"cushion\":{\"law\":\"Impulse\"}}", "cushion.law", "not known here", "\"impulse\"")]
    [InlineData("{\"cloth\":{\"state\":7}}", "cloth.state", "the number 7 is not known here", null)]
    [InlineData("{\"cloth\":{\"slidingFriction\":-0.2}}", "cloth.slidingFriction", "-0.2 is out of range", null)]
    [InlineData("{\"cloth\":{\"slidingFriction\":0}}", "cloth.slidingFriction", "out of range", null)]
    [InlineData("{\"cloth\":{\"slidingFriction\":1e999}}", "cloth.slidingFriction", "too large", null)]
    [InlineData("{\"cloth\":{\"slidingFriction\":\"NaN\"}}", "cloth.slidingFriction", "not a finite number", null)]
    [InlineData("{\"cloth\":{\"spinDecay\":true}}", "cloth.spinDecay", "true where a spin decay is wanted", null)]
    [InlineData("{\"cloth\":{\"spinDecay\":null}}", "cloth.spinDecay", "null where a spin decay is wanted", null)]
    [InlineData("{\"cloth\":[]}", "cloth", "a list where an object is wanted", null)]
    [InlineData("{\"cloth\":3}", "cloth", "the number 3 where an object is wanted", null)]
    [InlineData("{\"stroke\":{\"speed\":\"3 kg\"}}", "stroke.speed", "is a mass, not a speed", null)]
    [InlineData("{\"stroke\":{\"speed\":\"3 in\"}}", "stroke.speed", "is a length, not a speed", null)]
    [InlineData("{\"stroke\":{\"speed\":\"3 kmh\"}}", "stroke.speed", "no unit known here", "\"km/h\"")]
    [InlineData("{\"stroke\":{\"speed\":\"3\"}}", "stroke.speed", "has no unit", "3 without quotes (m/s)")]
    [InlineData("{\"stroke\":{\"speed\":\"quick\"}}", "stroke.speed", "does not begin with a number", null)]
    [InlineData("{\"stroke\":{\"elevation\":\"90 deg\"}}", "stroke.elevation", "", null)]
    [InlineData("{\"stroke\":{\"aim\":{\"to\":\"left-corner\"}}}", "stroke.aim.to", "not known here", null)]
    [InlineData("{\"stroke\":{\"aim\":{\"bank\":\"9\",\"off\":[]}}}", "stroke.aim.off", "the list holds 0", null)]
    [InlineData("{\"stroke\":{\"aim\":{\"off\":[\"rigth\"]}}}", "stroke.aim.off[0]", "not known here", "\"right\"")]
    [InlineData("{\"launch\":[{\"ball\":\"cue\",\"velocity\":[1]}]}", "launch[0].velocity", "the list holds 1", null)]
    [InlineData("{\"launch\":[{\"velocity\":[1,2,3]}]}", "launch[0].velocity", "the list holds 3", null)]
    [InlineData("{\"launch\":[{\"spin\":[1,2,\"x\"]}]}", "launch[0].spin[2]", "does not begin with a number", null)]
    [InlineData("{\"balls\":[7]}", "balls[0]", "the number 7 where an object is wanted", null)]
    [InlineData("{\"balls\":{}}", "balls", "an object where a list is wanted", null)]
    [InlineData("{\"balls\":[{\"id\":9}]}", "balls[0].id", "the number 9 where a text is wanted", "\"9\" in quotes")]
    [InlineData("{\"balls\":[{\"id\":\"a b\"}]}", "balls[0].id", "cannot be the name of a ball", null)]
    [InlineData("{\"title\":\"a\",\"title\":\"b\"}", "title", "stands twice", null)]
    [InlineData("[]", "", "a list where a scene is wanted", null)]
    [InlineData("3", "", "the number 3 where a scene is wanted", null)]
    [InlineData("null", "", "null where a scene is wanted", null)]
    public void What_is_wrong_is_said_with_its_place_and_what_was_meant(
        string text, string path, string problem, string? meant)
    {
        SceneError error = Assert.Single(SceneReader.Read(text).Errors);
        Assert.Equal(path, error.Path);
        Assert.Contains(problem, error.Problem);
        Assert.Equal(meant, error.Suggestion);
        Assert.Equal(1, error.Line);
        Assert.True(error.Column >= 1);
    }

    [Fact]
    public void Errors_carry_line_and_column_of_what_is_wrong()
    {
        IReadOnlyList<SceneError> errors = SceneReader.Read(
            """
            {
              "cloth": {
                "spinDecay": -1,
                "colour": 3 } }
            """).Errors;
        Assert.Equal([(3, 18), (4, 5)], errors.Select(error => (error.Line!.Value, error.Column!.Value)));
    }

    [Fact]
    public void All_errors_of_a_scene_are_found_at_once()
    {
        IReadOnlyList<SceneError> errors = SceneReader.Read(
            """{"cloth":{"spinDecay":-1,"slidingFriction":"2 m"},"balls":[{"id":9,"x":"1 s"}],"strok":{}}""").Errors;
        Assert.Equal(
            ["cloth.spinDecay", "cloth.slidingFriction", "balls[0].id", "balls[0].x", ""],
            errors.Select(error => error.Path));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  \n ")]
    [InlineData("{")]
    [InlineData("{\"balls\":[{\"id\":\"cue\",\"x\":1")]
    [InlineData("{} {}")]
    [InlineData("{}x")]
    [InlineData("{\"title\":\"a\" \"b\"}")]
    [InlineData("{\"title\":\"a\nb\"}")]
    [InlineData("// only a comment")]
    public void What_is_not_JSON_is_said_to_be_so(string text)
    {
        SceneReading reading = SceneReader.Read(text);
        Assert.Null(reading.Scene);
        Assert.Contains(reading.Errors, error => error.Path.Length == 0 && error.Line >= 1 && error.Column >= 1);
    }

    [Fact]
    public void What_is_not_UTF_8_is_said_to_be_so() =>
        Assert.Contains("UTF-8", Assert.Single(SceneReader.Read([0x7B, 0xFF, 0xFE, 0x7D]).Errors).Problem);

    [Theory]
    [InlineData("""{"title":"\uD800","balls":[]}""")]
    [InlineData("""{"\uDFFF":1}""")]
    [InlineData("""{"balls":[{"id":"\uD800x"}]}""")]
    [InlineData("""{"stroke":{"speed":"\uD800"}}""")]
    [InlineData("""{"cushion":{"law":"\uD800"}}""")]
    public void Half_a_character_is_no_reason_to_fall(string text) => Assert.NotNull(SceneReader.Read(text));

    [Fact]
    public void A_scene_that_is_too_large_is_refused_by_its_size()
    {
        byte[] large = new byte[SceneReader.LargestScene + 1];
        Array.Fill(large, (byte)' ');
        Assert.Contains("more than 1000000 bytes", Assert.Single(SceneReader.Read(large).Errors).Problem);
    }

    [Fact]
    public void Objects_that_go_too_deep_are_refused()
    {
        string objects = string.Concat(Enumerable.Repeat("{\"table\":", 10_000));
        string lists = new('[', 100_000);
        Assert.All([objects, lists], text =>
            Assert.Contains(SceneReader.Read(text).Errors, error => error.Problem.Contains("deep in one another")));
    }

    [Fact]
    public void More_balls_than_anyone_plays_with_are_refused()
    {
        string balls = string.Join(",", Enumerable.Range(0, 65).Select(i => $"{{\"id\":\"b{i}\",\"x\":1,\"y\":0.5}}"));
        SceneError error = Assert.Single(SceneReader.Read($"{{\"balls\":[{balls}]}}").Errors);
        Assert.Equal("balls", error.Path);
        Assert.Equal("up to 64", error.Allowed);
    }

    [Fact]
    public void No_more_errors_are_listed_than_help()
    {
        string fields = string.Join(",", Enumerable.Range(0, 1000).Select(i => $"\"unknown{i}\":1"));
        Assert.Equal(20, SceneReader.Read($"{{{fields}}}").Errors.Count);
    }
}
