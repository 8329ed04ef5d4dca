namespace Longrail.Coaching.Ways;

/// <summary>By what the ways are ranked.</summary>
public enum WaysOrder
{
    /// <summary>The chance of the whole plan, best first.</summary>
    Plan,

    /// <summary>The chance to make this ball.</summary>
    Odds,

    /// <summary>The leeway of aim.</summary>
    Leeway,

    /// <summary>The kiss gap, largest first.</summary>
    Kiss,

    /// <summary>The speed, softest first.</summary>
    Speed,

    /// <summary>Fewest cushions first.</summary>
    Rails,
}
