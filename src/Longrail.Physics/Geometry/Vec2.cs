using System.Globalization;

namespace Longrail.Physics.Geometry;

/// <summary>A vector in the plane of the table. Metres, metres per second or whatever its context says.</summary>
/// <remarks>x runs from the head cushion to the foot, y from the right cushion to the left as seen from the
/// head.</remarks>
/// <param name="X">Along the table.</param>
/// <param name="Y">Across the table.</param>
public readonly record struct Vec2(double X, double Y)
{
    /// <summary>The zero vector.</summary>
    public static Vec2 Zero => default;

    /// <summary>The unit vector at an angle, counter-clockwise from +x.</summary>
    /// <param name="radians">The angle in radians.</param>
    public static Vec2 FromAngle(double radians) => new(Math.Cos(radians), Math.Sin(radians));

    /// <summary>The Euclidean length.</summary>
    public double Length => Math.Sqrt(X * X + Y * Y);

    /// <summary>The square of the length.</summary>
    public double LengthSquared => X * X + Y * Y;

    /// <summary>The direction, counter-clockwise from +x, in (-pi, pi]; 0 for the zero vector.</summary>
    public double Angle => Math.Atan2(Y, X);

    /// <summary>The vector turned a quarter turn to the left (counter-clockwise).</summary>
    public Vec2 Left => new(-Y, X);

    /// <summary>The vector turned a quarter turn to the right (clockwise).</summary>
    public Vec2 Right => new(Y, -X);

    /// <summary>The unit vector of the same direction; the zero vector stays zero.</summary>
    public Vec2 Normalized()
    {
        double length = Length;
        return length > 0 ? new Vec2(X / length, Y / length) : Zero;
    }

    /// <summary>The scalar product.</summary>
    public double Dot(Vec2 other) => X * other.X + Y * other.Y;

    /// <summary>The vertical component of the cross product: positive where <paramref name="other"/> lies to the
    /// left.</summary>
    public double Cross(Vec2 other) => X * other.Y - Y * other.X;

    /// <summary>The distance between two points.</summary>
    public double DistanceTo(Vec2 other) => (this - other).Length;

    /// <summary>The vector turned counter-clockwise.</summary>
    /// <param name="radians">The angle in radians.</param>
    public Vec2 Rotated(double radians)
    {
        (double sin, double cos) = Math.SinCos(radians);
        return new Vec2(X * cos - Y * sin, X * sin + Y * cos);
    }

    /// <summary>Componentwise sum.</summary>
    public static Vec2 operator +(Vec2 a, Vec2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Componentwise difference.</summary>
    public static Vec2 operator -(Vec2 a, Vec2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>The opposite vector.</summary>
    public static Vec2 operator -(Vec2 a) => new(-a.X, -a.Y);

    /// <summary>The vector scaled.</summary>
    public static Vec2 operator *(Vec2 a, double s) => new(a.X * s, a.Y * s);

    /// <summary>The vector scaled.</summary>
    public static Vec2 operator *(double s, Vec2 a) => new(a.X * s, a.Y * s);

    /// <summary>The vector divided by a number.</summary>
    public static Vec2 operator /(Vec2 a, double s) => new(a.X / s, a.Y / s);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"({X:R}, {Y:R})");
}
