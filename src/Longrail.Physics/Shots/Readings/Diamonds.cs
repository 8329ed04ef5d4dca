using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Physics.Shots.Readings;

/// <summary>Places along a cushion in diamonds: along the table 0 to 8 from the head, across it 0 to 4 from the right,
/// at the ball's centre, counted on the nose lines.</summary>
public static class Diamonds
{
    /// <summary>The place along a cushion.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="centre">The ball's centre, metres.</param>
    /// <param name="table">The table.</param>
    public static double Along(CushionName cushion, Vec2 centre, TableSpec table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return IsLong(cushion) ? centre.X / table.DiamondAlong : centre.Y / table.DiamondAcross;
    }

    /// <summary>The length of a diamond along a cushion, metres.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="table">The table.</param>
    public static double Length(CushionName cushion, TableSpec table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return IsLong(cushion) ? table.DiamondAlong : table.DiamondAcross;
    }

    /// <summary>Whether a cushion is one of the long ones.</summary>
    /// <param name="cushion">The cushion.</param>
    public static bool IsLong(CushionName cushion) => cushion is CushionName.Left or CushionName.Right;

    /// <summary>The cushion's word: head, foot, left, right.</summary>
    /// <param name="cushion">The cushion.</param>
    public static string Word(CushionName cushion) => cushion switch
    {
        CushionName.Head => "head",
        CushionName.Foot => "foot",
        CushionName.Left => "left",
        _ => "right",
    };
}
