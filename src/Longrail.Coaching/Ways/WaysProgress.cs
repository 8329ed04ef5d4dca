namespace Longrail.Coaching.Ways;

/// <summary>How far a search for ways has come.</summary>
/// <param name="Done">From 0 to 1; does not go back.</param>
/// <param name="Stage">What is being done, in a few words: "searching", "odds".</param>
/// <param name="Ways">The ways so far whose odds are known, best first; the list may still change order.</param>
/// <param name="Found">How many ways were found so far, also those whose odds are not known yet.</param>
public sealed record WaysProgress(double Done, string Stage, IReadOnlyList<Way> Ways, int Found);
