using System.Text.Json;
using Longrail.Scenes;
using Longrail.Scenes.Schemas;
using Longrail.Scenes.Trials;
using Longrail.Scenes.Writing;
using static Longrail.Scenes.Schemas.SchemaPart;

namespace Longrail.Coaching.Trials;

/// <summary>The JSON Schemas of trials' plans and results.</summary>
public static class TrialSchemas
{
    private static readonly string[] _measures = ["landing", "made"];

    /// <summary>The schema of plans.</summary>
    public static byte[] PlanToUtf8() => Whole(
        TrialPlanFile.Format,
        "A trial as it was fixed before the first shot. Metres, m/s, radians and chances.", json =>
    {
        string[] fields =
        [
            "longrail", "title", "varied", "hold", "measure", "usesSpeed", "shots", "looks", "rule", "order", "seed",
            "power", "level", "mostShots", "ball", "target", "diamond", "pocket", "landingReading", "speedReading",
            "player", "conditions", "needs", "advice", "scene",
        ];
        Closed(json, fields, _ =>
        {
            Words(json, "longrail", "The format of this file.", TrialPlanFile.Format);
            Typed(json, "title", "The scene's title; empty if it has none.", "string");
            Typed(json, "varied", "The field of the scene that differs.", "string");
            Words(json, "hold", "What stays the same: the stick's line, or the cue ball's.", "stick", "path");
            Words(json, "measure", "What the verdict rests on.", _measures);
            Typed(json, "usesSpeed", "Whether the speed is evened out.", "boolean");
            Typed(json, "shots", "Shots of each condition; 0 where no affordable number will do.", "integer");
            List(json, "looks", "Shots of each condition at each look, rising.", () => Types(json, "integer"));
            Words(json, "rule", "How the false alarms are shared out over the looks.", "obrien-fleming", "pocock");
            Words(json, "order", "There and back again, or shuffled within blocks.", "abba", "blocks");
            Typed(json, "seed", "Seed of the order.", "integer");
            Typed(json, "power", "How often the expected difference shall be seen.", "number");
            Typed(json, "level", "How often one is seen that is not there.", "number");
            Typed(json, "mostShots", "The most shots of each condition that anyone will play.", "integer");
            Typed(json, "ball", "The ball whose bank is measured.", "string");
            Words(json, "target", "The cushion along which a landing is measured.", [.. TableWords.Cushions, null]);
            Typed(json, "diamond", "Length of a diamond along it, m.", "number", "null");
            Words(json, "pocket", "The pocket that is played for.", [.. TableWords.Pockets, null]);
            Typed(json, "landingReading", "Standard error of reading a landing, m.", "number");
            Typed(json, "speedReading", "Standard error of reading a speed, as a part of it.", "number");
            Field(json, "player", "Standard deviations of the player's errors: rad, a part, m.", () =>
                Closed(json, ["name", "aim", "speed", "tipAcross", "tipUp", "elevation"], _ =>
                {
                    Typed(json, "name", "What the player is called.", "string");
                    foreach (string name in (string[])["aim", "speed", "tipAcross", "tipUp", "elevation"])
                        Typed(json, name, "Standard deviation of it.", "number");
                }));
            List(json, "conditions", "The others are held against the first.", () => PlanCondition(json));
            List(json, "needs", "What each comparison needs, measured in each way.", () => Need(json));
            List(json, "advice", "What else must be said.", () => Types(json, "string"));
            Field(json, "scene", "The shot.", () => WriteScene(json));
        });
    });

    /// <summary>The schema of results.</summary>
    public static byte[] ResultToUtf8() => Whole(
        TrialResultWriter.Format,
        "A trial's results, weighed. Metres, m/s and chances; differences are condition minus "
        + "the one it is held against.", json =>
    {
        string[] fields =
        [
            "longrail", "title", "measure", "usesSpeed", "speedIsRollOut", "shots", "look", "looks", "confidence",
            "slope", "commonSpeed", "conditions", "comparisons", "sentences", "notes",
        ];
        Closed(json, fields, _ =>
        {
            Words(json, "longrail", "The format of this file.", TrialResultWriter.Format);
            Typed(json, "title", "The plan's title; empty without one.", "string");
            Words(json, "measure", "What the verdicts rest on.", _measures);
            Typed(json, "usesSpeed", "Whether they rest on the difference at the common speed.", "boolean");
            Typed(json, "speedIsRollOut", "Whether speeds are roll-outs, in metres.", "boolean");
            Typed(json, "shots", "How many shots were weighed.", "integer");
            Typed(json, "look", "Which look this is, from 1; 0 without a plan.", "integer");
            Typed(json, "looks", "How many looks the plan has; 0 without one.", "integer");
            Typed(json, "confidence", "Confidence of the intervals.", "number");
            Typed(json, "slope", "Change of the landing with the speed.", "number", "null");
            Typed(json, "commonSpeed", "The speed at which landings are compared.", "number", "null");
            List(json, "conditions", "What was written down of each.", () => ResultCondition(json));
            List(json, "comparisons", "The others held against the first.", () => Comparison(json));
            List(json, "sentences", "What it comes to, one for each comparison.", () => Types(json, "string"));
            List(json, "notes", "What else must be said.", () => Types(json, "string"));
        });
    });

