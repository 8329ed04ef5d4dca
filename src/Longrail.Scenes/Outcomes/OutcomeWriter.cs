using System.Text.Json;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes.Writing;

namespace Longrail.Scenes.Outcomes;

/// <summary>Writes outcomes. Numbers are round-trip exact.</summary>
/// <remarks>Lists named position, before and after follow the list of balls. A contact that takes time has a duration;
/// then position and before hold at the touch, positionAfter and after as the ball leaves the rubber. Any change of the
/// format changes its version and
/// <see cref="Schemas.OutcomeSchema"/>.</remarks>
public static class OutcomeWriter
{
    private static readonly JsonEncodedText _longrail = JsonEncodedText.Encode("longrail");
    private static readonly JsonEncodedText _scene = JsonEncodedText.Encode("scene");
    private static readonly JsonEncodedText _ended = JsonEncodedText.Encode("ended");
    private static readonly JsonEncodedText _duration = JsonEncodedText.Encode("duration");
    private static readonly JsonEncodedText _events = JsonEncodedText.Encode("events");
    private static readonly JsonEncodedText _time = JsonEncodedText.Encode("time");
    private static readonly JsonEncodedText _kind = JsonEncodedText.Encode("kind");
    private static readonly JsonEncodedText _balls = JsonEncodedText.Encode("balls");
    private static readonly JsonEncodedText _cushion = JsonEncodedText.Encode("cushion");
    private static readonly JsonEncodedText _pocket = JsonEncodedText.Encode("pocket");
    private static readonly JsonEncodedText _position = JsonEncodedText.Encode("position");
    private static readonly JsonEncodedText _positionAfter = JsonEncodedText.Encode("positionAfter");
    private static readonly JsonEncodedText _before = JsonEncodedText.Encode("before");
    private static readonly JsonEncodedText _after = JsonEncodedText.Encode("after");
    private static readonly JsonEncodedText _velocity = JsonEncodedText.Encode("velocity");
    private static readonly JsonEncodedText _spin = JsonEncodedText.Encode("spin");
    private static readonly JsonEncodedText _depth = JsonEncodedText.Encode("depth");
    private static readonly JsonEncodedText _hopHeight = JsonEncodedText.Encode("hopHeight");
    private static readonly JsonEncodedText _readings = JsonEncodedText.Encode("readings");
    private static readonly JsonEncodedText _id = JsonEncodedText.Encode("id");
    private static readonly JsonEncodedText _state = JsonEncodedText.Encode("state");
    private static readonly JsonEncodedText _x = JsonEncodedText.Encode("x");
    private static readonly JsonEncodedText _y = JsonEncodedText.Encode("y");
    private static readonly JsonEncodedText _orientation = JsonEncodedText.Encode("orientation");

    /// <summary>Writes an outcome as a JSON object.</summary>
    /// <param name="json">Where to; it must stand where a value may stand.</param>
    /// <param name="outcome">The outcome.</param>
    public static void Write(Utf8JsonWriter json, Outcome outcome)
    {
        Trace trace = outcome.Trace;
        IReadOnlyList<string> ids = outcome.Scene.BallIds;
        json.WriteStartObject();
        json.WriteString(_longrail, Outcome.Format);
        json.WritePropertyName(_scene);
        SceneWriter.Write(json, outcome.Scene.AsUsed);
        json.WriteString(_ended, OutcomeWords.Of(trace.Ended));
        json.WriteNumber(_duration, trace.Duration);

        json.WriteStartArray(_events);
        for (int i = 0; i < trace.Events.Count; i++)
            WriteEvent(json, trace.Events[i], outcome.Readings.Events[i], ids);
        json.WriteEndArray();

        json.WriteStartArray(_balls);
        for (int i = 0; i < ids.Count; i++)
            WriteBall(json, ids[i], trace.Balls[i], trace.OrientationAt(i, trace.Duration));
        json.WriteEndArray();

        json.WritePropertyName(_readings);
        ReadingField<NamedShotReading>.WriteAll(
            json, ReadingFields.OfShot, new NamedShotReading(outcome.Readings.Shot, ids));
        json.WriteEndObject();
    }

    /// <summary>An outcome as text, indented for people.</summary>
    /// <param name="outcome">The outcome.</param>
    public static byte[] ToUtf8(Outcome outcome) => JsonForm.ToUtf8(json => Write(json, outcome));

