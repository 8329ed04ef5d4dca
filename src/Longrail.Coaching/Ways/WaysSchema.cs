using System.Text.Json;
using Longrail.Coaching.Ways.Words;
using Longrail.Scenes;
using Longrail.Scenes.Schemas;
using Longrail.Scenes.Writing;
using static Longrail.Scenes.Schemas.SchemaPart;

namespace Longrail.Coaching.Ways;

/// <summary>The JSON Schema of answers.</summary>
public static class WaysSchema
{
    private static readonly string[] _question =
    [
        "title", "cueBall", "ball", "next", "fewestRails", "mostRails", "mostKickRails", "pocket", "order", "seed",
        "player",
    ];

    private static readonly string[] _wayFields =
    [
        "letter", "words", "route", "plan", "made", "scratch", "cut", "hitFraction", "stroke", "aimPoint", "leeway",
        "kiss", "roundTheKiss", "rest", "next", "windows", "scene",
    ];

    /// <summary>The schema as text.</summary>
    public static byte[] ToUtf8() => JsonForm.ToUtf8(json =>
    {
        json.WriteStartObject();
        json.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
        json.WriteString("title", $"Longrail {WaysWriter.Format}");
        json.WriteString(
            "description",
            "The ways to play a ball, ranked. Lengths in metres, speeds in m/s, angles in radians counter-clockwise, "
            + "chances as shares from 0 to 1, unless a name says otherwise.");
        Closed(json, ["longrail", .. _question, "partial", "shotsPlayed", "reason", "ways", "notPlayable"], _ =>
        {
            Words(json, "longrail", "The format of this file.", WaysWriter.Format);
            WriteQuestion(json);
            Field(
                json, "partial", "Whether the search was stopped before it was done: ways may be missing.",
                () => Types(json, "boolean"));
            Number(json, "shotsPlayed", "How many shots were played to find this.", least: 0);
            MaybeText(json, "reason", "Why the first is better than the second; null with fewer than two.");
            List(json, "ways", "The ways, best first.", () => WriteWay(json));
            List(json, "notPlayable", "The routes that cannot be played.", () => WriteNoWay(json));
        });
        json.WriteEndObject();
    });

    private static void WriteQuestion(Utf8JsonWriter json)
    {
        Text(json, "title", "The scene's title; empty if it has none.");
        MaybeText(json, "cueBall", "The ball that is struck.");
        Text(json, "ball", "The ball to make.");
        MaybeText(json, "next", "The ball to play next, or null.");
        Number(json, "fewestRails", "Fewest cushions of the object ball.", 0, 3);
        Number(json, "mostRails", "Most cushions of the object ball.", 0, 3);
        Number(json, "mostKickRails", "Most cushions of the cue ball before it meets the object ball.", 0, 2);
        Words(json, "pocket", "The only pocket asked for, or null for all.", [.. TableWords.Pockets, null]);
        Words(json, "order", "By what the ways are ranked.", [.. WaysTerms.Orders]);
        Number(json, "seed", "Seed of the random strokes: same seed, same answer.", least: 0);
        Field(json, "player", "Whose errors the odds are for: standard deviations.", () => WritePlayer(json));
    }

    private static void WritePlayer(Utf8JsonWriter json) =>
        Closed(json, ["name", "aim", "speed", "tipAcross", "tipUp", "elevation", "hardStroke"], _ =>
        {
            Text(json, "name", "What the player is called.");
            Number(json, "aim", "Direction of the stick, rad.", least: 0);
            Number(json, "speed", "Speed, as a part of the speed meant.", least: 0);
            Number(json, "tipAcross", "Where tip and ball touch, to the side, m.", least: 0);
            Number(json, "tipUp", "Where tip and ball touch, up and down, m.", least: 0);
            Number(json, "elevation", "Angle of the stick to the bed, rad.", least: 0);
            Field(
                json, "hardStroke",
                "Speed at which the errors of aim and tip have grown by a root of two, m/s; null if they never do.",
                () => Types(json, "number", "null"));
        });

