using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Effects.Stages;

/// <summary>A cushion that the measured ball comes off on its counted way.</summary>
/// <param name="Event">Place of its event in the trace.</param>
/// <param name="Name">Which cushion.</param>
/// <param name="Law">The law by which the touch was resolved: an impulse near a jaw, else as the equipment has
/// it.</param>
/// <param name="TouchLine">The line on which a ball's centre touches it; crossed into the cushion.</param>
internal sealed record CountedCushion(int Event, CushionName Name, CushionLaw Law, StraightLine TouchLine)
{
    /// <summary>The line of a cushion on which a ball's centre touches it.</summary>
    internal static StraightLine LineOf(CushionName name, TableSpec table, double reach) => name switch
    {
        CushionName.Head => new StraightLine(new Vec2(reach, 0), new Vec2(-1, 0)),
        CushionName.Foot => new StraightLine(new Vec2(table.Length - reach, 0), new Vec2(1, 0)),
        CushionName.Left => new StraightLine(new Vec2(0, table.Width - reach), new Vec2(0, 1)),
        _ => new StraightLine(new Vec2(0, reach), new Vec2(0, -1)),
    };
}
