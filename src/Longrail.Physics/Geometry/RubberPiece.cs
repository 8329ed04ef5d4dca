using Longrail.Physics.Equipment;

namespace Longrail.Physics.Geometry;

/// <summary>One piece of cushion: a straight nose line with a jaw at each end that borders on a pocket.</summary>
/// <remarks>Lines and roundings join without a kink, so a ball pressed into the rubber can travel from one to the
/// next.</remarks>
public readonly struct RubberPiece
{
    internal RubberPiece(CushionName cushion, Vec2 start, Vec2 direction, Vec2 inward, double length, JawEnd? atStart, JawEnd? atEnd)
    {
        Cushion = cushion;
        Start = start;
        Direction = direction;
        Inward = inward;
        Length = length;
        HasJaws = atStart.HasValue;
        AtStart = atStart.GetValueOrDefault();
        AtEnd = atEnd.GetValueOrDefault();
        SolidFrom = HasJaws ? AtStart.NoseTangent : double.NegativeInfinity;
        SolidTo = HasJaws ? length - AtEnd.NoseTangent : double.PositiveInfinity;
    }

    /// <summary>The cushion that it belongs to.</summary>
    public CushionName Cushion { get; }

    /// <summary>The nose line's start, metres.</summary>
    public Vec2 Start { get; }

    /// <summary>Unit vector along the nose line.</summary>
    public Vec2 Direction { get; }

    /// <summary>Unit normal, towards the table.</summary>
    public Vec2 Inward { get; }

    /// <summary>Length between the points where nose line and facings would meet, metres.</summary>
    public double Length { get; }

    /// <summary>Whether its ends border on pockets.</summary>
    public bool HasJaws { get; }

    /// <summary>The jaw at its start.</summary>
    public JawEnd AtStart { get; }

    /// <summary>The jaw at its end.</summary>
    public JawEnd AtEnd { get; }

    /// <summary>Where along the nose line the straight part begins, metres from the start.</summary>
    public double SolidFrom { get; }

    /// <summary>Where along the nose line the straight part ends, metres from the start.</summary>
    public double SolidTo { get; }

    /// <summary>How far a point is from being touched, and the direction into the rubber there.</summary>
    /// <param name="point">Centre of a ball, metres.</param>
    /// <param name="reach">Distance in plan at which the ball touches the nose, metres.</param>
    /// <param name="intoRubber">Unit vector from the point into the rubber.</param>
    /// <returns>The gap in plan, metres; negative when the ball is pressed in.</returns>
    public double Gap(Vec2 point, double reach, out Vec2 intoRubber)
    {
        Vec2 relative = point - Start;
        double along = relative.Dot(Direction);
        if (along >= SolidFrom && along <= SolidTo)
        {
            intoRubber = -Inward;
            return relative.Dot(Inward) - reach;
        }

        JawEnd jaw = along < SolidFrom ? AtStart : AtEnd;
        Vec2 fromCentre = point - jaw.Centre;
        if (fromCentre.Dot(jaw.FacingDirection) > 0)
        {
            intoRubber = -jaw.FacingNormal;
            return (point - jaw.FacingStart).Dot(jaw.FacingNormal) - reach;
        }

        double distance = fromCentre.Length;
        intoRubber = fromCentre / -distance;
        return distance - jaw.Radius - reach;
    }
}
