using System.Globalization;
using System.Text.Json;
using Longrail.Scenes.Fields;

namespace Longrail.Scenes.Reading;

/// <summary>Finds where a field stands in a text that has been read already. Done only when there is an error to point
/// at.</summary>
internal static class FieldLocator
{
    /// <summary>The error with the place of its field, or of the nearest object around it that stands in the
    /// text.</summary>
    public static SceneError Locate(SceneError error, ReadOnlySpan<byte> utf8, JsonReaderOptions options)
    {
        if (error.Line is not null || error.Path.Length == 0)
            return error;
        var json = new Utf8JsonReader(utf8, options);
        json.Read();
        long offset = Find(ref json, error.Path);
        return offset < 0 ? error : TextPlace.In(utf8, offset).Of(error);
    }

    // Goes down the path; the text is known to be well-formed.
    private static long Find(ref Utf8JsonReader json, string path)
    {
        long offset = -1;
        var rest = new FieldPath(path);
        while (!rest.IsEmpty)
        {
            string step = rest.First;
            bool found = step.StartsWith('[') ? GoToPlace(ref json, step) : GoToField(ref json, step);
            if (!found)
                return offset;
            offset = json.TokenStartIndex;
            rest = rest.Rest;
        }

        return offset;
    }

    private static bool GoToField(ref Utf8JsonReader json, string name)
    {
        if (json.TokenType != JsonTokenType.StartObject)
            return false;
        while (json.Read() && json.TokenType == JsonTokenType.PropertyName)
        {
            bool found = SceneReadState.TextOf(ref json) == name;
            json.Read();
            if (found)
                return true;
            json.Skip();
        }

        return false;
    }

    private static bool GoToPlace(ref Utf8JsonReader json, string step)
    {
        if (json.TokenType != JsonTokenType.StartArray)
            return false;
        int place = int.Parse(step.AsSpan(1, step.Length - 2), NumberStyles.None, CultureInfo.InvariantCulture);
        for (int i = 0; json.Read() && json.TokenType != JsonTokenType.EndArray; i++)
        {
            if (i == place)
                return true;
            json.Skip();
        }

        return false;
    }
}
