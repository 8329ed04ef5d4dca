using Longrail.Scenes;

namespace Longrail.Coaching.Ways;

/// <summary>The answer: every way that was found, ranked, and why the others cannot be played.</summary>
/// <param name="Request">The question.</param>
/// <param name="Ways">The ways, best first.</param>
/// <param name="NotPlayable">The routes that cannot be played.</param>
/// <param name="Reason">Why the first is better than the second, in a short sentence; null with fewer than two
/// ways.</param>
/// <param name="IsPartial">Whether the search was stopped before it was done: ways may be missing.</param>
/// <param name="ShotsPlayed">How many shots were played to find this.</param>
public sealed record WaysAnswer(
    WaysRequest Request, IReadOnlyList<Way> Ways, IReadOnlyList<NoWay> NotPlayable, string? Reason, bool IsPartial,
    long ShotsPlayed)
{
    /// <summary>What is wrong with the question; empty if nothing is. Then there are no ways either.</summary>
    public IReadOnlyList<SceneError> Errors { get; init; } = [];
}
