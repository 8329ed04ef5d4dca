using System.Text.Json;
using Longrail.Scenes.Players;
using Longrail.Scenes.Writing;

namespace Longrail.Scenes.Schemas;

/// <summary>The JSON Schema of player files, made from their catalogue of fields.</summary>
public static class PlayerSchema
{
    /// <summary>The schema as text.</summary>
    public static byte[] ToUtf8() => JsonForm.ToUtf8(json =>
    {
        json.WriteStartObject();
        json.WriteString("$schema", SceneSchema.Dialect);
        json.WriteString("title", $"Longrail {PlayerFile.Format}");
        json.WriteString(
            "description",
            "How far a player's strokes stray from what was meant: standard deviations of independent normal errors. "
            + "A number is in SI units and radians; a text carries its unit.");
        WriteBody(json);
        json.WriteEndObject();
    });

    /// <summary>Writes the members that describe a player into an open object.</summary>
    /// <param name="json">Where to.</param>
    public static void WriteBody(Utf8JsonWriter json) => PlayerFields.Root.WriteSchema(json);
}
