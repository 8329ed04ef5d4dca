using System.Text;
using System.Text.Json;
using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Fields;

/// <summary>A field that holds a list of words.</summary>
/// <typeparam name="TPart">The part of a scene that the field belongs to.</typeparam>
internal sealed class WordListField<TPart>(
    string name,
    string[] words,
    int most,
    Func<TPart, List<string>?> get,
    Action<TPart, List<string>?> set,
    string? defaultText,
    string description)
    : Field<TPart>(name, description, defaultText)
    where TPart : class
{
    private readonly byte[][] _utf8 = Array.ConvertAll(words, Encoding.UTF8.GetBytes);

    internal override void Read(ref Utf8JsonReader json, TPart part, SceneReadState state)
    {
        long offset = json.TokenStartIndex;
        if (json.TokenType != JsonTokenType.StartArray)
        {
            string found = SceneReadState.KindOf(ref json);
            json.Skip();
            string allowed = $"a list of up to {most} of {string.Join(", ", words)}";
            state.Add(offset, $"{found} where a list is wanted", allowed);
            return;
        }

        var list = new List<string>();
        int n = 0;
        while (json.Read() && json.TokenType != JsonTokenType.EndArray)
        {
            state.Enter(n++);
            if (WordField<TPart>.ReadWord(ref json, words, _utf8, state) is { } word && n <= most)
                list.Add(word);
            state.Leave();
        }

        if (n == 0 || n > most)
            state.Add(offset, $"the list holds {n}", $"1 to {most}");
        else
            set(part, list);
    }

    internal override bool IsSet(TPart part) => get(part) is not null;

    internal override void Write(Utf8JsonWriter json, TPart part)
    {
        json.WriteStartArray();
        foreach (string word in get(part)!)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }

    internal override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", "array");
        json.WriteNumber("minItems", 1);
        json.WriteNumber("maxItems", most);
        json.WriteStartObject("items");
        WordField<TPart>.WriteWordsSchema(json, words);
        json.WriteEndObject();
    }

    internal override void List(string prefix, List<FieldInfo> fields) =>
        fields.Add(new FieldInfo(prefix + Name, null, null, words, Default, Description));
}
