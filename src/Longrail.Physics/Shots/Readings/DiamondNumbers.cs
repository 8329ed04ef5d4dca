using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Physics.Shots.Readings;

/// <summary>The number of a touch at a cushion in each of the conventions that players use.</summary>
/// <remarks>Plane geometry: a line at an angle a from the cushion's normal that turns at the touch, where the ball's
/// centre stands one reach before the nose, crosses the nose line reach tan(a) and the row of sights (reach + setback)
/// tan(a) farther along.</remarks>
public static class DiamondNumbers
{
    private static readonly string[] _words = ["nose", "sight", "tens"];

    /// <summary>The words for the conventions, in the order of <see cref="DiamondNumbering"/>.</summary>
    public static IReadOnlyList<string> Words => _words;

    /// <summary>The word for a convention: nose, sight, tens.</summary>
    /// <param name="numbering">The convention.</param>
    public static string Word(DiamondNumbering numbering) => _words[(int)numbering];

    /// <summary>How many of the convention's numbers make a diamond: 10 for tens, else 1.</summary>
    /// <param name="numbering">The convention.</param>
    public static double PerDiamond(DiamondNumbering numbering) => numbering == DiamondNumbering.Tens ? 10 : 1;

    /// <summary>A sentence that says how the numbers are counted: to be printed wherever they are.</summary>
    /// <param name="numbering">The convention.</param>
    public static string Sentence(DiamondNumbering numbering) => numbering switch
    {
        DiamondNumbering.Sight => "counted through the sights",
        DiamondNumbering.Tens => "counted at the nose, ten to a diamond",
        _ => "counted at the nose",
    };

    /// <summary>How far along the cushion the row of sights is crossed beyond the touch, metres.</summary>
    /// <param name="tangent">Travel along the cushion per way towards it, on arrival; signed.</param>
    /// <param name="reach">Distance of the ball's centre from the nose line at the touch, metres.</param>
    /// <param name="table">The table; its setback puts the sights behind the nose.</param>
    public static double SightShift(double tangent, double reach, TableSpec table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return (reach + table.SightSetback) * tangent;
    }

    /// <summary>The number of a touch.</summary>
    /// <param name="numbering">The convention.</param>
    /// <param name="cushion">The cushion.</param>
    /// <param name="touch">The ball's centre at the touch, metres.</param>
    /// <param name="arrival">Direction of travel on arrival, any length; towards the cushion.</param>
    /// <param name="reach">Distance of the ball's centre from the nose line at the touch, metres.</param>
    /// <param name="table">The table.</param>
    /// <exception cref="ArgumentException">The ball does not travel towards the cushion.</exception>
    public static double Of(
        DiamondNumbering numbering, CushionName cushion, Vec2 touch, Vec2 arrival, double reach, TableSpec table)
    {
        double nose = Diamonds.Along(cushion, touch, table);
        if (numbering != DiamondNumbering.Sight) return PerDiamond(numbering) * nose;
        (double along, double towards) = cushion switch
        {
            CushionName.Left => (arrival.X, arrival.Y),
            CushionName.Right => (arrival.X, -arrival.Y),
            CushionName.Foot => (arrival.Y, arrival.X),
            _ => (arrival.Y, -arrival.X),
        };
        if (!(towards > 0))
            throw new ArgumentException("The ball must travel towards the cushion.", nameof(arrival));
        return nose + SightShift(along / towards, reach, table) / Diamonds.Length(cushion, table);
    }
}
