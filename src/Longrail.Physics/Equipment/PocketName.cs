namespace Longrail.Physics.Equipment;

/// <summary>The six pockets, as seen by a player standing at the head of the table.</summary>
public enum PocketName
{
    /// <summary>The corner at the head end of the right cushion.</summary>
    HeadRight,

    /// <summary>The corner at the head end of the left cushion.</summary>
    HeadLeft,

    /// <summary>The middle of the right cushion.</summary>
    RightSide,

    /// <summary>The middle of the left cushion.</summary>
    LeftSide,

    /// <summary>The corner at the foot end of the right cushion.</summary>
    FootRight,

    /// <summary>The corner at the foot end of the left cushion.</summary>
    FootLeft,
}
