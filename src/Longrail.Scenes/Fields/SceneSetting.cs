using System.Text;
using System.Text.Json;
using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Fields;

/// <summary>Changes one field of a scene by its path.</summary>
public static class SceneSetting
{
    /// <summary>A copy of the scene with one field changed and everything else as it was.</summary>
    /// <remarks>
    /// A field that stands instead of another takes its place (speed and cueSpeed, x and along), and a name takes back
    /// the numbers that it stands for (a preset, a state), so that the change is never without effect. Changing what a
    /// solved aim was solved for (its balls, cut, pocket, cushions) makes it be solved again; changing anything else
    /// leaves the stick where it was.
    /// </remarks>
    /// <param name="scene">The scene.</param>
    /// <param name="path">The field: "stroke.speed", "stroke.tip.right", "balls.9.x" by the ball's id, "balls[1].x" by
    /// its place.</param>
    /// <param name="value">The value as a user types it: a number, a text with a unit without quotes, a word, or
    /// JSON.</param>
    public static SceneReading With(Scene scene, string path, string value)
    {
        Scene copy = scene.Copy();
        var state = new SceneReadState { IsTyped = true };
        if (path.Length == 0)
            return new SceneReading(null, [new SceneError("", "no field is named", "a path like stroke.speed")]);
        try
        {
            var json = new Utf8JsonReader(AsJson(value), new JsonReaderOptions { MaxDepth = 16 });
            json.Read();
            SceneFields.Root.Set(copy, new FieldPath(path), ref json, state);
        }
        catch (JsonException)
        {
            return new SceneReading(null, [new SceneError(path, $"\"{SceneReadState.Shorten(value)}\" is not JSON")]);
        }

        return state.IsGood ? new SceneReading(copy, []) : new SceneReading(null, state.Errors([]));
    }

    // What is no number, object or list by itself is meant as a text.
    private static byte[] AsJson(string value)
    {
        string trimmed = value.Trim();
        byte[] plain = Encoding.UTF8.GetBytes(trimmed);
        if (trimmed.StartsWith('{') || trimmed.StartsWith('[') || trimmed.StartsWith('"') || IsNumber(plain))
            return plain;
        return JsonSerializer.SerializeToUtf8Bytes(trimmed);
    }

    private static bool IsNumber(byte[] text)
    {
        try
        {
            var json = new Utf8JsonReader(text);
            return json.Read() && json.TokenType == JsonTokenType.Number && json.BytesConsumed == text.Length;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
