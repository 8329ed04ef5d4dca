namespace Longrail.Physics.Equipment;

/// <summary>The two laws of a ball's contact with a cushion.</summary>
public enum CushionLaw
{
    /// <summary>The rubber gives: the contact takes milliseconds, the ball sinks in and travels along the rail
    /// meanwhile.</summary>
    Yielding,

    /// <summary>Rigid impulse at an instant, with friction at nose and bed (Mathavan, Jackson and Parkin
    /// 2010).</summary>
    Impulse,
}
