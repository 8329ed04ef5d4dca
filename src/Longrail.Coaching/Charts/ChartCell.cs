using Longrail.Physics.Contacts;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Charts;

/// <summary>What a chart says of one place at one speed with one tip.</summary>
public sealed record ChartCell
{
    /// <summary>None, or why there is no answer; the numbers are then null.</summary>
    public required NoBank Failure { get; init; }

    /// <summary>The banked ball's centre as it touches the cushion, metres.</summary>
    public Vec2? Touch { get; init; }

    /// <summary>Its direction of travel there, radians counter-clockwise from +x.</summary>
    public double? Arrival { get; init; }

    /// <summary>Touch less mirror touch, in diamonds of the cushion at the nose: positive is longer, farther along the
    /// cushion the way the bank travels (towards higher numbers where the mirror ball goes straight in).</summary>
    public double? CorrectionDiamonds { get; init; }

    /// <summary>The number of the touch, in the chart's numbering.</summary>
    public double? Number { get; init; }

    /// <summary>The correction in the chart's numbering: the number less the mirror's, with the same sign as
    /// <see cref="CorrectionDiamonds"/>.</summary>
    public double? Correction { get; init; }

    /// <summary>The stroke, squirt taken out; with <see cref="CueBall"/> it plays the shot again. Null without an
    /// answer.</summary>
    public Stroke? Stroke { get; init; }

    /// <summary>The cue ball's centre, metres.</summary>
    public Vec2? CueBall { get; init; }
}
