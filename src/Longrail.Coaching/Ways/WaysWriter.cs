using System.Text.Json;
using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Coaching.Ways.Kisses;
using Longrail.Coaching.Ways.Words;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Scenes;
using Longrail.Scenes.Writing;

namespace Longrail.Coaching.Ways;

/// <summary>Writes answers as JSON, format "ways/1". Numbers are round-trip exact, in SI or as their names
/// say.</summary>
public static class WaysWriter
{
    /// <summary>The format's name and version, the value of the field "longrail".</summary>
    public const string Format = "ways/1";

    /// <summary>An answer as text, indented for people.</summary>
    /// <param name="answer">The answer to a question in which nothing was wrong.</param>
    public static byte[] ToUtf8(WaysAnswer answer) => JsonForm.ToUtf8(json => Write(json, answer));

    /// <summary>Writes an answer as a JSON object.</summary>
    /// <param name="json">Where to; it must stand where a value may stand.</param>
    /// <param name="answer">The answer to a question in which nothing was wrong.</param>
    public static void Write(Utf8JsonWriter json, WaysAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(answer);
        json.WriteStartObject();
        json.WriteString("longrail", Format);
        WriteQuestion(json, answer.Request);
        json.WriteBoolean("partial", answer.IsPartial);
        json.WriteNumber("shotsPlayed", answer.ShotsPlayed);
        WriteText(json, "reason", answer.Reason);
        json.WriteStartArray("ways");
        for (int i = 0; i < answer.Ways.Count; i++)
            WriteWay(json, answer.Request, answer.Ways[i], VariantLetter.Of(i));
        json.WriteEndArray();
        json.WriteStartArray("notPlayable");
        foreach (NoWay way in answer.NotPlayable)
            WriteNoWay(json, way);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteQuestion(Utf8JsonWriter json, WaysRequest request)
    {
        json.WriteString("title", request.Scene.Asked.Title ?? "");
        WriteText(json, "cueBall", request.CueBall);
        json.WriteString("ball", request.Ball);
        WriteText(json, "next", request.NextBall);
        json.WriteNumber("fewestRails", request.FewestRails);
        json.WriteNumber("mostRails", request.MostRails);
        json.WriteNumber("mostKickRails", request.MostKickRails);
        WriteText(json, "pocket", request.Pocket is { } pocket ? TableWords.Of(pocket) : null);
        json.WriteString("order", WaysTerms.Of(request.Order));
        json.WriteNumber("seed", request.Seed);
        Player player = request.Player;
        json.WriteStartObject("player");
        json.WriteString("name", player.Name);
        json.WriteNumber("aim", player.Aim);
        json.WriteNumber("speed", player.Speed);
        json.WriteNumber("tipAcross", player.TipAcross);
        json.WriteNumber("tipUp", player.TipUp);
        json.WriteNumber("elevation", player.Elevation);
        if (double.IsFinite(player.HardStroke))
            json.WriteNumber("hardStroke", player.HardStroke);
        else
            json.WriteNull("hardStroke");
        json.WriteEndObject();
    }

    private static void WriteWay(Utf8JsonWriter json, WaysRequest request, Way way, string letter)
    {
        json.WriteStartObject();
        json.WriteString("letter", letter);
        json.WriteString("words", way.Words);
        WriteRoute(json, way.Route);
        json.WriteNumber("plan", way.Plan);
        WriteOdds(json, "made", way.Made);
        WriteOdds(json, "scratch", way.Scratch);
        json.WriteNumber("cut", way.Cut);
        json.WriteNumber("hitFraction", way.HitFraction);
        WriteStroke(json, way.Stroke.Stroke);
        json.WriteStartObject("aimPoint");
        json.WriteString("cushion", TableWords.Of(way.AimPoint.Cushion));
        json.WriteNumber("diamonds", way.AimPoint.Diamonds);
        json.WriteEndObject();
        WriteLeeway(json, way.Stroke.Leeway);
        WriteKiss(json, way.Kiss);
        json.WriteStartArray("roundTheKiss");
        foreach (KissEscape escape in way.RoundTheKiss)
            WriteEscape(json, escape);
        json.WriteEndArray();
        WriteRest(json, way.Rest);
        WriteNext(json, way.Next);
        json.WriteStartArray("windows");
        foreach (AimWindow window in way.Windows)
            WriteWindow(json, window);
        json.WriteEndArray();
        json.WritePropertyName("scene");
        SceneWriter.Write(json, WayScene.Of(request, way));
        json.WriteEndObject();
    }

    private static void WriteNoWay(Utf8JsonWriter json, NoWay way)
    {
        json.WriteStartObject();
        json.WriteString("words", WayWords.Of(way.Route));
        WriteRoute(json, way.Route);
        json.WriteString("reason", WaysTerms.Of(way.Reason));
        WriteText(json, "ball", way.Ball);
        json.WriteEndObject();
    }

    private static void WriteRoute(Utf8JsonWriter json, WayRoute route)
    {
        json.WriteStartObject("route");
        WriteCushions(json, "cueBall", route.CueBall);
        WriteCushions(json, "objectBall", route.ObjectBall);
        json.WriteString("pocket", TableWords.Of(route.Pocket));
        json.WriteEndObject();
    }

    private static void WriteCushions(Utf8JsonWriter json, string name, IReadOnlyList<CushionName> cushions)
    {
        json.WriteStartArray(name);
        foreach (CushionName cushion in cushions)
            json.WriteStringValue(TableWords.Of(cushion));
        json.WriteEndArray();
    }

    private static void WriteOdds(Utf8JsonWriter json, string name, Odds odds)
    {
        json.WriteStartObject(name);
        json.WriteNumber("share", odds.Share);
        json.WriteNumber("low", odds.Low);
        json.WriteNumber("high", odds.High);
        json.WriteNumber("made", odds.Made);
        json.WriteNumber("trials", odds.Trials);
        json.WriteEndObject();
    }

    private static void WriteLeeway(Utf8JsonWriter json, Leeway leeway)
    {
        json.WriteStartObject("leeway");
        WriteSide(json, "aimLeft", leeway.AimLeft);
        WriteSide(json, "aimRight", leeway.AimRight);
        WriteSide(json, "slower", leeway.Slower);
        WriteSide(json, "faster", leeway.Faster);
        WriteSide(json, "tipLeft", leeway.TipLeft);
        WriteSide(json, "tipRight", leeway.TipRight);
        WriteSide(json, "tipLower", leeway.TipLower);
        WriteSide(json, "tipHigher", leeway.TipHigher);
        json.WriteEndObject();
    }

    private static void WriteSide(Utf8JsonWriter json, string name, LeewaySide side)
    {
        json.WriteStartObject(name);
        json.WriteNumber("amount", side.Amount);
        json.WriteString("limit", WaysTerms.Of(side.Limit));
        WriteText(json, "ball", side.Ball);
        json.WriteEndObject();
    }

    private static void WriteKiss(Utf8JsonWriter json, KissSpread? kiss)
    {
        if (kiss is null)
        {
            json.WriteNull("kiss");
            return;
        }

        json.WriteStartObject("kiss");
        json.WriteNumber("gap", kiss.Gap);
        json.WriteNumber("low", kiss.Low);
        json.WriteNumber("high", kiss.High);
        WriteOdds(json, "kisses", kiss.Kisses);
        json.WriteEndObject();
    }

    private static void WriteEscape(Utf8JsonWriter json, KissEscape escape)
    {
        json.WriteStartObject();
        json.WriteString("change", WaysTerms.Of(escape.Change));
        json.WriteNumber("amount", escape.Amount);
        json.WriteNumber("gap", escape.Gap);
        WriteRoute(json, escape.Route);
        WriteStroke(json, escape.Stroke);
        json.WriteEndObject();
    }

    private static void WriteStroke(Utf8JsonWriter json, Stroke stroke)
    {
        json.WriteStartObject("stroke");
        json.WriteNumber("aim", stroke.Aim);
        json.WriteNumber("speed", stroke.Speed);
        json.WriteNumber("tipRight", stroke.OffsetRight);
        json.WriteNumber("tipAbove", stroke.OffsetAbove);
        json.WriteNumber("elevation", stroke.Elevation);
        json.WriteEndObject();
    }

    private static void WriteRest(Utf8JsonWriter json, RestRegion? rest)
    {
        if (rest is null)
        {
            json.WriteNull("rest");
            return;
        }

        json.WriteStartObject("rest");
        WritePoint(json, "mean", rest.Mean);
        json.WriteNumber("halfLength", rest.HalfLength);
        json.WriteNumber("halfWidth", rest.HalfWidth);
        json.WriteNumber("direction", rest.Direction);
        json.WriteEndObject();
    }

    private static void WriteNext(Utf8JsonWriter json, NextShot? next)
    {
        if (next is null)
        {
            json.WriteNull("next");
            return;
        }

        json.WriteStartObject("next");
        WriteText(json, "pocket", next.Pocket is { } pocket ? TableWords.Of(pocket) : null);
        if (next.Cut is { } cut)
            json.WriteNumber("cut", cut);
        else
            json.WriteNull("cut");
        WriteOdds(json, "odds", next.Odds);
        json.WriteNumber("plan", next.Plan);
        json.WriteEndObject();
    }

    private static void WriteWindow(Utf8JsonWriter json, AimWindow window)
    {
        json.WriteStartObject();
        json.WriteNumber("speed", window.Speed);
        json.WriteNumber("tipRight", window.TipRight);
        json.WriteNumber("tipAbove", window.TipAbove);
        json.WriteNumber("from", window.From);
        json.WriteNumber("to", window.To);
        json.WriteEndObject();
    }

    private static void WritePoint(Utf8JsonWriter json, string name, Vec2 point)
    {
        json.WriteStartArray(name);
        json.WriteNumberValue(point.X);
        json.WriteNumberValue(point.Y);
        json.WriteEndArray();
    }

    private static void WriteText(Utf8JsonWriter json, string name, string? text)
    {
        if (text is null)
            json.WriteNull(name);
        else
            json.WriteString(name, text);
    }
}
