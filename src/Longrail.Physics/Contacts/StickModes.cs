namespace Longrail.Physics.Contacts;

/// <summary>Which of the two contacts stick, and which creep.</summary>
/// <remarks>
/// A contact whose slip has died sticks if Coulomb's law can hold it; otherwise it slips on in a direction of its own. If the law can only just
/// not hold it, its slip stays near zero and its direction turns ever faster, which no step can follow; such a contact creeps: below
/// <see cref="Creep"/> its friction is taken as proportional to its slip. That is wrong by at most the creep speed, a few
/// ten-thousandths of the ball's, and rare.
/// </remarks>
internal struct StickModes
{
    /// <summary>Slip speed below which a contact counts as not slipping, as a part of the ball's largest speed.</summary>
    private const double StillFraction = 1e-7;

    /// <summary>Slip speed below which a creeping contact's friction falls off, as a part of the ball's largest speed.</summary>
    private const double CreepFraction = 3e-4;

    internal bool NoseSticks, BedSticks;

    internal bool NoseCreeps, BedCreeps;

    /// <summary>Direction of slip where its speed is too small to show one: the way it sets out once it cannot be held.</summary>
    internal double NoseX, NoseY, BedX, BedY;

    /// <summary>Slip speed below which a contact counts as not slipping, m/s.</summary>
    internal double Still;

    /// <summary>Slip speed below which a creeping contact's friction falls off, m/s.</summary>
    internal double Creep;

    /// <summary>Sets both thresholds for a ball whose largest speed is given.</summary>
    internal void ScaleTo(double speed)
    {
        Still = StillFraction * speed;
        Creep = CreepFraction * speed;
    }
}
