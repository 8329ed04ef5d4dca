using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Effects;

/// <summary>The line on which arrivals are measured.</summary>
/// <remarks>A place on it is its distance along <see cref="Along"/>: for a cushion from the head or from the right, as
/// diamonds are counted; for a mouth from its middle.</remarks>
public sealed record EffectTarget
{
    /// <summary>What the line is.</summary>
    public required EffectTargetKind Kind { get; init; }

    /// <summary>The cushion whose line it is, or to which it is parallel; null for a mouth.</summary>
    public CushionName? Cushion { get; init; }

    /// <summary>The pocket whose half opening serves as a unit: the one that the ball goes into or is aimed at, else
    /// one within a diamond of its arrival; null without.</summary>
    public PocketName? Pocket { get; init; }

    /// <summary>Index of the ball that a kick meets; null if the target is no ball.</summary>
    public int? Met { get; init; }

    /// <summary>A point of the line from which places are counted, metres.</summary>
    public required Vec2 Origin { get; init; }

    /// <summary>Unit vector along the line, towards higher diamonds; along a mouth to the right, looking into the
    /// pocket.</summary>
    public required Vec2 Along { get; init; }

    /// <summary>Unit vector across the line, the way the ball goes.</summary>
    public required Vec2 Across { get; init; }

    /// <summary>Length of a diamond along the line, metres.</summary>
    public required double Diamond { get; init; }

    /// <summary>How far along the line a half opening of <see cref="Pocket"/> reaches for a ball that comes as this one
    /// does, metres; null without a pocket.</summary>
    public double? HalfOpening { get; init; }

    /// <summary>+1 if positive amounts of the budget point along <see cref="Along"/>, else -1.</summary>
    public required int Sense { get; init; }

    /// <summary>What a positive amount is called: "long", or a direction where a bank comes straight off its
    /// cushion.</summary>
    public required string PositiveWord { get; init; }

    /// <summary>What a negative amount is called: "short", or a direction.</summary>
    public required string NegativeWord { get; init; }

    /// <summary>The place of a point, metres along the line.</summary>
    /// <param name="point">A point on the line.</param>
    public double PlaceOf(Vec2 point) => (point - Origin).Dot(Along);

    /// <summary>The point at a place.</summary>
    /// <param name="place">Metres along the line.</param>
    public Vec2 PointAt(double place) => Origin + place * Along;

    /// <summary>A length along the line in a unit.</summary>
    /// <param name="metres">The length, metres.</param>
    /// <param name="unit">The unit.</param>
    /// <exception cref="InvalidOperationException">Half openings where there is no pocket.</exception>
    public double In(EffectUnit unit, double metres) => unit switch
    {
        EffectUnit.Diamonds => metres / Diamond,
        EffectUnit.Millimetres => 1000 * metres,
        _ => metres / (HalfOpening ?? throw new InvalidOperationException("There is no pocket to measure by.")),
    };
}
