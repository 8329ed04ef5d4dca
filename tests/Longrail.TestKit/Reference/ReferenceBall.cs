using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.TestKit.Reference;

/// <summary>A ball as the reference integrator carries it along.</summary>
public sealed class ReferenceBall
{
    /// <summary>Radius, metres.</summary>
    public required double Radius { get; init; }

    /// <summary>Mass, kilograms.</summary>
    public required double Mass { get; init; }

    /// <summary>Place of the centre along the table, metres.</summary>
    public double X { get; set; }

    /// <summary>Place of the centre across the table, metres.</summary>
    public double Y { get; set; }

    /// <summary>Velocity along the table, m/s.</summary>
    public double Vx { get; set; }

    /// <summary>Velocity across the table, m/s.</summary>
    public double Vy { get; set; }

    /// <summary>Spin about the x axis, rad/s.</summary>
    public double Wx { get; set; }

    /// <summary>Spin about the y axis, rad/s.</summary>
    public double Wy { get; set; }

    /// <summary>Spin about the vertical, rad/s.</summary>
    public double Wz { get; set; }

    /// <summary>Orientation since the start: scalar part of a unit quaternion.</summary>
    public double Qw { get; set; } = 1;

    /// <summary>Orientation: x part.</summary>
    public double Qx { get; set; }

    /// <summary>Orientation: y part.</summary>
    public double Qy { get; set; }

    /// <summary>Orientation: z part.</summary>
    public double Qz { get; set; }

    /// <summary>Index of the rail whose rubber it is in, or -1.</summary>
    public int Rail { get; set; } = -1;

    /// <summary>Greatest plan depth in that rubber since it touched, metres.</summary>
    public double Deepest { get; set; }

    /// <summary>State and time at the touch of that rubber.</summary>
    public BallState Touch { get; set; }

    /// <summary>Time of that touch, seconds.</summary>
    public double TouchTime { get; set; }

    /// <summary>From a ball of a set-up.</summary>
    public static ReferenceBall From(ShotBall ball) => new()
    {
        Radius = ball.Radius,
        Mass = ball.Mass,
        X = ball.Start.Position.X,
        Y = ball.Start.Position.Y,
        Vx = ball.Start.Velocity.X,
        Vy = ball.Start.Velocity.Y,
        Wx = ball.Start.Spin.X,
        Wy = ball.Start.Spin.Y,
        Wz = ball.Start.Spin.Z,
    };

    /// <summary>The state as the engine's type, for comparing.</summary>
    public BallState State => new(new Vec2(X, Y), new Vec2(Vx, Vy), new Vec3(Wx, Wy, Wz));

    /// <summary>The orientation as the engine's type, for comparing.</summary>
    public Rotation Orientation => new(Qw, Qx, Qy, Qz);

    /// <summary>Whether it moves or turns.</summary>
    public bool Moves => Vx != 0 || Vy != 0 || Wx != 0 || Wy != 0 || Wz != 0 || Rail >= 0;

    /// <summary>Takes over everything from another.</summary>
    public void Set(ReferenceBall o)
    {
        (X, Y, Vx, Vy, Wx, Wy, Wz) = (o.X, o.Y, o.Vx, o.Vy, o.Wx, o.Wy, o.Wz);
        (Qw, Qx, Qy, Qz, Rail, Deepest, Touch, TouchTime) = (
            o.Qw, o.Qx, o.Qy, o.Qz, o.Rail, o.Deepest, o.Touch, o.TouchTime);
    }

    /// <summary>A copy.</summary>
    public ReferenceBall Copy()
    {
        var copy = new ReferenceBall { Radius = Radius, Mass = Mass };
        copy.Set(this);
        return copy;
    }

    /// <summary>Turns the orientation by a spin that lasts for a short time.</summary>
    public void Turn(double wx, double wy, double wz, double time)
    {
        double rate = Math.Sqrt(wx * wx + wy * wy + wz * wz);
        if (rate == 0) return;
        (double sin, double cos) = Math.SinCos(0.5 * rate * time);
        double a = sin * wx / rate, b = sin * wy / rate, c = sin * wz / rate;
        // The small turn stands on the left: the spin is given in the table's frame.
        (Qw, Qx, Qy, Qz) = (
            cos * Qw - a * Qx - b * Qy - c * Qz,
            cos * Qx + a * Qw + b * Qz - c * Qy,
            cos * Qy - a * Qz + b * Qw + c * Qx,
            cos * Qz + a * Qy - b * Qx + c * Qw);
    }
}
