using Longrail.Cli.Input;
using Longrail.Coaching.Trials;

namespace Longrail.Cli.Verbs.Trials;

/// <summary>Reads a trial's plan and says what is wrong with it.</summary>
internal static class TrialPlanInput
{
    /// <summary>The plan, or null; what is wrong was printed.</summary>
    internal static TrialPlan? Read(string file, ProgramStreams streams)
    {
        if (!SceneInput.TryReadBytes(file, streams, out byte[] utf8, "a plan")) return null;
        TrialPlanAnswer answer = TrialPlanForm.Read(utf8);
        SceneInput.PrintErrors(answer.Errors, SceneInput.NameOf(file), streams.Error);
        return answer.Plan;
    }
}
