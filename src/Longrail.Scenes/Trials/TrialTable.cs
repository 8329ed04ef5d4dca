namespace Longrail.Scenes.Trials;

/// <summary>The shots of a trial, as they were written down.</summary>
/// <param name="Conditions">The conditions' words, in the order of their indices.</param>
/// <param name="Shots">The shots in the order of the table.</param>
/// <param name="HasLanding">Whether there is a column of landings.</param>
/// <param name="HasSpeed">Whether there is a column of speeds or roll-outs.</param>
/// <param name="SpeedIsRollOut">Whether it holds roll-outs: metres instead of m/s.</param>
/// <param name="HasMade">Whether there is a column of makes.</param>
public sealed record TrialTable(
    IReadOnlyList<string> Conditions, IReadOnlyList<TrialShot> Shots, bool HasLanding, bool HasSpeed,
    bool SpeedIsRollOut, bool HasMade);
