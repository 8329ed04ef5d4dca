using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Coaching.Effects.Stages;

/// <summary>A ball alone on a bed without end: follows it to a line.</summary>
/// <param name="radius">Ball radius, metres.</param>
/// <param name="cloth">The cloth.</param>
/// <param name="gravity">Free fall, m/s^2.</param>
internal sealed class FreeWay(double radius, ClothSpec cloth, double gravity)
{
    // Rounding of coordinates of a few metres: a ball this near to a line and closing stands on it.
    private const double OnLine = 1e-9;

    // Slide, roll, pivot: one more than a ball can go through.
    private const int MostPhases = 4;

    /// <summary>The ball as its centre crosses a line; null if it stops before or never does.</summary>
    internal BallState? To(StraightLine line, BallState state)
    {
        for (int phase = 0; phase < MostPhases; phase++)
        {
            FreeMotion motion = FreeMotion.From(state, radius, cloth, gravity);
            if (motion.Phase is not (MotionPhase.Sliding or MotionPhase.Rolling))
                return null;
            double time = Crossing(line, motion.Start, motion.Acceleration);
            if (time <= motion.Duration)
                return motion.At(time);
            state = motion.At(motion.Duration);
        }

        return null;
    }

    /// <summary>Where its centre crosses a line, straight on if it stops before; null if its way leads
    /// elsewhere.</summary>
    internal Vec2? Arrival(StraightLine line, BallState state)
    {
        FreeMotion motion = FreeMotion.From(state, radius, cloth, gravity);
        if (motion.Phase == MotionPhase.Sliding)
        {
            double time = Crossing(line, motion.Start, motion.Acceleration);
            if (time <= motion.Duration)
                return motion.At(time).Position;
            motion = FreeMotion.From(motion.At(motion.Duration), radius, cloth, gravity);
        }

        if (motion.Phase != MotionPhase.Rolling)
            return null;
        double way = Crossing(line, motion.Start, Vec2.Zero);
        return double.IsFinite(way) ? motion.Start.Position + way * motion.Start.Velocity : null;
    }

    /// <summary>When the gap g0 + g1 t + g2 t^2/2 to a line closes; infinity for never.</summary>
    private static double Crossing(StraightLine line, in BallState start, Vec2 acceleration)
    {
        double gap = (line.Point - start.Position).Dot(line.Across);
        double opening = -start.Velocity.Dot(line.Across);
        double bend = -acceleration.Dot(line.Across);
        if (gap <= OnLine)
            return gap >= -OnLine && opening < 0 ? 0 : double.PositiveInfinity;
        double discriminant = opening * opening - 2 * bend * gap;
        // At the root wanted the gap falls: its slope is minus the square root.
        double divisor = discriminant >= 0 ? Math.Sqrt(discriminant) - opening : 0;
        return divisor > 0 ? 2 * gap / divisor : double.PositiveInfinity;
    }
}
