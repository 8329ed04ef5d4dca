namespace Longrail.Coaching.Trials;

/// <summary>What is written down of each shot of a trial.</summary>
public enum TrialMeasure
{
    /// <summary>How far along the far cushion the banked ball arrives.</summary>
    Landing,

    /// <summary>Whether it goes down.</summary>
    Made,
}
