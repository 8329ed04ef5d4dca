namespace Longrail.Coaching.Effects;

/// <summary>Units in which a budget can be shown.</summary>
public enum EffectUnit
{
    /// <summary>Diamonds along the target.</summary>
    Diamonds,

    /// <summary>Millimetres along the target.</summary>
    Millimetres,

    /// <summary>Parts of the half opening of a pocket: how far a ball's centre may pass from the middle of the mouth
    /// without touching a jaw point.</summary>
    HalfOpenings,
}
