namespace Longrail.Coaching.Trials;

/// <summary>What a trial says of a comparison.</summary>
public enum TrialVerdict
{
    /// <summary>The conditions differ: a difference of 0 is ruled out at the planned level.</summary>
    Differs,

    /// <summary>The trial is over and does not rule out that there is no difference. That is not to say that there is
    /// none.</summary>
    CannotTell,

    /// <summary>A planned look that ends nothing: play on to the next.</summary>
    PlayOn,

    /// <summary>No plan was at hand, so nobody can say how often the results were looked at: an estimate, no
    /// verdict.</summary>
    NoPlan,

    /// <summary>Too few shots for any verdict.</summary>
    TooFew,
}
