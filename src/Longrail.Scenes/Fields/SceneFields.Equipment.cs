using Longrail.Physics.Equipment;
using Longrail.Scenes.Parts;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Fields;

public static partial class SceneFields
{
    // Computed on each call: the sections are built once, by Root, in whatever order it needs them.
    private static Section<SceneTable> Table => new(
        new WordField<SceneTable>(
            "preset", Names(EquipmentPresets.Tables, t => t.Name), t => t.Preset, (t, v) => t.Preset = v,
            EquipmentPresets.DefaultTable.Name,
            "A table by name; it also brings the cloth, the balls and the height of the cushions that belong to it.")
        {
            Replaces = t =>
            {
                t.Length = t.Width = t.SightSetback = null;
                if (t.Pockets is { Word: null })
                    t.Pockets = null;
            },
        },
        new NumberField<SceneTable>(
            "length", QuantityKind.Length, new NumberRange(0.5, 10), t => t.Length, (t, v) => t.Length = v,
            AsPreset, "Playing length from nose line to nose line."),
        new NumberField<SceneTable>(
            "width", QuantityKind.Length, new NumberRange(0.5, 10), t => t.Width, (t, v) => t.Width = v,
            AsPreset, "Playing width from nose line to nose line."),
        new NumberField<SceneTable>(
            "sightSetback", QuantityKind.Length, new NumberRange(0, 0.5),
            t => t.SightSetback, (t, v) => t.SightSetback = v,
            AsPreset, "Distance of the sights (diamonds) behind the nose line."),
        new NumberField<SceneTable>(
            "gravity", QuantityKind.Acceleration, new NumberRange(0.1, 30), t => t.Gravity, (t, v) => t.Gravity = v,
            "9.80665 m/s^2", "Acceleration of free fall."),
        new PartField<SceneTable, ScenePockets>(
            "pockets", Pockets, t => t.Pockets, (t, v) => t.Pockets = v, AsPreset,
            "The pockets: \"standard\" for those of the preset, \"none\" for a plain rectangle, or their shape.",
            new WordField<ScenePockets>(
                "pockets", [ScenePockets.Standard, ScenePockets.None], p => p.Word, (p, v) => p.Word = v,
                ScenePockets.Standard, "The pockets of the preset, or none.")));

    private static Section<ScenePockets> Pockets => new(
        new PartField<ScenePockets, ScenePocket>(
            "corner", Pocket, p => p.Corner, (p, v) => p.Corner = v, AsPocketedPreset, "The four corner pockets."),
        new PartField<ScenePockets, ScenePocket>(
            "side", Pocket, p => p.Side, (p, v) => p.Side = v, AsPocketedPreset, "The two side pockets."));

    private static Section<ScenePocket> Pocket => new(
        new NumberField<ScenePocket>(
            "mouth", QuantityKind.Length, new NumberRange(0.03, 0.4), p => p.Mouth, (p, v) => p.Mouth = v,
            AsPocketedPreset, "Distance between the two points where nose line and facing would meet."),
        new NumberField<ScenePocket>(
            "cutAngle", QuantityKind.Angle,
            new NumberRange(RightAngle, Math.PI, WithoutLeast: true, WithoutMost: true,
                Words: "more than 90 to less than 180 deg"),
            p => p.CutAngle, (p, v) => p.CutAngle = v,
            AsPocketedPreset, "Angle between nose line and facing, measured through the rubber."),
        new NumberField<ScenePocket>(
            "jawRadius", QuantityKind.Length, new NumberRange(0, 0.1), p => p.JawRadius, (p, v) => p.JawRadius = v,
            AsPocketedPreset, "Radius of the rounding between nose line and facing."),
        new NumberField<ScenePocket>(
            "shelf", QuantityKind.Length, new NumberRange(0, 0.15), p => p.Shelf, (p, v) => p.Shelf = v,
            AsPocketedPreset, "Distance of the drop edge behind the mouth line, along the pocket's axis."),
        new NumberField<ScenePocket>(
            "dropRadius", QuantityKind.Length, new NumberRange(0.01, 0.3),
            p => p.DropRadius, (p, v) => p.DropRadius = v,
            "half of the mouth if that is given, otherwise " + AsPocketedPreset,
            "Radius of the drop edge in the slate."));

    private static Section<SceneCloth> Cloth => new(
        new WordField<SceneCloth>(
            "state", Names(EquipmentPresets.ClothConditions, c => c.Name), c => c.State, (c, v) => c.State = v,
            EquipmentPresets.DefaultClothCondition.Name,
            "The state of the cloth: a factor on each of its numbers and on the cushions' friction.")
        {
            Replaces = c => c.SlidingFriction = c.RollingFriction = c.SpinDecay = null,
        },
        new NumberField<SceneCloth>(
            "slidingFriction", QuantityKind.Ratio, new NumberRange(0, 2, WithoutLeast: true),
            c => c.SlidingFriction, (c, v) => c.SlidingFriction = v,
            "as preset and state", "Coulomb coefficient of a ball skidding on the bed."),
        new NumberField<SceneCloth>(
            "rollingFriction", QuantityKind.Ratio, new NumberRange(0, 0.2, WithoutLeast: true),
            c => c.RollingFriction, (c, v) => c.RollingFriction = v,
            "as preset and state", "Deceleration of a rolling ball over gravity."),
        new NumberField<SceneCloth>(
            "spinDecay", QuantityKind.AngularAcceleration, new NumberRange(0, 1000, WithoutLeast: true),
            c => c.SpinDecay, (c, v) => c.SpinDecay = v,
            "as preset and state", "Deceleration of the spin about the vertical axis."));

