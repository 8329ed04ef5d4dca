using System.Globalization;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Aims;

namespace Longrail.Scenes.Compiling;

/// <summary>Where scenes meet the solver of aims: what it answers is put in words, with the balls' names.</summary>
/// <param name="ids">The balls' names in the order of the set-up.</param>
internal sealed class AimFinder(IReadOnlyList<string> ids)
{
    /// <summary>The aim that cuts a ball by an angle.</summary>
    public AimAnswer Cut(ShotSetup setup, int cueBall, int objectBall, double cut, Stroke template) =>
        Answer(AimSolver.SolveCut(setup, cueBall, objectBall, cut, template), cueBall, objectBall, string.Empty);

    /// <summary>The aim that banks a ball into a pocket.</summary>
    public AimAnswer Bank(
        ShotSetup setup, int cueBall, int objectBall, PocketName to, IReadOnlyList<CushionName> off, Stroke template)
    {
        string route = off.Count == 0 ? "straight" : "off " + string.Join(", then ", off.Select(TableWords.Of));
        return Answer(
            AimSolver.SolveBank(setup, cueBall, objectBall, to, off, template), cueBall, objectBall, $"{route} into {TableWords.Of(to)}");
    }

    private AimAnswer Answer(AimSolution solution, int cueBall, int objectBall, string route)
    {
        if (solution.Found) return new AimAnswer(solution.Aim, string.Empty);
        string ball = $"the {ids[objectBall]}";
        string other = solution.InTheWay is { } index ? $"the {ids[index]}" : "another ball";
        string reason = solution.Failure switch
        {
            AimFailure.TooThin => $"{ball} cannot be cut that thin from where {ids[cueBall]} stands",
            AimFailure.Blocked => $"{other} is in the way of {ball}",
            AimFailure.CushionFirst => $"{ids[cueBall]} reaches a cushion before {ball}",
            AimFailure.CueBallStops => $"{ids[cueBall]} stops before it reaches {ball}; play it harder",
            AimFailure.OtherCushions => $"no hit from full to very thin sends {ball} {route}: it takes other cushions first",
            AimFailure.ObjectBallStops => $"{ball} runs out of speed on its way {route}; play it harder",
            AimFailure.WayBlocked => $"{other} is in the way of {ball} {route}, or kisses it",
            _ => string.Create(
                CultureInfo.InvariantCulture,
                $"no aim sends {ball} {route}; the closest passes {1000 * (solution.ClosestMiss ?? 0):0} mm from the pocket's middle"),
        };
        return new AimAnswer(null, reason);
    }
}
