using Longrail.Physics.Geometry;

namespace Longrail.Drawing;

/// <summary>A point on the table, metres: x from the head cushion's nose line to the foot's, y from the right cushion's
/// to the left's.</summary>
/// <remarks>Not a point on paper; only <see cref="Viewport"/> turns one into the other.</remarks>
/// <param name="X">Along the table, metres.</param>
/// <param name="Y">Across the table, metres, to the left seen from the head.</param>
public readonly record struct TablePoint(double X, double Y)
{
    /// <summary>The point at the end of a vector from the table's origin.</summary>
    public static TablePoint From(Vec2 position) => new(position.X, position.Y);

    /// <summary>The vector from the table's origin to this point.</summary>
    public Vec2 ToVec2() => new(X, Y);
}
