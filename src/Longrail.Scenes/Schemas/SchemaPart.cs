using System.Text.Json;

namespace Longrail.Scenes.Schemas;

/// <summary>The pieces that the schemas of our formats are written from.</summary>
public static class SchemaPart
{
    /// <summary>One type, or a list of them.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="types">JSON Schema's type names.</param>
    public static void Types(Utf8JsonWriter json, params ReadOnlySpan<string> types)
    {
        ArgumentNullException.ThrowIfNull(json);
        if (types.Length == 1)
        {
            json.WriteString("type", types[0]);
            return;
        }

        json.WriteStartArray("type");
        foreach (string type in types)
            json.WriteStringValue(type);
        json.WriteEndArray();
    }

    /// <summary>An object that has no other fields than those written here.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="required">The fields that must be there.</param>
    /// <param name="writeFields">Writes all its fields.</param>
    /// <param name="orNull">Whether null may stand in its place.</param>
    public static void Closed(
        Utf8JsonWriter json, IEnumerable<string> required, Action<Utf8JsonWriter> writeFields, bool orNull = false)
    {
        ArgumentNullException.ThrowIfNull(required);
        ArgumentNullException.ThrowIfNull(writeFields);
        Types(json, orNull ? ["object", "null"] : ["object"]);
        json.WriteBoolean("additionalProperties", false);
        json.WriteStartArray("required");
        foreach (string name in required)
            json.WriteStringValue(name);
        json.WriteEndArray();
        json.WriteStartObject("properties");
        writeFields(json);
        json.WriteEndObject();
    }

    /// <summary>What the items of a list are.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="writeItem">Writes the schema of one.</param>
    public static void Items(Utf8JsonWriter json, Action writeItem)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(writeItem);
        json.WriteStartObject("items");
        writeItem();
        json.WriteEndObject();
    }

    /// <summary>A field with its description.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="name">Its name.</param>
    /// <param name="description">What it is, with unit and sign.</param>
    /// <param name="writeRest">Writes the rest of its schema.</param>
    public static void Field(Utf8JsonWriter json, string name, string description, Action writeRest)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(writeRest);
        json.WriteStartObject(name);
        json.WriteString("description", description);
        writeRest();
        json.WriteEndObject();
    }
}
