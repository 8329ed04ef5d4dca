namespace Longrail.Coaching.Ways.Search;

/// <summary>Finds every way to make a ball: all pockets, all routes, every aim, on a grid of speeds and tip
/// positions.</summary>
public static class WaySearch
{
    /// <summary>Searches.</summary>
    /// <param name="request">The question.</param>
    /// <param name="found">Called once for each route as it turns up, with one stroke; from any thread, one call at a
    /// time. What is found first depends on the threads, the result does not.</param>
    /// <param name="progress">The part that is done, from 0 to 1.</param>
    /// <param name="stop">Ends the search early with what it has.</param>
    /// <exception cref="ArgumentException">A number is out of its legal range, or the set-up is one that no table could
    /// hold; the message says which.</exception>
    public static WaySearchResult Run(
        WaySearchRequest request, Action<FoundWay>? found = null, IProgress<double>? progress = null,
        CancellationToken stop = default)
    {
        RequestCheck.Require(request);
        if (request.Setup.Equipment.Table.Corner is null) return new WaySearchResult([], [], false, 0);
        return new SearchRun(request, found, progress, stop).Run();
    }
}
