using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Charts.Solving;

/// <summary>The strokes of a chart: level stick, a speed, a place of the tip.</summary>
internal static class CueBallStroke
{
    /// <summary>Height of the tip at which a ball rolls from the start, over its radius: 2/5 (rigid sphere).</summary>
    private const double RollHeight = 0.4;

    /// <summary>A stroke along +x of the stick.</summary>
    /// <param name="equipment">The equipment.</param>
    /// <param name="height">At what height the tip strikes.</param>
    /// <param name="right">Where the tip touches, to the right, metres.</param>
    /// <param name="speed">Speed of the ball as it leaves the tip, m/s.</param>
    /// <param name="way">How far the cue ball goes to the hit, metres; matters for a stun only.</param>
    /// <param name="failure">None, or why there is no such stroke.</param>
    internal static Stroke Of(
        EquipmentSpec equipment, CueHeight height, double right, double speed, double way, out NoBank failure)
    {
        double radius = 0.5 * equipment.BallSet.Diameter;
        double above = height switch
        {
            CueHeight.Follow => RollHeight * radius,
            CueHeight.Stun => -StunHeight(equipment, speed, way) * radius,
            _ => 0,
        };
        double offset = Math.Sqrt(right * right + above * above) / radius;
        failure = offset <= TipContact.MiscueLimit(equipment.Cue) ? NoBank.None : NoBank.Miscue;
        return new Stroke(0, speed, right, above, 0);
    }

    /// <summary>How far below the centre, over the radius, a ball must be struck to lose its last backspin after a way.
    /// </summary>
    /// <remarks>Backspin f v 5/2 dies at 5/2 mu g, so after the time f v/(mu g), over the way (v^2/(mu g)) (f - f^2/2);
    /// solved for f. NaN if the ball stops before.</remarks>
    private static double StunHeight(EquipmentSpec equipment, double speed, double way)
    {
        double friction = equipment.Cloth.SlidingFriction * equipment.Table.Gravity;
        double part = 2 * friction * Math.Max(way, 0) / (speed * speed);
        return part / (1 + Math.Sqrt(1 - part));
    }
}
