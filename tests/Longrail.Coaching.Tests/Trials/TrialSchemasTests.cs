using System.Text;
using Longrail.Coaching.Trials;
using NJsonSchema;

namespace Longrail.Coaching.Tests.Trials;

public class TrialSchemasTests
{
    [Theory]
    [InlineData("trial-plan-1")]
    [InlineData("trial-result-1")]
    public void The_schema_of_the_repository_is_the_one_that_the_code_makes(string name)
    {
        string path = Path.Combine(TrialScenes.Root(), "schemas", $"{name}.schema.json");
        byte[] made = Made(name);
        if (Environment.GetEnvironmentVariable("UPDATE_SNAPSHOTS") == "1")
            File.WriteAllBytes(path, made);
        Assert.True(
            made.AsSpan().SequenceEqual(File.ReadAllBytes(path)),
            $"schemas/{name}.schema.json is out of date; UPDATE_SNAPSHOTS=1 makes it anew");
    }

    [Fact]
    public void Plans_fit_the_schema()
    {
        JsonSchema schema = Schema("trial-plan-1");
        Assert.Empty(schema.Validate(Text(TrialPlanForm.ToUtf8(TrialScenes.Plan))));
        Assert.Empty(schema.Validate(Text(TrialPlanForm.ToUtf8(
            TrialScenes.Answer(TrialScenes.Request() with { MostShots = 2 }).Plan!))));
    }

    [Fact]
    public void Results_fit_the_schema()
    {
        JsonSchema schema = Schema("trial-result-1");
        byte[] table = File.ReadAllBytes(Path.Combine(TrialScenes.Root(), "scenes", "trials", "clean-or-dirty.csv"));
        byte[] file =
            File.ReadAllBytes(Path.Combine(TrialScenes.Root(), "scenes", "trials", "clean-or-dirty.plan.json"));
        Assert.Empty(schema.Validate(Text(TrialResultWriter.ToUtf8(
            TrialWeigher.Weigh(table, TrialPlanForm.Read(file).Plan!).Result!))));
        Assert.Empty(schema.Validate(Text(TrialResultWriter.ToUtf8(TrialWeigher.Weigh(table, null).Result!))));
        Assert.Empty(schema.Validate(Text(TrialResultWriter.ToUtf8(
            TrialWeigher.Weigh("condition,made\nA,1\nB,0\n"u8, null).Result!))));
    }

    [Fact]
    public void The_schemas_refuse_what_is_unknown()
    {
        string text = Text(TrialPlanForm.ToUtf8(TrialScenes.Plan));
        Assert.NotEmpty(
            Schema("trial-plan-1").Validate(text.Replace("\"looks\"", "\"glances\"", StringComparison.Ordinal)));
        Assert.NotEmpty(Schema("trial-result-1").Validate(text));
    }

    private static byte[] Made(string name) =>
        name == "trial-plan-1" ? TrialSchemas.PlanToUtf8() : TrialSchemas.ResultToUtf8();

    private static JsonSchema Schema(string name) =>
        JsonSchema.FromJsonAsync(Text(Made(name))).GetAwaiter().GetResult();

    private static string Text(byte[] utf8) => Encoding.UTF8.GetString(utf8);
}
