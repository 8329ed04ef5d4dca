using System.Globalization;
using Longrail.Physics.Contacts;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Aims;
using Longrail.Scenes.Parts;

namespace Longrail.Scenes.Compiling;

/// <summary>Where scenes meet the solver of aims: it counts balls, a scene names them.</summary>
internal sealed class AimFinder(ShotSetup resting, IReadOnlyList<string> ids, int cueBall, int objectBall)
{
    /// <summary>The aim that does what the task asks, or why there is none.</summary>
    /// <param name="task">A cut, or a bank with its pocket and cushions.</param>
    /// <param name="template">The stroke; its aim is ignored.</param>
    public AimAnswer Find(SceneAim task, Stroke template)
    {
        AimSolution solution = task.At is not null
            ? AimSolver.SolveCut(resting, cueBall, objectBall, task.Cut?.Value ?? 0.0, template)
            : AimSolver.SolveBank(resting, cueBall, objectBall, task.To!.Value, task.Off!, template);
        return solution.Found ? new AimAnswer(solution.Aim, "") : new AimAnswer(null, Explain(solution));
    }

    private string Explain(AimSolution solution)
    {
        string cue = ids[cueBall];
        string target = ids[objectBall];
        return solution.Failure switch
        {
            AimFailure.TooThin => $"from where \"{cue}\" lies, \"{target}\" cannot be hit that thin",
            AimFailure.Blocked => $"{InTheWay(solution)} in the way of \"{cue}\" to \"{target}\"",
            AimFailure.CushionFirst => $"\"{cue}\" meets a cushion before it reaches \"{target}\"",
            AimFailure.CueBallStops => $"\"{cue}\" stops before it reaches \"{target}\"; play it faster",
            AimFailure.OtherCushions => $"\"{target}\" never takes these cushions in this order and no other",
            AimFailure.ObjectBallStops =>
                $"\"{target}\" takes the cushions but stops before the pocket; play it faster",
            AimFailure.WayBlocked =>
                $"\"{target}\" takes the cushions, but {InTheWay(solution)} in its way to the pocket",
            _ => $"\"{target}\" takes the cushions, but no aim sends it into the pocket{Nearest(solution)}",
        };
    }

    private string InTheWay(AimSolution solution) =>
        solution.InTheWay is { } ball ? $"ball \"{ids[ball]}\" is" : "something is";

    private static string Nearest(AimSolution solution) => solution.ClosestMiss is { } miss && double.IsFinite(miss)
        ? string.Create(CultureInfo.InvariantCulture, $"; the nearest passes {miss * 1000:0} mm from its middle")
        : "";
}
