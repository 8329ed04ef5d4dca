using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Ways.Search;

/// <summary>The edge of the table as one closed line: from the head end of the right cushion along it, then foot, left
/// and head cushion. A ball that goes down between two places on it has found a pocket.</summary>
/// <param name="table">The table.</param>
internal sealed class TableEdge(TableSpec table)
{
    /// <summary>Once round, metres.</summary>
    internal double Around { get; } = 2 * (table.Length + table.Width);

    /// <summary>The place nearest to a ball that touches a cushion.</summary>
    internal double Place(CushionName cushion, Vec2 ball) => cushion switch
    {
        CushionName.Right => Math.Clamp(ball.X, 0, table.Length),
        CushionName.Foot => table.Length + Math.Clamp(ball.Y, 0, table.Width),
        CushionName.Left => table.Length + table.Width + table.Length - Math.Clamp(ball.X, 0, table.Length),
        _ => 2 * table.Length + table.Width + table.Width - Math.Clamp(ball.Y, 0, table.Width),
    };

    /// <summary>The middle of a pocket.</summary>
    internal double Place(PocketName pocket) => pocket switch
    {
        PocketName.HeadRight => 0,
        PocketName.RightSide => 0.5 * table.Length,
        PocketName.FootRight => table.Length,
        PocketName.FootLeft => table.Length + table.Width,
        PocketName.LeftSide => 1.5 * table.Length + table.Width,
        _ => 2 * table.Length + table.Width,
    };

    /// <summary>The point of the nose line at a place.</summary>
    internal Vec2 Point(double place)
    {
        double s = place - Around * Math.Floor(place / Around);
        if (s <= table.Length) return new Vec2(s, 0);
        s -= table.Length;
        if (s <= table.Width) return new Vec2(table.Length, s);
        s -= table.Width;
        return s <= table.Length
            ? new Vec2(table.Length - s, table.Width)
            : new Vec2(0, table.Width - (s - table.Length));
    }

    /// <summary>The shorter way from one place to another, metres, positive counter-clockwise.</summary>
    internal double From(double a, double b) => Math.IEEERemainder(b - a, Around);

    /// <summary>Whether a cushion runs into a pocket.</summary>
    internal static bool Borders(CushionName cushion, PocketName pocket) => cushion switch
    {
        CushionName.Head => pocket is PocketName.HeadLeft or PocketName.HeadRight,
        CushionName.Foot => pocket is PocketName.FootLeft or PocketName.FootRight,
        CushionName.Left => pocket is PocketName.HeadLeft or PocketName.LeftSide or PocketName.FootLeft,
        _ => pocket is PocketName.HeadRight or PocketName.RightSide or PocketName.FootRight,
    };
}
