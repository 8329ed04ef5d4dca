using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Longrail.Scenes.Reading;

/// <summary>Where a reader stands in a scene, and what it found wrong so far.</summary>
internal sealed class SceneReadState
{
    /// <summary>More errors than these help nobody.</summary>
    public const int MostErrors = 20;

    // A scene is five objects deep at most; a path never grows beyond the reader's own limit of depth.
    private readonly List<(string? Name, int Index)> _steps = new(8);
    private List<(SceneError Error, long Offset)>? _errors;

    /// <summary>Whether the value was typed by itself, without the quotes that a file needs: then 9 may be the name of
    /// a ball.</summary>
    public bool IsTyped { get; init; }

    /// <summary>The path of the field of some name within other objects of the file, for "did you mean".</summary>
    public Func<string, string?> FieldElsewhere { get; init; } = Fields.SceneFields.PathEndingIn;

    /// <summary>Whether nothing is wrong so far.</summary>
    public bool IsGood => _errors is null;

    /// <summary>Goes into a field.</summary>
    public void Enter(string name) => _steps.Add((name, 0));

    /// <summary>Goes into a place of a list.</summary>
    public void Enter(int index) => _steps.Add((null, index));

    /// <summary>Leaves the field or place entered last.</summary>
    public void Leave() => _steps.RemoveAt(_steps.Count - 1);

    /// <summary>Notes an error in the field in which the reader stands.</summary>
    public void Add(long offset, string problem, string? allowed = null, string? suggestion = null)
    {
        _errors ??= [];
        if (_errors.Count < MostErrors)
            _errors.Add((new SceneError(Path(), problem, allowed, suggestion), offset));
    }

    /// <summary>The errors with their lines and columns.</summary>
    /// <param name="source">The text that was read; empty if positions in it mean nothing to the user.</param>
    public IReadOnlyList<SceneError> Errors(ReadOnlySpan<byte> source)
    {
        if (_errors is null)
            return [];
        var errors = new List<SceneError>(_errors.Count);
        foreach ((SceneError error, long offset) in _errors)
            errors.Add(source.IsEmpty || offset < 0 ? error : TextPlace.In(source, offset).Of(error));
        return errors;
    }

    /// <summary>The text of the current string or name; broken halves of characters are replaced.</summary>
    public static string TextOf(ref Utf8JsonReader json)
    {
        try
        {
            return json.GetString() ?? "";
        }
        catch (InvalidOperationException)
        {
            // An escape like \uD800 alone is half a character: there is no text to it.
            return Encoding.UTF8.GetString(json.ValueSpan);
        }
    }

    /// <summary>Whether the current string or name is a word; broken halves of characters make it none.</summary>
    public static bool TextEquals(ref Utf8JsonReader json, ReadOnlySpan<byte> word) => json.ValueIsEscaped
        ? Encoding.UTF8.GetBytes(TextOf(ref json)).AsSpan().SequenceEqual(word)
        : json.ValueSpan.SequenceEqual(word);

    /// <summary>What the current token is, for a message.</summary>
    public static string KindOf(ref Utf8JsonReader json) => json.TokenType switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.String => $"the text \"{Shorten(TextOf(ref json))}\"",
        JsonTokenType.Number => $"the number {Shorten(Encoding.UTF8.GetString(json.ValueSpan))}",
        JsonTokenType.True => "true",
        JsonTokenType.False => "false",
        _ => "null",
    };

    /// <summary>A text cut to a length that fits into a message.</summary>
    public static string Shorten(string text)
    {
        var shown = new StringBuilder(Math.Min(text.Length, 48));
        foreach (char c in text)
        {
            if (shown.Length == 40)
                return shown.Append("...").ToString();
            shown.Append(char.IsControl(c) ? ' ' : c);
        }

        return shown.ToString();
    }

    private string Path()
    {
        var path = new StringBuilder();
        foreach ((string? name, int index) in _steps)
        {
            if (name is null)
                path.Append('[').Append(index.ToString(CultureInfo.InvariantCulture)).Append(']');
            else
                path.Append(path.Length > 0 ? "." : "").Append(name);
        }

        return path.ToString();
    }
}
