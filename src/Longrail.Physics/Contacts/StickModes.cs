namespace Longrail.Physics.Contacts;

/// <summary>How the two contacts of a pressed ball stand: stuck, slipping, or setting out.</summary>
/// <remarks>
/// A contact whose slip has all but died sticks if Coulomb's law can hold it; otherwise it slips on. Where the law can
/// only just not hold it, the slip grows slowly out of nothing while its direction settles at once to the one in which
/// it can grow. No step can follow that settling, nor need it: while the slip is that slow the contact <em>sets
/// out</em>, with its direction taken as settled.
/// </remarks>
internal struct StickModes
{
    /// <summary>Slip speed below which a contact shows no direction, as a part of the ball's largest speed.</summary>
    private const double StillFraction = 1e-7;

    /// <summary>Slip speed at which a contact may begin to stick, as a part of the ball's largest speed. The last of
    /// its slip is then taken out at once, at a cost of about a tenth of this.</summary>
    private const double SlowFraction = 5e-5;

    internal bool NoseSticks, BedSticks;

    /// <summary>Whether a contact's slip is too slow to follow its turning: its direction is then the settled one
    /// below.</summary>
    internal bool NoseSetsOut, BedSetsOut;

    /// <summary>The settled directions of slip.</summary>
    internal double NoseX, NoseY, BedX, BedY;

    /// <summary>Slip speed below which a contact shows no direction, m/s.</summary>
    internal double Still;

    /// <summary>Slip speed at which a contact may begin to stick, m/s.</summary>
    internal double Slow;

    /// <summary>Sets both thresholds for a ball whose largest speed is given.</summary>
    internal void ScaleTo(double speed)
    {
        Still = StillFraction * speed;
        Slow = SlowFraction * speed;
    }
}