    private static void WriteEvent(Utf8JsonWriter json, ShotEvent e, object? reading, IReadOnlyList<string> ids)
    {
        json.WriteStartObject();
        json.WriteNumber(_time, e.Time);
        if (e.Duration > 0)
            json.WriteNumber(_duration, e.Duration);
        json.WriteString(_kind, OutcomeWords.Of(e.Kind));
        json.WriteStartArray(_balls);
        json.WriteStringValue(ids[e.BallA]);
        if (e.BallB is { } other)
            json.WriteStringValue(ids[other]);
        json.WriteEndArray();
        if (e.Cushion is { } cushion)
            json.WriteString(_cushion, TableWords.Of(cushion));
        if (e.Pocket is { } pocket)
            json.WriteString(_pocket, TableWords.Of(pocket));

        WritePositions(json, _position, e.BeforeA, e.BeforeB);
        if (e.Duration > 0)
            WritePositions(json, _positionAfter, e.AfterA, e.AfterB);
        WriteStates(json, _before, e.BeforeA, e.BeforeB);
        WriteStates(json, _after, e.AfterA, e.AfterB);
        if (e.Depth > 0)
            json.WriteNumber(_depth, e.Depth);
        if (e.HopHeight > 0)
            json.WriteNumber(_hopHeight, e.HopHeight);
        if (reading is not null)
            WriteReading(json, reading);
        json.WriteEndObject();
    }

    private static void WriteReading(Utf8JsonWriter json, object reading)
    {
        json.WritePropertyName(_readings);
        switch (reading)
        {
            case CushionReading cushion:
                ReadingField<CushionReading>.WriteAll(json, ReadingFields.OfCushion, cushion);
                break;
            case MeetReading meet:
                ReadingField<MeetReading>.WriteAll(json, ReadingFields.OfMeet, meet);
                break;
            case TipReading tip:
                ReadingField<TipReading>.WriteAll(json, ReadingFields.OfTip, tip);
                break;
            case PocketReading pocket:
                ReadingField<PocketReading>.WriteAll(json, ReadingFields.OfPocket, pocket);
                break;
            default:
                throw new ArgumentException($"Outcomes have no place for a {reading.GetType().Name}.", nameof(reading));
        }
    }

    private static void WriteBall(Utf8JsonWriter json, string id, BallEnd end, Rotation orientation)
    {
        json.WriteStartObject();
        json.WriteString(_id, id);
        string state = OutcomeWords.Of(end.Phase);
        json.WriteString(_state, state);
        json.WriteNumber(_x, end.State.Position.X);
        json.WriteNumber(_y, end.State.Position.Y);
        if (end.Pocket is { } pocket)
            json.WriteString(_pocket, TableWords.Of(pocket));
        if (state == "moving")
            WriteMotion(json, end.State);
        json.WriteStartArray(_orientation);
        json.WriteNumberValue(orientation.W);
        json.WriteNumberValue(orientation.X);
        json.WriteNumberValue(orientation.Y);
        json.WriteNumberValue(orientation.Z);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WritePositions(Utf8JsonWriter json, JsonEncodedText name, in BallState a, in BallState? b)
    {
        json.WriteStartArray(name);
        WriteVector(json, a.Position);
        if (b is { } other)
            WriteVector(json, other.Position);
        json.WriteEndArray();
    }

    private static void WriteStates(Utf8JsonWriter json, JsonEncodedText name, in BallState a, in BallState? b)
    {
        json.WriteStartArray(name);
        WriteState(json, a);
        if (b is { } other)
            WriteState(json, other);
        json.WriteEndArray();
    }

    private static void WriteState(Utf8JsonWriter json, in BallState state)
    {
        json.WriteStartObject();
        WriteMotion(json, state);
        json.WriteEndObject();
    }

    private static void WriteMotion(Utf8JsonWriter json, in BallState state)
    {
        json.WriteStartArray(_velocity);
        json.WriteNumberValue(state.Velocity.X);
        json.WriteNumberValue(state.Velocity.Y);
        json.WriteNumberValue(0);
        json.WriteEndArray();
        json.WriteStartArray(_spin);
        json.WriteNumberValue(state.Spin.X);
        json.WriteNumberValue(state.Spin.Y);
        json.WriteNumberValue(state.Spin.Z);
        json.WriteEndArray();
    }

    private static void WriteVector(Utf8JsonWriter json, Vec2 vector)
    {
        json.WriteStartArray();
        json.WriteNumberValue(vector.X);
        json.WriteNumberValue(vector.Y);
        json.WriteEndArray();
    }
}
