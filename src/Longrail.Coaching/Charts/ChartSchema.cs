using System.Text.Json;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using Longrail.Scenes.Writing;
using static Longrail.Scenes.Schemas.SchemaPart;

namespace Longrail.Coaching.Charts;

/// <summary>The JSON Schema of charts and maps.</summary>
public static class ChartSchema
{
    private static readonly string[] _number = ["number"];
    private static readonly string[] _numberOrNull = ["number", "null"];
    private static readonly string[] _head =
        ["longrail", "shows", "bank", "off", "pocket", "target", "equipment", "height"];

    /// <summary>The schema as text.</summary>
    public static byte[] ToUtf8() => JsonForm.ToUtf8(json =>
    {
        json.WriteStartObject();
        json.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
        json.WriteString("title", $"Longrail {ChartWriter.Format}");
        json.WriteString(
            "description",
            "A bank chart (shows: corrections), or a map of the table (shows: odds or leeway). Lengths in metres, "
            + "speeds in m/s, places of balls in diamonds along and across, unless a name says otherwise.");
        json.WriteStartArray("oneOf");
        json.WriteStartObject();
        WriteChart(json);
        json.WriteEndObject();
        json.WriteStartObject();
        WriteMap(json);
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    });

    private static void WriteChart(Utf8JsonWriter json) =>
        Closed(json, [.. _head, "distance", "numbering", "rows"], _ =>
    {
        WriteHead(json, ChartWriter.Corrections);
        Maybe(json, "distance", "From the cue ball's centre to the object ball's, m; null for a kick.");
        Words(json, "numbering", "How places along the cushion are numbered.", [.. DiamondNumbers.Words]);
        List(json, "rows", "One for each place of the ball.", () => Closed(
            json, ["along", "across", "mirrorTouch", "mirrorNumber", "cells"], _ =>
            {
                Number(json, "along", "Diamonds from the head.");
                Number(json, "across", "Diamonds from the right.");
                Point(json, "mirrorTouch", "The ball's centre at the mirror bank's touch, m; null if there is none.");
                Maybe(json, "mirrorNumber", "The number of that touch.");
                List(json, "cells", "One for each tip and speed.", () => WriteCell(json));
            }));
    });

    private static void WriteCell(Utf8JsonWriter json) => Closed(
        json,
        [
            "tip", "speed", "reason", "touch", "correctionDiamonds", "number", "correction", "cueBall", "aimDegrees",
            "tipAbove",
        ],
        _ =>
        {
            WriteTip(json);
            Number(json, "speed", "The cue ball's as it leaves the tip.");
            Words(json, "reason", "Why there is no answer; none if there is.", [.. ChartWords.Reasons]);
            Point(json, "touch", "The ball's centre at the touch, m.");
            Maybe(json, "correctionDiamonds", "Touch less mirror touch at the nose; positive is longer.");
            Maybe(json, "number", "The number of the touch in the chart's numbering.");
            Maybe(json, "correction", "The number less the mirror's; positive is longer.");
            Point(json, "cueBall", "Where the cue ball stands, m.");
            Maybe(json, "aimDegrees", "Direction of the stick, counter-clockwise from head to foot.");
            Maybe(json, "tipAbove", "Where tip and ball touch, above the centre, m.");
        });

    private static void WriteMap(Utf8JsonWriter json)
    {
        string[] own =
        [
            "tip", "speeds", "cueBall", "from", "to", "columns", "rows", "player", "seed", "shots", "typicalHalfWidth",
            "cells",
        ];
        Closed(json, [.. _head, .. own], _ =>
        {
            WriteHead(json, [.. ChartWords.Measures]);
            WriteTip(json);
            List(json, "speeds", "The speeds of which each place has the best.", () => Types(json, _number));
            Point(json, "cueBall", "Where the cue ball stands, diamonds.");
            Point(json, "from", "The mapped area's corner nearest head and right, diamonds.");
            Point(json, "to", "Its opposite corner, diamonds.");
            Number(json, "columns", "Cells along the table.");
            Number(json, "rows", "Cells across; cells stand row by row from the right, each row from the head.");
            Field(
                json, "player", "Whose odds; standard deviations in SI; null on a map of leeway.",
                () => WritePlayer(json));
            Maybe(json, "seed", "Seed of the random strokes.");
            Maybe(json, "shots", "Strokes at each place.");
            Maybe(json, "typicalHalfWidth", "Usual half-width of a 95 % interval.");
            List(json, "cells", "The cells.", () => WriteMapCell(json));
        });
    }

