using Longrail.Physics.Equipment;

namespace Longrail.Physics.Geometry;

/// <summary>The end of a piece of cushion at a pocket: a rounding tangent to the nose line, then the facing.</summary>
public readonly struct JawEnd
{
    /// <summary>Makes the end from the point where nose line and facing would meet.</summary>
    /// <param name="corner">That point, metres.</param>
    /// <param name="towardPocket">Unit vector along the nose line, towards the pocket.</param>
    /// <param name="inward">Unit normal of the nose line, towards the table.</param>
    /// <param name="pocket">The pocket's shape.</param>
    /// <param name="name">The pocket's name.</param>
    internal JawEnd(Vec2 corner, Vec2 towardPocket, Vec2 inward, PocketSpec pocket, PocketName name)
    {
        Pocket = name;
        Corner = corner;
        TowardPocket = towardPocket;
        double turn = Math.PI - pocket.CutAngle;
        double tangent = pocket.JawRadius * Math.Tan(turn / 2);
        NoseTangent = tangent;
        NoseTangentPoint = corner - tangent * towardPocket;
        Radius = pocket.JawRadius;
        Centre = corner - tangent * towardPocket - pocket.JawRadius * inward;
        (double sin, double cos) = Math.SinCos(turn);
        FacingDirection = cos * towardPocket - sin * inward;
        FacingNormal = cos * inward + sin * towardPocket;
        FacingStart = corner + tangent * FacingDirection;
    }

    /// <summary>The pocket.</summary>
    public PocketName Pocket { get; }

    /// <summary>Where nose line and facing would meet, metres.</summary>
    public Vec2 Corner { get; }

    /// <summary>Unit vector along the nose line, towards the pocket.</summary>
    public Vec2 TowardPocket { get; }

    /// <summary>Length of the nose line taken away by the rounding, metres.</summary>
    public double NoseTangent { get; }

    /// <summary>Where the rounding meets the nose line, metres.</summary>
    public Vec2 NoseTangentPoint { get; }

    /// <summary>Centre of the rounding, inside the rubber, metres.</summary>
    public Vec2 Centre { get; }

    /// <summary>Radius of the rounding, metres.</summary>
    public double Radius { get; }

    /// <summary>Where the facing begins, metres.</summary>
    public Vec2 FacingStart { get; }

    /// <summary>Unit vector along the facing, into the pocket.</summary>
    public Vec2 FacingDirection { get; }

    /// <summary>Unit normal of the facing, towards the middle of the mouth.</summary>
    public Vec2 FacingNormal { get; }
}
