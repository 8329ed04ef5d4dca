using Longrail.Coaching.Statistics;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Charts;

/// <summary>What a map says of one place of the object ball.</summary>
public sealed record MapCell
{
    /// <summary>The place, diamonds along and across.</summary>
    public required Vec2 Place { get; init; }

    /// <summary>None, or why the bank cannot be made from there; the numbers are then null.</summary>
    public required NoBank Failure { get; init; }

    /// <summary>The best of the speeds, m/s.</summary>
    public double? Speed { get; init; }

    /// <summary>The stick's direction at the middle of what makes the bank, radians counter-clockwise from
    /// +x.</summary>
    public double? Aim { get; init; }

    /// <summary>How far the aim may be off from there, either way, radians.</summary>
    public double? Leeway { get; init; }

    /// <summary>The chance that the player makes the bank and keeps the cue ball; null on a map of leeway.</summary>
    public Odds? Made { get; init; }
}
