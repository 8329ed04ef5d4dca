using Longrail.Physics.Equipment;

namespace Longrail.Physics.Geometry;

/// <summary>The plain mirror bank: where a ball would have to touch the cushions if it came off each of them at the
/// angle at which it came. The line against which every correction is measured.</summary>
/// <remarks>The table is unfolded: the target is mirrored at the cushions' touch lines, last one first, and a straight
/// line drawn to it. The touch line lies one reach before the nose line (<see cref="TableOutline.Reach"/>), because
/// that is where the ball's centre turns.</remarks>
public static class MirrorBank
{
    /// <summary>Where the ball's centre stands at each touch, metres.</summary>
    /// <param name="from">The ball's centre at the start, metres.</param>
    /// <param name="off">The cushions, in order; at least one.</param>
    /// <param name="to">Where its centre is to go, metres.</param>
    /// <param name="table">The table; its pockets play no part.</param>
    /// <param name="reach">Distance of the ball's centre from a nose line at the touch, metres.</param>
    /// <returns>One point for each cushion, or null if a straight line does not meet them in that order. A point may
    /// lie beyond the cushion's end or in a pocket's mouth.</returns>
    /// <exception cref="ArgumentException">No cushion is named.</exception>
    public static Vec2[]? Touches(Vec2 from, IReadOnlyList<CushionName> off, Vec2 to, TableSpec table, double reach)
    {
        ArgumentNullException.ThrowIfNull(off);
        ArgumentNullException.ThrowIfNull(table);
        if (off.Count == 0) throw new ArgumentException("A bank takes at least one cushion.", nameof(off));
        var targets = new Vec2[off.Count + 1];
        targets[off.Count] = to;
        for (int i = off.Count - 1; i >= 0; i--) targets[i] = Mirrored(off[i], targets[i + 1], table, reach);
        var touches = new Vec2[off.Count];
        Vec2 at = from;
        for (int i = 0; i < off.Count; i++)
        {
            double gap = Gap(off[i], at, table, reach);
            double beyond = -Gap(off[i], targets[i], table, reach);
            if (!(gap >= 0 && gap + beyond > 0 && beyond >= 0)) return null;
            touches[i] = at = at + (gap / (gap + beyond)) * (targets[i] - at);
        }

        return touches;
    }

    /// <summary>Distance of a ball's centre from a cushion's touch line, metres; negative beyond it.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="centre">The ball's centre, metres.</param>
    /// <param name="table">The table.</param>
    /// <param name="reach">Distance of the touch line from the nose line, metres.</param>
    public static double Gap(CushionName cushion, Vec2 centre, TableSpec table, double reach)
    {
        ArgumentNullException.ThrowIfNull(table);
        return cushion switch
        {
            CushionName.Head => centre.X - reach,
            CushionName.Foot => table.Length - reach - centre.X,
            CushionName.Left => table.Width - reach - centre.Y,
            _ => centre.Y - reach,
        };
    }

    private static Vec2 Mirrored(CushionName cushion, Vec2 p, TableSpec table, double reach) => cushion switch
    {
        CushionName.Head => p with { X = 2 * reach - p.X },
        CushionName.Foot => p with { X = 2 * (table.Length - reach) - p.X },
        CushionName.Left => p with { Y = 2 * (table.Width - reach) - p.Y },
        _ => p with { Y = 2 * reach - p.Y },
    };
}
