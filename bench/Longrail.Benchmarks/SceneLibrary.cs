using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Reading;

namespace Longrail.Benchmarks;

/// <summary>The scenes of the folder scenes/, carried inside the program so that it runs from anywhere.</summary>
internal static class SceneLibrary
{
    private static readonly JsonDocumentOptions _withComments = new()
    {
        CommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
    };

    /// <summary>A scene as JSON.</summary>
    public static JsonObject Json(string name)
    {
        using Stream stream = typeof(SceneLibrary).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"There is no scene {name}.");
        return JsonNode.Parse(stream, documentOptions: _withComments)!.AsObject();
    }

    /// <summary>A scene, ready to be played.</summary>
    public static ShotSetup Setup(string name) => Setup(Json(name));

    /// <summary>A scene, ready to be played.</summary>
    public static ShotSetup Setup(JsonObject scene) => Ready(scene).Setup;

    /// <summary>A scene with its balls' names, ready to be played.</summary>
    public static ReadyScene Ready(string name) => Ready(Json(name));

    private static ReadyScene Ready(JsonObject scene)
    {
        SceneCompilation compilation = SceneReader.ReadReady(Encoding.UTF8.GetBytes(scene.ToJsonString()));
        return compilation.Ready ?? throw new InvalidOperationException(string.Join("; ", compilation.Errors));
    }

    /// <summary>The same shot under a law of the cushion.</summary>
    public static ShotSetup Under(this ShotSetup setup, CushionLaw law) => setup with
    {
        Equipment = setup.Equipment with { Cushion = setup.Equipment.Cushion with { Law = law } },
    };

    /// <summary>Refuses to measure a shot that is not the one the claim is about.</summary>
    public static void Require(bool isSo, string claim)
    {
        if (!isSo)
            throw new InvalidOperationException($"The scene no longer shows {claim}; choose another.");
    }
}
