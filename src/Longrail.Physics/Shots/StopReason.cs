namespace Longrail.Physics.Shots;

/// <summary>Why a shot ended.</summary>
public enum StopReason
{
    /// <summary>Nothing moves or turns any more.</summary>
    AtRest,

    /// <summary>The time asked for is over.</summary>
    TimeLimit,

    /// <summary>More events than allowed.</summary>
    EventLimit,

    /// <summary>Events went on without time going on: the loop was ended rather than left to spin.</summary>
    Stalled,

    /// <summary>A watch had seen enough (<see cref="IShotWatch"/>); <see cref="ShotRunner"/> never ends so.</summary>
    Watched,
}
