using Longrail.Physics.Shots.Readings;

namespace Longrail.Scenes.Outcomes;

/// <summary>The reading of a whole shot with the names of the balls.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="BallIds">The names.</param>
internal readonly record struct NamedShotReading(ShotReading Reading, IReadOnlyList<string> BallIds)
{
    /// <summary>The name of a ball, if there is one.</summary>
    public string? NameOf(int? ball) => ball is { } index ? BallIds[index] : null;
}
