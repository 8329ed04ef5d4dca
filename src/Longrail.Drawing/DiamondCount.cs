using System.Globalization;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Drawing;

/// <summary>Numbers of diamonds as a convention writes them.</summary>
public static class DiamondCount
{
    /// <summary>A place in the convention's words: "2.83", "28.3".</summary>
    /// <param name="numbering">The convention.</param>
    /// <param name="diamonds">The place in diamonds at the nose.</param>
    public static string Text(DiamondNumbering numbering, double diamonds)
    {
        bool tens = numbering == DiamondNumbering.Tens;
        double value = Math.Round(tens ? 10 * diamonds : diamonds, tens ? 1 : 2);
        return (value == 0 ? 0 : value).ToString(tens ? "0.0" : "0.00", CultureInfo.InvariantCulture);
    }

    /// <summary>Where a touch is counted through the sight: the incoming line carried on from the ball's centre to the
    /// row of sights.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="centre">The ball's centre at the touch, metres.</param>
    /// <param name="velocity">Its velocity on arrival.</param>
    /// <param name="table">The table.</param>
    /// <returns>Diamonds along the cushion; null for a ball that does not move towards it.</returns>
    /// <remarks>A ball whose centre is c off the nose line and comes in at angle a from the normal has to go on
    /// c + setback square to the cushion, and (c + setback) tan a along it.</remarks>
    public static double? Sight(CushionName cushion, Vec2 centre, Vec2 velocity, TableSpec table)
    {
        ArgumentNullException.ThrowIfNull(table);
        (double gap, double square, double along) = cushion switch
        {
            CushionName.Head => (centre.X, -velocity.X, velocity.Y),
            CushionName.Foot => (table.Length - centre.X, velocity.X, velocity.Y),
            CushionName.Right => (centre.Y, -velocity.Y, velocity.X),
            _ => (table.Width - centre.Y, velocity.Y, velocity.X),
        };
        if (!(square > 0))
            return null;
        double shift = (gap + table.SightSetback) * along / square;
        return Diamonds.Along(cushion, centre, table) + shift / Diamonds.Length(cushion, table);
    }

    /// <summary>The convention in a few words, for captions.</summary>
    public static string Words(DiamondNumbering numbering) => numbering switch
    {
        DiamondNumbering.Tens =>
            "Diamonds in tens, counted at the nose: along 0-80 from the head, across 0-40 from the right",
        DiamondNumbering.Sight =>
            "Cushions counted through the sight along the incoming line; places on the bed at the nose",
        _ => "Diamonds counted at the nose: along 0-8 from the head, across 0-4 from the right",
    };
}
