using System.Text.Json;
using Longrail.Coaching.Players;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using Longrail.Scenes.Writing;

namespace Longrail.Coaching.Charts;

/// <summary>Writes charts and maps as JSON, format "chart/1". Numbers are round-trip exact, in SI or as their names
/// say.</summary>
public static class ChartWriter
{
    /// <summary>The format's name and version, the value of the field "longrail".</summary>
    public const string Format = "chart/1";

    /// <summary>What the field "shows" of a bank chart says.</summary>
    public const string Corrections = "corrections";

    private const double Degree = Math.PI / 180;

    /// <summary>A chart as text, indented for people.</summary>
    public static byte[] ToUtf8(BankChart chart) => JsonForm.ToUtf8(json => Write(json, chart));

    /// <summary>A map as text, indented for people.</summary>
    public static byte[] ToUtf8(OddsMap map) => JsonForm.ToUtf8(json => Write(json, map));

    /// <summary>Writes a chart as a JSON object.</summary>
    public static void Write(Utf8JsonWriter json, BankChart chart)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(chart);
        ChartRequest request = chart.Request;
        json.WriteStartObject();
        WriteHead(json, Corrections, request.Route);
        EquipmentJson.Write(json, request.Equipment, request.Names);
        json.WriteString("height", ChartWords.Of(request.Height));
        WriteNumber(json, "distance", request.Route.IsKick ? null : request.Distance);
        json.WriteString("numbering", DiamondNumbers.Word(request.Numbering));
        json.WriteStartArray("rows");
        foreach (ChartRow row in chart.Rows)
        {
            json.WriteStartObject();
            json.WriteNumber("along", row.Place.X);
            json.WriteNumber("across", row.Place.Y);
            WritePoint(json, "mirrorTouch", row.MirrorTouch);
            WriteNumber(json, "mirrorNumber", row.MirrorNumber);
            json.WriteStartArray("cells");
            for (int tip = 0; tip < request.Tips.Count; tip++)
            {
                for (int speed = 0; speed < request.Speeds.Count; speed++)
                    WriteCell(json, request, tip, speed, row.Cells[tip * request.Speeds.Count + speed]);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Writes a map as a JSON object.</summary>
    public static void Write(Utf8JsonWriter json, OddsMap map)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(map);
        MapRequest request = map.Request;
        bool isOdds = request.Measure == MapMeasure.Odds;
        json.WriteStartObject();
        WriteHead(json, ChartWords.Of(request.Measure), request.Route);
        EquipmentJson.Write(json, request.Equipment, request.Names);
        json.WriteString("height", ChartWords.Of(request.Height));
        WriteTip(json, request.Tip);
        json.WriteStartArray("speeds");
        foreach (double speed in request.Speeds)
            json.WriteNumberValue(speed);
        json.WriteEndArray();
        WritePoint(json, "cueBall", request.CueBall);
        WritePoint(json, "from", request.From);
        WritePoint(json, "to", request.To);
        json.WriteNumber("columns", request.Columns);
        json.WriteNumber("rows", request.Rows);
        WritePlayer(json, isOdds ? request.Player : null);
        WriteNumber(json, "seed", isOdds ? request.Seed : null);
        WriteNumber(json, "shots", isOdds ? (double)request.Shots : null);
        WriteNumber(json, "typicalHalfWidth", map.TypicalHalfWidth);
        json.WriteStartArray("cells");
        foreach (MapCell cell in map.Cells)
            WriteCell(json, cell);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteHead(Utf8JsonWriter json, string shows, ChartRoute route)
    {
        json.WriteString("longrail", Format);
        json.WriteString("shows", shows);
        json.WriteString("bank", ChartWords.Of(route.Kind));
        json.WriteString("off", TableWords.Of(route.Off));
        if (route.Pocket is { } pocket)
            json.WriteString("pocket", TableWords.Of(pocket));
        else
            json.WriteNull("pocket");
        WritePoint(json, "target", route.Target);
    }

    private static void WriteCell(Utf8JsonWriter json, ChartRequest request, int tip, int speed, ChartCell cell)
    {
        json.WriteStartObject();
        WriteTip(json, request.Tips[tip]);
        json.WriteNumber("speed", request.Speeds[speed]);
        json.WriteString("reason", ChartWords.Of(cell.Failure));
        WritePoint(json, "touch", cell.Touch);
        WriteNumber(json, "correctionDiamonds", cell.CorrectionDiamonds);
        WriteNumber(json, "number", cell.Number);
        WriteNumber(json, "correction", cell.Correction);
        WritePoint(json, "cueBall", cell.CueBall);
        WriteNumber(json, "aimDegrees", cell.Stroke?.Aim / Degree);
        WriteNumber(json, "tipAbove", cell.Stroke?.OffsetAbove);
        json.WriteEndObject();
    }

    private static void WriteCell(Utf8JsonWriter json, MapCell cell)
    {
        json.WriteStartObject();
        json.WriteNumber("along", cell.Place.X);
        json.WriteNumber("across", cell.Place.Y);
        json.WriteString("reason", ChartWords.Of(cell.Failure));
        WriteNumber(json, "speed", cell.Speed);
        WriteNumber(json, "aimDegrees", cell.Aim / Degree);
        WriteNumber(json, "leewayDegrees", cell.Leeway / Degree);
        WriteNumber(json, "made", cell.Made?.Made);
        WriteNumber(json, "odds", cell.Made?.Share);
        WriteNumber(json, "low", cell.Made?.Low);
        WriteNumber(json, "high", cell.Made?.High);
        json.WriteEndObject();
    }

    private static void WriteTip(Utf8JsonWriter json, ChartTip tip)
    {
        json.WriteStartObject("tip");
        json.WriteNumber("right", tip.Right);
        json.WriteString("text", tip.Text);
        json.WriteEndObject();
    }

    private static void WritePlayer(Utf8JsonWriter json, Player? player)
    {
        if (player is null)
        {
            json.WriteNull("player");
            return;
        }

        json.WriteStartObject("player");
        json.WriteString("name", player.Name);
        json.WriteNumber("aim", player.Aim);
        json.WriteNumber("speed", player.Speed);
        json.WriteNumber("tipAcross", player.TipAcross);
        json.WriteNumber("tipUp", player.TipUp);
        json.WriteNumber("elevation", player.Elevation);
        // No number says "as straight at any speed".
        WriteNumber(json, "hardStroke", double.IsFinite(player.HardStroke) ? player.HardStroke : null);
        json.WriteEndObject();
    }

    private static void WritePoint(Utf8JsonWriter json, string name, Vec2? point)
    {
        if (point is not { } p)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartArray(name);
        json.WriteNumberValue(p.X);
        json.WriteNumberValue(p.Y);
        json.WriteEndArray();
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } value)
            json.WriteNumber(name, value);
        else
            json.WriteNull(name);
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, ulong? number)
    {
        if (number is { } value)
            json.WriteNumber(name, value);
        else
            json.WriteNull(name);
    }
}
