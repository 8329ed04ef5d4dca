namespace Longrail.Coaching.Effects;

/// <summary>Where an arrival is measured.</summary>
public enum EffectTargetKind
{
    /// <summary>On the line of a cushion, at the ball's centre, pocket mouths included.</summary>
    Cushion,

    /// <summary>On the line across a pocket's mouth.</summary>
    Mouth,

    /// <summary>Beside the ball that the kicked ball meets: on the line through the meeting place, parallel to the
    /// cushion that the kick came off last.</summary>
    Ball,
}
