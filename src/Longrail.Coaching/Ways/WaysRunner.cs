namespace Longrail.Coaching.Ways;

/// <summary>Finds every way to play a ball, and ranks them.</summary>
public static class WaysRunner
{
    /// <summary>Answers a question. The same question gives the same answer, bit for bit, whatever the number of
    /// threads, unless it is stopped.</summary>
    /// <param name="request">The question. What is wrong with it is told in the answer.</param>
    /// <param name="progress">Told how far it has come, from any thread, one call at a time; or null.</param>
    /// <param name="stop">Stops it: the answer is then what is known so far, marked as partial.</param>
    public static WaysAnswer Run(
        WaysRequest request, IProgress<WaysProgress>? progress = null, CancellationToken stop = default) =>
        Run(request, WaysParts.Usual, progress, stop);

    internal static WaysAnswer Run(
        WaysRequest request, WaysParts parts, IProgress<WaysProgress>? progress, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(request);
        IReadOnlyList<Scenes.SceneError> errors = WaysCheck.Of(request);
        if (errors.Count > 0)
            return new WaysAnswer(request, [], [], null, false, 0) { Errors = errors };
        using var budget = CancellationTokenSource.CreateLinkedTokenSource(stop);
        if (request.TimeBudget is { } time)
            budget.CancelAfter(time);
        return new WaysRun(WaysQuestion.Of(request), parts, progress, budget.Token).Answer();
    }
}
