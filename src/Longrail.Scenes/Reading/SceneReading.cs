namespace Longrail.Scenes.Reading;

/// <summary>What came of reading a scene: the scene, or what is wrong with it.</summary>
/// <param name="Scene">The scene as asked for; null if anything is wrong.</param>
/// <param name="Errors">What is wrong; empty if nothing is.</param>
public sealed record SceneReading(Scene? Scene, IReadOnlyList<SceneError> Errors);