    private static void PlanCondition(Utf8JsonWriter json) =>
        Closed(json, ["label", "value", "landing", "spread", "lost", "made", "strokes"], _ =>
    {
        Typed(json, "label", "Its letter.", "string");
        Typed(json, "value", "The value of the varied field.", "string");
        Typed(json, "landing", "Expected landing along the target, m.", "number", "null");
        Typed(json, "spread", "Its standard deviation over the player's strokes, m.", "number", "null");
        Typed(json, "lost", "The part of the strokes without a landing.", "number");
        Typed(json, "made", "How often the ball went down in the simulated strokes.", "integer", "null");
        Typed(json, "strokes", "How many were simulated.", "integer", "null");
    });

    private static void Need(Utf8JsonWriter json) =>
        Closed(json, ["condition", "measure", "usesSpeed", "effect", "spread", "shots", "seenWithMost"], _ =>
    {
        Typed(json, "condition", "The condition that is held against the first.", "string");
        Words(json, "measure", "What is measured.", _measures);
        Typed(json, "usesSpeed", "Whether the speed is evened out.", "boolean");
        Typed(json, "effect", "Expected difference, m or chance.", "number");
        Typed(json, "spread", "Standard deviation within a condition, m.", "number", "null");
        Typed(json, "shots", "Shots of each condition with one look; 1000000 stands for that and more.", "integer");
        Typed(json, "seenWithMost", "What the most shots allowed would see, m.", "number", "null");
    });

    private static void ResultCondition(Utf8JsonWriter json) =>
        Closed(json, ["label", "value", "shots", "landing", "adjusted", "speed", "made"], _ =>
    {
        Typed(json, "label", "Its letter.", "string");
        Typed(json, "value", "Its words.", "string");
        Typed(json, "shots", "How many were played.", "integer");
        Numbers(json, "landing", "The landings, m.", "count", "mean", "deviation");
        Typed(json, "adjusted", "Mean landing at the common speed, m.", "number", "null");
        Numbers(json, "speed", "The speeds, m/s, or roll-outs, m.", "count", "mean", "deviation");
        Numbers(json, "made", "Makes, with Wilson's interval.", "made", "trials", "low", "high");
    });

    private static void Comparison(Utf8JsonWriter json)
    {
        string[] fields =
        [
            "condition", "against", "unadjusted", "adjusted", "equalSlopes", "permutation", "made", "expected",
            "verdict",
        ];
        Closed(json, fields, _ =>
        {
            Typed(json, "condition", "The condition.", "string");
            Typed(json, "against", "What it is held against.", "string");
            Numbers(json, "unadjusted", "Landings as they stand, m (Welch).", "difference", "low", "high", "p");
            Numbers(json, "adjusted", "Landings at the common speed, m.", "difference", "low", "high", "p");
            Typed(json, "equalSlopes", "Chance of slopes so unlike if speed moves both alike.", "number", "null");
            Field(json, "permutation", "The conditions dealt out again.", () =>
                Closed(json, ["p", "dealings", "exact"], orNull: true, writeFields: _ =>
                {
                    Typed(json, "p", "Chance of a dealing that parts them as much.", "number");
                    Typed(json, "dealings", "How many were looked at.", "integer");
                    Typed(json, "exact", "Whether these are all there are.", "boolean");
                }));
            Numbers(json, "made", "Chances to make it (Newcombe, Fisher).", "difference", "low", "high", "p");
            Typed(json, "expected", "What the physics expected.", "number", "null");
            Words(json, "verdict", "What that amounts to.", [.. TrialResultWriter.Verdicts]);
        });
    }

    private static byte[] Whole(string format, string description, Action<Utf8JsonWriter> write) =>
        JsonForm.ToUtf8(json =>
    {
        json.WriteStartObject();
        json.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
        json.WriteString("title", $"Longrail {format}");
        json.WriteString("description", description);
        write(json);
        json.WriteEndObject();
    });

    private static void Numbers(Utf8JsonWriter json, string name, string description, params string[] fields) =>
        Field(json, name, description, () => Closed(json, fields, orNull: true, writeFields: _ =>
        {
            foreach (string field in fields)
                Typed(json, field, "As its name says.", field is "count" or "made" or "trials" ? "integer" : "number");
        }));

    private static void Typed(Utf8JsonWriter json, string name, string description, params string[] types) =>
        Field(json, name, description, () => Types(json, types));

    private static void List(Utf8JsonWriter json, string name, string description, Action writeItem) =>
        Field(json, name, description, () =>
        {
            json.WriteString("type", "array");
            Items(json, writeItem);
        });

    private static void Words(Utf8JsonWriter json, string name, string description, params string?[] words) =>
        Field(json, name, description, () =>
        {
            json.WriteStartArray("enum");
            foreach (string? word in words) json.WriteStringValue(word);
            json.WriteEndArray();
        });

    // The scene's own schema, less its heading.
    private static void WriteScene(Utf8JsonWriter json)
    {
        using var scene = JsonDocument.Parse(SceneSchema.ToUtf8());
        foreach (JsonProperty member in scene.RootElement.EnumerateObject())
        {
            if (member.Name is not "$schema" and not "title" and not "description") member.WriteTo(json);
        }
    }
}
