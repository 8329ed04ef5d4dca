namespace Longrail.Coaching.Ways;

/// <summary>How far a search for ways has come.</summary>
/// <param name="Done">From 0 to 1; does not go back.</param>
/// <param name="Stage">What is being done, in a few words: "searching", "odds".</param>
/// <param name="Ways">The ways so far, best first. Their odds may still be rough, and the order may change.</param>
public sealed record WaysProgress(double Done, string Stage, IReadOnlyList<Way> Ways);
