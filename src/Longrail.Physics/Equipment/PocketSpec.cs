namespace Longrail.Physics.Equipment;

/// <summary>The shape of a pocket in plan.</summary>
/// <param name="Mouth">Distance between the two points where nose line and facing would meet, metres.</param>
/// <param name="CutAngle">Angle between the nose line and the facing, measured through the rubber, radians, in (pi/2,
/// pi).</param>
/// <param name="JawRadius">Radius of the rounding between nose line and facing, metres, not negative.</param>
/// <param name="Shelf">Distance of the slate's drop edge behind the mouth line, along the pocket's axis,
/// metres.</param>
/// <param name="DropRadius">Radius of the drop edge (the cut-out in the slate), metres, positive.</param>
public sealed record PocketSpec(double Mouth, double CutAngle, double JawRadius, double Shelf, double DropRadius);
