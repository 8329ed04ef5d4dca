namespace Longrail.Scenes.Trials;

/// <summary>What is known of a trial before its results are read.</summary>
/// <param name="Conditions">Letter and words of each condition, either of which may stand in the table; null where no
/// plan is at hand: then each word of the column is a condition, in the order of their first shots.</param>
/// <param name="Diamond">Length of a diamond along the far cushion, metres; null where it is not known.</param>
/// <param name="Rail">Length of that cushion, metres; null where it is not known.</param>
public sealed record TrialTableNeeds(
    IReadOnlyList<(string Letter, string Words)>? Conditions = null, double? Diamond = null, double? Rail = null);
