using System.Globalization;
using System.Text.Json;
using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Fields;

/// <summary>A field that holds a list of objects.</summary>
/// <typeparam name="TPart">The part of a scene that the field belongs to.</typeparam>
/// <typeparam name="TItem">The part that an object of the list describes.</typeparam>
internal sealed class ListField<TPart, TItem>(
    string name,
    Section<TItem> section,
    int most,
    string[] required,
    Func<TPart, List<TItem>?> get,
    Action<TPart, List<TItem>> set,
    Func<TItem, string?> nameOf,
    string? defaultText,
    string description)
    : Field<TPart>(name, description, defaultText)
    where TPart : class
    where TItem : class, new()
{
    internal override void Read(ref Utf8JsonReader json, TPart part, SceneReadState state)
    {
        long offset = json.TokenStartIndex;
        if (json.TokenType != JsonTokenType.StartArray)
        {
            string found = SceneReadState.KindOf(ref json);
            json.Skip();
            state.Add(offset, $"{found} where a list is wanted", "[ { ... }, ... ]");
            return;
        }

        var items = new List<TItem>(4);
        int n = 0;
        while (json.Read() && json.TokenType != JsonTokenType.EndArray)
        {
            if (n < most)
                ReadItem(ref json, n, items, state);
            else
                json.Skip();
            n++;
        }

        if (n > most)
            state.Add(offset, $"the list holds {n}", $"up to {most}");
        set(part, items);
    }

    internal override bool IsSet(TPart part) => get(part) is not null;

    internal override void Write(Utf8JsonWriter json, TPart part)
    {
        json.WriteStartArray();
        foreach (TItem item in get(part)!)
            section.Write(json, item);
        json.WriteEndArray();
    }

    internal override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", "array");
        json.WriteNumber("maxItems", most);
        json.WriteStartObject("items");
        section.WriteSchema(json, required);
        json.WriteEndObject();
    }

    internal override void List(string prefix, List<FieldInfo> fields)
    {
        foreach (Field<TItem> field in section.Fields)
            field.List($"{prefix}{Name}[].", fields);
    }

    internal override void Set(TPart part, FieldPath path, ref Utf8JsonReader value, SceneReadState state)
    {
        if (path.IsEmpty)
        {
            Read(ref value, part, state);
            return;
        }

        List<TItem> items = get(part) ?? [];
        int index = IndexOf(items, path.First);
        if (index < 0)
        {
            string known = string.Join(", ", items.Select(nameOf));
            state.Add(-1, $"there is no \"{path.First}\" in {Name}", known.Length > 0 ? known : null);
        }
        else if (path.Rest.IsEmpty)
        {
            string names = string.Join(", ", section.Fields.Select(field => field.Name));
            state.Add(-1, $"which field of \"{path.First}\"?", names);
        }
        else
        {
            state.Enter(index);
            section.Set(items[index], path.Rest, ref value, state);
            state.Leave();
        }
    }

    private void ReadItem(ref Utf8JsonReader json, int index, List<TItem> items, SceneReadState state)
    {
        state.Enter(index);
        if (json.TokenType == JsonTokenType.StartObject)
        {
            var item = new TItem();
            section.Read(ref json, item, state);
            items.Add(item);
        }
        else
        {
            long offset = json.TokenStartIndex;
            string found = SceneReadState.KindOf(ref json);
            json.Skip();
            state.Add(offset, $"{found} where an object is wanted", "{ ... }");
        }

        state.Leave();
    }

    private int IndexOf(List<TItem> items, string step)
    {
        if (step.StartsWith('['))
        {
            ReadOnlySpan<char> digits = step.AsSpan(1).TrimEnd(']');
            bool isPlace = int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int place);
            return isPlace && place < items.Count ? place : -1;
        }

        return items.FindIndex(item => nameOf(item) == step);
    }
}
