namespace Longrail.Coaching.Ways.Search;

/// <summary>How a shot at the object ball ends, as the search sorts them.</summary>
internal enum ShotFate
{
    /// <summary>The cue ball touches more cushions than asked for before it meets any ball.</summary>
    CueBallMisses,

    /// <summary>The cue ball stops before it meets any ball.</summary>
    CueBallStops,

    /// <summary>The cue ball touches a jaw before it meets any ball.</summary>
    CueBallInJaws,

    /// <summary>The cue ball goes down before it meets any ball.</summary>
    CueBallDrops,

    /// <summary>The cue ball meets another ball first.</summary>
    OtherBallFirst,

    /// <summary>Cue ball and object ball meet again on the object ball's way.</summary>
    DoubleKiss,

    /// <summary>The object ball meets another ball on its way.</summary>
    ObjectBallMeetsOther,

    /// <summary>The object ball touches more cushions than asked for.</summary>
    TooManyCushions,

    /// <summary>The object ball touches a jaw and comes out of the pocket again, or goes down elsewhere
    /// afterwards.</summary>
    Rattles,

    /// <summary>The object ball stops on its way.</summary>
    ObjectBallStops,

    /// <summary>The object ball goes down by the route; the cue ball was not followed farther.</summary>
    Down,

    /// <summary>The object ball goes down by the route, and so does the cue ball.</summary>
    Scratch,

    /// <summary>The object ball goes down by the route and the cue ball stays up.</summary>
    Made,
}
