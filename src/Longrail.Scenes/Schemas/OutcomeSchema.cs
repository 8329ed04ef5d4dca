using System.Text.Json;
using Longrail.Scenes.Outcomes;
using Longrail.Scenes.Writing;
using static Longrail.Scenes.Schemas.SchemaPart;

namespace Longrail.Scenes.Schemas;

/// <summary>The JSON Schema of outcomes. Readings follow the lists that the writer follows.</summary>
public static class OutcomeSchema
{
    /// <summary>The schema as text.</summary>
    public static byte[] ToUtf8() => JsonForm.ToUtf8(json =>
    {
        json.WriteStartObject();
        json.WriteString("$schema", SceneSchema.Dialect);
        json.WriteString("title", $"Longrail {Outcome.Format}");
        json.WriteString(
            "description",
            "A scene as it was used and what happened in it. Lengths in metres, times in seconds, speeds in m/s, spins "
            + "in rad/s, unless a name says otherwise.");
        Closed(json, ["longrail", "scene", "ended", "duration", "events", "balls", "readings"], WriteRootFields);
        json.WriteEndObject();
    });

    private static void WriteRootFields(Utf8JsonWriter json)
    {
        Field(json, "longrail", "The format of this file.", () => WriteWords(json, [Outcome.Format]));
        Field(
            json, "scene", "The scene as it was used, nothing left to defaults; played again it gives the same shot.",
            () => SceneSchema.WriteBody(json));
        Field(json, "ended", "Why the shot ended.", () => WriteWords(json, OutcomeWords.Endings));
        Field(json, "duration", "When it ended, s.", () => WriteNumber(json, least: 0));
        Field(json, "events", "What happened, in order of time.", () => WriteList(json, null, () => WriteEvent(json)));
        Field(json, "balls", "How each ball ended.", () => WriteList(json, null, () => WriteBall(json)));
        Field(
            json, "readings", "The shot as a whole, in the trade's terms.",
            () => WriteReadings(json, ReadingFields.OfShot));
    }

    private static void WriteEvent(Utf8JsonWriter json) =>
        Closed(json, ["time", "kind", "balls", "position", "before", "after"], WriteEventFields);

    private static void WriteEventFields(Utf8JsonWriter json)
    {
        Field(json, "time", "Time since the tip left the ball, s.", () => WriteNumber(json, least: 0));
        Field(
            json, "duration", "How long the contact lasted, s; left out if it took no time.",
            () => WriteNumber(json, least: 0));
        Field(json, "kind", "What happened.", () => WriteWords(json, OutcomeWords.Kinds));
        Field(
            json, "balls", "The ball; when two meet, the one that closed faster first.",
            () => WriteList(json, (1, 2), () => WriteText(json)));
        Field(json, "cushion", "The cushion, also of a jaw.", () => WriteWords(json, TableWords.Cushions));
        Field(json, "pocket", "The pocket, also of a jaw.", () => WriteWords(json, TableWords.Pockets));
        Field(
            json, "position", "Each ball's centre at the touch, m.",
            () => WriteList(json, (1, 2), () => WriteNumbers(json, 2)));
        Field(
            json, "positionAfter", "Each ball's centre as it leaves the rubber, m; only for contacts that take time.",
            () => WriteList(json, (1, 2), () => WriteNumbers(json, 2)));
        Field(json, "before", "Each ball just before.", () => WriteList(json, (1, 2), () => WriteState(json)));
        Field(json, "after", "Each ball just after.", () => WriteList(json, (1, 2), () => WriteState(json)));
        Field(
            json, "depth", "How deep the ball sank into the rubber, m; left out if not at all.",
            () => WriteNumber(json, least: 0));
        Field(
            json, "hopHeight", "How high a real ball would likely hop here, m; left out if not at all.",
            () => WriteNumber(json, least: 0));
        Field(
            json, "readings", "The event in the trade's terms; left out for kinds that have none.",
            () => WriteEventReadings(json));
    }

    private static void WriteEventReadings(Utf8JsonWriter json)
    {
        json.WriteStartArray("anyOf");
        Within(json, () => WriteReadings(json, ReadingFields.OfTip));
        Within(json, () => WriteReadings(json, ReadingFields.OfMeet));
        Within(json, () => WriteReadings(json, ReadingFields.OfCushion));
        Within(json, () => WriteReadings(json, ReadingFields.OfPocket));
        json.WriteEndArray();
    }

    private static void WriteState(Utf8JsonWriter json) =>
        Closed(json, ["velocity", "spin"], WriteMotionFields);

    private static void WriteMotionFields(Utf8JsonWriter json)
    {
        Field(
            json, "velocity", "Velocity along, across and up, m/s; a ball stays on the bed, so the last is 0.",
            () => WriteNumbers(json, 3));
        Field(
            json, "spin", "Spin about the axes along, across and up, rad/s, right-handed.",
            () => WriteNumbers(json, 3));
    }

    private static void WriteBall(Utf8JsonWriter json) =>
        Closed(json, ["id", "state", "x", "y", "orientation"], WriteBallFields);

    private static void WriteBallFields(Utf8JsonWriter json)
    {
        Field(json, "id", "The ball's name.", () => WriteText(json));
        Field(json, "state", "How it ended.", () => WriteWords(json, OutcomeWords.BallStates));
        Field(
            json, "x", "Distance from the head cushion's nose line, m; for a pocketed ball, as it dropped.",
            () => WriteNumber(json));
        Field(json, "y", "Distance from the right cushion's nose line, m.", () => WriteNumber(json));
        Field(json, "pocket", "The pocket, if it dropped.", () => WriteWords(json, TableWords.Pockets));
        WriteMotionFields(json);
        Field(
            json, "orientation", "How it has turned since the start: a unit quaternion w, x, y, z.",
            () => WriteNumbers(json, 4));
    }

    private static void WriteReadings<T>(Utf8JsonWriter json, ReadingField<T>[] readings) =>
        Closed(json, Array.ConvertAll(readings, reading => reading.Name), writer =>
        {
            foreach (ReadingField<T> reading in readings)
                Field(writer, reading.Name, reading.Description, () => Types(writer, reading.Types));
        });

    private static void WriteList(Utf8JsonWriter json, (int Least, int Most)? count, Action writeItem)
    {
        json.WriteString("type", "array");
        if (count is { } limits)
        {
            json.WriteNumber("minItems", limits.Least);
            json.WriteNumber("maxItems", limits.Most);
        }

        Items(json, writeItem);
    }

    private static void WriteNumbers(Utf8JsonWriter json, int count) =>
        WriteList(json, (count, count), () => WriteNumber(json));

    private static void WriteNumber(Utf8JsonWriter json, double? least = null)
    {
        json.WriteString("type", "number");
        if (least is { } minimum)
            json.WriteNumber("minimum", minimum);
    }

    private static void WriteText(Utf8JsonWriter json) => json.WriteString("type", "string");

    private static void WriteWords(Utf8JsonWriter json, IReadOnlyList<string> words)
    {
        json.WriteString("type", "string");
        json.WriteStartArray("enum");
        foreach (string word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }

    private static void Within(Utf8JsonWriter json, Action write)
    {
        json.WriteStartObject();
        write();
        json.WriteEndObject();
    }
}
