using Longrail.Physics.Geometry;
using Longrail.Scenes;

namespace Longrail.Coaching.Charts;

/// <summary>Says what is wrong with the question of a map.</summary>
internal static class MapCheck
{
    internal static List<SceneError> Errors(MapRequest request)
    {
        var errors = new List<SceneError>();
        if (request.Route.IsKick)
            errors.Add(new SceneError("bank", "a map moves the object ball, and a kick has none", "a bank"));
        ChartCheck.CheckRoute(request.Equipment, request.Route, request.Reach, errors);
        ChartCheck.CheckSpeeds(request.Speeds, errors);
        ChartCheck.CheckTips(request.Equipment, [request.Tip], errors);
        CheckGrid(request, errors);
        if (ChartCheck.OffTable(request.Equipment, request.Reach, request.CueBall) is { } offTable)
            errors.Add(offTable with { Path = "cue" });
        if (request.Measure == MapMeasure.Odds)
            CheckPlayer(request, errors);
        return errors;
    }

    private static void CheckGrid(MapRequest request, List<SceneError> errors)
    {
        long places = (long)request.Columns * request.Rows;
        if (request.Columns < 1 || request.Rows < 1 || places > MapRequest.MostPlaces)
        {
            errors.Add(new SceneError(
                "grid", ChartCheck.Text($"{request.Columns}x{request.Rows} places"),
                ChartCheck.Text($"at least 1x1, up to {MapRequest.MostPlaces} places in all")));
            return;
        }

        if (!(request.From.X <= request.To.X && request.From.Y <= request.To.Y))
        {
            errors.Add(
                new SceneError("ball-area", "its first corner must be nearer to head and right than its second"));
            return;
        }

        Vec2[] corners = [request.Place(0, 0), request.Place(request.Columns - 1, request.Rows - 1)];
        foreach (Vec2 corner in corners)
        {
            if (ChartCheck.OffTable(request.Equipment, request.Reach, corner) is not { } error)
                continue;
            errors.Add(error with { Path = "grid" });
            return;
        }
    }

    private static void CheckPlayer(MapRequest request, List<SceneError> errors)
    {
        if (request.Shots is < 1 or > MapRequest.MostShots)
        {
            errors.Add(new SceneError(
                "shots", ChartCheck.Text($"{request.Shots} shots a place"),
                ChartCheck.Text($"from 1 to {MapRequest.MostShots}")));
        }

        if (request.Player is not { } player)
        {
            errors.Add(
                new SceneError("player", "odds are somebody's: no player is named", "a player, or a map of leeway"));
            return;
        }

        double[] sizes = [player.Aim, player.Speed, player.TipAcross, player.TipUp, player.Elevation];
        if (!sizes.All(size => size >= 0 && double.IsFinite(size)) || player.Speed >= 1 || !(player.HardStroke > 0))
        {
            errors.Add(new SceneError(
                "player", $"\"{player.Name}\" has an error size that is negative or no number",
                "sizes from 0, the speed's below 1, a hard stroke above 0"));
        }
    }
}
