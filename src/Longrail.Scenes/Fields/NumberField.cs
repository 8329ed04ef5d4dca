using System.Globalization;
using System.Text.Json;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Schemas;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Fields;

/// <summary>A field that holds a quantity.</summary>
/// <typeparam name="TPart">The part of a scene that the field belongs to.</typeparam>
internal sealed class NumberField<TPart>(
    string name,
    QuantityKind kind,
    NumberRange range,
    Func<TPart, Quantity?> get,
    Action<TPart, Quantity?> set,
    string? defaultText,
    string description)
    : Field<TPart>(name, description, defaultText)
    where TPart : class
{
    /// <summary>What it holds.</summary>
    public QuantityKind Kind => kind;

    /// <summary>The legal range in the unit of a bare number.</summary>
    public NumberRange Range => range;

    internal override void Read(ref Utf8JsonReader json, TPart part, SceneReadState state)
    {
        if (QuantityReader.Read(ref json, kind, range, state) is { } quantity)
            set(part, quantity);
    }

    internal override bool IsSet(TPart part) => get(part).HasValue;

    internal override void Write(Utf8JsonWriter json, TPart part) => WriteQuantity(json, get(part)!.Value, kind);

    internal override void WriteSchema(Utf8JsonWriter json) => SchemaOfQuantity.Write(json, kind, range);

    internal override void List(string prefix, List<FieldInfo> fields) =>
        fields.Add(new FieldInfo(prefix + Name, kind, range, null, Default, Description));

    internal static void WriteQuantity(Utf8JsonWriter json, Quantity quantity, QuantityKind kind)
    {
        if (quantity.Unit == kind.Bare)
            json.WriteNumberValue(quantity.Value);
        else
            json.WriteStringValue(string.Create(CultureInfo.InvariantCulture, $"{quantity}"));
    }
}
