using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Ways.Search;

/// <summary>The plain mirror construction: the way of a point over cushions that give back the angle at which they are
/// met.</summary>
/// <param name="table">The table.</param>
/// <param name="reach">Distance from the nose line at which the ball touches it, metres.</param>
internal sealed class MirrorPath(TableSpec table, double reach)
{
    /// <summary>The corners of the way from a start over cushions to a target, both ends included; null if there is
    /// none.</summary>
    internal Vec2[]? Of(Vec2 start, CushionList cushions, Vec2 target)
    {
        int count = cushions.Count;
        // The target's images, the last cushion's first.
        Span<Vec2> images = stackalloc Vec2[count + 1];
        images[count] = target;
        for (int i = count - 1; i >= 0; i--) images[i] = Mirrored(images[i + 1], cushions[i]);
        var corners = new Vec2[count + 2];
        corners[0] = start;
        for (int i = 0; i < count; i++)
        {
            if (Crossing(corners[i], images[i], cushions[i]) is not { } corner) return null;
            corners[i + 1] = corner;
        }

        corners[count + 1] = target;
        return corners;
    }

    private Vec2 Mirrored(Vec2 p, CushionName cushion) => cushion switch
    {
        CushionName.Head => new Vec2(2 * reach - p.X, p.Y),
        CushionName.Foot => new Vec2(2 * (table.Length - reach) - p.X, p.Y),
        CushionName.Left => new Vec2(p.X, 2 * (table.Width - reach) - p.Y),
        _ => new Vec2(p.X, 2 * reach - p.Y),
    };

    /// <summary>Where the straight line between two points touches a cushion, if it does so within the
    /// cushion.</summary>
    private Vec2? Crossing(Vec2 from, Vec2 to, CushionName cushion)
    {
        Vec2 way = to - from;
        (double gap, double closing) = cushion switch
        {
            CushionName.Head => (from.X - reach, -way.X),
            CushionName.Foot => (table.Length - reach - from.X, way.X),
            CushionName.Left => (table.Width - reach - from.Y, way.Y),
            _ => (from.Y - reach, -way.Y),
        };
        if (!(closing > 0) || gap < -1e-9 || gap > closing) return null;
        Vec2 corner = from + (gap / closing) * way;
        bool within = cushion is CushionName.Head or CushionName.Foot
            ? corner.Y > reach && corner.Y < table.Width - reach
            : corner.X > reach && corner.X < table.Length - reach;
        return within ? corner : null;
    }
}
