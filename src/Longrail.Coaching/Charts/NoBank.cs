namespace Longrail.Coaching.Charts;

/// <summary>Why a place of a chart or a map has no answer.</summary>
public enum NoBank
{
    /// <summary>It has one.</summary>
    None,

    /// <summary>The ball stands on its target already, or the cue ball stands on the ball.</summary>
    TooNear,

    /// <summary>The point to touch lies in a pocket's mouth.</summary>
    TouchInMouth,

    /// <summary>No aim near the mirror line leads there.</summary>
    DoesNotLeadThere,

    /// <summary>The hit would have to be thinner than can be played.</summary>
    TooThin,

    /// <summary>The tip would slip off the ball: a stun from there needs it lower than it holds.</summary>
    Miscue,

    /// <summary>A ball stops before it gets there.</summary>
    RunsOutOfSpeed,

    /// <summary>The cue ball does not fit behind the object ball.</summary>
    NoRoomBehind,

    /// <summary>Cue ball and object ball meet again.</summary>
    DoubleKiss,

    /// <summary>The cue ball goes down.</summary>
    Scratch,

    /// <summary>A jaw of the pocket turns the ball away, though it comes to the middle.</summary>
    JawTurnsAway,
}
