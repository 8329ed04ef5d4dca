namespace Longrail.Coaching.Charts;

/// <summary>The banks that there are charts for.</summary>
public enum BankKind
{
    /// <summary>Off a long cushion into the side pocket across the table.</summary>
    CrossSide,

    /// <summary>Off a long cushion into a corner pocket across the table.</summary>
    CrossCorner,

    /// <summary>Off a short cushion, the length of the table back into a corner.</summary>
    LongRail,

    /// <summary>The cue ball alone, off one cushion to a place on the table.</summary>
    Kick,
}
