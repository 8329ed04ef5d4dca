using System.Text.Json;
using Longrail.Physics.Equipment;
using static Longrail.Scenes.Schemas.SchemaPart;

namespace Longrail.Coaching.Charts;

/// <summary>The equipment of a chart as JSON, with the names of a scene's fields, and its schema: both from one
/// list.</summary>
internal static class EquipmentJson
{
    private static readonly (string Part, string Field, Func<EquipmentSpec, double> Value)[] _numbers =
    [
        ("table", "length", e => e.Table.Length), ("table", "width", e => e.Table.Width),
        ("table", "sightSetback", e => e.Table.SightSetback), ("table", "gravity", e => e.Table.Gravity),
        ("cloth", "slidingFriction", e => e.Cloth.SlidingFriction),
        ("cloth", "rollingFriction", e => e.Cloth.RollingFriction), ("cloth", "spinDecay", e => e.Cloth.SpinDecay),
        ("cushion", "restitution", e => e.Cushion.Restitution), ("cushion", "friction", e => e.Cushion.Friction),
        ("cushion", "noseHeight", e => e.Cushion.NoseHeight), ("cushion", "contactTime", e => e.Cushion.ContactTime),
        ("ballSet", "diameter", e => e.BallSet.Diameter), ("ballSet", "mass", e => e.BallSet.Mass),
        ("ballSet", "restitution", e => e.BallSet.Restitution),
        ("cue", "mass", e => e.Cue.Mass), ("cue", "tipDiameter", e => e.Cue.TipDiameter),
        ("cue", "tipRadius", e => e.Cue.TipRadius), ("cue", "endMass", e => e.Cue.EndMass),
        ("cue", "tipRestitution", e => e.Cue.TipRestitution), ("cue", "tipFriction", e => e.Cue.TipFriction),
    ];

    private static readonly (string Part, string Field, Func<EquipmentSpec, EquipmentNames, string?> Value)[] _words =
    [
        ("table", "preset", (_, n) => n.Table),
        ("table", "pockets", (e, _) => e.Table.Corner is null ? "none" : "six"),
        ("cloth", "state", (_, n) => n.Cloth),
        ("cushion", "law", (e, _) => e.Cushion.Law == CushionLaw.Yielding ? "yielding" : "impulse"),
        ("ballSet", "state", (_, n) => n.Balls),
    ];

    private static readonly string[] _parts = ["table", "cloth", "cushion", "ballSet", "cue"];

    internal static void Write(Utf8JsonWriter json, EquipmentSpec equipment, EquipmentNames names)
    {
        json.WriteStartObject("equipment");
        foreach (string part in _parts)
        {
            json.WriteStartObject(part);
            foreach ((string of, string field, Func<EquipmentSpec, EquipmentNames, string?> value) in _words)
            {
                if (of == part)
                    json.WriteString(field, value(equipment, names));
            }

            foreach ((string of, string field, Func<EquipmentSpec, double> value) in _numbers)
            {
                if (of == part)
                    json.WriteNumber(field, value(equipment));
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    internal static void WriteSchema(Utf8JsonWriter json) =>
        Field(json, "equipment", "What it was computed for; fields as in a scene, SI.", () => Closed(json, _parts, _ =>
        {
            foreach (string part in _parts)
            {
                string[] words = [.. _words.Where(w => w.Part == part).Select(w => w.Field)];
                string[] numbers = [.. _numbers.Where(n => n.Part == part).Select(n => n.Field)];
                json.WriteStartObject(part);
                Closed(json, [.. words, .. numbers], _ =>
                {
                    foreach (string word in words)
                    {
                        Field(
                            json, word, "As in a scene; null if it is not known.",
                            () => Types(json, "string", "null"));
                    }


                    foreach (string number in numbers)
                        Field(json, number, "As in a scene.", () => Types(json, "number"));
                });
                json.WriteEndObject();
            }
        }));
}
