using System.Text.Json;
using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Fields;

/// <summary>A field that holds an object, or a single value that stands for one.</summary>
/// <typeparam name="TPart">The part of a scene that the field belongs to.</typeparam>
/// <typeparam name="TChild">The part that the object describes.</typeparam>
internal sealed class PartField<TPart, TChild>(
    string name,
    Section<TChild> section,
    Func<TPart, TChild?> get,
    Action<TPart, TChild?> set,
    string? defaultText,
    string description,
    Field<TChild>? single = null)
    : Field<TPart>(name, description, defaultText)
    where TPart : class
    where TChild : class, new()
{
    internal override void Read(ref Utf8JsonReader json, TPart part, SceneReadState state)
    {
        var child = new TChild();
        if (json.TokenType == JsonTokenType.StartObject)
        {
            section.Read(ref json, child, state);
        }
        else if (single is not null && json.TokenType != JsonTokenType.StartArray)
        {
            single.Read(ref json, child, state);
        }
        else
        {
            long offset = json.TokenStartIndex;
            string found = SceneReadState.KindOf(ref json);
            json.Skip();
            string names = string.Join(", ", section.Fields.Select(field => field.Name));
            state.Add(offset, $"{found} where an object is wanted", $"{{ ... }} with the fields {names}");
            return;
        }

        set(part, child);
    }

    internal override bool IsSet(TPart part) => get(part) is not null;

    internal override void Write(Utf8JsonWriter json, TPart part)
    {
        TChild child = get(part)!;
        if (single is not null && single.IsSet(child))
            single.Write(json, child);
        else
            section.Write(json, child);
    }

    internal override void WriteSchema(Utf8JsonWriter json)
    {
        if (single is null)
        {
            section.WriteSchema(json);
            return;
        }

        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        single.WriteSchema(json);
        json.WriteEndObject();
        json.WriteStartObject();
        section.WriteSchema(json);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    internal override void List(string prefix, List<FieldInfo> fields)
    {
        single?.List(prefix, fields);
        foreach (Field<TChild> field in section.Fields)
            field.List($"{prefix}{Name}.", fields);
    }

    internal override void Set(TPart part, FieldPath path, ref Utf8JsonReader value, SceneReadState state)
    {
        if (path.IsEmpty)
        {
            Replaces?.Invoke(part);
            Read(ref value, part, state);
            return;
        }

        // A field within replaces a single value that stands for the whole object.
        TChild child = get(part) is { } old && (single is null || !single.IsSet(old)) ? old : new TChild();
        section.Set(child, path, ref value, state);
        set(part, child);
    }
}
