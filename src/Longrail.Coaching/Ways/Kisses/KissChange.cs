namespace Longrail.Coaching.Ways.Kisses;

/// <summary>The one thing that is changed to get round a double kiss.</summary>
public enum KissChange
{
    /// <summary>The cut: another aim at the same speed and tip.</summary>
    Cut,

    /// <summary>The speed, aimed anew.</summary>
    Speed,

    /// <summary>The side, aimed anew.</summary>
    Side,

    /// <summary>The height of the tip, aimed anew.</summary>
    Height,

    /// <summary>Another route.</summary>
    Route,
}
