using System.Runtime.CompilerServices;
using System.Text;
using Longrail.Coaching.Effects;
using NJsonSchema;
using static Longrail.Coaching.Tests.Effects.EffectScenes;

namespace Longrail.Coaching.Tests.Effects;

public class EffectsSchemaTests
{
    public static TheoryData<string> Scenes() =>
        [.. Directory.GetFiles(Path.Combine(Root(), "scenes"), "*.json").Order(StringComparer.Ordinal)
            .Select(path => Path.GetFileName(path))];

    [Fact]
    public void The_schema_of_the_repository_is_the_one_that_the_code_makes()
    {
        string path = Path.Combine(Root(), "schemas", "effects-1.schema.json");
        byte[] made = EffectsSchema.ToUtf8();
        if (Environment.GetEnvironmentVariable("UPDATE_SNAPSHOTS") == "1")
            File.WriteAllBytes(path, made);
        Assert.True(
            made.AsSpan().SequenceEqual(File.ReadAllBytes(path)),
            "schemas/effects-1.schema.json is out of date; UPDATE_SNAPSHOTS=1 makes it anew");
    }

    [Theory]
    [MemberData(nameof(Scenes))]
    public void The_budget_of_every_scene_of_the_repository_fits_the_schema(string scene) =>
        Assert.Empty(Schema().Validate(Text(scene)));

    [Fact]
    public void The_schema_refuses_what_is_missing_or_unknown()
    {
        JsonSchema schema = Schema();
        string text = Text("first-bank.json");

        Assert.NotEmpty(schema.Validate(text.Replace("\"remainder\"", "\"rest\"", StringComparison.Ordinal)));
        Assert.NotEmpty(schema.Validate(text.Replace("effects/1", "effects/2", StringComparison.Ordinal)));
        Assert.NotEmpty(schema.Validate(text.Replace("\"cut-throw\"", "\"cling\"", StringComparison.Ordinal)));
    }

    private static JsonSchema Schema() =>
        JsonSchema.FromJsonAsync(Encoding.UTF8.GetString(EffectsSchema.ToUtf8())).GetAwaiter().GetResult();

    private static string Text(string scene) => Encoding.UTF8.GetString(
        EffectsWriter.ToUtf8(Budget(File.ReadAllText(Path.Combine(Root(), "scenes", scene)))));

    private static string Root([CallerFilePath] string thisFile = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(thisFile)!, "..", "..", ".."));
}
