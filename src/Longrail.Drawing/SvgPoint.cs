namespace Longrail.Drawing;

/// <summary>A point on the sheet, in tenths of a millimetre at full size: x to the right, y downwards from the top left
/// corner.</summary>
/// <remarks>Not a point on the table; only <see cref="Viewport"/> turns one into the other.</remarks>
/// <param name="X">To the right.</param>
/// <param name="Y">Downwards.</param>
public readonly record struct SvgPoint(double X, double Y)
{
    /// <summary>The point moved on the sheet.</summary>
    /// <param name="dx">To the right, tenths of a millimetre.</param>
    /// <param name="dy">Downwards, tenths of a millimetre.</param>
    public SvgPoint Moved(double dx, double dy) => new(X + dx, Y + dy);

    /// <summary>The distance between two points, tenths of a millimetre.</summary>
    public double DistanceTo(SvgPoint other) =>
        Math.Sqrt((X - other.X) * (X - other.X) + (Y - other.Y) * (Y - other.Y));
}
