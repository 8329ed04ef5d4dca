using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Charts;

/// <summary>The places of the banked ball in a chart, along a line or on a grid.</summary>
/// <param name="Diamonds">The places in diamonds, along and across; row by row from the right, each from the head.
/// </param>
/// <param name="Columns">How many places a row has; all of them for a line.</param>
public sealed record ChartPlaces(IReadOnlyList<Vec2> Diamonds, int Columns)
{
    /// <summary>The most places that a chart has.</summary>
    public const int Most = 2000;

    /// <summary>Whether the places lie on a line.</summary>
    public bool IsLine => Columns == Diamonds.Count;

    /// <summary>How many rows there are.</summary>
    public int Rows => Columns == 0 ? 0 : Diamonds.Count / Columns;

    /// <summary>Places on a line, its ends included.</summary>
    /// <param name="first">First place, diamonds.</param>
    /// <param name="last">Last place, diamonds.</param>
    /// <param name="count">How many, at least one; one is the first place.</param>
    public static ChartPlaces Line(Vec2 first, Vec2 last, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return new ChartPlaces([.. Enumerable.Range(0, count).Select(k => Between(first, last, k, count))], count);
    }

    /// <summary>Places on a grid, its edges included.</summary>
    /// <param name="first">The corner nearest head and right, diamonds.</param>
    /// <param name="last">The corner farthest from there, diamonds.</param>
    /// <param name="columns">Places along the table, at least one.</param>
    /// <param name="rows">Places across, at least one.</param>
    public static ChartPlaces Grid(Vec2 first, Vec2 last, int columns, int rows)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(columns, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(rows, 1);
        IEnumerable<Vec2> places =
            from row in Enumerable.Range(0, rows)
            from column in Enumerable.Range(0, columns)
            select new Vec2(Between(first, last, column, columns).X, Between(first, last, row, rows).Y);
        return new ChartPlaces([.. places], columns);
    }

    /// <summary>Places on a line at every half diamond, as a chart is usually printed.</summary>
    /// <param name="first">First place, diamonds.</param>
    /// <param name="last">Last place, diamonds.</param>
    public static ChartPlaces HalfDiamonds(Vec2 first, Vec2 last)
    {
        double longer = Math.Max(Math.Abs(last.X - first.X), Math.Abs(last.Y - first.Y));
        return Line(first, last, 1 + Math.Max((int)Math.Round(2 * longer), longer > 0 ? 1 : 0));
    }

    private static Vec2 Between(Vec2 first, Vec2 last, int k, int count) =>
        count == 1 ? first : k == count - 1 ? last : first + ((double)k / (count - 1)) * (last - first);
}
