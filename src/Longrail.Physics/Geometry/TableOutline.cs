using Longrail.Physics.Equipment;

namespace Longrail.Physics.Geometry;

/// <summary>A table in plan: its pieces of cushion and its pockets.</summary>
public sealed class TableOutline
{
    /// <summary>Draws the outline of a table.</summary>
    /// <exception cref="ArgumentException">The pockets do not fit the table.</exception>
    public TableOutline(TableSpec table)
    {
        ArgumentNullException.ThrowIfNull(table);
        Table = table;
        double length = table.Length;
        double width = table.Width;
        if (table.Corner is null != table.Side is null)
            throw new ArgumentException("A table has corner and side pockets, or none at all.", nameof(table));
        if (table.Corner is not { } corner || table.Side is not { } side)
        {
            Pieces =
            [
                new RubberPiece(CushionName.Head, new Vec2(0, 0), new Vec2(0, 1), new Vec2(1, 0), width, null, null),
                new RubberPiece(CushionName.Foot, new Vec2(length, 0), new Vec2(0, 1), new Vec2(-1, 0), width, null, null),
                new RubberPiece(CushionName.Left, new Vec2(0, width), new Vec2(1, 0), new Vec2(0, -1), length, null, null),
                new RubberPiece(CushionName.Right, new Vec2(0, 0), new Vec2(1, 0), new Vec2(0, 1), length, null, null),
            ];
            Pockets = [];
            return;
        }

        double cut = corner.Mouth / Math.Sqrt(2.0);
        double half = side.Mouth / 2;
        double middle = length / 2;
        if (2 * cut + corner.JawRadius >= width || cut + half >= middle)
            throw new ArgumentException("The pockets leave no cushion between them.", nameof(table));

        RubberPiece Piece(CushionName cushion, Vec2 from, Vec2 to, Vec2 inward, PocketName first, PocketName last)
        {
            Vec2 direction = (to - from).Normalized();
            return new RubberPiece(
                cushion, from, direction, inward, from.DistanceTo(to),
                new JawEnd(from, -direction, inward, Shape(first), first), new JawEnd(to, direction, inward, Shape(last), last));
        }

        PocketSpec Shape(PocketName name) => name is PocketName.LeftSide or PocketName.RightSide ? side : corner;

        var toFoot = new Vec2(1, 0);
        var toLeft = new Vec2(0, 1);
        Pieces =
        [
            Piece(CushionName.Head, new Vec2(0, cut), new Vec2(0, width - cut), toFoot, PocketName.HeadRight, PocketName.HeadLeft),
            Piece(CushionName.Foot, new Vec2(length, cut), new Vec2(length, width - cut), -toFoot, PocketName.FootRight, PocketName.FootLeft),
            Piece(CushionName.Left, new Vec2(cut, width), new Vec2(middle - half, width), -toLeft, PocketName.HeadLeft, PocketName.LeftSide),
            Piece(CushionName.Left, new Vec2(middle + half, width), new Vec2(length - cut, width), -toLeft, PocketName.LeftSide, PocketName.FootLeft),
            Piece(CushionName.Right, new Vec2(cut, 0), new Vec2(middle - half, 0), toLeft, PocketName.HeadRight, PocketName.RightSide),
            Piece(CushionName.Right, new Vec2(middle + half, 0), new Vec2(length - cut, 0), toLeft, PocketName.RightSide, PocketName.FootRight),
        ];

        PocketOutline Pocket(PocketName name, int a, JawEnd jawA, int b, JawEnd jawB)
        {
            PocketSpec shape = Shape(name);
            Vec2 centre = 0.5 * (jawA.Corner + jawB.Corner);
            Vec2 across = (jawA.Corner - jawB.Corner).Normalized();
            // Looking into the pocket, A is on the right, so the axis is a quarter turn to the left of "towards A".
            Vec2 axis = across.Left;
            return new PocketOutline(
                name, centre, axis, shape.Mouth, centre + (shape.Shelf + shape.DropRadius) * axis, shape.DropRadius, a, jawA, b, jawB);
        }

        Pockets =
        [
            Pocket(PocketName.HeadRight, 0, Pieces[0].AtStart, 4, Pieces[4].AtStart),
            Pocket(PocketName.HeadLeft, 2, Pieces[2].AtStart, 0, Pieces[0].AtEnd),
            Pocket(PocketName.RightSide, 4, Pieces[4].AtEnd, 5, Pieces[5].AtStart),
            Pocket(PocketName.LeftSide, 3, Pieces[3].AtStart, 2, Pieces[2].AtEnd),
            Pocket(PocketName.FootRight, 5, Pieces[5].AtEnd, 1, Pieces[1].AtStart),
            Pocket(PocketName.FootLeft, 1, Pieces[1].AtEnd, 3, Pieces[3].AtEnd),
        ];
    }

    /// <summary>The table.</summary>
    public TableSpec Table { get; }

    /// <summary>The pieces of cushion: four without pockets, six with.</summary>
    public RubberPiece[] Pieces { get; }

    /// <summary>The pockets in the order of <see cref="PocketName"/>; empty for a table without.</summary>
    public PocketOutline[] Pockets { get; }

    /// <summary>Distance in plan between a ball's centre and the nose line when they touch: R cos(theta), not R,
    /// because the nose stands higher than the ball's centre.</summary>
    /// <param name="ballRadius">Ball radius R, metres.</param>
    /// <param name="noseHeight">Height of the nose above the bed, metres; must be between 0 and 2 R.</param>
    public static double Reach(double ballRadius, double noseHeight)
    {
        double sin = (noseHeight - ballRadius) / ballRadius;
        return ballRadius * Math.Sqrt(Math.Max(0.0, 1.0 - sin * sin));
    }
}
