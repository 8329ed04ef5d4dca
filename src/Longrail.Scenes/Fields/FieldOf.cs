using System.Text.Json;
using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Fields;

/// <summary>A field of one kind of object: it knows how to read, write, describe and set itself.</summary>
/// <typeparam name="TPart">The part of a scene that the field belongs to.</typeparam>
internal abstract class Field<TPart> : Field
    where TPart : class
{
    private protected Field(string name, string description, string? defaultText)
        : base(name, description, defaultText)
    {
    }

    /// <summary>Takes back what this field would contradict, or what it stands for; done when the field alone is set by
    /// its path.</summary>
    internal Action<TPart>? Replaces { get; init; }

    /// <summary>The same for a field whose value decides what it stands instead of.</summary>
    internal Action<TPart>? ReplacesOnceRead { get; init; }

    /// <summary>Reads the value at the reader's current token; what is wrong with it goes to the state.</summary>
    internal abstract void Read(ref Utf8JsonReader json, TPart part, SceneReadState state);

    /// <summary>Whether the part has this field.</summary>
    internal abstract bool IsSet(TPart part);

    /// <summary>Writes the value, which is there.</summary>
    internal abstract void Write(Utf8JsonWriter json, TPart part);

    /// <summary>Writes the members of a JSON Schema that describe the value (type, range), within an open
    /// object.</summary>
    internal abstract void WriteSchema(Utf8JsonWriter json);

    /// <summary>Lists this field and those within it.</summary>
    internal abstract void List(string prefix, List<FieldInfo> fields);

    /// <summary>Sets the field, or one within it.</summary>
    internal virtual void Set(TPart part, FieldPath path, ref Utf8JsonReader value, SceneReadState state)
    {
        if (!path.IsEmpty)
        {
            state.Add(value.TokenStartIndex, $"has no field \"{path.First}\" within it");
            return;
        }

        Replaces?.Invoke(part);
        Read(ref value, part, state);
        ReplacesOnceRead?.Invoke(part);
    }
}
