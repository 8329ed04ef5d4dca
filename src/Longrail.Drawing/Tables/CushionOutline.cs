using Longrail.Physics.Equipment;

namespace Longrail.Drawing.Tables;

/// <summary>The outline of one piece of cushion in plan: nose line, jaw roundings, facings, back.</summary>
/// <param name="Cushion">The cushion to which it belongs.</param>
/// <param name="Nose">The edge that a ball can touch, from one end to the other.</param>
/// <param name="Back">The edge along the wood, in the same direction.</param>
internal sealed record CushionOutline(CushionName Cushion, IReadOnlyList<TablePoint> Nose, IReadOnlyList<TablePoint> Back)
{
    /// <summary>How deep the rubber is drawn, metres: two inches (common practice, no source; it touches nothing).</summary>
    internal const double Depth = 0.0508;

    private const int PointsPerRounding = 8;

    /// <summary>Nose and back as one closed outline.</summary>
    internal IReadOnlyList<TablePoint> Closed => [.. Nose, .. Back.Reverse()];

    /// <summary>All pieces of cushion of a table: six with side pockets, four without.</summary>
    internal static IReadOnlyList<CushionOutline> AllOf(TableSpec table)
    {
        double middle = table.Length / 2;
        var result = new List<CushionOutline>();
        foreach (CushionName cushion in (CushionName[])[CushionName.Right, CushionName.Foot, CushionName.Left, CushionName.Head])
        {
            bool along = cushion is CushionName.Right or CushionName.Left;
            double length = along ? table.Length : table.Width;
            if (along && table.Side is { } side)
            {
                result.Add(Piece(table, cushion, Corner(table, 0), End.Of(middle - side.Mouth / 2, side)));
                result.Add(Piece(table, cushion, End.Of(middle + side.Mouth / 2, side), Corner(table, length)));
            }
            else
            {
                result.Add(Piece(table, cushion, Corner(table, 0), Corner(table, length)));
            }
        }

        return result;
    }

    // Where the nose line ends at a corner: at the jaw point, or at the mitre where there is no pocket.
    private static End Corner(TableSpec table, double at)
    {
        if (table.Corner is not { } corner)
            return End.Mitre(at);
        double reach = corner.Mouth / Math.Sqrt(2);
        return End.Of(at == 0 ? reach : at - reach, corner);
    }

    private static CushionOutline Piece(TableSpec table, CushionName cushion, End from, End to)
    {
        (double Along, double Deep)[] first = from.Points(-1);
        (double Along, double Deep)[] last = to.Points(1);
        // At a mitre the edge that a ball can touch ends with the nose line; the cut itself is no edge.
        IEnumerable<(double Along, double Deep)> nose =
            first.Take(from.IsMitre ? 1 : first.Length).Reverse().Concat(last.Take(to.IsMitre ? 1 : last.Length));
        return new CushionOutline(
            cushion,
            [.. nose.Select(p => Place(table, cushion, p.Along, p.Deep))],
            [Place(table, cushion, first[^1].Along, Depth), Place(table, cushion, last[^1].Along, Depth)]);
    }

    private static TablePoint Place(TableSpec table, CushionName cushion, double along, double deep) => cushion switch
    {
        CushionName.Right => new TablePoint(along, -deep),
        CushionName.Left => new TablePoint(along, table.Width + deep),
        CushionName.Head => new TablePoint(-deep, along),
        _ => new TablePoint(table.Length + deep, along),
    };

    // One end of a piece: where the nose line would meet the facing, how the facing leaves, how it is rounded.
    private readonly record struct End(double At, double CutAngle, double JawRadius, bool IsMitre = false)
    {
        internal static End Of(double at, PocketSpec pocket) => new(at, pocket.CutAngle, pocket.JawRadius);

        // A mitre runs at 45 degrees to the corner: an angle of 135 through the rubber.
        internal static End Mitre(double at) => new(at, 0.75 * Math.PI, 0, IsMitre: true);

        /// <summary>Points from the nose line round the jaw to the back, seen along the nose in the given direction (+1 or -1).</summary>
        internal (double Along, double Deep)[] Points(int direction)
        {
            double turn = Math.PI - CutAngle;
            // The rounding touches nose line and facing at r cot(cut/2) from where they would meet.
            double tangent = JawRadius * Math.Tan(turn / 2);
            double facingEnd = Depth / Math.Tan(turn);
            var points = new List<(double, double)>();
            for (int k = 0; k <= PointsPerRounding && JawRadius > 0; k++)
            {
                double angle = turn * k / PointsPerRounding;
                points.Add((
                    At + direction * (JawRadius * Math.Sin(angle) - tangent),
                    JawRadius * (1 - Math.Cos(angle))));
            }

            if (JawRadius <= 0)
                points.Add((At, 0));
            points.Add((At + direction * facingEnd, Depth));
            return [.. points];
        }
    }
}
