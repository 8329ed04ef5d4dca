using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>The line of the stick, drawn on to a cushion.</summary>
public static class StickLine
{
    /// <summary>The point at which the stick points: where its line through the cue ball's centre meets a nose
    /// line. Pockets are ignored.</summary>
    /// <param name="from">The cue ball's centre, metres, between the nose lines.</param>
    /// <param name="aim">Direction of the stick, radians counter-clockwise from +x.</param>
    /// <param name="table">The table.</param>
    public static AimPoint AimPoint(Vec2 from, double aim, TableSpec table)
    {
        ArgumentNullException.ThrowIfNull(table);
        Vec2 direction = Vec2.FromAngle(aim);
        double alongX = Distance(from.X, direction.X, table.Length);
        double alongY = Distance(from.Y, direction.Y, table.Width);
        CushionName cushion = alongX < alongY
            ? direction.X > 0 ? CushionName.Foot : CushionName.Head
            : direction.Y > 0 ? CushionName.Left : CushionName.Right;
        Vec2 point = from + Math.Min(alongX, alongY) * direction;
        return new AimPoint(cushion, Diamonds.Along(cushion, point, table));
    }

    private static double Distance(double from, double direction, double end) => direction switch
    {
        > 0 => (end - from) / direction,
        < 0 => -from / direction,
        _ => double.PositiveInfinity,
    };
}
