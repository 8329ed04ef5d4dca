namespace Longrail.Physics.Geometry;

/// <summary>An orientation in space as a unit quaternion: where the ball's own axes have been turned to.</summary>
/// <remarks><c>default</c> is not a rotation; start from <see cref="Identity"/>.</remarks>
/// <param name="W">Scalar part.</param>
/// <param name="X">Vector part along x.</param>
/// <param name="Y">Vector part along y.</param>
/// <param name="Z">Vector part along z.</param>
public readonly record struct Rotation(double W, double X, double Y, double Z)
{
    /// <summary>No rotation.</summary>
    public static Rotation Identity => new(1, 0, 0, 0);

    /// <summary>The rotation about the direction of <paramref name="vector"/> by its length in radians.</summary>
    /// <remarks>Uses the series of sin(a/2)/a near zero, so tiny rotations keep their full precision.</remarks>
    public static Rotation FromVector(Vec3 vector)
    {
        double angle = vector.Length;
        double half = 0.5 * angle;
        // sin(a/2)/a = 1/2 - a^2/48 + ...; below 1e-4 rad the next term is under 1e-19.
        double scale = angle > 1e-4 ? Math.Sin(half) / angle : 0.5 - angle * angle / 48.0;
        return new Rotation(Math.Cos(half), vector.X * scale, vector.Y * scale, vector.Z * scale);
    }

    /// <summary>This rotation, then <paramref name="next"/> (both in the table's fixed frame).</summary>
    public Rotation Then(Rotation next) => new(
        next.W * W - next.X * X - next.Y * Y - next.Z * Z,
        next.W * X + next.X * W + next.Y * Z - next.Z * Y,
        next.W * Y - next.X * Z + next.Y * W + next.Z * X,
        next.W * Z + next.X * Y - next.Y * X + next.Z * W);

    /// <summary>The inverse rotation.</summary>
    public Rotation Inverse() => new(W, -X, -Y, -Z);

    /// <summary>The same rotation with its length brought back to one.</summary>
    public Rotation Normalized()
    {
        double n = Math.Sqrt(W * W + X * X + Y * Y + Z * Z);
        return new Rotation(W / n, X / n, Y / n, Z / n);
    }

    /// <summary>Turns a vector.</summary>
    public Vec3 Apply(Vec3 v)
    {
        var q = new Vec3(X, Y, Z);
        Vec3 t = 2.0 * q.Cross(v);
        return v + W * t + q.Cross(t);
    }

    /// <summary>The angle between two orientations, radians, in [0, pi].</summary>
    public double AngleTo(Rotation other)
    {
        Rotation d = Inverse().Then(other);
        return 2.0 * Math.Atan2(new Vec3(d.X, d.Y, d.Z).Length, Math.Abs(d.W));
    }
}
