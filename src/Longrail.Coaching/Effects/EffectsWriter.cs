using System.Text.Json;
using Longrail.Physics.Geometry;
using Longrail.Scenes;
using Longrail.Scenes.Writing;

namespace Longrail.Coaching.Effects;

/// <summary>Writes effect budgets as JSON.</summary>
public static class EffectsWriter
{
    /// <summary>The format's name and version.</summary>
    public const string Format = "effects/1";

    /// <summary>A budget as text, indented for people.</summary>
    public static byte[] ToUtf8(EffectBudget budget) => JsonForm.ToUtf8(json => Write(json, budget));

    /// <summary>Writes a budget as a JSON object.</summary>
    /// <param name="json">Where to; it must stand where a value may stand.</param>
    /// <param name="budget">The budget.</param>
    public static void Write(Utf8JsonWriter json, EffectBudget budget)
    {
        json.WriteStartObject();
        json.WriteString("longrail", Format);
        json.WriteString("title", budget.Title);
        json.WriteString("ball", budget.Names[budget.Ball]);
        WriteText(json, "striker", budget.Striker is { } striker ? budget.Names[striker] : null);
        WriteWords(json, "cushions", budget.Cushions.Select(TableWords.Of));
        json.WritePropertyName("target");
        WriteTarget(json, budget);
        WritePlace(json, "mirror", budget, budget.MirrorPlace);
        WritePlace(json, "shot", budget, budget.Place);
        json.WriteStartArray("effects");
        foreach (EffectShare effect in budget.Effects)
            WriteEffect(json, budget, effect);
        json.WriteEndArray();
        WriteAmount(json, "interplay", budget, budget.Interplay);
        WriteAmount(json, "parts", budget, budget.Total - budget.Remainder);
        WriteAmount(json, "remainder", budget, budget.Remainder);
        WriteAmount(json, "total", budget, budget.Total);
        WriteWords(json, "alwaysOn", budget.AlwaysOn.Select(EffectNames.Word));
        json.WriteStartObject("mirrorPath");
        WriteWay(json, "striker", budget.MirrorPath.Striker);
        WriteWay(json, "ball", budget.MirrorPath.Ball);
        json.WriteEndObject();
        json.WriteString("sentence", EffectSentence.Of(budget));
        WriteWords(json, "notes", budget.Notes);
        json.WritePropertyName("scene");
        SceneWriter.Write(json, budget.AsUsed);
        json.WriteEndObject();
    }

    /// <summary>The word for a kind of target.</summary>
    internal static string Word(EffectTargetKind kind) => kind switch
    {
        EffectTargetKind.Cushion => "cushion",
        EffectTargetKind.Mouth => "mouth",
        _ => "ball",
    };

    private static void WriteTarget(Utf8JsonWriter json, EffectBudget budget)
    {
        EffectTarget target = budget.Target;
        json.WriteStartObject();
        json.WriteString("kind", Word(target.Kind));
        WriteText(json, "cushion", target.Cushion is { } cushion ? TableWords.Of(cushion) : null);
        WriteText(json, "pocket", target.Pocket is { } pocket ? TableWords.Of(pocket) : null);
        WriteText(json, "ball", target.Met is { } met ? budget.Names[met] : null);
        json.WritePropertyName("origin");
        WritePoint(json, target.Origin);
        json.WritePropertyName("along");
        WritePoint(json, target.Along);
        json.WriteNumber("diamond", target.Diamond);
        if (target.HalfOpening is { } half)
            json.WriteNumber("halfOpening", half);
        else
            json.WriteNull("halfOpening");
        json.WriteString("positive", target.PositiveWord);
        json.WriteString("negative", target.NegativeWord);
        json.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter json, string name, EffectBudget budget, double place)
    {
        json.WriteStartObject(name);
        json.WriteNumber("metres", place);
        json.WriteNumber("diamonds", place / budget.Target.Diamond);
        json.WritePropertyName("point");
        WritePoint(json, budget.Target.PointAt(place));
        json.WriteEndObject();
    }

    private static void WriteEffect(Utf8JsonWriter json, EffectBudget budget, EffectShare effect)
    {
        json.WriteStartObject();
        json.WriteString("cause", EffectNames.Word(effect.Kind));
        json.WriteString("name", EffectNames.Of(effect.Kind, budget));
        json.WriteString("off", EffectNames.Meaning(effect.Kind));
        WriteAmount(json, "share", budget, effect.Metres);
        WriteAmount(json, "offAlone", budget, effect.AloneMetres);
        json.WriteStartArray("perCushionMetres");
        foreach (double metres in effect.PerCushionMetres)
            json.WriteNumberValue(metres);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteAmount(Utf8JsonWriter json, string name, EffectBudget budget, double metres)
    {
        json.WriteStartObject(name);
        json.WriteNumber("metres", metres);
        json.WriteNumber("diamonds", metres / budget.Target.Diamond);
        if (budget.Target.HalfOpening is { } half)
            json.WriteNumber("halfOpenings", metres / half);
        else
            json.WriteNull("halfOpenings");
        json.WriteEndObject();
    }

    private static void WriteWay(Utf8JsonWriter json, string name, IReadOnlyList<Vec2> points)
    {
        json.WriteStartArray(name);
        foreach (Vec2 point in points)
            WritePoint(json, point);
        json.WriteEndArray();
    }

    private static void WritePoint(Utf8JsonWriter json, Vec2 point)
    {
        json.WriteStartArray();
        json.WriteNumberValue(point.X);
        json.WriteNumberValue(point.Y);
        json.WriteEndArray();
    }

    private static void WriteWords(Utf8JsonWriter json, string name, IEnumerable<string> words)
    {
        json.WriteStartArray(name);
        foreach (string word in words)
            json.WriteStringValue(word);
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
