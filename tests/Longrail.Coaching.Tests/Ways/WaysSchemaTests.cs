using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json;
using Longrail.Coaching.Ways;
using Longrail.Physics.Shots;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Reading;
using NJsonSchema;
using static Longrail.Coaching.Tests.Ways.WaysQuestions;

namespace Longrail.Coaching.Tests.Ways;

public sealed class WaysSchemaTests
{
    [Fact]
    public void The_schema_of_the_repository_is_the_one_that_the_code_makes()
    {
        string path = Path.Combine(Root(), "schemas", "ways-1.schema.json");
        byte[] made = WaysSchema.ToUtf8();
        if (Environment.GetEnvironmentVariable("UPDATE_SNAPSHOTS") == "1")
            File.WriteAllBytes(path, made);
        Assert.True(
            made.AsSpan().SequenceEqual(File.ReadAllBytes(path)),
            "schemas/ways-1.schema.json is out of date; UPDATE_SNAPSHOTS=1 makes it anew");
    }

    [Theory]
    [InlineData(null)]
    [InlineData("8")]
    public void Every_answer_fits_the_schema(string? next)
    {
        string text = Text(Ask(next: next));

        Assert.Empty(Schema().Validate(text));
        Assert.NotEmpty(Schema().Validate(text.Replace("\"leeway\"", "\"margin\"", StringComparison.Ordinal)));
        Assert.NotEmpty(Schema().Validate(text.Replace("ways/1", "ways/2", StringComparison.Ordinal)));
        Assert.NotEmpty(Schema().Validate(text.Replace("\"object-ball-blocked\"", "\"blocked\"", StringComparison.Ordinal)));
    }

    [Fact]
    public void An_empty_answer_fits_the_schema()
    {
        WaysRequest request = Ask();
        Assert.Empty(Schema().Validate(Encoding.UTF8.GetString(WaysWriter.ToUtf8(new(request, [], [], null, true, 0)))));
    }

    [Fact]
    public void The_scene_of_a_way_is_the_shot_of_the_way_bit_for_bit()
    {
        WaysRequest request = Ask();
        WaysAnswer answer = WaysRunner.Run(request, Parts(), null, CancellationToken.None);
        using var document = JsonDocument.Parse(WaysWriter.ToUtf8(answer));
        JsonElement[] ways = [.. document.RootElement.GetProperty("ways").EnumerateArray()];

        Assert.Equal(answer.Ways.Count, ways.Length);
        for (int k = 0; k < ways.Length; k++)
        {
            string scene = ways[k].GetProperty("scene").GetRawText();
            SceneCompilation read = SceneReader.ReadReady(Encoding.UTF8.GetBytes(scene));
            ulong replayed = ShotRunner.Run(read.Ready!.Setup).Hash();
            Assert.Equal(WayShot.Of(request, answer.Ways[k].Stroke.Stroke).Hash(), replayed);
        }
    }

    private static JsonSchema Schema() =>
        JsonSchema.FromJsonAsync(Encoding.UTF8.GetString(WaysSchema.ToUtf8())).GetAwaiter().GetResult();

    private static string Text(WaysRequest request) => Encoding.UTF8.GetString(
        WaysWriter.ToUtf8(WaysRunner.Run(request, Parts(), null, CancellationToken.None)));

    private static string Root([CallerFilePath] string thisFile = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(thisFile)!, "..", "..", ".."));
}
