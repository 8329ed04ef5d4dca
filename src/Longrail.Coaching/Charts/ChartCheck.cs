using System.Globalization;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Scenes;
using Longrail.Scenes.Fields;

namespace Longrail.Coaching.Charts;

/// <summary>Says what is wrong with the question of a chart or a map.</summary>
internal static class ChartCheck
{
    /// <summary>The most speeds, and the most tips.</summary>
    private const int MostLevels = 12;

    internal static List<SceneError> Errors(ChartRequest request)
    {
        var errors = new List<SceneError>();
        CheckRoute(request.Equipment, request.Route, request.Reach, errors);
        CheckSpeeds(request.Speeds, errors);
        CheckTips(request.Equipment, request.Tips, errors);
        CheckHeight(request.Route, request.Height, errors);
        if (!request.Route.IsKick)
            CheckDistance(request.Equipment, request.Distance, errors);
        int places = request.Places.Diamonds.Count;
        if (places is < 1 or > ChartPlaces.Most)
            errors.Add(new SceneError("places", Text($"{places} places"), Text($"from 1 to {ChartPlaces.Most}")));
        string name = request.Places.IsLine ? "line" : "grid";
        foreach (Vec2 place in request.Places.Diamonds)
        {
            if (OffTable(request.Equipment, request.Reach, place) is not { } error)
                continue;
            errors.Add(error with { Path = name });
            break;
        }

        return errors;
    }

    /// <summary>What is wrong with a place in diamonds; null if a ball may lie there.</summary>
    internal static SceneError? OffTable(EquipmentSpec equipment, double reach, Vec2 place)
    {
        TableSpec table = equipment.Table;
        double along = reach / table.DiamondAlong;
        double across = reach / table.DiamondAcross;
        const double Slack = 1e-9;
        bool fits = place.X >= along - Slack && place.X <= 8 - along + Slack
            && place.Y >= across - Slack && place.Y <= 4 - across + Slack;
        return fits
            ? null
            : new SceneError(
                "", Text($"a ball at {place.X:0.###}, {place.Y:0.###} would stand in a cushion or off the table"),
                Text($"along from {along:0.00} to {8 - along:0.00}, ")
                + Text($"across from {across:0.00} to {4 - across:0.00} diamonds"));
    }

    internal static void CheckRoute(EquipmentSpec equipment, ChartRoute route, double reach, List<SceneError> errors)
    {
        if (!route.IsKick && equipment.Table.Corner is null)
        {
            errors.Add(new SceneError(
                "bank", $"this table has no pockets, so it has no {ChartWords.Of(route.Kind)} bank",
                "kick, or a table with pockets"));
        }

        TableSpec table = equipment.Table;
        if (!route.IsKick)
            return;
        var diamonds = new Vec2(route.Target.X / table.DiamondAlong, route.Target.Y / table.DiamondAcross);
        if (OffTable(equipment, reach, diamonds) is { } error)
            errors.Add(error with { Path = "target" });
    }

    internal static void CheckSpeeds(IReadOnlyList<double> speeds, List<SceneError> errors)
    {
        if (speeds.Count is < 1 or > MostLevels)
            errors.Add(new SceneError("speeds", Text($"{speeds.Count} speeds"), Text($"from 1 to {MostLevels}")));
        foreach (double speed in speeds.Where(v => !(v is > 0 and <= SceneFields.Fastest)))
        {
            errors.Add(new SceneError(
                "speeds", Text($"{speed:0.###} m/s"), Text($"more than 0, up to {SceneFields.Fastest:0.#} m/s")));
        }
    }

    internal static void CheckTips(EquipmentSpec equipment, IReadOnlyList<ChartTip> tips, List<SceneError> errors)
    {
        if (tips.Count is < 1 or > MostLevels)
            errors.Add(
                new SceneError("tips", Text($"{tips.Count} places of the tip"), Text($"from 1 to {MostLevels}")));
        double limit = TipContact.MiscueLimit(equipment.Cue);
        double radius = 0.5 * equipment.BallSet.Diameter;
        foreach (ChartTip tip in tips.Where(tip => !(Math.Abs(tip.Right) <= limit * radius)))
        {
            errors.Add(new SceneError(
                "tips",
                $"\"{tip.Text}\" is a miscue: the tip meets the ball "
                + Text($"{Math.Abs(tip.Right) / radius:0.###} R from its centre"),
                Text($"up to {limit:0.###} R, which is what this tip holds")));
        }
    }

    internal static void CheckHeight(ChartRoute route, CueHeight height, List<SceneError> errors)
    {
        if (route.IsKick && height == CueHeight.Stun)
            errors.Add(new SceneError("height", "a kick has no object ball to be stunned against", "follow, centre"));
    }

    private static void CheckDistance(EquipmentSpec equipment, double distance, List<SceneError> errors)
    {
        double least = equipment.BallSet.Diameter;
        double most = Math.Min(equipment.Table.Length, 10);
        if (distance > least && distance <= most)
            return;
        errors.Add(new SceneError(
            "distance", Text($"the balls' centres {1000 * distance:0.#} mm apart"),
            Text($"more than a ball's width, {1000 * least:0.##} mm, up to {1000 * most:0} mm")));
    }

    internal static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
