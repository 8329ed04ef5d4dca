using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Contacts;

/// <summary>Two balls meeting at an instant.</summary>
/// <remarks>
/// Restitution along the line of centres; Coulomb friction across it, with a coefficient that falls with slip speed, up
/// to the impulse that stops the slip (1/7 m |slip| for equal balls). Slip and friction have a horizontal part, which
/// throws the ball and hands over side, and a vertical part, which hands over follow and draw; the vertical velocity it
/// would give is taken by the bed or lost in a hop that is not followed. W. Marlow (1995), D. Alciatore TP A.14 and
/// A.28, R. E. Wallace and M. C. Schroeder, Am. J. Phys. 56, 815 (1988). Balls of unequal size touch at a plan distance
/// of 2 sqrt(R1 R2) and are treated as confined to the plane of the table.
/// </remarks>
public static class BallContact
{
    /// <summary>The plan distance at which two balls on the bed touch, metres.</summary>
    /// <param name="radiusA">Radius of one, metres.</param>
    /// <param name="radiusB">Radius of the other, metres.</param>
    public static double Reach(double radiusA, double radiusB) =>
        radiusA == radiusB ? radiusA + radiusB : 2.0 * Math.Sqrt(radiusA * radiusB);

    /// <summary>Resolves one contact.</summary>
    /// <param name="a">One ball; changed.</param>
    /// <param name="radiusA">Its radius, metres.</param>
    /// <param name="massA">Its mass, kilograms.</param>
    /// <param name="b">The other; changed.</param>
    /// <param name="radiusB">Its radius, metres.</param>
    /// <param name="massB">Its mass, kilograms.</param>
    /// <param name="restitution">Separating over closing speed, in [0, 1].</param>
    /// <param name="friction">Friction between balls.</param>
    /// <returns>What passed between them.</returns>
    public static BallContactResult Collide(
        ref BallState a, double radiusA, double massA, ref BallState b, double radiusB, double massB,
        double restitution, BallFriction friction)
    {
        Vec2 normal = (b.Position - a.Position).Normalized();
        double closing = (a.Velocity - b.Velocity).Dot(normal);
        if (!(closing > 0)) return default;
        double reduced = massA * massB / (massA + massB);
        double impulse = (1.0 + restitution) * closing * reduced;
        Vec2 across = normal.Left;
        Slip(a, radiusA, b, radiusB, normal, out double slipAcross, out double slipUp);
        double slip = Math.Sqrt(slipAcross * slipAcross + slipUp * slipUp);
        double frictionImpulse = 0;
        bool gripped = true;
        if (slip > 0)
        {
            double stop = slip * reduced / 3.5;
            double limit = friction.At(slip) * impulse;
            gripped = limit >= stop;
            frictionImpulse = gripped ? stop : limit;
            double acrossImpulse = -frictionImpulse * slipAcross / slip;
            double upImpulse = -frictionImpulse * slipUp / slip;
            Apply(ref a, radiusA, massA, normal, across, acrossImpulse, upImpulse, 1.0);
            Apply(ref b, radiusB, massB, normal, across, acrossImpulse, upImpulse, -1.0);
        }

        a = a with { Velocity = a.Velocity - (impulse / massA) * normal };
        b = b with { Velocity = b.Velocity + (impulse / massB) * normal };
        double upward = slip > 0 ? frictionImpulse * Math.Abs(slipUp) / slip / Math.Min(massA, massB) : 0;
        return new BallContactResult(closing, slip, slipAcross, slipUp, impulse, frictionImpulse, gripped, upward);
    }

    /// <summary>Velocity of a's surface over b's at their point of contact.</summary>
    /// <param name="a">One ball.</param>
    /// <param name="radiusA">Its radius, metres.</param>
    /// <param name="b">The other.</param>
    /// <param name="radiusB">Its radius, metres.</param>
    /// <param name="normal">Unit vector from a to b.</param>
    /// <param name="across">Its horizontal part, to the left of the normal, m/s.</param>
    /// <param name="up">Its vertical part, m/s.</param>
    internal static void Slip(
        in BallState a, double radiusA, in BallState b, double radiusB, Vec2 normal, out double across, out double up)
    {
        // Surface velocity of a spinning ball at +-R n: w x (R n). Left of n it is R w_z; upwards R (w_x n_y - w_y
        // n_x).
        Vec2 left = normal.Left;
        across = (a.Velocity - b.Velocity).Dot(left) + radiusA * a.Spin.Z + radiusB * b.Spin.Z;
        up = radiusA * (a.Spin.X * normal.Y - a.Spin.Y * normal.X) + radiusB * (b.Spin.X * normal.Y - b.Spin.Y * normal.X);
    }

    /// <summary>Applies a friction impulse at the contact: <paramref name="sign"/> +1 for the ball it is given to, -1
    /// for its partner.</summary>
    internal static void Apply(
        ref BallState ball, double radius, double mass, Vec2 normal, Vec2 across, double acrossImpulse, double upImpulse, double sign)
    {
        // Torque: (sign R n) x (sign F) = R n x F, the same sense for both balls. n x left = z; n x z = -left.
        double spin = 2.5 / (mass * radius);
        ball = new BallState(
            ball.Position,
            ball.Velocity + (sign * acrossImpulse / mass) * across,
            new Vec3(
                ball.Spin.X - spin * upImpulse * across.X,
                ball.Spin.Y - spin * upImpulse * across.Y,
                ball.Spin.Z + spin * acrossImpulse));
    }
}