    private static void WriteWay(Utf8JsonWriter json) => Closed(json, _wayFields, _ =>
    {
        Text(json, "letter", "Its letter in tables and pictures: A is the best.");
        Text(json, "words", "The route in the trade's words.");
        WriteRoute(json);
        Share(json, "plan", "The chance by which ways are ranked: of this ball and the next, or of this ball alone.");
        WriteOdds(json, "made", "The chance that the ball goes down in this pocket and the cue ball does not.");
        WriteOdds(json, "scratch", "The chance that the cue ball goes down.");
        Number(json, "cut", "The cut, positive to the left.");
        Share(json, "hitFraction", "How full the hit is: 1 is full.");
        WriteStroke(json);
        Field(json, "aimPoint", "Where the line of the stick reaches a cushion's nose.", () => Closed(
            json, ["cushion", "diamonds"], _ =>
            {
                Words(json, "cushion", "The cushion.", [.. TableWords.Cushions]);
                Number(json, "diamonds", "Diamonds along it: along from the head, across from the right.");
            }));
        WriteLeeway(json);
        WriteKiss(json);
        List(json, "roundTheKiss", "Changes that clear a double kiss, the smallest first.", () => WriteEscape(json));
        WriteRest(json);
        WriteNext(json);
        List(json, "windows", "Ranges of aims that were seen to make the ball by this route.", () => WriteWindow(json));
        Field(json, "scene", "The layout with this stroke; played, it makes the ball.", () => WriteScene(json));
    });

    private static void WriteNoWay(Utf8JsonWriter json) => Closed(json, ["words", "route", "reason", "ball"], _ =>
    {
        Text(json, "words", "The route in the trade's words.");
        WriteRoute(json);
        Words(json, "reason", "Why not.", [.. WaysTerms.Reasons]);
        MaybeText(json, "ball", "The ball in the way, where that is the reason.");
    });

    private static void WriteRoute(Utf8JsonWriter json) => Field(json, "route", "The route.", () => Closed(
        json, ["cueBall", "objectBall", "pocket"], _ =>
        {
            Cushions(json, "cueBall", "Cushions of the cue ball before it meets the object ball, in order.");
            Cushions(json, "objectBall", "Cushions of the object ball, in order.");
            Words(json, "pocket", "Where the object ball goes down.", [.. TableWords.Pockets]);
        }));

    private static void WriteStroke(Utf8JsonWriter json) =>
        Field(json, "stroke", "The stroke, as in a scene.", () => Closed(
            json, ["aim", "speed", "tipRight", "tipAbove", "elevation"], _ =>
            {
                Number(json, "aim", "Direction of the stick.");
                Number(json, "speed", "The ball's speed as it leaves the tip.", least: 0);
                Number(json, "tipRight", "Where tip and ball touch, to the right of the centre.");
                Number(json, "tipAbove", "Where tip and ball touch, above the centre.");
                Number(json, "elevation", "How far the butt is raised.", least: 0);
            }));

    private static void WriteEscape(Utf8JsonWriter json) =>
        Closed(json, ["change", "amount", "gap", "route", "stroke"], _ =>
        {
            Words(json, "change", "The one thing that is changed.", [.. WaysTerms.Changes]);
            Number(
                json, "amount",
                "By how much: radians of cut to the left, m/s faster, metres of tip to the right or up.");
            Number(json, "gap", "The kiss gap then.", least: 0);
            WriteRoute(json);
            WriteStroke(json);
        });

    private static void WriteLeeway(Utf8JsonWriter json)
    {
        (string Name, string What)[] sides =
        [
            ("aimLeft", "aim turned to the left, rad"), ("aimRight", "aim turned to the right, rad"),
            ("slower", "less speed, m/s"), ("faster", "more speed, m/s"), ("tipLeft", "contact farther left, m"),
            ("tipRight", "contact farther right, m"), ("tipLower", "contact lower, m"),
            ("tipHigher", "contact higher, m"),
        ];
        Field(json, "leeway", "How far one thing may be off before the ball is missed, all else as meant.", () =>
            Closed(json, sides.Select(side => side.Name), _ =>
            {
                foreach ((string name, string what) in sides)
                {
                    Field(json, name, $"How far, and what the first miss is: {what}.", () => Closed(
                        json, ["amount", "limit", "ball"], _ =>
                        {
                            Number(json, "amount", "How far.", least: 0);
                            Words(json, "limit", "What the first miss on that side is.", [.. WaysTerms.Limits]);
                            MaybeText(json, "ball", "The other ball that is met, where that is the limit.");
                        }));
                }
            }));
    }

