using System.Text.Json;

namespace Longrail.Scenes.Outcomes;

/// <summary>Writes what stands in place of an outcome when a scene could not be played.</summary>
public static class ErrorLineWriter
{
    /// <summary>The format's name and version, the value of the field "longrail".</summary>
    public const string Format = "error/1";

    /// <summary>Writes an error object.</summary>
    /// <param name="json">Where to; it must stand where a value may stand.</param>
    /// <param name="line">The line of the input, counted from 1.</param>
    /// <param name="errors">What is wrong.</param>
    public static void Write(Utf8JsonWriter json, long line, IReadOnlyList<SceneError> errors)
    {
        json.WriteStartObject();
        json.WriteString("longrail", Format);
        json.WriteNumber("line", line);
        WriteErrors(json, errors);
        json.WriteEndObject();
    }

    private static void WriteErrors(Utf8JsonWriter json, IReadOnlyList<SceneError> errors)
    {
        json.WriteStartArray("errors");
        foreach (SceneError error in errors)
        {
            json.WriteStartObject();
            json.WriteString("path", error.Path);
            json.WriteString("problem", error.Problem);
            if (error.Allowed is not null)
                json.WriteString("allowed", error.Allowed);
            if (error.Suggestion is not null)
                json.WriteString("suggestion", error.Suggestion);
            if (error.Column is { } column)
                json.WriteNumber("column", column);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
