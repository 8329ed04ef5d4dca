using System.Text.Json;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Writing;

namespace Longrail.Scenes.Schemas;

/// <summary>The JSON Schema of scene files, made from the catalogue of fields.</summary>
/// <remarks>A schema says what a file may look like. What its fields mean together (balls that overlap, a miscue) only
/// <see cref="Compiling.SceneCompiler"/> can tell. Comments and trailing commas, which scene files may have, are no
/// matter of a schema.</remarks>
public static class SceneSchema
{
    internal const string Dialect = "http://json-schema.org/draft-07/schema#";

    /// <summary>The schema as text.</summary>
    public static byte[] ToUtf8() => JsonForm.ToUtf8(json =>
    {
        json.WriteStartObject();
        json.WriteString("$schema", Dialect);
        json.WriteString("title", $"Longrail {Scene.Format}");
        json.WriteString(
            "description",
            "A table, its balls and one shot. A number is in SI units and radians; a text carries its unit. "
            + "x runs from the head cushion's nose line to the foot's, y from the right one, seen from the head, to "
            + "the left.");
        WriteBody(json);
        json.WriteEndObject();
    });

    /// <summary>Writes the members that describe a scene into an open object.</summary>
    internal static void WriteBody(Utf8JsonWriter json) => SceneFields.Root.WriteSchema(json, "balls");
}
