using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>A natural speed for a straight pot.</summary>
internal static class PotSpeed
{
    /// <summary>How far past the mouth the ball would roll, metres (assumption).</summary>
    private const double RollOn = 0.75;

    private const double Slowest = 0.6;
    private const double Fastest = 5.0;

    /// <summary>A ball that skids ends rolling with five sevenths of its speed.</summary>
    private const double SkidLoss = 7.0 / 5.0;

    /// <summary>The cue ball's speed as it leaves the tip, m/s.</summary>
    public static double Of(PotLine pot, EquipmentSpec equipment)
    {
        double roll = 2 * equipment.Cloth.RollingFriction * equipment.Table.Gravity;
        double slide = 2 * equipment.Cloth.SlidingFriction * equipment.Table.Gravity;
        double ball = SkidLoss * Math.Sqrt(roll * (pot.Distance + RollOn));
        double atTouch = 2 * ball / ((1 + equipment.BallSet.Restitution) * Math.Cos(pot.Cut));
        // Skidding all the way or rolling before the touch: the smaller of the two is the one that happens.
        double leaving = Math.Min(
            Math.Sqrt(atTouch * atTouch + slide * pot.Reach),
            SkidLoss * Math.Sqrt(atTouch * atTouch + roll * pot.Reach));
        return Math.Clamp(leaving, Slowest, Fastest);
    }
}
