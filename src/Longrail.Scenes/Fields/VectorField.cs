using System.Text.Json;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Schemas;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Fields;

/// <summary>A field that holds a fixed number of quantities of one kind.</summary>
/// <typeparam name="TPart">The part of a scene that the field belongs to.</typeparam>
internal sealed class VectorField<TPart>(
    string name,
    int count,
    QuantityKind kind,
    NumberRange range,
    Func<TPart, Quantity[]?> get,
    Action<TPart, Quantity[]?> set,
    string? defaultText,
    string description)
    : Field<TPart>(name, description, defaultText)
    where TPart : class
{
    internal override void Read(ref Utf8JsonReader json, TPart part, SceneReadState state)
    {
        long offset = json.TokenStartIndex;
        if (json.TokenType != JsonTokenType.StartArray)
        {
            string found = SceneReadState.KindOf(ref json);
            json.Skip();
            state.Add(offset, $"{found} where a list is wanted", Form);
            return;
        }

        var values = new Quantity[count];
        int n = 0;
        bool good = true;
        while (json.Read() && json.TokenType != JsonTokenType.EndArray)
        {
            if (n >= count)
            {
                json.Skip();
                n++;
                continue;
            }

            state.Enter(n);
            Quantity? value = QuantityReader.Read(ref json, kind, range, state);
            state.Leave();
            good &= value.HasValue;
            values[n++] = value ?? default;
        }

        if (n != count)
            state.Add(offset, $"the list holds {n}", Form);
        else if (good)
            set(part, values);
    }

    internal override bool IsSet(TPart part) => get(part) is not null;

    internal override void Write(Utf8JsonWriter json, TPart part)
    {
        json.WriteStartArray();
        foreach (Quantity value in get(part)!)
            NumberField<TPart>.WriteQuantity(json, value, kind);
        json.WriteEndArray();
    }

    internal override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", "array");
        json.WriteNumber("minItems", count);
        json.WriteNumber("maxItems", count);
        json.WriteStartObject("items");
        SchemaOfQuantity.Write(json, kind, range);
        json.WriteEndObject();
    }

    internal override void List(string prefix, List<FieldInfo> fields) =>
        fields.Add(new FieldInfo(prefix + Name, kind, range, null, Default, Description));

    private string Form => kind.IsPlainNumber ? $"{count} numbers" : $"{count} numbers ({kind.BareUnit})";
}
