using Longrail.Physics.Equipment;

namespace Longrail.TestKit.Reference;

/// <summary>Two balls meeting at an instant, written with forces, arms and cross products in space.</summary>
/// <remarks>The line of centres is taken in the plane of the table, also for balls of unequal size. The vertical
/// velocity that friction gives is dropped afterwards: the bed and the ball's weight take it.</remarks>
public static class ReferenceBallContact
{
    /// <summary>Changes the motion of both balls.</summary>
    /// <returns>The slip speed at the contact before and the ratio of friction impulse to what would have stopped the
    /// slip.</returns>
    public static (double Slip, double Grip) Collide(
        ReferenceBall a, ReferenceBall b, double restitution, BallFriction friction)
    {
        double nx = b.X - a.X, ny = b.Y - a.Y, distance = Math.Sqrt(nx * nx + ny * ny);
        (nx, ny) = (nx / distance, ny / distance);
        double closing = (a.Vx - b.Vx) * nx + (a.Vy - b.Vy) * ny;
        double shared = 1 / (1 / a.Mass + 1 / b.Mass);
        double push = (1 + restitution) * closing * shared;

        // Velocity of a's surface against b's at the contact: (va + wa x Ra n) - (vb - wb x Rb n).
        (double ax, double ay, double az) = Cross(a.Wx, a.Wy, a.Wz, a.Radius * nx, a.Radius * ny, 0);
        (double bx, double by, double bz) = Cross(b.Wx, b.Wy, b.Wz, b.Radius * nx, b.Radius * ny, 0);
        double sx = a.Vx - b.Vx + ax + bx, sy = a.Vy - b.Vy + ay + by, sz = az + bz;
        double along = sx * nx + sy * ny;
        (sx, sy) = (sx - along * nx, sy - along * ny);
        double slip = Math.Sqrt(sx * sx + sy * sy + sz * sz);

        double jx = -push * nx, jy = -push * ny, jz = 0, grip = 0;
        if (slip > 0)
        {
            // A tangential impulse J changes the slip by J (1/ma + 1/mb)(1 + 5/2): translation and turning.
            double stop = slip * shared / 3.5;
            double rub = Math.Min((friction.Base + friction.Gain * Math.Exp(-friction.Decay * slip)) * push, stop);
            grip = rub / stop;
            (jx, jy, jz) = (jx - rub * sx / slip, jy - rub * sy / slip, -rub * sz / slip);
        }

        Kick(a, jx, jy, jz, a.Radius * nx, a.Radius * ny);
        Kick(b, -jx, -jy, -jz, -b.Radius * nx, -b.Radius * ny);
        return (slip, grip);
    }

    private static void Kick(ReferenceBall ball, double jx, double jy, double jz, double armX, double armY)
    {
        double inertia = 0.4 * ball.Mass * ball.Radius * ball.Radius;
        (double tx, double ty, double tz) = Cross(armX, armY, 0, jx, jy, jz);
        ball.Vx += jx / ball.Mass;
        ball.Vy += jy / ball.Mass;
        ball.Wx += tx / inertia;
        ball.Wy += ty / inertia;
        ball.Wz += tz / inertia;
    }

    private static (double X, double Y, double Z) Cross(
        double ax, double ay, double az, double bx, double by, double bz) =>
        (ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx);
}
