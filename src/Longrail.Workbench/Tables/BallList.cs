using System.Text;
using System.Text.Json.Nodes;
using Longrail.Physics.Contacts;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.Scenes;
using Longrail.Scenes.Writing;

namespace Longrail.Workbench.Tables;

/// <summary>The list of balls of a scene with one more, or one less, as the scene's field "balls" takes it.</summary>
internal static class BallList
{
    /// <summary>The list with a ball more, where there is room for it; it is striped if its number is above
    /// eight.</summary>
    public static string With(Scene scene, string id, ShotSetup setup)
    {
        JsonArray balls = Of(scene);
        Vec2 at = Room(setup);
        var ball = new JsonObject { ["id"] = id, ["x"] = Math.Round(at.X, 4), ["y"] = Math.Round(at.Y, 4) };
        if (int.TryParse(id, out int number) && number > 8)
            ball["stripe"] = new JsonObject { ["axis"] = new JsonArray(1, 0, 0) };
        balls.Add(ball);
        return balls.ToJsonString();
    }

    /// <summary>The list without a ball.</summary>
    public static string Without(Scene scene, int index)
    {
        JsonArray balls = Of(scene);
        balls.RemoveAt(index);
        return balls.ToJsonString();
    }

    /// <summary>The list with a ball that has no stripe any more.</summary>
    public static string WithoutStripe(Scene scene, int index)
    {
        JsonArray balls = Of(scene);
        balls[index]!.AsObject().Remove("stripe");
        return balls.ToJsonString();
    }

    private static JsonArray Of(Scene scene) =>
        JsonNode.Parse(Encoding.UTF8.GetString(SceneWriter.ToUtf8(scene)))!["balls"]!.AsArray();

    // From the middle of the foot half outwards, a ball's width apart.
    private static Vec2 Room(ShotSetup setup)
    {
        double length = setup.Equipment.Table.Length;
        double width = setup.Equipment.Table.Width;
        double radius = 0.5 * setup.Equipment.BallSet.Diameter;
        for (int ring = 0; ring < 40; ring++)
        {
            for (int k = 0; k < Math.Max(1, 6 * ring); k++)
            {
                Vec2 at = new Vec2(0.7 * length, 0.5 * width)
                    + 2.4 * radius * ring * Vec2.FromAngle(2 * Math.PI * k / Math.Max(1, 6 * ring));
                bool inside = at.X > 2 * radius && at.X < length - 2 * radius && at.Y > 2 * radius
                    && at.Y < width - 2 * radius;
                if (inside && setup.Balls.All(ball =>
                    ball.Start.Position.DistanceTo(at) > 1.02 * BallContact.Reach(ball.Radius, radius)))
                {
                    return at;
                }
            }
        }

        return new Vec2(0.7 * length, 0.5 * width);
    }
}