    private static void WriteMapCell(Utf8JsonWriter json)
    {
        string[] maybe = ["speed", "aimDegrees", "leewayDegrees", "made", "odds", "low", "high"];
        Closed(json, ["along", "across", "reason", .. maybe], _ =>
        {
            Number(json, "along", "Diamonds from the head, of the cell's middle.");
            Number(json, "across", "Diamonds from the right.");
            Words(json, "reason", "Why the bank cannot be made from there; none if it can.", [.. ChartWords.Reasons]);
            Maybe(json, "speed", "The best of the speeds.");
            Maybe(json, "aimDegrees", "Direction of the stick at the middle of what makes the bank.");
            Maybe(json, "leewayDegrees", "How far the aim may be off from there, either way.");
            Maybe(json, "made", "How many of the strokes made the bank.");
            Maybe(json, "odds", "Their share.");
            Maybe(json, "low", "Lower end of its 95 % interval (Wilson).");
            Maybe(json, "high", "Upper end.");
        });
    }

    private static void WriteHead(Utf8JsonWriter json, params string?[] shows)
    {
        Words(json, "longrail", "The format of this file.", ChartWriter.Format);
        Words(json, "shows", "What the numbers are.", shows);
        Words(json, "bank", "The bank.", [.. ChartWords.Kinds]);
        Words(json, "off", "The cushion.", [.. TableWords.Cushions]);
        Words(json, "pocket", "The pocket; null for a kick.", [.. TableWords.Pockets, null]);
        Point(json, "target", "Where the ball's centre is to go, m.");
        EquipmentJson.WriteSchema(json);
        Words(json, "height", "At what height the tip strikes.", [.. ChartWords.Heights]);
    }

    private static void WriteTip(Utf8JsonWriter json) =>
        Field(json, "tip", "Place of the tip to the side.", () => Closed(json, ["right", "text"], _ =>
        {
            Number(json, "right", "Where tip and ball touch, right of the centre, m.");
            Field(json, "text", "As it was asked for.", () => Types(json, "string"));
        }));

    private static void WritePlayer(Utf8JsonWriter json)
    {
        string[] sizes = ["aim", "speed", "tipAcross", "tipUp", "elevation"];
        Closed(json, ["name", .. sizes, "hardStroke"], orNull: true, writeFields: _ =>
        {
            Field(json, "name", "What the player is called.", () => Types(json, "string"));
            foreach (string size in sizes)
                Number(json, size, "Standard deviation, as in a player file.");
            Maybe(
                json, "hardStroke",
                "Ball speed of a hard stroke, m/s, beyond which errors grow; null if they do not.");
        });
    }

    private static void Number(Utf8JsonWriter json, string name, string description) =>
        Field(json, name, description, () => Types(json, _number));

    private static void Maybe(Utf8JsonWriter json, string name, string description) =>
        Field(json, name, description, () => Types(json, _numberOrNull));

    private static void Point(Utf8JsonWriter json, string name, string description) =>
        Field(json, name, description, () =>
    {
        Types(json, "array", "null");
        Items(json, () => Types(json, _number));
    });

    private static void List(Utf8JsonWriter json, string name, string description, Action item) =>
        Field(json, name, description, () =>
        {
            json.WriteString("type", "array");
            Items(json, item);
        });

    private static void Words(Utf8JsonWriter json, string name, string description, params string?[] words) =>
        Field(json, name, description, () =>
        {
            json.WriteStartArray("enum");
            foreach (string? word in words)
                json.WriteStringValue(word);
            json.WriteEndArray();
        });
}
