using Longrail.Physics.Equipment;

namespace Longrail.Physics.Geometry;

/// <summary>A pocket in plan: mouth, axis and drop.</summary>
/// <param name="Name">Which pocket.</param>
/// <param name="MouthCentre">Middle of the line between the two jaw points, metres.</param>
/// <param name="Axis">Unit vector from the table into the pocket.</param>
/// <param name="Mouth">Width of the mouth, metres.</param>
/// <param name="DropCentre">Centre of the drop edge, metres.</param>
/// <param name="DropRadius">Radius of the drop edge, metres.</param>
/// <param name="PieceA">Index of the piece of cushion on the right of the mouth, looking into the pocket.</param>
/// <param name="JawA">Its jaw here.</param>
/// <param name="PieceB">Index of the piece on the left.</param>
/// <param name="JawB">Its jaw here.</param>
public readonly record struct PocketOutline(
    PocketName Name, Vec2 MouthCentre, Vec2 Axis, double Mouth, Vec2 DropCentre, double DropRadius,
    int PieceA, JawEnd JawA, int PieceB, JawEnd JawB);
