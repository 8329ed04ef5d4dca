using System.Runtime.CompilerServices;
using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Players;
using Longrail.Coaching.Trials;
using Longrail.Scenes.Reading;

namespace Longrail.Coaching.Tests.Trials;

internal static class TrialScenes
{
    private static readonly Lazy<TrialPlan> _plan = new(() => Answer(Request()).Plan!);

    /// <summary>The plan of the guide's question.</summary>
    internal static TrialPlan Plan => _plan.Value;

    /// <summary>The guide's question.</summary>
    internal static TrialRequest Request(string field = "ballSet.state", params string[] levels) => new()
    {
        Scene = SceneReader.Read(
            File.ReadAllBytes(Path.Combine(Root(), "scenes", "trials", "clean-or-dirty.json"))).Scene!,
        Variation = new Variation(field, levels.Length == 0 ? ["clean", "dirty"] : levels),
        Player = PlayerPresets.Default,
        Strokes = 500,
    };

    internal static TrialPlanAnswer Answer(TrialRequest request) =>
        TrialPlanner.Plan(request, null, TestContext.Current.CancellationToken);

    internal static string Root([CallerFilePath] string thisFile = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(thisFile)!, "..", "..", ".."));
}
