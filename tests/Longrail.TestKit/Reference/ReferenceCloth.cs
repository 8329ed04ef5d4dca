using Longrail.Physics.Equipment;

namespace Longrail.TestKit.Reference;

/// <summary>A ball on the cloth for a short time, from force and torque: Coulomb friction at its lowest point while
/// that slips (Coriolis 1835), rolling resistance while it does not, a steady brake on the spin about the
/// vertical.</summary>
public static class ReferenceCloth
{
    /// <summary>Moves a ball by a time step. Steps are cut at the instant at which the skid ends or the ball
    /// stops.</summary>
    public static void Advance(ReferenceBall b, ClothSpec cloth, double gravity, double time)
    {
        double left = time;
        while (left > 0)
        {
            // Velocity of the lowest point: v + w x (0, 0, -R).
            double slipX = b.Vx - b.Wy * b.Radius, slipY = b.Vy + b.Wx * b.Radius;
            double slip = Math.Sqrt(slipX * slipX + slipY * slipY);
            double speed = Math.Sqrt(b.Vx * b.Vx + b.Vy * b.Vy);
            double forceX = 0, forceY = 0, torqueX = 0, torqueY = 0, step = left;
            bool skids = slip > 1e-11, skidEnds = false, stops = false;
            if (skids)
            {
                double force = cloth.SlidingFriction * gravity;
                (forceX, forceY) = (-force * slipX / slip, -force * slipY / slip);
                // Torque (0, 0, -R) x F over (2/5) R^2, per unit of mass.
                (torqueX, torqueY) = (2.5 * forceY / b.Radius, -2.5 * forceX / b.Radius);
                double ends = slip / (3.5 * force);
                if (ends <= step) (step, skidEnds) = (ends, true);
            }
            else if (speed > 0)
            {
                double force = cloth.RollingFriction * gravity;
                (forceX, forceY) = (-force * b.Vx / speed, -force * b.Vy / speed);
                double ends = speed / force;
                if (ends <= step) (step, stops) = (ends, true);
            }

            double wx = b.Wx, wy = b.Wy, wz = b.Wz;
            b.X += b.Vx * step + 0.5 * forceX * step * step;
            b.Y += b.Vy * step + 0.5 * forceY * step * step;
            b.Vx += forceX * step;
            b.Vy += forceY * step;
            b.Wx += torqueX * step;
            b.Wy += torqueY * step;
            b.Wz = Math.Sign(b.Wz) * Math.Max(0, Math.Abs(b.Wz) - cloth.SpinDecay * step);
            if (stops) (b.Vx, b.Vy) = (0, 0);
            if (!skids || skidEnds) (b.Wx, b.Wy) = (-b.Vy / b.Radius, b.Vx / b.Radius);
            b.Turn(0.5 * (wx + b.Wx), 0.5 * (wy + b.Wy), 0.5 * (wz + b.Wz), step);
            left -= step;
            if (!b.Moves) return;
        }
    }
}