    private static void WriteKiss(Utf8JsonWriter json) =>
        Field(json, "kiss", "How near cue ball and object ball come to a second meeting, or null.", () => Closed(
            json, ["gap", "low", "high", "kisses"], orNull: true, writeFields: _ =>
            {
                Number(json, "gap", "At the stroke as meant; 0 where they meet again.", least: 0);
                Number(json, "low", "One stroke in twenty stays below this.", least: 0);
                Number(json, "high", "One stroke in twenty goes above this.", least: 0);
                WriteOdds(json, "kisses", "How often they meet again.");
            }));

    private static void WriteRest(Utf8JsonWriter json) =>
        Field(json, "rest", "Where the cue ball stops when the ball is made, or null if it never was.", () => Closed(
            json, ["mean", "halfLength", "halfWidth", "direction"], orNull: true, writeFields: _ =>
            {
                Field(json, "mean", "Mean place, x and y.", () =>
                {
                    Types(json, "array");
                    json.WriteNumber("minItems", 2);
                    json.WriteNumber("maxItems", 2);
                    Items(json, () => Types(json, "number"));
                });
                Number(json, "halfLength", "Longer half-axis of the ellipse that holds nine in ten.", least: 0);
                Number(json, "halfWidth", "Its shorter half-axis.", least: 0);
                Number(json, "direction", "Direction of the longer axis.");
            }));

    private static void WriteNext(Utf8JsonWriter json) =>
        Field(json, "next", "The next shot from there, or null if none was asked for.", () => Closed(
            json, ["pocket", "cut", "odds", "plan"], orNull: true, writeFields: _ =>
            {
                Words(
                    json, "pocket", "The pocket it would most often be played to.", [.. TableWords.Pockets, null]);
                Field(
                    json, "cut",
                    "The cut from the mean place, positive to the left; null when no straight pot is open.",
                    () => Types(json, "number", "null"));
                WriteOdds(json, "odds", "The chance to pot it.");
                Share(json, "plan", "The chance of both balls.");
            }));

    private static void WriteWindow(Utf8JsonWriter json) =>
        Closed(json, ["speed", "tipRight", "tipAbove", "from", "to"], _ =>
        {
            Number(json, "speed", "Speed of the ball.", least: 0);
            Number(json, "tipRight", "Contact to the right.");
            Number(json, "tipAbove", "Contact above.");
            Number(json, "from", "First aim that makes it.");
            Number(json, "to", "Last aim that makes it.");
        });

    private static void WriteOdds(Utf8JsonWriter json, string name, string description) =>
        Field(json, name, description, () => Closed(json, ["share", "low", "high", "made", "trials"], _ =>
        {
            Share(json, "share", "The share that came off.");
            Share(json, "low", "Lower end of its 95 % interval.");
            Share(json, "high", "Upper end.");
            Number(json, "made", "How many came off.", least: 0);
            Number(json, "trials", "Of how many.", least: 0);
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

    private static void Cushions(Utf8JsonWriter json, string name, string description) =>
        List(json, name, description, () => WordList(json, [.. TableWords.Cushions]));

    private static void List(Utf8JsonWriter json, string name, string description, Action writeItem) =>
        Field(json, name, description, () =>
        {
            Types(json, "array");
            Items(json, writeItem);
        });

    private static void Text(Utf8JsonWriter json, string name, string description) =>
        Field(json, name, description, () => Types(json, "string"));

    private static void MaybeText(Utf8JsonWriter json, string name, string description) =>
        Field(json, name, description, () => Types(json, "string", "null"));

    private static void Share(Utf8JsonWriter json, string name, string description) =>
        Number(json, name, description, 0, 1);

    private static void Number(
        Utf8JsonWriter json, string name, string description, double? least = null, double? most = null) =>
        Field(json, name, description, () =>
        {
            Types(json, "number");
            if (least is { } minimum)
                json.WriteNumber("minimum", minimum);
            if (most is { } maximum)
                json.WriteNumber("maximum", maximum);
        });

    private static void Words(Utf8JsonWriter json, string name, string description, params string?[] words) =>
        Field(json, name, description, () => WordList(json, words));

    private static void WordList(Utf8JsonWriter json, string?[] words)
    {
        json.WriteStartArray("enum");
        foreach (string? word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }
}
