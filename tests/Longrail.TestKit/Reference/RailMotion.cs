namespace Longrail.TestKit.Reference;

/// <summary>A ball's motion in a cushion's own frame: x along the rail, y into the cushion, z up. Metres per second,
/// radians per second.</summary>
public struct RailMotion
{
    /// <summary>Velocity along the rail.</summary>
    public double Vx { get; set; }

    /// <summary>Velocity into the cushion.</summary>
    public double Vy { get; set; }

    /// <summary>Spin about the rail's direction.</summary>
    public double Wx { get; set; }

    /// <summary>Spin about the normal.</summary>
    public double Wy { get; set; }

    /// <summary>Spin about the vertical.</summary>
    public double Wz { get; set; }

    /// <summary>Kinetic energy per unit of mass, J/kg, for a solid ball of the given radius.</summary>
    public readonly double Energy(double radius) =>
        0.5 * (Vx * Vx + Vy * Vy) + 0.2 * radius * radius * (Wx * Wx + Wy * Wy + Wz * Wz);
}
