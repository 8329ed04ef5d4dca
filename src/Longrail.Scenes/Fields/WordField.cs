using System.Text;
using System.Text.Json;
using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Fields;

/// <summary>A field that holds one of several words.</summary>
/// <typeparam name="TPart">The part of a scene that the field belongs to.</typeparam>
internal sealed class WordField<TPart>(
    string name,
    string[] words,
    Func<TPart, string?> get,
    Action<TPart, string?> set,
    string? defaultText,
    string description)
    : Field<TPart>(name, description, defaultText)
    where TPart : class
{
    private readonly byte[][] _utf8 = Array.ConvertAll(words, Encoding.UTF8.GetBytes);

    internal override void Read(ref Utf8JsonReader json, TPart part, SceneReadState state)
    {
        if (ReadWord(ref json, words, _utf8, state) is { } word)
            set(part, word);
    }

    internal override bool IsSet(TPart part) => get(part) is not null;

    internal override void Write(Utf8JsonWriter json, TPart part) => json.WriteStringValue(get(part));

    internal override void WriteSchema(Utf8JsonWriter json) => WriteWordsSchema(json, words);

    internal override void List(string prefix, List<FieldInfo> fields) =>
        fields.Add(new FieldInfo(prefix + Name, null, null, words, Default, Description));

    /// <summary>The word at the reader's current token, or null if it is none of them; the state then knows
    /// why.</summary>
    internal static string? ReadWord(ref Utf8JsonReader json, string[] words, byte[][] utf8, SceneReadState state)
    {
        long offset = json.TokenStartIndex;
        if (json.TokenType == JsonTokenType.String)
        {
            for (int i = 0; i < words.Length; i++)
            {
                if (SceneReadState.TextEquals(ref json, utf8[i]))
                    return words[i];
            }
        }

        string found = SceneReadState.KindOf(ref json);
        string? nearest = json.TokenType == JsonTokenType.String
            ? NearestWord.Of(SceneReadState.TextOf(ref json), words)
            : null;
        json.Skip();
        string allowed = string.Join(", ", words.Select(word => $"\"{word}\""));
        state.Add(offset, $"{found} is not known here", allowed, nearest is null ? null : $"\"{nearest}\"");
        return null;
    }

    internal static void WriteWordsSchema(Utf8JsonWriter json, string[] words)
    {
        json.WriteString("type", "string");
        json.WriteStartArray("enum");
        foreach (string word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }
}
