namespace Longrail.Coaching.Contrasts;

/// <summary>One thing that is changed.</summary>
/// <param name="Path">The field of the scene, as in "stroke.speed".</param>
/// <param name="Levels">The values that it takes in turn, as a scene file or a user would write them; at least
/// one.</param>
public sealed record Variation(string Path, IReadOnlyList<string> Levels);
