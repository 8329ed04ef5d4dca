using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Scenes.Parts;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Compiling;

/// <summary>Makes scenes ready to be played.</summary>
public static class SceneCompiler
{
    /// <summary>Fills in defaults, checks what the fields mean together, solves the aim and lets the tip
    /// strike.</summary>
    /// <param name="scene">The scene as asked for.</param>
    public static SceneCompilation Compile(Scene scene)
    {
        var errors = new SceneErrors();
        ReadyScene? ready = Compile(scene, errors);
        return new SceneCompilation(errors.IsEmpty ? ready : null, errors.All) { IsUnreachable = errors.IsUnreachable };
    }

    private static ReadyScene? Compile(Scene scene, SceneErrors errors)
    {
        if (scene.Balls.Count == 0)
        {
            errors.Add(
                "balls",
                "there is no ball on the table",
                """at least one, as in [ { "id": "cue", "x": 0.6, "y": 0.6 } ]""");
            return null;
        }

        if (scene.Stroke is not null && scene.Launch is { Count: > 0 })
            errors.Add("launch", "both a stroke and a launch are given", "one of the two");
        EquipmentSpec equipment = EquipmentCompiler.Compile(scene, errors);
        CheckPocketsFit(equipment.Table, errors);
        ShotBall[] balls = errors.IsEmpty ? new BallCompiler(equipment, errors).Compile(scene.Balls) : [];
        if (!errors.IsEmpty)
            return null;

        string[] ids = new string[balls.Length];
        for (int i = 0; i < ids.Length; i++)
            ids[i] = scene.Balls[i].Id!;
        Vec3?[]? stripes = Stripes(scene.Balls, errors);
        StrokeRecord? stroke = null;
        var resting = (ShotBall[])balls.Clone();
        if (scene.Stroke is not null)
        {
            stroke = new StrokeCompiler(equipment, ids, balls, errors).Compile(scene.Stroke);
            if (stroke is not null)
                balls[stroke.Ball] = Moving(balls[stroke.Ball], stroke.Result.Velocity, stroke.Result.Spin);
        }
        else if (scene.Launch is not null)
        {
            Launch(scene.Launch, ids, balls, errors);
        }

        if (!errors.IsEmpty)
            return null;
        Scene asUsed = AsUsedScene.Of(scene, equipment, resting, stroke);
        return new ReadyScene(scene, asUsed, new ShotSetup(equipment, balls, stroke), ids, stripes);
    }

    // The outline of the table refuses such pockets too, but it cannot say it in the words of a scene.
    private static void CheckPocketsFit(TableSpec table, SceneErrors errors)
    {
        if (table.Corner is not { } corner || table.Side is not { } side)
            return;
        double cut = corner.Mouth / Math.Sqrt(2.0);
        bool shortSide = 2.0 * cut + 2.0 * corner.JawRadius >= table.Width;
        bool longSide = cut + corner.JawRadius + side.JawRadius + 0.5 * side.Mouth >= 0.5 * table.Length;
        if (shortSide || longSide)
        {
            errors.Add(
                "table.pockets", "the pockets leave no cushion between them", "smaller mouths, or a larger table");
        }
    }

    private static Vec3?[]? Stripes(List<SceneBall> balls, SceneErrors errors)
    {
        Vec3?[]? stripes = null;
        for (int i = 0; i < balls.Count; i++)
        {
            if (balls[i].Stripe is not { } stripe)
                continue;
            stripes ??= new Vec3?[balls.Count];
            Vec3 axis = stripe.Axis is { } given ? InSpace(given) : new Vec3(0, 1, 0);
            double length = axis.Length;
            if (length > 0 && double.IsFinite(length))
                stripes[i] = new Vec3(axis.X / length, axis.Y / length, axis.Z / length);
            else
                errors.Add($"balls[{i}].stripe.axis", "the axis has no direction", "three numbers, not all 0");
        }

        return stripes;
    }

    private static void Launch(List<SceneLaunch> launch, string[] ids, ShotBall[] balls, SceneErrors errors)
    {
        var seen = new HashSet<string>();
        for (int i = 0; i < launch.Count; i++)
        {
            SceneLaunch one = launch[i];
            int index = one.Ball is null ? -1 : Array.IndexOf(ids, one.Ball);
            if (index < 0)
            {
                string problem = one.Ball is null ? "no ball is named" : $"there is no ball \"{one.Ball}\"";
                errors.Add($"launch[{i}].ball", problem, string.Join(", ", ids));
            }
            else if (!seen.Add(one.Ball!))
            {
                errors.Add($"launch[{i}].ball", $"\"{one.Ball}\" is launched twice", "each ball once");
            }
            else
            {
                Vec2 velocity = one.Velocity is null ? Vec2.Zero : InPlane(one.Velocity);
                Vec3 spin = one.Spin is null ? Vec3.Zero : InSpace(one.Spin);
                balls[index] = Moving(balls[index], velocity, spin);
            }
        }
    }

    private static Vec2 InPlane(Quantity[] parts) => new(parts[0].Value, parts[1].Value);

    private static Vec3 InSpace(Quantity[] parts) => new(parts[0].Value, parts[1].Value, parts[2].Value);

    private static ShotBall Moving(ShotBall ball, Vec2 velocity, Vec3 spin) =>
        ball with { Start = new BallState(ball.Start.Position, velocity, spin) };
}