    private static Section<SceneCushion> Cushion => new(
        new WordField<SceneCushion>(
            "law", ["yielding", "impulse"], c => c.Law, (c, v) => c.Law = v,
            "yielding", "The law of contact: the rubber gives and takes its time, or an impulse at an instant."),
        new NumberField<SceneCushion>(
            "restitution", QuantityKind.Ratio, new NumberRange(0.001, 1),
            c => c.Restitution, (c, v) => c.Restitution = v,
            Text(EquipmentPresets.Cushion(0).Restitution),
            "Energetic restitution along the tilted contact normal: root of work given back over work taken in."),
        new NumberField<SceneCushion>(
            "friction", QuantityKind.Ratio, new NumberRange(0, 2), c => c.Friction, (c, v) => c.Friction = v,
            $"{Text(EquipmentPresets.Cushion(0).Friction)} times the factor of the cloth's state",
            "Coulomb coefficient between ball and cushion."),
        new NumberField<SceneCushion>(
            "noseHeight", QuantityKind.BallHeight,
            new NumberRange(0.005, 0.1, Words: "from the height of the ball's centre to less than 0.9 D"),
            c => c.NoseHeight, (c, v) => c.NoseHeight = v,
            AsPreset, "Height of the nose above the bed; D and % are parts of the ball's diameter."),
        new NumberField<SceneCushion>(
            "contactTime", QuantityKind.Time, new NumberRange(0, 0.1, WithoutLeast: true),
            c => c.ContactTime, (c, v) => c.ContactTime = v,
            $"{Text(EquipmentPresets.Cushion(0).ContactTime)} s",
            "Duration of a straight, spinless, frictionless contact under the yielding law."));

    private static Section<SceneBallSet> BallSet => new(
        new WordField<SceneBallSet>(
            "state", Names(EquipmentPresets.BallConditions, c => c.Name), b => b.State, (b, v) => b.State = v,
            EquipmentPresets.DefaultBallCondition.Name, "How clean the balls are; it sets their friction.")
        {
            Replaces = b => b.Friction = null,
        },
        new NumberField<SceneBallSet>(
            "diameter", QuantityKind.Length, new NumberRange(0.02, 0.15), b => b.Diameter, (b, v) => b.Diameter = v,
            AsPreset, "Diameter of a ball."),
        new NumberField<SceneBallSet>(
            "mass", QuantityKind.Mass, new NumberRange(0.01, 2), b => b.Mass, (b, v) => b.Mass = v,
            AsPreset, "Mass of a ball."),
        new NumberField<SceneBallSet>(
            "restitution", QuantityKind.Ratio, new NumberRange(0, 1), b => b.Restitution, (b, v) => b.Restitution = v,
            AsPreset, "Separating over closing speed of two balls along their line of centres."),
        new PartField<SceneBallSet, SceneBallFriction>(
            "friction", BallFriction, b => b.Friction, (b, v) => b.Friction = v, "as state",
            "Friction of two balls against slip speed v: base + gain exp(-decay v)."));

    private static Section<SceneBallFriction> BallFriction => new(
        new NumberField<SceneBallFriction>(
            "base", QuantityKind.Ratio, new NumberRange(0, 2), f => f.Base, (f, v) => f.Base = v,
            "as state", "Coefficient at high slip speed."),
        new NumberField<SceneBallFriction>(
            "gain", QuantityKind.Ratio, new NumberRange(0, 2), f => f.Gain, (f, v) => f.Gain = v,
            "as state", "What is added at zero slip."),
        new NumberField<SceneBallFriction>(
            "decay", QuantityKind.InverseSpeed, new NumberRange(0, 100), f => f.Decay, (f, v) => f.Decay = v,
            "as state", "How fast the coefficient falls with slip speed."));

    private static Section<SceneCue> Cue => new(
        new WordField<SceneCue>(
            "preset", Names(EquipmentPresets.Cues, c => c.Name), c => c.Preset, (c, v) => c.Preset = v,
            EquipmentPresets.DefaultCue.Name, "A cue by name.")
        {
            Replaces = c => c.Mass = c.TipDiameter = c.TipRadius = c.EndMass = c.TipRestitution = c.TipFriction = null,
        },
        new NumberField<SceneCue>(
            "mass", QuantityKind.Mass, new NumberRange(0.05, 3), c => c.Mass, (c, v) => c.Mass = v,
            "as the cue's preset", "Mass of the whole cue."),
        new NumberField<SceneCue>(
            "tipDiameter", QuantityKind.Length, new NumberRange(0.004, 0.03),
            c => c.TipDiameter, (c, v) => c.TipDiameter = v,
            "as the cue's preset", "Width of the tip."),
        new NumberField<SceneCue>(
            "tipRadius", QuantityKind.Length, new NumberRange(0, 0.1), c => c.TipRadius, (c, v) => c.TipRadius = v,
            "as the cue's preset", "Radius of the tip's dome."),
        new NumberField<SceneCue>(
            "endMass", QuantityKind.Mass, new NumberRange(0.0001, 0.2), c => c.EndMass, (c, v) => c.EndMass = v,
            "as the cue's preset",
            "Effective mass of the shaft's end that the ball pushes sideways; it sets the squirt."),
        new NumberField<SceneCue>(
            "tipRestitution", QuantityKind.Ratio, new NumberRange(0, 1),
            c => c.TipRestitution, (c, v) => c.TipRestitution = v,
            "as the cue's preset", "Restitution of tip on ball."),
        new NumberField<SceneCue>(
            "tipFriction", QuantityKind.Ratio, new NumberRange(0, 5, WithoutLeast: true),
            c => c.TipFriction, (c, v) => c.TipFriction = v,
            "as the cue's preset", "Coulomb coefficient of a chalked tip; it sets the miscue limit."));
}
