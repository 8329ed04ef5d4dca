using Longrail.Physics.Equipment;

namespace Longrail.TestKit.Reference;

/// <summary>One straight cushion: a point on its nose line and the direction into it.</summary>
/// <param name="Name">Which cushion.</param>
/// <param name="NoseX">A point of the nose line, metres.</param>
/// <param name="NoseY">A point of the nose line, metres.</param>
/// <param name="IntoX">Unit normal into the rubber.</param>
/// <param name="IntoY">Unit normal into the rubber.</param>
public sealed record ReferenceRail(CushionName Name, double NoseX, double NoseY, double IntoX, double IntoY)
{
    /// <summary>The four cushions of a table.</summary>
    public static ReferenceRail[] Of(TableSpec table) =>
    [
        new(CushionName.Head, 0, 0, -1, 0),
        new(CushionName.Foot, table.Length, 0, 1, 0),
        new(CushionName.Left, 0, table.Width, 0, 1),
        new(CushionName.Right, 0, 0, 0, -1),
    ];

    /// <summary>How far a centre is past the place where a ball of that reach touches, metres in plan.</summary>
    public double Depth(double x, double y, double reach) => (x - NoseX) * IntoX + (y - NoseY) * IntoY + reach;

    /// <summary>Speed into the rubber, m/s.</summary>
    public double Closing(ReferenceBall ball) => ball.Vx * IntoX + ball.Vy * IntoY;

    /// <summary>A ball's motion in this rail's frame: x along the rail, y into it, z up, right-handed.</summary>
    public RailMotion In(ReferenceBall b) => new()
    {
        Vx = b.Vx * IntoY - b.Vy * IntoX,
        Vy = b.Vx * IntoX + b.Vy * IntoY,
        Wx = b.Wx * IntoY - b.Wy * IntoX,
        Wy = b.Wx * IntoX + b.Wy * IntoY,
        Wz = b.Wz,
    };

    /// <summary>Gives a ball a motion in this rail's frame.</summary>
    public void Out(in RailMotion m, ReferenceBall b)
    {
        (b.Vx, b.Vy) = (m.Vx * IntoY + m.Vy * IntoX, -m.Vx * IntoX + m.Vy * IntoY);
        (b.Wx, b.Wy) = (m.Wx * IntoY + m.Wy * IntoX, -m.Wx * IntoX + m.Wy * IntoY);
        b.Wz = m.Wz;
    }
}
