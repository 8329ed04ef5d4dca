using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;
using Longrail.Scenes.Parts;

namespace Longrail.Scenes.Compiling;

/// <summary>Writes out a scene as it is used: every number in SI, nothing left to defaults.</summary>
/// <remarks>Presets and states keep their names beside the numbers, which win when the scene is read again. A solved
/// aim keeps its task beside the angle that was found.</remarks>
internal static class AsUsedScene
{
    /// <summary>The scene as used.</summary>
    /// <param name="asked">The scene as asked for.</param>
    /// <param name="equipment">Its equipment.</param>
    /// <param name="resting">The balls where they stand, before any of them is set moving.</param>
    /// <param name="stroke">The stroke, or null.</param>
    public static Scene Of(Scene asked, EquipmentSpec equipment, ShotBall[] resting, StrokeRecord? stroke) => new()
    {
        FormatName = Scene.Format,
        Title = asked.Title,
        Notes = asked.Notes,
        Table = Table(asked.Table, equipment.Table),
        Cloth = Cloth(asked.Cloth, equipment.Cloth),
        Cushion = Cushion(equipment.Cushion),
        BallSet = BallSet(asked.BallSet, equipment.BallSet),
        Cue = Cue(asked.Cue, equipment.Cue),
        Balls = Balls(asked.Balls, resting),
        Stroke = stroke is null ? null : Stroke(asked.Stroke!, asked.Balls[stroke.Ball].Id!, stroke.Stroke),
        Launch = stroke is null ? asked.Launch : null,
    };

    private static SceneTable Table(SceneTable? asked, TableSpec table) => new()
    {
        Preset = EquipmentCompiler.Preset(asked).Name,
        Length = table.Length,
        Width = table.Width,
        SightSetback = table.SightSetback,
        Gravity = table.Gravity,
        Pockets = table.Corner is { } corner && table.Side is { } side
            ? new ScenePockets { Corner = Pocket(corner), Side = Pocket(side) }
            : new ScenePockets { Word = ScenePockets.None },
    };

    private static ScenePocket Pocket(PocketSpec pocket) => new()
    {
        Mouth = pocket.Mouth,
        CutAngle = pocket.CutAngle,
        JawRadius = pocket.JawRadius,
        Shelf = pocket.Shelf,
        DropRadius = pocket.DropRadius,
    };

    private static SceneCloth Cloth(SceneCloth? asked, ClothSpec cloth) => new()
    {
        State = EquipmentCompiler.ClothCondition(asked).Name,
        SlidingFriction = cloth.SlidingFriction,
        RollingFriction = cloth.RollingFriction,
        SpinDecay = cloth.SpinDecay,
    };

    private static SceneCushion Cushion(CushionSpec cushion) => new()
    {
        Law = cushion.Law == CushionLaw.Impulse ? "impulse" : "yielding",
        Restitution = cushion.Restitution,
        Friction = cushion.Friction,
        NoseHeight = cushion.NoseHeight,
        ContactTime = cushion.ContactTime,
    };

    private static SceneBallSet BallSet(SceneBallSet? asked, BallSetSpec balls) => new()
    {
        State = EquipmentCompiler.BallCondition(asked).Name,
        Diameter = balls.Diameter,
        Mass = balls.Mass,
        Restitution = balls.Restitution,
        Friction = new SceneBallFriction
        {
            Base = balls.Friction.Base,
            Gain = balls.Friction.Gain,
            Decay = balls.Friction.Decay,
        },
    };

    private static SceneCue Cue(SceneCue? asked, CueSpec cue) => new()
    {
        Preset = EquipmentCompiler.CuePreset(asked).Name,
        Mass = cue.Mass,
        TipDiameter = cue.TipDiameter,
        TipRadius = cue.TipRadius,
        EndMass = cue.EndMass,
        TipRestitution = cue.TipRestitution,
        TipFriction = cue.TipFriction,
    };

    private static List<SceneBall> Balls(List<SceneBall> asked, ShotBall[] resting)
    {
        var balls = new List<SceneBall>(asked.Count);
        for (int i = 0; i < asked.Count; i++)
        {
            balls.Add(new SceneBall
            {
                Id = asked[i].Id,
                X = resting[i].Start.Position.X,
                Y = resting[i].Start.Position.Y,
                // A ball's own size stays its own; the others follow the set.
                Diameter = asked[i].Diameter,
                Mass = asked[i].Mass,
                Stripe = asked[i].Stripe is { Axis: null }
                    ? new SceneStripe { Axis = [0.0, 1.0, 0.0] }
                    : asked[i].Stripe,
            });
        }

        return balls;
    }

    private static SceneStroke Stroke(SceneStroke asked, string ball, Stroke stroke) => new()
    {
        Ball = ball,
        Aim = asked.Aim is { Angle: null } task ? Solved(task, stroke.Aim) : new SceneAim { Angle = stroke.Aim },
        Speed = stroke.Speed,
        Tip = new SceneTip { Right = stroke.OffsetRight, Above = stroke.OffsetAbove },
        Elevation = stroke.Elevation,
    };

    private static SceneAim Solved(SceneAim task, double aim)
    {
        SceneAim solved = task.Copy();
        solved.Solved = aim;
        return solved;
    }
}
