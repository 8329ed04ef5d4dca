using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Tables;

/// <summary>One piece of cushion as it is drawn: the edge that a ball can touch, and the back along the wood.</summary>
/// <param name="Nose">Facing, rounding, nose line, rounding, facing; without pockets the nose line alone.</param>
/// <param name="Back">The two ends of the edge along the wood, in the same direction.</param>
internal sealed record CushionOutline(IReadOnlyList<TablePoint> Nose, IReadOnlyList<TablePoint> Back)
{
    /// <summary>How deep the rubber is drawn, metres: two inches (common practice, no source; it touches
    /// nothing).</summary>
    internal const double Depth = 0.0508;

    private const int StrokesPerRounding = 8;

    /// <summary>Nose and back as one closed outline.</summary>
    internal IReadOnlyList<TablePoint> Closed => [.. Nose, .. Back.Reverse()];

    /// <summary>The outline of one of a table's pieces of cushion.</summary>
    internal static CushionOutline Of(RubberPiece piece)
    {
        Vec2 end = piece.Start + piece.Direction * piece.Length;
        if (!piece.HasJaws)
        {
            // Two pieces meet in a mitre at 45 degrees.
            Vec2 back = -Depth * piece.Inward;
            return new CushionOutline(
                Points(piece.Start, end),
                Points(piece.Start + back - Depth * piece.Direction, end + back + Depth * piece.Direction));
        }

        Vec2[] first = Jaw(piece.AtStart, piece.Inward);
        Vec2[] last = Jaw(piece.AtEnd, piece.Inward);
        return new CushionOutline(Points([.. first.Reverse(), .. last]), Points(first[^1], last[^1]));
    }

    // From the nose line round the jaw, then along the facing to the back.
    private static Vec2[] Jaw(JawEnd jaw, Vec2 inward)
    {
        double turn = Math.Acos(Math.Clamp(jaw.FacingDirection.Dot(jaw.TowardPocket), -1, 1));
        var points = new List<Vec2>();
        for (int k = 0; k <= StrokesPerRounding && jaw.Radius > 0; k++)
        {
            (double sin, double cos) = Math.SinCos(turn * k / StrokesPerRounding);
            points.Add(jaw.Centre + jaw.Radius * (cos * inward + sin * jaw.TowardPocket));
        }

        if (points.Count == 0)
            points.Add(jaw.Corner);
        double depth = (jaw.Corner - jaw.FacingStart).Dot(inward);
        points.Add(jaw.FacingStart + jaw.FacingDirection * ((Depth - depth) / Math.Sin(turn)));
        return [.. points];
    }

    private static TablePoint[] Points(params ReadOnlySpan<Vec2> points)
    {
        var result = new TablePoint[points.Length];
        for (int i = 0; i < points.Length; i++)
            result[i] = TablePoint.From(points[i]);
        return result;
    }
}
