using System.Text.Json;
using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Fields;

/// <summary>One kind of object in a scene file: the fields that it may have.</summary>
/// <typeparam name="TPart">The part of a scene that it describes.</typeparam>
internal sealed class Section<TPart>
    where TPart : class
{
    private readonly Field<TPart>[] _fields;

    public Section(params Field<TPart>[] fields)
    {
        // One bit per field marks what was seen.
        ArgumentOutOfRangeException.ThrowIfGreaterThan(fields.Length, 64);
        _fields = fields;
    }

    /// <summary>The fields in the order in which they are written.</summary>
    public IReadOnlyList<Field<TPart>> Fields => _fields;

    /// <summary>Reads an object whose opening brace is the reader's current token.</summary>
    public void Read(ref Utf8JsonReader json, TPart part, SceneReadState state)
    {
        ulong seen = 0;
        int guess = 0;
        while (json.Read() && json.TokenType != JsonTokenType.EndObject)
        {
            int i = IndexOf(ref json, guess);
            ulong bit = i < 0 ? 0 : 1UL << i;
            if (i < 0)
                AddUnknown(ref json, state);
            else if ((seen & bit) != 0)
                AddTwice(ref json, state);

            json.Read();
            if (i < 0 || (seen & bit) != 0)
            {
                json.Skip();
                continue;
            }

            seen |= bit;
            guess = i + 1;
            state.Enter(_fields[i].Name);
            _fields[i].Read(ref json, part, state);
            state.Leave();
        }
    }

    /// <summary>Writes an object with all fields that are set.</summary>
    public void Write(Utf8JsonWriter json, TPart part)
    {
        json.WriteStartObject();
        foreach (Field<TPart> field in _fields)
        {
            if (!field.IsSet(part))
                continue;
            json.WritePropertyName(field.EncodedName);
            field.Write(json, part);
        }

        json.WriteEndObject();
    }

    /// <summary>Sets a field by its path.</summary>
    public void Set(TPart part, FieldPath path, ref Utf8JsonReader value, SceneReadState state)
    {
        string name = path.First;
        foreach (Field<TPart> field in _fields)
        {
            if (!field.Name.Equals(name, StringComparison.Ordinal))
                continue;
            state.Enter(name);
            field.Set(part, path.Rest, ref value, state);
            state.Leave();
            return;
        }

        AddUnknown(name, value.TokenStartIndex, state);
    }

    /// <summary>Writes the members of a JSON Schema for such an object.</summary>
    public void WriteSchema(Utf8JsonWriter json, params string[] required)
    {
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        if (required.Length > 0)
        {
            json.WriteStartArray("required");
            foreach (string name in required)
                json.WriteStringValue(name);
            json.WriteEndArray();
        }

        json.WriteStartObject("properties");
        foreach (Field<TPart> field in _fields)
        {
            json.WriteStartObject(field.Name);
            string more = field.Default is null ? "" : $" Default: {field.Default}.";
            json.WriteString("description", field.Description + more);
            field.WriteSchema(json);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    // Files mostly follow the order of the catalogue, so the search begins after the field found last.
    private int IndexOf(ref Utf8JsonReader json, int guess)
    {
        for (int n = 0; n < _fields.Length; n++)
        {
            int i = guess + n < _fields.Length ? guess + n : guess + n - _fields.Length;
            if (SceneReadState.TextEquals(ref json, _fields[i].EncodedName.EncodedUtf8Bytes))
                return i;
        }

        return -1;
    }

    private static void AddTwice(ref Utf8JsonReader json, SceneReadState state)
    {
        state.Enter(SceneReadState.TextOf(ref json));
        state.Add(json.TokenStartIndex, "stands twice in this object", "each field once");
        state.Leave();
    }

    private void AddUnknown(ref Utf8JsonReader json, SceneReadState state) =>
        AddUnknown(SceneReadState.TextOf(ref json), json.TokenStartIndex, state);

    private void AddUnknown(string name, long offset, SceneReadState state)
    {
        string[] names = Array.ConvertAll(_fields, field => field.Name);
        string? suggestion = NearestWord.Of(name, names) ?? state.FieldElsewhere(name);
        string problem = $"unknown field \"{SceneReadState.Shorten(name)}\"";
        state.Add(offset, problem, string.Join(", ", names), suggestion is null ? null : $"\"{suggestion}\"");
    }
}
