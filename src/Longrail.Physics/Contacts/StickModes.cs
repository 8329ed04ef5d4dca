namespace Longrail.Physics.Contacts;

/// <summary>Which of the two contacts sticks, and the slip's direction where its speed is too small to give one.</summary>
internal struct StickModes
{
    internal bool NoseSticks;
    internal bool BedSticks;

    /// <summary>Slip speed below which a contact counts as not slipping, m/s.</summary>
    internal double Still;

    /// <summary>Direction in which slip sets in when a stuck contact lets go.</summary>
    internal double NoseX, NoseY, BedX, BedY;
}
