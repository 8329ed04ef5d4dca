namespace Longrail.Scenes.Compiling;

/// <summary>What came of making a scene ready: the ready scene, or what is wrong with it.</summary>
/// <param name="Ready">The ready scene; null if anything is wrong.</param>
/// <param name="Errors">What is wrong; empty if nothing is.</param>
public sealed record SceneCompilation(ReadyScene? Ready, IReadOnlyList<SceneError> Errors)
{
    /// <summary>Whether the scene is in order but asks for something that cannot be computed, as an aim that does not
    /// exist.</summary>
    public bool IsUnreachable { get; init; }
}
