namespace Longrail.Physics.Shots.Aims;

/// <summary>Why there is no aim.</summary>
public enum AimFailure
{
    /// <summary>There is one.</summary>
    None,

    /// <summary>No line from the ball reaches the object ball at that cut: it is too thin from there.</summary>
    TooThin,

    /// <summary>Another ball is met first.</summary>
    Blocked,

    /// <summary>The cue ball reaches a cushion before the object ball.</summary>
    CushionFirst,

    /// <summary>The cue ball stops before it reaches the object ball.</summary>
    CueBallStops,

    /// <summary>The object ball never comes off the named cushions in that order.</summary>
    OtherCushions,

    /// <summary>The object ball takes the right cushions but stops before the pocket.</summary>
    ObjectBallStops,

    /// <summary>The object ball takes the right cushions but something else lies in its way to the pocket.</summary>
    WayBlocked,

    /// <summary>The object ball takes the right cushions, and no aim brings it into the pocket.</summary>
    MissesPocket,
}
