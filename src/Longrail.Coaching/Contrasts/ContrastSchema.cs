using System.Text.Json;
using Longrail.Scenes;
using Longrail.Scenes.Schemas;
using Longrail.Scenes.Writing;
using static Longrail.Scenes.Schemas.SchemaPart;

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
        Closed(json, ["longrail", "title", "hold", "varied", "mark", "rows"], _ =>
        {
            WriteWords(json, "longrail", "The format of this file.", ContrastWriter.Format);
            WriteText(json, "title", "The scene's title; empty if it has none.");
            WriteWords(json, "hold", "The stick's line, or the line on which the cue ball leaves.", "stick", "path");
            Field(json, "varied", "The fields that were varied, one or two.", () =>
            {
                WriteList(json, () => json.WriteString("type", "string"));
                json.WriteNumber("minItems", 1);
                json.WriteNumber("maxItems", 2);
            });
            WriteWords(
                json, "mark", "Null if one field was varied; otherwise a warning.", Contrast.TwoThingsMark, null);
            Field(json, "rows", "The base first, then the variants.", () => WriteList(json, () => WriteRow(json)));
        });
        json.WriteEndObject();
    });

    private static void WriteRow(Utf8JsonWriter json) => Closed(
        json, ["label", "values", "mark", "bank", "change", "cueBallRest", "cueBallPocket", "scene"], _ =>
        {
            WriteText(json, "label", "\"base\", or the variant's letter.");
            Field(json, "values", "The varied fields with their values, as they were asked for.", () =>
            {
                json.WriteString("type", "object");
                json.WriteStartObject("additionalProperties");
                json.WriteString("type", "string");
                json.WriteEndObject();
            });
            WriteWords(
                json, "mark", "A warning if two fields differ from the base; else null.", Contrast.TwoThingsMark, null);
            Field(json, "bank", "The banked ball's first cushion; null if it touches none.", () => WriteBank(json));
            Field(json, "change", "Landing minus the base's; null if on another cushion.", () => WriteChange(json));
            Field(json, "cueBallRest", "Where the cue ball rests, m; null if it does not.", () =>
            {
                Types(json, ["array", "null"]);
                Items(json, () => Types(json, _number));
            });
            WriteWords(json, "cueBallPocket", "The pocket it fell into, or null.", [.. TableWords.Pockets, null]);
            Field(json, "scene", "The scene of this row; played again it gives the same shot.", () => WriteScene(json));
        });

    private static void WriteBank(Utf8JsonWriter json)
    {
        string[] numbers =
        [
            "touchDiamonds", "angleInDegrees", "angleOutDegrees", "angleAfterCurveDegrees", "speedIn", "speedOut",
            "rollRatioIn", "sideIn", "sideOut",
        ];
        string[] maybe = ["throwDegrees", "landingDiamonds", "landingMetres", "longOfMirrorDiamonds"];
        Closed(
            json, ["ball", "cushion", .. numbers, "target", .. maybe, "pocket"], orNull: true, writeFields: _ =>
        {
            WriteText(json, "ball", "The banked ball.");
            WriteWords(json, "cushion", "The cushion that it came off.", [.. TableWords.Cushions]);
            foreach (string name in numbers)
                Field(json, name, "As in an outcome's reading of a cushion.", () => Types(json, _number));
            foreach (string name in maybe)
                Field(json, name, "Null if there is none.", () => Types(json, _numberOrNull));
            WriteWords(
                json, "target", "The cushion whose line it reached next, or null.", [.. TableWords.Cushions, null]);
            WriteWords(
                json, "pocket", "The pocket that it went into in the end, or null.", [.. TableWords.Pockets, null]);
        });
    }

    private static void WriteChange(Utf8JsonWriter json) =>
        Closed(json, ["diamonds", "metres", "rebound"], orNull: true, writeFields: _ =>
    {
        Field(json, "diamonds", "Positive towards higher numbers.", () => Types(json, _number));
        Field(json, "metres", "Positive towards higher numbers.", () => Types(json, _number));
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

    private static void WriteList(Utf8JsonWriter json, Action writeItem)
    {
        json.WriteString("type", "array");
        Items(json, writeItem);
    }

    private static void WriteText(Utf8JsonWriter json, string name, string description) =>
        Field(json, name, description, () => json.WriteString("type", "string"));

    private static void WriteWords(Utf8JsonWriter json, string name, string description, params string?[] words) =>
        Field(json, name, description, () =>
        {
            json.WriteStartArray("enum");
            foreach (string? word in words)
                json.WriteStringValue(word);
            json.WriteEndArray();
        });
}
