using System.Text;
using System.Text.Json;
using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Fields;

/// <summary>A field that holds a text for people, or the name of a ball.</summary>
/// <typeparam name="TPart">The part of a scene that the field belongs to.</typeparam>
internal sealed class TextField<TPart>(
    string name,
    Func<TPart, string?> get,
    Action<TPart, string?> set,
    string? defaultText,
    string description,
    bool isBallId = false)
    : Field<TPart>(name, description, defaultText)
    where TPart : class
{
    private const int LongestId = 24;
    private const int LongestText = 10_000;

    internal override void Read(ref Utf8JsonReader json, TPart part, SceneReadState state)
    {
        long offset = json.TokenStartIndex;
        bool isTypedNumber = state.IsTyped && json.TokenType == JsonTokenType.Number;
        if (json.TokenType != JsonTokenType.String && !isTypedNumber)
        {
            string found = SceneReadState.KindOf(ref json);
            string? suggestion = isBallId && json.TokenType == JsonTokenType.Number
                ? $"\"{Encoding.UTF8.GetString(json.ValueSpan)}\" in quotes"
                : null;
            json.Skip();
            state.Add(offset, $"{found} where a text is wanted", isBallId ? IdForm : null, suggestion);
            return;
        }

        string text = isTypedNumber ? Encoding.UTF8.GetString(json.ValueSpan) : SceneReadState.TextOf(ref json);
        if (isBallId && !IsBallId(text))
            state.Add(offset, $"\"{SceneReadState.Shorten(text)}\" cannot be the name of a ball", IdForm);
        else if (text.Length > LongestText)
            state.Add(offset, $"the text is {text.Length} characters long", $"up to {LongestText} characters");
        else
            set(part, text);
    }

    internal override bool IsSet(TPart part) => get(part) is not null;

    internal override void Write(Utf8JsonWriter json, TPart part) => json.WriteStringValue(get(part));

    internal override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", "string");
        if (isBallId)
            json.WriteString("pattern", "^[A-Za-z0-9_-]{1,24}$");
        else
            json.WriteNumber("maxLength", LongestText);
    }

    internal override void List(string prefix, List<FieldInfo> fields) =>
        fields.Add(new FieldInfo(prefix + Name, null, null, null, Default, Description));

    private static string IdForm => $"1 to {LongestId} letters, digits, - or _";

    private static bool IsBallId(string text)
    {
        if (text.Length is 0 or > LongestId)
            return false;
        foreach (char c in text)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c is not ('-' or '_'))
                return false;
        }

        return true;
    }
}
