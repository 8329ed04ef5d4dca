using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Tables;

/// <summary>A pocket in plan: the middle of its mouth, its axis, and the drop edge in the slate.</summary>
/// <param name="Name">The pocket.</param>
/// <param name="Mouth">Middle of the mouth line.</param>
/// <param name="Axis">Unit vector into the pocket.</param>
/// <param name="Centre">Centre of the cut-out in the slate.</param>
/// <param name="Radius">Radius of the cut-out, metres.</param>
internal sealed record PocketOutline(PocketName Name, TablePoint Mouth, Vec2 Axis, TablePoint Centre, double Radius)
{
    /// <summary>All pockets of a table.</summary>
    internal static IReadOnlyList<PocketOutline> AllOf(TableSpec table)
    {
        var result = new List<PocketOutline>();
        double length = table.Length;
        double width = table.Width;
        if (table.Corner is { } corner)
        {
            result.Add(Corner(PocketName.HeadRight, 0, 0, -1, -1, corner));
            result.Add(Corner(PocketName.FootRight, length, 0, 1, -1, corner));
            result.Add(Corner(PocketName.HeadLeft, 0, width, -1, 1, corner));
            result.Add(Corner(PocketName.FootLeft, length, width, 1, 1, corner));
        }

        if (table.Side is { } side)
        {
            result.Add(Of(PocketName.RightSide, new Vec2(length / 2, 0), new Vec2(0, -1), side));
            result.Add(Of(PocketName.LeftSide, new Vec2(length / 2, width), new Vec2(0, 1), side));
        }

        return result;
    }

    // The mouth line of a corner pocket stands half a mouth inside the point where the nose lines cross.
    private static PocketOutline Corner(PocketName name, double x, double y, int signX, int signY, PocketSpec spec)
    {
        var axis = new Vec2(signX / Math.Sqrt(2), signY / Math.Sqrt(2));
        return Of(name, new Vec2(x, y) - axis * (spec.Mouth / 2), axis, spec);
    }

    private static PocketOutline Of(PocketName name, Vec2 mouth, Vec2 axis, PocketSpec spec) => new(
        name, TablePoint.From(mouth), axis, TablePoint.From(mouth + axis * (spec.Shelf + spec.DropRadius)), spec.DropRadius);
}
