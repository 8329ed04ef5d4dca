using System.Globalization;
using Longrail.Coaching.Players;
using Longrail.Physics.Equipment;
using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;

namespace Longrail.Coaching.Ways;

/// <summary>Says what is wrong with a question before anything is searched.</summary>
internal static class WaysCheck
{
    private const int MostRails = 3;
    private const int MostKickRails = 2;

    /// <summary>What is wrong; empty if nothing is.</summary>
    internal static IReadOnlyList<SceneError> Of(WaysRequest request)
    {
        var errors = new List<SceneError>();
        CheckScene(request, errors);
        CheckBalls(request, errors);
        CheckLimits(request, errors);
        CheckPlayer(request.Player, errors);
        return errors;
    }

    private static void CheckScene(WaysRequest request, List<SceneError> errors)
    {
        TableSpec table = request.Scene.Setup.Equipment.Table;
        if (table.Corner is null && table.Side is null)
            errors.Add(new SceneError("table.pockets", "this table has no pockets, so no ball can be made", "pockets"));
        else if (request.Pocket is { } pocket && !IsThere(table, pocket))
            errors.Add(new SceneError("pocket", $"this table has no pocket {TableWords.Of(pocket)}", Pockets(table)));
        if (request.Scene.Asked.Launch is { Count: > 0 })
            errors.Add(new SceneError("launch", "balls are moving already", "a layout at rest, without launch"));
    }

    private static void CheckBalls(WaysRequest request, List<SceneError> errors)
    {
        if (request.CueBall is not { } cue)
        {
            errors.Add(new SceneError(
                "balls", "there is no cue ball", "a ball with the id \"cue\", or a stroke.ball that names another"));
            return;
        }

        string[] others = [.. request.Scene.BallIds.Where(id => id != cue)];
        if (BallProblem(request.Scene, cue, request.Ball, null) is { } wrong)
            errors.Add(wrong with { Path = "ball", Allowed = ListOf(others) });
        if (request.NextBall is not { } next)
            return;
        string[] left = [.. others.Where(id => id != request.Ball)];
        if (BallProblem(request.Scene, cue, next, request.Ball) is { } wrongNext)
            errors.Add(wrongNext with { Path = "next", Allowed = ListOf(left) });
    }

    private static SceneError? BallProblem(ReadyScene scene, string cue, string ball, string? now)
    {
        if (scene.IndexOf(ball) < 0)
        {
            string? near = NearestWord.Of(ball, scene.BallIds.Where(id => id != cue && id != now));
            return new SceneError("", $"there is no ball \"{ball}\"", null, near is null ? null : $"\"{near}\"");
        }

        if (ball == cue)
            return new SceneError("", $"\"{ball}\" is the ball that is struck");
        return ball == now ? new SceneError("", $"\"{ball}\" is the ball to make now") : null;
    }

    private static void CheckLimits(WaysRequest request, List<SceneError> errors)
    {
        if (request.FewestRails < 0 || request.MostRails > MostRails || request.FewestRails > request.MostRails)
        {
            errors.Add(new SceneError(
                "rails", $"from {request.FewestRails} to {request.MostRails} cushions",
                $"from 0 to {MostRails}, the fewer first"));
        }

        if (request.MostKickRails is < 0 or > MostKickRails)
        {
            errors.Add(new SceneError(
                "kick-rails", $"up to {request.MostKickRails} cushions", $"0 to {MostKickRails}"));
        }

        if (request.TimeBudget is { } budget && budget <= TimeSpan.Zero)
        {
            string seconds = budget.TotalSeconds.ToString("0.###", CultureInfo.InvariantCulture);
            errors.Add(new SceneError("budget", $"{seconds} s leave no time to search", "more than 0 s"));
        }

        if (request.Threads < 1)
            errors.Add(new SceneError("threads", $"{request.Threads} threads", "1 or more"));
    }

    private static void CheckPlayer(Player player, List<SceneError> errors)
    {
        (string Name, double Error, double Below)[] sizes =
        [
            ("aim", player.Aim, Math.PI / 2), ("speed", player.Speed, 1.0),
            ("tipAcross", player.TipAcross, double.PositiveInfinity),
            ("tipUp", player.TipUp, double.PositiveInfinity), ("elevation", player.Elevation, Math.PI / 2),
        ];
        foreach ((string name, double error, double below) in sizes)
        {
            if (error >= 0 && error < below)
                continue;
            string size = error.ToString("G6", CultureInfo.InvariantCulture);
            string limit = double.IsFinite(below)
                ? $", below {below.ToString("0.###", CultureInfo.InvariantCulture)}"
                : ", finite";
            errors.Add(new SceneError(
                "player", $"the error of {name} is {size}", $"a standard deviation: 0 or more{limit}"));
        }
    }

    private static bool IsThere(TableSpec table, PocketName pocket) =>
        pocket is PocketName.LeftSide or PocketName.RightSide ? table.Side is not null : table.Corner is not null;

    private static string Pockets(TableSpec table) =>
        string.Join(", ", Enum.GetValues<PocketName>().Where(p => IsThere(table, p)).Select(TableWords.Of));

    private static string ListOf(string[] balls) =>
        balls.Length > 0 ? string.Join(", ", balls) : "another ball, which the scene does not have";
}
