using System.Runtime.CompilerServices;
using System.Text;
using Longrail.Coaching.Contrasts;
using NJsonSchema;
using static Longrail.Coaching.Tests.Contrasts.ContrastScenes;

namespace Longrail.Coaching.Tests.Contrasts;

public class ContrastSchemaTests
{
    [Fact]
    public void The_schema_of_the_repository_is_the_one_that_the_code_makes()
    {
        string path = Path.Combine(Root(), "schemas", "contrast-1.schema.json");
        byte[] made = ContrastSchema.ToUtf8();
        if (Environment.GetEnvironmentVariable("UPDATE_SNAPSHOTS") == "1")
            File.WriteAllBytes(path, made);
        Assert.True(
            made.AsSpan().SequenceEqual(File.ReadAllBytes(path)),
            "schemas/contrast-1.schema.json is out of date; UPDATE_SNAPSHOTS=1 makes it anew");
    }

    [Theory]
    [InlineData(Alone)]
    [InlineData(Straight)]
    public void Every_comparison_fits_the_schema(string scene)
    {
        JsonSchema schema = Schema();

        Assert.Empty(
            schema.Validate(Text(Run(scene, Hold.Path, Vary("stroke.tip.right", "-1/4 tip", "0", "1/4 tip")))));
        Variation[] two = [Vary("stroke.speed", "0.1", "6"), Vary("stroke.tip.above", "0", "0.3 R")];
        Assert.Empty(schema.Validate(Text(Run(scene, Hold.Stick, two))));
    }

    [Fact]
    public void The_schema_refuses_what_is_missing_or_unknown()
    {
        JsonSchema schema = Schema();
        string text = Text(Run(Alone, Hold.Stick, Vary("stroke.speed", "1")));

        Assert.NotEmpty(schema.Validate(text.Replace("\"hold\"", "\"held\"", StringComparison.Ordinal)));
        Assert.NotEmpty(schema.Validate(text.Replace("contrast/1", "contrast/2", StringComparison.Ordinal)));
        Assert.NotEmpty(schema.Validate(text.Replace("\"landingDiamonds\"", "\"landing\"", StringComparison.Ordinal)));
    }

    private static JsonSchema Schema() =>
        JsonSchema.FromJsonAsync(Encoding.UTF8.GetString(ContrastSchema.ToUtf8())).GetAwaiter().GetResult();

    private static string Text(Contrast contrast) => Encoding.UTF8.GetString(ContrastWriter.ToUtf8(contrast));

    private static string Root([CallerFilePath] string thisFile = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(thisFile)!, "..", "..", ".."));
}
