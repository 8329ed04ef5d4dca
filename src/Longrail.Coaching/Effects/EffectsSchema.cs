using System.Text.Json;
using Longrail.Scenes;
using Longrail.Scenes.Schemas;
using Longrail.Scenes.Writing;
using static Longrail.Scenes.Schemas.SchemaPart;

namespace Longrail.Coaching.Effects;

/// <summary>The JSON Schema of effect budgets.</summary>
public static class EffectsSchema
{
    private static readonly string[] _fields =
    [
        "longrail", "title", "ball", "striker", "cushions", "target", "mirror", "shot", "effects", "interplay", "parts",
        "remainder", "total", "alwaysOn", "mirrorPath", "sentence", "notes", "scene",
    ];

    /// <summary>The schema as text.</summary>
    public static byte[] ToUtf8() => JsonForm.ToUtf8(json =>
    {
        string[] causes = [.. Enum.GetValues<EffectKind>().Select(EffectNames.Word)];
        json.WriteStartObject();
        json.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
        json.WriteString("title", $"Longrail {EffectsWriter.Format}");
        json.WriteString(
            "description",
            "Where a ball arrives against its plain mirror bank, split into causes. Lengths in metres unless a name "
            + "says otherwise. Amounts are along the target, positive in the sense that target.positive names.");
        Closed(json, _fields, _ =>
        {
            Words(json, "longrail", "The format of this file.", EffectsWriter.Format);
            Text(json, "title", "The scene's title; empty if it has none.");
            Text(json, "ball", "The measured ball.");
            TextOrNull(json, "striker", "The ball that hit it; null if the tip did, or nothing.");
            List(
                json, "cushions", "The cushions that count, in order.",
                () => Enumeration(json, [.. TableWords.Cushions]));
            Field(json, "target", "The line on which arrivals are measured.", () => WriteTarget(json));
            Field(json, "mirror", "Where the plain mirror bank arrives.", () => WritePlace(json));
            Field(json, "shot", "Where the shot arrives; straight on if anything intervenes.", () => WritePlace(json));
            List(json, "effects", "The causes.", () => WriteEffect(json, causes));
            Amount(json, "interplay", "The parts together minus the sum of all offAlone.");
            Amount(json, "parts", "The sum of all shares.");
            Amount(json, "remainder", "What the parts leave out: total minus parts.");
            Amount(json, "total", "Shot minus mirror.");
            List(json, "alwaysOn", "Causes at work in the mirror bank too.", () => Enumeration(json, causes));
            Field(json, "mirrorPath", "The corners of the plain mirror bank.", () => WritePath(json));
            Text(json, "sentence", "The budget in one sentence, in diamonds.");
            List(json, "notes", "What must be said beside the numbers.", () => Types(json, "string"));
            Field(json, "scene", "The scene as used; played again it gives the same shot.", () => WriteScene(json));
        });
        json.WriteEndObject();
    });

    private static void WriteTarget(Utf8JsonWriter json)
    {
        string[] fields =
            ["kind", "cushion", "pocket", "ball", "origin", "along", "diamond", "halfOpening", "positive", "negative"];
        Closed(json, fields, _ =>
        {
            Words(
                json, "kind", "What the line is: a cushion's touch line, a pocket's mouth, or beside a kicked ball.",
                [.. Enum.GetValues<EffectTargetKind>().Select(EffectsWriter.Word)]);
            Words(
                json, "cushion", "The cushion, or the one it is parallel to; null for a mouth.",
                [.. TableWords.Cushions, null]);
            Words(
                json, "pocket", "The pocket whose half opening is a unit; null without.",
                [.. TableWords.Pockets, null]);
            TextOrNull(json, "ball", "The ball that a kick meets; null without.");
            Field(json, "origin", "The point from which places are counted, m.", () => Point(json));
            Field(json, "along", "Unit vector towards higher places.", () => Point(json));
            Field(json, "diamond", "A diamond along the line, m.", () => Types(json, "number"));
            Field(
                json, "halfOpening", "A half opening of the pocket along the line, m; null without.",
                () => Types(json, "number", "null"));
            Text(json, "positive", "What a positive amount is called.");
            Text(json, "negative", "What a negative amount is called.");
        });
    }

    private static void WritePlace(Utf8JsonWriter json) => Closed(json, ["metres", "diamonds", "point"], _ =>
    {
        Field(json, "metres", "Along the line.", () => Types(json, "number"));
        Field(json, "diamonds", "Along the line.", () => Types(json, "number"));
        Field(json, "point", "On the table, m.", () => Point(json));
    });

    private static void WritePath(Utf8JsonWriter json) => Closed(json, ["striker", "ball"], _ =>
    {
        List(json, "striker", "The striker's way; empty without one.", () => Point(json));
        List(json, "ball", "The measured ball's way.", () => Point(json));
    });

    private static void WriteEffect(Utf8JsonWriter json, string[] causes) =>
        Closed(json, ["cause", "name", "off", "share", "offAlone", "perCushionMetres"], _ =>
        {
            Words(json, "cause", "The cause.", causes);
            Text(json, "name", "The cause in the trade's words.");
            Text(json, "off", "What switching it off means.");
            Amount(json, "share", "What it adds, averaged over all orders in which causes can be switched on.");
            Amount(json, "offAlone", "How far the shot moves back if this alone is switched off.");
            List(
                json, "perCushionMetres", "The share over the cushions; empty where there is no such split.",
                () => Types(json, "number"));
        });

    private static void Amount(Utf8JsonWriter json, string name, string description) =>
        Field(json, name, description, () => Closed(json, ["metres", "diamonds", "halfOpenings"], _ =>
        {
            Field(json, "metres", "Along the target.", () => Types(json, "number"));
            Field(json, "diamonds", "Along the target.", () => Types(json, "number"));
            Field(json, "halfOpenings", "Null without a pocket.", () => Types(json, "number", "null"));
        }));

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

    private static void Point(Utf8JsonWriter json)
    {
        Types(json, "array");
        Items(json, () => Types(json, "number"));
        json.WriteNumber("minItems", 2);
        json.WriteNumber("maxItems", 2);
    }

    private static void List(Utf8JsonWriter json, string name, string description, Action writeItem) =>
        Field(json, name, description, () =>
        {
            Types(json, "array");
            Items(json, writeItem);
        });

    private static void Text(Utf8JsonWriter json, string name, string description) =>
        Field(json, name, description, () => Types(json, "string"));

    private static void TextOrNull(Utf8JsonWriter json, string name, string description) =>
        Field(json, name, description, () => Types(json, "string", "null"));

    private static void Words(Utf8JsonWriter json, string name, string description, params string?[] words) =>
        Field(json, name, description, () => Enumeration(json, words));

    private static void Enumeration(Utf8JsonWriter json, params string?[] words)
    {
        json.WriteStartArray("enum");
        foreach (string? word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }
}
