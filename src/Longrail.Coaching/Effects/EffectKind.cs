namespace Longrail.Coaching.Effects;

/// <summary>The causes into which a shot's way off the plain mirror bank is split. Each can be switched off in the
/// physics by itself; docs/physics.md says how.</summary>
public enum EffectKind
{
    /// <summary>The tip sends the ball beside the stick's line, and a raised butt bends its way.</summary>
    SquirtAndSwerve,

    /// <summary>Friction between the balls turns the struck ball because the striker's surface crosses it: the cut's
    /// part.</summary>
    CutThrow,

    /// <summary>The same, because the striker spins about the vertical: the part of its side.</summary>
    SpinThrow,

    /// <summary>The side that the struck ball gets from the hit; of a ball that is struck by the tip, its own
    /// side.</summary>
    Side,

    /// <summary>The ball rolls, or still has draw or follow, when it meets a cushion, instead of sliding into it
    /// without spin.</summary>
    Roll,

    /// <summary>The spin that a ball brings off a cushion bends its way.</summary>
    Curve,

    /// <summary>What the cushion does to a ball that slides in without any spin: its loss, its friction, and the way
    /// along the rail while the ball is in it.</summary>
    Rubber,

    /// <summary>The cloth slows the ball on the way to a cushion.</summary>
    Speed,

    /// <summary>The balls' friction on each other is not that of clean balls.</summary>
    BallCondition,
}
