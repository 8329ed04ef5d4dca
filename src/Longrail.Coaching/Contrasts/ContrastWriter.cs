using System.Text.Json;
using Longrail.Physics.Geometry;
using Longrail.Scenes;
using Longrail.Scenes.Writing;

namespace Longrail.Coaching.Contrasts;

/// <summary>Writes comparisons as JSON, format "contrast/1". Numbers are round-trip exact, in SI or as their names
/// say.</summary>
public static class ContrastWriter
{
    /// <summary>The format's name and version, the value of the field "longrail".</summary>
    public const string Format = "contrast/1";

    /// <summary>A comparison as text, indented for people.</summary>
    public static byte[] ToUtf8(Contrast contrast) => JsonForm.ToUtf8(json => Write(json, contrast));

    /// <summary>Writes a comparison as a JSON object.</summary>
    /// <param name="json">Where to; it must stand where a value may stand.</param>
    /// <param name="contrast">The comparison.</param>
    public static void Write(Utf8JsonWriter json, Contrast contrast)
    {
        json.WriteStartObject();
        json.WriteString("longrail", Format);
        json.WriteString("title", contrast.Title);
        json.WriteString("hold", contrast.Request.Hold == Hold.Path ? "path" : "stick");
        json.WriteStartArray("varied");
        foreach (Variation variation in contrast.Request.Variations)
            json.WriteStringValue(variation.Path);
        json.WriteEndArray();
        // Null for an honest comparison; the words otherwise, so that nobody reads past them.
        WriteText(json, "mark", contrast.VariesTwoThings ? Contrast.TwoThingsMark : null);
        json.WriteStartArray("rows");
        foreach (ContrastRow row in contrast.Rows)
            WriteRow(json, contrast, row);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteRow(Utf8JsonWriter json, Contrast contrast, ContrastRow row)
    {
        json.WriteStartObject();
        json.WriteString("label", row.Label);
        json.WriteStartObject("values");
        foreach (VariedValue value in row.Values)
            json.WriteString(value.Path, value.Text);
        json.WriteEndObject();
        WriteText(json, "mark", row.TwoThingsChanged ? Contrast.TwoThingsMark : null);
        json.WritePropertyName("bank");
        WriteBank(json, contrast, row.Bank);
        json.WritePropertyName("change");
        WriteChange(json, row.Change);
        json.WritePropertyName("cueBallRest");
        WritePoint(json, row.CueBallRest);
        WriteText(json, "cueBallPocket", CueBallPocket(row));
        json.WritePropertyName("scene");
        SceneWriter.Write(json, row.Scene);
        json.WriteEndObject();
    }

    private static void WriteBank(Utf8JsonWriter json, Contrast contrast, BankReading? bank)
    {
        if (bank is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.WriteString("ball", contrast.Names[bank.Ball]);
        json.WriteString("cushion", TableWords.Of(bank.Cushion));
        json.WriteNumber("touchDiamonds", bank.Rebound.TouchDiamonds);
        json.WriteNumber("angleInDegrees", bank.Rebound.AngleInDegrees);
        json.WriteNumber("angleOutDegrees", bank.Rebound.AngleOutDegrees);
        json.WriteNumber("angleAfterCurveDegrees", bank.Rebound.AngleAfterCurveDegrees);
        json.WriteNumber("speedIn", bank.Rebound.SpeedIn);
        json.WriteNumber("speedOut", bank.Rebound.SpeedOut);
        json.WriteNumber("rollRatioIn", bank.Rebound.RollRatioIn);
        json.WriteNumber("sideIn", bank.Rebound.SideIn);
        json.WriteNumber("sideOut", bank.Rebound.SideOut);
        WriteNumber(json, "throwDegrees", bank.Hit?.ThrowDegrees);
        WriteText(json, "target", bank.Target is { } target ? TableWords.Of(target) : null);
        WriteNumber(json, "landingDiamonds", bank.LandingDiamonds);
        WriteNumber(json, "landingMetres", bank.LandingMetres);
        WriteNumber(json, "longOfMirrorDiamonds", bank.Rebound.LongOfMirrorDiamonds);
        WriteText(json, "pocket", bank.Pocket is { } pocket ? TableWords.Of(pocket) : null);
        json.WriteEndObject();
    }

    private static void WriteChange(Utf8JsonWriter json, LandingChange? change)
    {
        if (change is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.WriteNumber("diamonds", change.Diamonds);
        json.WriteNumber("metres", change.Metres);
        WriteText(json, "rebound", change.IsLonger switch { true => "longer", false => "shorter", _ => null });
        json.WriteEndObject();
    }

    private static void WritePoint(Utf8JsonWriter json, Vec2? point)
    {
        if (point is not { } p)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartArray();
        json.WriteNumberValue(p.X);
        json.WriteNumberValue(p.Y);
        json.WriteEndArray();
    }

    private static string? CueBallPocket(ContrastRow row) =>
        row.Readings.Shot.StruckBall is { } cue && row.Trace.Balls[cue].Pocket is { } pocket
            ? TableWords.Of(pocket)
            : null;

    private static void WriteText(Utf8JsonWriter json, string name, string? text)
    {
        if (text is null)
            json.WriteNull(name);
        else
            json.WriteString(name, text);
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } value)
            json.WriteNumber(name, value);
        else
            json.WriteNull(name);
    }
}
