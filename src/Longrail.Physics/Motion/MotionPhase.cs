namespace Longrail.Physics.Motion;

/// <summary>How a ball is moving.</summary>
public enum MotionPhase
{
    /// <summary>Neither moving nor turning.</summary>
    AtRest,

    /// <summary>Its lowest point slips over the cloth; the path is a parabola.</summary>
    Sliding,

    /// <summary>Its lowest point is still; the path is straight.</summary>
    Rolling,

    /// <summary>It stands on one spot and turns about the vertical axis.</summary>
    Pivoting,

    /// <summary>It is pressed into a cushion or a jaw that yields.</summary>
    InRubber,

    /// <summary>It has dropped into a pocket and takes no further part.</summary>
    Pocketed,
}
