using System.Text.Json;

namespace Longrail.Scenes.Outcomes;

/// <summary>One reading as an outcome writes it; the schema follows the same line.</summary>
/// <typeparam name="T">The record that holds the reading.</typeparam>
internal sealed class ReadingField<T>
{
    private readonly Action<Utf8JsonWriter, T> _write;

    private ReadingField(string name, string[] types, string description, Action<Utf8JsonWriter, T> write)
    {
        Name = name;
        EncodedName = JsonEncodedText.Encode(name);
        Types = types;
        Description = description;
        _write = write;
    }

    /// <summary>The field's name.</summary>
    public string Name { get; }

    /// <summary>The JSON types that it may have.</summary>
    public string[] Types { get; }

    /// <summary>What it means, with its unit and sign.</summary>
    public string Description { get; }

    private JsonEncodedText EncodedName { get; }

    public static ReadingField<T> Number(string name, string description, Func<T, double> get) =>
        new(name, ["number", "null"], description, (json, reading) => WriteFinite(json, get(reading)));

    public static ReadingField<T> Maybe(string name, string description, Func<T, double?> get) =>
        new(name, ["number", "null"], description, (json, reading) => WriteFinite(json, get(reading) ?? double.NaN));

    public static ReadingField<T> Count(string name, string description, Func<T, int> get) =>
        new(name, ["integer"], description, (json, reading) => json.WriteNumberValue(get(reading)));

    public static ReadingField<T> Flag(string name, string description, Func<T, bool> get) =>
        new(name, ["boolean"], description, (json, reading) => json.WriteBooleanValue(get(reading)));

    public static ReadingField<T> Text(string name, string description, Func<T, string?> get) =>
        new(name, ["string", "null"], description, (json, reading) => json.WriteStringValue(get(reading)));

    public static ReadingField<T> Texts(string name, string description, Func<T, IReadOnlyList<string>> get) =>
        new(name, ["array"], description, (json, reading) => WriteTexts(json, get(reading)));

    /// <summary>Writes all fields as one object.</summary>
    public static void WriteAll(Utf8JsonWriter json, ReadingField<T>[] fields, T reading)
    {
        json.WriteStartObject();
        foreach (ReadingField<T> field in fields)
        {
            json.WritePropertyName(field.EncodedName);
            field._write(json, reading);
        }

        json.WriteEndObject();
    }

    // JSON has no word for "there is no such number" but null.
    private static void WriteFinite(Utf8JsonWriter json, double value)
    {
        if (double.IsFinite(value))
            json.WriteNumberValue(value);
        else
            json.WriteNullValue();
    }

    private static void WriteTexts(Utf8JsonWriter json, IReadOnlyList<string> texts)
    {
        json.WriteStartArray();
        for (int i = 0; i < texts.Count; i++)
            json.WriteStringValue(texts[i]);
        json.WriteEndArray();
    }
}
