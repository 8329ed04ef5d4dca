namespace Longrail.Coaching.Ways;

/// <summary>Why a route cannot be played.</summary>
public enum NoWayReason
{
    /// <summary>Another ball stands in the cue ball's way to the object ball.</summary>
    CueBallBlocked,

    /// <summary>Another ball stands in the object ball's way.</summary>
    ObjectBallBlocked,

    /// <summary>The hit would have to be thinner than can be played.</summary>
    TooThin,

    /// <summary>A ball stops before it gets there at the highest speed looked at.</summary>
    RunsOutOfSpeed,

    /// <summary>Cue ball and object ball meet again at every speed and tip looked at.</summary>
    DoubleKiss,

    /// <summary>The cue ball goes down at every speed and tip looked at.</summary>
    Scratch,

    /// <summary>The rebounds do not lead to this pocket from here, whatever the stroke.</summary>
    DoesNotLeadThere,
}
