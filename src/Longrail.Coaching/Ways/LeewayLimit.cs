namespace Longrail.Coaching.Ways;

/// <summary>What ends a leeway on one side.</summary>
public enum LeewayLimit
{
    /// <summary>The pocket's jaw nearer to the last contact (the last cushion, or the ball itself on a straight pot)
    /// turns the ball away.</summary>
    NearJaw,

    /// <summary>The farther jaw does.</summary>
    FarJaw,

    /// <summary>Cue ball and object ball meet again.</summary>
    DoubleKiss,

    /// <summary>Another ball is met by the cue ball before the object ball, or by the object ball on its way.</summary>
    OtherBall,

    /// <summary>The object ball touches other cushions, or a jaw of another pocket, before it gets there.</summary>
    OtherCushion,

    /// <summary>A ball stops on the way.</summary>
    TooSlow,

    /// <summary>The cue ball passes the object ball, or the route is no longer reached at all.</summary>
    MissedBall,

    /// <summary>The tip would slip off the ball.</summary>
    Miscue,

    /// <summary>The cue ball goes down.</summary>
    Scratch,

    /// <summary>The largest change that is looked at: no miss within it.</summary>
    NotReached,
}
