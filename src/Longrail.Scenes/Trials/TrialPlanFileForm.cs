using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Writing;

namespace Longrail.Scenes.Trials;

/// <summary>Reads and writes the files of trials' plans. The program writes them; whoever edits one is told what is
/// wrong with it.</summary>
public static class TrialPlanFileForm
{
    private static readonly JsonSerializerOptions _options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        ReadCommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
        RespectNullableAnnotations = true,
        MaxDepth = 32,
        WriteIndented = true,
        Encoder = JsonForm.Indented.Encoder,
    };

    /// <summary>The size of the largest plan that is read, bytes.</summary>
    public const int LargestPlan = SceneReader.LargestScene;

    /// <summary>A plan as text, ending with a line break.</summary>
    public static byte[] ToUtf8(TrialPlanFile plan) =>
        [.. JsonSerializer.SerializeToUtf8Bytes(plan, _options), (byte)'\n'];

    /// <summary>Reads a plan. Nothing in it makes this throw.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    public static TrialPlanFileReading Read(ReadOnlySpan<byte> utf8)
    {
        if (utf8.StartsWith(Encoding.UTF8.Preamble)) utf8 = utf8[3..];
        if (utf8.Length > LargestPlan)
            return Wrong(
                new SceneError("", $"the plan is more than {LargestPlan} bytes long", $"up to {LargestPlan} bytes"));
        try
        {
            TrialPlanFile plan = JsonSerializer.Deserialize<TrialPlanFile>(utf8, _options)!;
            return Check(plan);
        }
        catch (Exception e) when (e is JsonException or NotSupportedException)
        {
            return Wrong(Broken(e as JsonException));
        }
    }

    private static TrialPlanFileReading Check(TrialPlanFile? plan)
    {
        if (plan is null)
            return Wrong(new SceneError("", "nothing where a plan is wanted", "what longrail trial plan --json wrote"));
        if (plan.Longrail != TrialPlanFile.Format)
            return Wrong(new SceneError(
                "longrail", $"\"{SceneReadState.Shorten(plan.Longrail)}\" is no trial's plan", TrialPlanFile.Format));
        if (FaultOf(plan) is { } fault) return Wrong(fault);
        SceneReading scene = SceneReader.Read(plan.Scene.GetRawText());
        return scene.Scene is null
            ? Wrong([.. scene.Errors.Select(e => e with { Path = $"scene.{e.Path}", Line = null, Column = null })])
            : new TrialPlanFileReading(plan, scene.Scene, []);
    }

    private static SceneError? FaultOf(TrialPlanFile plan)
    {
        if (Word("hold", plan.Hold, "stick", "path") is { } hold) return hold;
        if (Word("measure", plan.Measure, "landing", "made") is { } measure) return measure;
        if (Word("rule", plan.Rule, "obrien-fleming", "pocock") is { } rule) return rule;
        if (Word("order", plan.Order, "abba", "blocks") is { } order) return order;
        if (plan.Target is not null && Word("target", plan.Target, [.. TableWords.Cushions]) is { } target)
            return target;
        if (plan.Pocket is not null && Word("pocket", plan.Pocket, [.. TableWords.Pockets]) is { } pocket)
            return pocket;
        foreach (TrialPlanNeed need in plan.Needs)
        {
            if (Word("needs.measure", need.Measure, "landing", "made") is { } wrong) return wrong;
        }

        if (plan.Conditions.Count < 2) return new SceneError("conditions", "fewer than two conditions", "two or more");
        bool rises = plan.Looks.Zip(plan.Looks.Skip(1), (a, b) => a < b).All(isRise => isRise);
        if (!rises || plan.Looks.Any(n => n < 2 || n % 2 != 0)
            || (plan.Looks.Count > 0 && plan.Looks[^1] != plan.Shots))
            return new SceneError(
                "looks", "these are no looks at a trial", "even numbers of shots, rising, the last one all");
        if (!(plan.Level is > 0 and < 0.5))
            return new SceneError("level", "is out of range", "more than 0, less than 0.5");
        if (!(plan.Power is > 0 and < 1)) return new SceneError("power", "is out of range", "between 0 and 1");
        return null;
    }

    private static SceneError? Word(string path, string word, params string[] allowed) => allowed.Contains(word)
        ? null
        : new SceneError(path, $"\"{SceneReadState.Shorten(word)}\" is not known", string.Join(", ", allowed));

    private static TrialPlanFileReading Wrong(params SceneError[] errors) => new(null, null, errors);

    private static SceneError Broken(JsonException? e)
    {
        // "$.needs[0].shots" as we write paths.
        string path = (e?.Path ?? "").TrimStart('$').TrimStart('.');
        bool isMissing = e?.Message.Contains("missing required", StringComparison.Ordinal) ?? false;
        string problem = isMissing
            ? "something is missing that a plan has"
            : "this is no trial's plan, or a broken one";
        return new SceneError(path, problem, "what longrail trial plan --json wrote")
        {
            Line = e?.LineNumber is { } line ? (int)line + 1 : null,
            Column = e?.BytePositionInLine is { } column ? (int)column + 1 : 1,
        };
    }
}
