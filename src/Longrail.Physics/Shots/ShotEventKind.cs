namespace Longrail.Physics.Shots;

/// <summary>What can happen during a shot. The order is the order in which events at one instant are taken.</summary>
public enum ShotEventKind
{
    /// <summary>The tip strikes the ball at time 0.</summary>
    Tip,

    /// <summary>A ball drops.</summary>
    Pocketed,

    /// <summary>Two balls touch.</summary>
    BallsMeet,

    /// <summary>A ball touches a cushion.</summary>
    Cushion,

    /// <summary>A ball touches the rounding or the facing of a pocket's jaw.</summary>
    Jaw,

    /// <summary>A ball's skid is over: it rolls.</summary>
    SlideEnds,

    /// <summary>A ball comes to the end of its way (it may still turn on the spot).</summary>
    Stops,
}
