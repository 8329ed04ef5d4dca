namespace Longrail.Physics.Equipment;

/// <summary>The four cushions, as seen by a player standing at the head of the table.</summary>
public enum CushionName
{
    /// <summary>The short cushion at x = 0.</summary>
    Head,

    /// <summary>The short cushion at x = length.</summary>
    Foot,

    /// <summary>The long cushion at y = width.</summary>
    Left,

    /// <summary>The long cushion at y = 0.</summary>
    Right,
}
