using System.Text.Json;
using Longrail.Scenes;
using Longrail.Scenes.Schemas;
using Longrail.Scenes.Writing;

namespace Longrail.Coaching.Contrasts;

/// <summary>The JSON Schema of comparisons.</summary>
public static class ContrastSchema
{
    private static readonly string[] _number = ["number"];
    private static readonly string[] _numberOrNull = ["number", "null"];

    /// <summary>The schema as text.</summary>
    public static byte[] ToUtf8() => JsonForm.ToUtf8(json =>
    {
        json.WriteStartObject();
        json.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
        json.WriteString("title", $"Longrail {ContrastWriter.Format}");
        json.WriteString(
            "description",
            "Shots in which one thing changes and the rest is held. Lengths in metres, speeds in m/s, "
            + "unless a name says otherwise.");
        WriteObject(json, ["longrail", "title", "hold", "varied", "mark", "rows"], () =>
        {
            WriteWords(json, "longrail", "The format of this file.", ContrastWriter.Format);
            WriteText(json, "title", "The scene's title; empty if it has none.");
            WriteWords(json, "hold", "The stick's line, or the line on which the cue ball leaves.", "stick", "path");
            Begin(json, "varied", "The fields that were varied, one or two.", () =>
            {
                WriteList(json, () => json.WriteString("type", "string"));
                json.WriteNumber("minItems", 1);
                json.WriteNumber("maxItems", 2);
            });
            WriteWords(
                json, "mark", "Null if one field was varied; otherwise a warning.", Contrast.TwoThingsMark, null);
            Begin(json, "rows", "The base first, then the variants.", () => WriteList(json, () => WriteRow(json)));
        });
        json.WriteEndObject();
    });

    private static void WriteRow(Utf8JsonWriter json) => WriteObject(
        json, ["label", "values", "mark", "bank", "change", "cueBallRest", "cueBallPocket", "scene"], () =>
        {
            WriteText(json, "label", "\"base\", or the variant's letter.");
            Begin(json, "values", "The varied fields with their values, as they were asked for.", () =>
            {
                json.WriteString("type", "object");
                json.WriteStartObject("additionalProperties");
                json.WriteString("type", "string");
                json.WriteEndObject();
            });
            WriteWords(
                json, "mark", "A warning if two fields differ from the base; else null.", Contrast.TwoThingsMark, null);
            Begin(json, "bank", "The banked ball's first cushion; null if it touches none.", () => WriteBank(json));
            Begin(json, "change", "Landing minus the base's; null if on another cushion.", () => WriteChange(json));
            Begin(json, "cueBallRest", "Where the cue ball rests, m; null if it does not.", () =>
            {
                WriteTypes(json, ["array", "null"]);
                WriteItems(json, () => WriteTypes(json, _number));
            });
            WriteWords(json, "cueBallPocket", "The pocket it fell into, or null.", [.. TableWords.Pockets, null]);
            Begin(json, "scene", "The scene of this row; played again it gives the same shot.", () => WriteScene(json));
        });

    private static void WriteBank(Utf8JsonWriter json)
    {
        string[] numbers =
        [
            "touchDiamonds", "angleInDegrees", "angleOutDegrees", "angleAfterCurveDegrees", "speedIn", "speedOut",
            "rollRatioIn", "sideIn", "sideOut",
        ];
        string[] maybe = ["throwDegrees", "landingDiamonds", "landingMetres", "longOfMirrorDiamonds"];
        WriteObject(
            json, ["ball", "cushion", .. numbers, "target", .. maybe, "pocket"], orNull: true, writeFields: () =>
        {
            WriteText(json, "ball", "The banked ball.");
            WriteWords(json, "cushion", "The cushion that it came off.", [.. TableWords.Cushions]);
            foreach (string name in numbers)
                Begin(json, name, "As in an outcome's reading of a cushion.", () => WriteTypes(json, _number));
            foreach (string name in maybe)
                Begin(json, name, "Null if there is none.", () => WriteTypes(json, _numberOrNull));
            WriteWords(
                json, "target", "The cushion whose line it reached next, or null.", [.. TableWords.Cushions, null]);
            WriteWords(
                json, "pocket", "The pocket that it went into in the end, or null.", [.. TableWords.Pockets, null]);
        });
    }

    private static void WriteChange(Utf8JsonWriter json) =>
        WriteObject(json, ["diamonds", "metres", "rebound"], orNull: true, writeFields: () =>
    {
        Begin(json, "diamonds", "Positive towards higher numbers.", () => WriteTypes(json, _number));
        Begin(json, "metres", "Positive towards higher numbers.", () => WriteTypes(json, _number));
        WriteWords(
            json, "rebound", "As players call it; null where neither word has a meaning.", "longer", "shorter", null);
    });

    // The scene's own schema, less its heading.
    private static void WriteScene(Utf8JsonWriter json)
    {
        using var scene = JsonDocument.Parse(SceneSchema.ToUtf8());
        foreach (JsonProperty member in scene.RootElement.EnumerateObject())
        {
            if (member.Name is not "$schema" and not "title" and not "description")
                member.WriteTo(json);
        }
    }

    private static void WriteObject(Utf8JsonWriter json, string[] required, Action writeFields, bool orNull = false)
    {
        WriteTypes(json, orNull ? ["object", "null"] : ["object"]);
        json.WriteBoolean("additionalProperties", false);
        json.WriteStartArray("required");
        foreach (string name in required)
            json.WriteStringValue(name);
        json.WriteEndArray();
        json.WriteStartObject("properties");
        writeFields();
        json.WriteEndObject();
    }

    private static void WriteList(Utf8JsonWriter json, Action writeItem)
    {
        json.WriteString("type", "array");
        WriteItems(json, writeItem);
    }

    private static void WriteItems(Utf8JsonWriter json, Action writeItem)
    {
        json.WriteStartObject("items");
        writeItem();
        json.WriteEndObject();
    }

    private static void WriteTypes(Utf8JsonWriter json, string[] types)
    {
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

    private static void WriteText(Utf8JsonWriter json, string name, string description) =>
        Begin(json, name, description, () => json.WriteString("type", "string"));

    private static void WriteWords(Utf8JsonWriter json, string name, string description, params string?[] words) =>
        Begin(json, name, description, () =>
        {
            json.WriteStartArray("enum");
            foreach (string? word in words)
                json.WriteStringValue(word);
            json.WriteEndArray();
        });

    private static void Begin(Utf8JsonWriter json, string name, string description, Action writeRest)
    {
        json.WriteStartObject(name);
        json.WriteString("description", description);
        writeRest();
        json.WriteEndObject();
    }
}
