using System.Text.Json;
using Longrail.Scenes.Fields;

namespace Longrail.Scenes.Writing;

/// <summary>Writes scenes. Reading what it wrote gives the same scene, every number bit for bit.</summary>
public static class SceneWriter
{
    /// <summary>Writes a scene as a JSON object.</summary>
    /// <param name="json">Where to; it must stand where a value may stand.</param>
    /// <param name="scene">The scene.</param>
    public static void Write(Utf8JsonWriter json, Scene scene) => SceneFields.Root.Write(json, scene);

    /// <summary>A scene as text, indented for people.</summary>
    /// <param name="scene">The scene.</param>
    public static byte[] ToUtf8(Scene scene) => JsonForm.ToUtf8(json => Write(json, scene));
}
