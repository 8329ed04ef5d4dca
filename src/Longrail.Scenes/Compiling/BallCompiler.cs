using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Scenes.Parts;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Compiling;

/// <summary>Places the balls of a scene.</summary>
internal sealed class BallCompiler(EquipmentSpec equipment, SceneErrors errors)
{
    /// <summary>Balls that overlap, or stand in a cushion, by less than this touch: metres. A thousand times the
    /// rounding of a coordinate, a thousandth of anything that could be measured.</summary>
    public const double TouchSlack = 1e-9;

    /// <summary>The balls at rest where the scene puts them; what is wrong goes to the errors.</summary>
    public ShotBall[] Compile(List<SceneBall> asked)
    {
        var balls = new ShotBall[asked.Count];
        for (int i = 0; i < balls.Length; i++)
            balls[i] = Place(asked[i], i);
        CheckNames(asked);
        if (errors.IsEmpty)
            CheckPlaces(asked, balls);
        return balls;
    }

    private ShotBall Place(SceneBall ball, int index)
    {
        double radius = 0.5 * (ball.Diameter?.Value ?? equipment.BallSet.Diameter);
        double mass = ball.Mass?.Value ?? equipment.BallSet.Mass;
        double noseHeight = equipment.Cushion.NoseHeight;
        double part = noseHeight / (2.0 * radius);
        if (ball.Diameter is not null && !(part >= 0.5 && part < EquipmentCompiler.HighestNose))
        {
            string nose = SceneErrors.Millimetres(noseHeight);
            errors.Add(
                $"balls[{index}].diameter",
                $"the cushion's nose, {nose} high, does not fit a ball of {SceneErrors.Millimetres(2.0 * radius)}",
                $"a ball of which the nose is between 0.5 D and {EquipmentCompiler.HighestNose} D high");
        }

        TableSpec table = equipment.Table;
        double reach = TableOutline.Reach(radius, noseHeight);
        double x = Coordinate(
            ball.X, ball.Along, "x", "along", index, table.DiamondAlong,
            ball.FrozenTo switch
            {
                CushionName.Head => reach,
                CushionName.Foot => table.Length - reach,
                _ => null,
            });
        double y = Coordinate(
            ball.Y, ball.Across, "y", "across", index, table.DiamondAcross,
            ball.FrozenTo switch
            {
                CushionName.Right => reach,
                CushionName.Left => table.Width - reach,
                _ => null,
            });
        return new ShotBall(radius, mass, BallState.AtRest(new Vec2(x, y)));
    }

    private double Coordinate(
        Quantity? direct,
        Quantity? diamonds,
        string directName,
        string diamondName,
        int index,
        double diamond,
        double? frozen)
    {
        int given = (direct is null ? 0 : 1) + (diamonds is null ? 0 : 1) + (frozen is null ? 0 : 1);
        if (given != 1)
        {
            errors.Add(
                $"balls[{index}]",
                given == 0
                    ? $"neither {directName} nor {diamondName} is given"
                    : $"{directName} is given in more than one way",
                $"one of {directName}, {diamondName}, or frozenTo a cushion square to it");
            return 0.0;
        }

        if (frozen is { } touching)
            return touching;
        Quantity place = direct ?? diamonds!.Value;
        return place.Unit == RelativeUnit.Diamond ? place.Value * diamond : place.Value;
    }

    private void CheckNames(List<SceneBall> asked)
    {
        for (int i = 0; i < asked.Count; i++)
        {
            if (asked[i].Id is null)
                errors.Add($"balls[{i}].id", "the ball has no name", "\"id\": a name, as in \"cue\" or \"9\"");
            for (int j = 0; j < i; j++)
            {
                if (asked[i].Id is { } id && id == asked[j].Id)
                    errors.Add($"balls[{i}].id", $"\"{id}\" is the name of balls[{j}] already", "each name once");
            }
        }
    }

    private void CheckPlaces(List<SceneBall> asked, ShotBall[] balls)
    {
        var room = new BallRoom(equipment);
        for (int i = 0; i < balls.Length; i++)
        {
            room.Check(balls[i], $"balls[{i}]", asked[i].Id!, errors);
            for (int j = 0; j < i; j++)
            {
                double distance = balls[i].Start.Position.DistanceTo(balls[j].Start.Position);
                double gap = distance - BallContact.Reach(balls[i].Radius, balls[j].Radius);
                if (gap < -TouchSlack)
                {
                    errors.Add(
                        $"balls[{i}]",
                        $"ball \"{asked[i].Id}\" overlaps ball \"{asked[j].Id}\" by {SceneErrors.Millimetres(-gap)}",
                        "balls that touch, or stand apart");
                }
            }
        }
    }
}
