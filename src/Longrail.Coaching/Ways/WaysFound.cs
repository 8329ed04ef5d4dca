namespace Longrail.Coaching.Ways;

/// <summary>What a search found.</summary>
/// <param name="Ways">The ways, in an order that does not depend on the number of threads.</param>
/// <param name="NotPlayable">The routes that cannot be played.</param>
/// <param name="IsPartial">Whether the search was stopped before it was done.</param>
/// <param name="ShotsPlayed">How many shots it played.</param>
internal sealed record WaysFound(
    IReadOnlyList<FoundWay> Ways, IReadOnlyList<NoWay> NotPlayable, bool IsPartial, long ShotsPlayed);
