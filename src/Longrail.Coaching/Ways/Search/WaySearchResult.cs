namespace Longrail.Coaching.Ways.Search;

/// <summary>What the search found.</summary>
/// <param name="Ways">The ways, in the order of their routes: pockets, then fewer cushions first.</param>
/// <param name="NotPlayable">The routes that geometry offers and no stroke plays.</param>
/// <param name="IsPartial">Whether it was stopped before it was done: ways may be missing.</param>
/// <param name="ShotsPlayed">How many shots were played, without the few that showed the first ways early.</param>
public sealed record WaySearchResult(
    IReadOnlyList<FoundWay> Ways, IReadOnlyList<NoWay> NotPlayable, bool IsPartial, long ShotsPlayed);
