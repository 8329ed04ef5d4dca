namespace Longrail.Coaching.Charts;

/// <summary>At what height the tip strikes.</summary>
public enum CueHeight
{
    /// <summary>So much below the centre that the cue ball meets the object ball without any roll.</summary>
    Stun,

    /// <summary>Two fifths of a radius above the centre: the cue ball rolls from the start.</summary>
    Follow,

    /// <summary>At the height of the centre: it slides at first, and rolls once the cloth has brought it to.</summary>
    Centre,
}
