using System.Text.Json;
using Longrail.Coaching.Statistics;
using Longrail.Scenes.Writing;

namespace Longrail.Coaching.Trials;

/// <summary>Writes weighed trials as JSON, format "trial-result/1". Metres, m/s and chances.</summary>
public static class TrialResultWriter
{
    /// <summary>The format's name and version.</summary>
    public const string Format = "trial-result/1";

    /// <summary>The words of <see cref="TrialVerdict"/>, in its order.</summary>
    public static IReadOnlyList<string> Verdicts { get; } = ["differs", "cannot-tell", "play-on", "no-plan", "too-few"];

    /// <summary>A result as text, indented for people.</summary>
    public static byte[] ToUtf8(TrialResult result) => JsonForm.ToUtf8(json => Write(json, result));

    /// <summary>Writes a result as a JSON object.</summary>
    /// <param name="json">Where to; it must stand where a value may stand.</param>
    /// <param name="result">The result.</param>
    public static void Write(Utf8JsonWriter json, TrialResult result)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(result);
        json.WriteStartObject();
        json.WriteString("longrail", Format);
        json.WriteString("title", result.Title);
        json.WriteString("measure", TrialWords.Of(result.Measure));
        json.WriteBoolean("usesSpeed", result.UsesSpeed);
        json.WriteBoolean("speedIsRollOut", result.SpeedIsRollOut);
        json.WriteNumber("shots", result.Shots.Count);
        json.WriteNumber("look", result.Look);
        json.WriteNumber("looks", result.Plan?.Looks.Count ?? 0);
        json.WriteNumber("confidence", result.Confidence);
        Number(json, "slope", result.Slope);
        Number(json, "commonSpeed", result.CommonSpeed);
        json.WriteStartArray("conditions");
        foreach (WeighedCondition condition in result.Conditions) Write(json, condition);
        json.WriteEndArray();
        json.WriteStartArray("comparisons");
        foreach (WeighedComparison comparison in result.Comparisons) Write(json, result, comparison);
        json.WriteEndArray();
        Texts(json, "sentences", result.Sentences);
        Texts(json, "notes", result.Notes);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, WeighedCondition condition)
    {
        json.WriteStartObject();
        json.WriteString("label", condition.Label);
        json.WriteString("value", condition.Value);
        json.WriteNumber("shots", condition.Shots);
        Write(json, "landing", condition.Landing);
        Number(json, "adjusted", condition.Adjusted);
        Write(json, "speed", condition.Speed);
        json.WritePropertyName("made");
        if (condition.Made is { } made)
        {
            json.WriteStartObject();
            json.WriteNumber("made", made.Made);
            json.WriteNumber("trials", made.Trials);
            json.WriteNumber("low", made.Low);
            json.WriteNumber("high", made.High);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNullValue();
        }

        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, TrialResult result, WeighedComparison comparison)
    {
        json.WriteStartObject();
        json.WriteString("condition", result.Conditions[comparison.Condition].Label);
        json.WriteString("against", result.Conditions[0].Label);
        Write(json, "unadjusted", comparison.Unadjusted);
        Write(json, "adjusted", comparison.Adjusted);
        Number(json, "equalSlopes", comparison.EqualSlopes);
        json.WritePropertyName("permutation");
        if (comparison.Permutation is { } permutation)
        {
            json.WriteStartObject();
            json.WriteNumber("p", permutation.P);
            json.WriteNumber("dealings", permutation.Dealings);
            json.WriteBoolean("exact", permutation.IsExact);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNullValue();
        }

        Write(json, "made", comparison.Made);
        Number(json, "expected", comparison.Expected);
        json.WriteString("verdict", Verdicts[(int)comparison.Verdict]);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, SampleSummary? sample)
    {
        json.WritePropertyName(name);
        if (sample is not { } s)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.WriteNumber("count", s.Count);
        json.WriteNumber("mean", s.Mean);
        json.WriteNumber("deviation", s.Deviation);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, WeighedDifference? difference)
    {
        json.WritePropertyName(name);
        if (difference is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.WriteNumber("difference", difference.Value);
        json.WriteNumber("low", difference.Within.Low);
        json.WriteNumber("high", difference.Within.High);
        json.WriteNumber("p", difference.P);
        json.WriteEndObject();
    }

    private static void Texts(Utf8JsonWriter json, string name, IReadOnlyList<string> texts)
    {
        json.WriteStartArray(name);
        foreach (string text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } value) json.WriteNumber(name, value);
        else json.WriteNull(name);
    }
}
