namespace Longrail.Physics.Contacts;

/// <summary>What one piece of rubber remembers of the ball that is pressed into it.</summary>
internal struct RubberSlot
{
    /// <summary>Index of the piece of cushion; -1 when the slot is free.</summary>
    internal int Piece;

    /// <summary>Whether the rubber is past its deepest compression and gives back less than it took.</summary>
    internal bool Returning;

    /// <summary>Deepest compression so far, seen from above, metres.</summary>
    internal double Deepest;

    /// <summary>Index of the event that the touch opened.</summary>
    internal int Event;

    internal static RubberSlot Free => new() { Piece = -1, Event = -1 };

    internal readonly bool InUse => Piece >= 0;
}
