using System.Globalization;
using System.Text.Json;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Units;
using Longrail.Scenes.Writing;

namespace Longrail.Coaching.Contrasts;

/// <summary>The value of a field as a scene writes it.</summary>
internal static class FieldText
{
    /// <summary>The value in the scene as it was asked for, else in the scene as it is used, else "default". A bare
    /// number gets its unit, an angle is shown in degrees.</summary>
    /// <param name="ready">The scene.</param>
    /// <param name="path">The field's path.</param>
    internal static string Of(ReadyScene ready, string path) =>
        Find(SceneWriter.ToUtf8(ready.Asked), path) ?? Find(SceneWriter.ToUtf8(ready.AsUsed), path) ?? "default";

    private static string WithUnit(JsonElement value, string path)
    {
        QuantityKind? kind = SceneFields.All.FirstOrDefault(field => field.Path == CataloguePath(path))?.Kind;
        if (kind is null || kind.IsPlainNumber || value.GetDouble() == 0)
            return value.GetRawText();
        if (kind == QuantityKind.Angle || kind == QuantityKind.CutAngle)
            return (value.GetDouble() * (180 / Math.PI)).ToString("0.######", CultureInfo.InvariantCulture) + " deg";
        // Some kinds explain their unit after a comma.
        string number = value.GetDouble().ToString("G5", CultureInfo.InvariantCulture);
        return $"{number} {kind.BareUnit.Split(',')[0]}";
    }

    // "balls.9.x" and "balls[1].x" stand in the catalogue as "balls[].x".
    private static string CataloguePath(string path)
    {
        string[] steps = path.Split('.');
        if (steps[0] is "balls" or "launch" && steps.Length > 1)
            return $"{steps[0]}[].{string.Join('.', steps[2..])}";
        int open = path.IndexOf('[', StringComparison.Ordinal);
        int close = path.IndexOf(']', StringComparison.Ordinal);
        return open < 0 || close < open ? path : $"{path[..open]}[]{path[(close + 1)..]}";
    }

    private static string? Find(byte[] scene, string path)
    {
        using var document = JsonDocument.Parse(scene);
        JsonElement at = document.RootElement;
        string steps = path.Replace("[", ".", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal);
        foreach (string step in steps.Split('.'))
        {
            if (Step(at, step) is not { } next)
                return null;
            at = next;
        }

        return at.ValueKind switch
        {
            JsonValueKind.String => at.GetString(),
            JsonValueKind.Number => WithUnit(at, path),
            _ => at.GetRawText(),
        };
    }

    // A step names a member, a ball by its id, or a place in a list.
    private static JsonElement? Step(JsonElement at, string step)
    {
        if (at.ValueKind == JsonValueKind.Object)
            return at.TryGetProperty(step, out JsonElement member) ? member : null;
        if (at.ValueKind != JsonValueKind.Array)
            return null;
        foreach (JsonElement item in at.EnumerateArray())
        {
            if (item.ValueKind == JsonValueKind.Object
                && (item.TryGetProperty("id", out JsonElement id) || item.TryGetProperty("ball", out id))
                && id.ValueEquals(step))
            {
                return item;
            }
        }

        return int.TryParse(step, out int index) && index >= 0 && index < at.GetArrayLength() ? at[index] : null;
    }
}
