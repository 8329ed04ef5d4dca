namespace Longrail.Drawing.Charts;

/// <summary>Contour lines through a grid of values (marching squares).</summary>
internal static class Contours
{
    /// <summary>The lines at a level.</summary>
    /// <param name="values">Values by column and row; NaN where there is none: no line comes near those.</param>
    /// <param name="level">The level.</param>
    /// <returns>Lines in units of columns and rows, from the middle of the first cell.</returns>
    internal static IReadOnlyList<IReadOnlyList<(double X, double Y)>> At(double[,] values, double level)
    {
        var pieces = new List<((double X, double Y) A, (double X, double Y) B)>();
        for (int i = 0; i + 1 < values.GetLength(0); i++)
        {
            for (int j = 0; j + 1 < values.GetLength(1); j++)
                AddPieces(values, level, i, j, pieces);
        }

        return Joined(pieces);
    }

    private static void AddPieces(
        double[,] values, double level, int i, int j, List<((double X, double Y) A, (double X, double Y) B)> pieces)
    {
        // The corners in turn, and the crossings of the sides between them.
        (int X, int Y)[] corners = [(i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)];
        if (corners.Any(c => double.IsNaN(values[c.X, c.Y])))
            return;
        var crossings = new List<(double X, double Y)>();
        for (int k = 0; k < 4; k++)
        {
            (int X, int Y) a = corners[k];
            (int X, int Y) b = corners[(k + 1) % 4];
            // From the same end whichever square asks, so that neighbours meet in the same point.
            if (a.X > b.X || a.Y > b.Y)
                (a, b) = (b, a);
            double va = values[a.X, a.Y];
            double vb = values[b.X, b.Y];
            if (va < level == vb < level)
                continue;
            double part = (level - va) / (vb - va);
            crossings.Add((a.X + part * (b.X - a.X), a.Y + part * (b.Y - a.Y)));
        }

        if (crossings.Count < 4)
        {
            if (crossings.Count == 2)
                pieces.Add((crossings[0], crossings[1]));
            return;
        }

        // A saddle: the middle decides which corners hang together.
        double middle = corners.Average(c => values[c.X, c.Y]);
        bool together = middle >= level == values[i, j] >= level;
        int shift = together ? 0 : 1;
        pieces.Add((crossings[shift], crossings[1 + shift]));
        pieces.Add((crossings[(2 + shift) % 4], crossings[(3 + shift) % 4]));
    }

    private static List<IReadOnlyList<(double X, double Y)>> Joined(
        List<((double X, double Y) A, (double X, double Y) B)> pieces)
    {
        var lines = new List<IReadOnlyList<(double X, double Y)>>();
        var left = new LinkedList<((double X, double Y) A, (double X, double Y) B)>(pieces);
        while (left.First is { } first)
        {
            left.RemoveFirst();
            var line = new LinkedList<(double X, double Y)>([first.Value.A, first.Value.B]);
            while (Next(left, line.Last!.Value) is { } next)
                line.AddLast(next);
            while (Next(left, line.First!.Value) is { } before)
                line.AddFirst(before);
            lines.Add([.. line]);
        }

        return lines;
    }

    // Takes the piece that goes on from a point, and returns its other end.
    private static (double X, double Y)? Next(
        LinkedList<((double X, double Y) A, (double X, double Y) B)> pieces, (double X, double Y) from)
    {
        for (var node = pieces.First; node is not null; node = node.Next)
        {
            bool atA = Same(node.Value.A, from);
            if (!atA && !Same(node.Value.B, from))
                continue;
            pieces.Remove(node);
            return atA ? node.Value.B : node.Value.A;
        }

        return null;
    }

    private static bool Same((double X, double Y) a, (double X, double Y) b) =>
        Math.Abs(a.X - b.X) < 1e-9 && Math.Abs(a.Y - b.Y) < 1e-9;
}
