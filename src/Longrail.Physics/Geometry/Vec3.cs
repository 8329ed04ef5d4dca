using System.Globalization;

namespace Longrail.Physics.Geometry;

/// <summary>A vector in space; as a spin, in radians per second, right-handed: z is up, so +z turns counter-clockwise
/// seen from above.</summary>
/// <param name="X">Along the table.</param>
/// <param name="Y">Across the table, to the left seen from the head.</param>
/// <param name="Z">Up.</param>
public readonly record struct Vec3(double X, double Y, double Z)
{
    /// <summary>The zero vector.</summary>
    public static Vec3 Zero => default;

    /// <summary>The part in the plane of the table.</summary>
    public Vec2 Horizontal => new(X, Y);

    /// <summary>The Euclidean length.</summary>
    public double Length => Math.Sqrt(LengthSquared);

    /// <summary>The square of the length.</summary>
    public double LengthSquared => X * X + Y * Y + Z * Z;

    /// <summary>The scalar product.</summary>
    public double Dot(Vec3 other) => X * other.X + Y * other.Y + Z * other.Z;

    /// <summary>The vector product, right-handed.</summary>
    public Vec3 Cross(Vec3 o) => new(Y * o.Z - Z * o.Y, Z * o.X - X * o.Z, X * o.Y - Y * o.X);

    /// <summary>Componentwise sum.</summary>
    public static Vec3 operator +(Vec3 a, Vec3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Componentwise difference.</summary>
    public static Vec3 operator -(Vec3 a, Vec3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The opposite vector.</summary>
    public static Vec3 operator -(Vec3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>The vector scaled.</summary>
    public static Vec3 operator *(Vec3 a, double s) => new(a.X * s, a.Y * s, a.Z * s);

    /// <summary>The vector scaled.</summary>
    public static Vec3 operator *(double s, Vec3 a) => new(a.X * s, a.Y * s, a.Z * s);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"({X:R}, {Y:R}, {Z:R})");
}
