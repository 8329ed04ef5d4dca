namespace Longrail.Physics.Contacts;

/// <summary>What one piece of rubber remembers of the ball that is pressed into it.</summary>
internal struct RubberSlot
{
    /// <summary>Index of the piece of cushion; -1 when the slot is free.</summary>
    internal int Piece;

    /// <summary>Whether the rubber is past its deepest compression and gives back less than it took.</summary>
    internal bool Returning;

    /// <summary>Whether the ball only leans, so gently that the rubber gives back all that it took.</summary>
    internal bool Leaning;

    /// <summary>Deepest compression so far, seen from above, metres.</summary>
    internal double Deepest;

    /// <summary>Index of the event that the touch opened.</summary>
    internal int Event;

    internal static RubberSlot Free => new() { Piece = -1, Event = -1 };

    internal readonly bool InUse => Piece >= 0;

    /// <summary>Whether the rubber gives back less force than it took at the same depth.</summary>
    internal readonly bool Loses => Returning && !Leaning;

    /// <summary>Marks the deepest point: the rubber is on its way back from now on.</summary>
    internal void TurnBack(double depth, in RubberLaw law)
    {
        Returning = true;
        Deepest = Math.Max(Deepest, depth);
        Leaning = law.ReturnStiffness * Deepest < law.LeaningForce;
    }
}
