namespace Longrail.Coaching.Contrasts;

/// <summary>What stays the same while one thing changes.</summary>
public enum Hold
{
    /// <summary>The stick's line: what changes may turn the cue ball's path (squirt).</summary>
    Stick,

    /// <summary>The line on which the cue ball leaves: the stick is re-aimed, which takes squirt out of the
    /// comparison.</summary>
    Path,
}
