using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Tables;

/// <summary>Hatches an area with lines at 45 degrees, cut off at its outline.</summary>
internal static class Hatching
{
    /// <summary>The strokes inside a closed outline.</summary>
    /// <param name="outline">The outline on the sheet, not crossing itself.</param>
    /// <param name="spacing">Distance between strokes, sheet units, positive.</param>
    internal static SvgPath Of(IReadOnlyList<SvgPoint> outline, double spacing)
    {
        var path = new SvgPath();
        double step = spacing * Math.Sqrt(2);
        // Strokes are the lines x + y = c; c is counted from the sheet's corner so that neighbouring areas are hatched
        // in line.
        double first = Math.Ceiling(outline.Min(p => p.X + p.Y) / step) * step;
        double last = outline.Max(p => p.X + p.Y);
        for (double c = first; c < last; c += step)
        {
            double[] crossings = Crossings(outline, c);
            for (int k = 0; k + 1 < crossings.Length; k += 2)
            {
                path.Move(new SvgPoint(crossings[k], c - crossings[k]))
                    .Line(new SvgPoint(crossings[k + 1], c - crossings[k + 1]));
            }
        }

        return path;
    }

    // The x of each crossing of the outline with x + y = c, in order; a corner counts once (the half-open rule).
    private static double[] Crossings(IReadOnlyList<SvgPoint> outline, double c)
    {
        var xs = new List<double>();
        for (int i = 0; i < outline.Count; i++)
        {
            SvgPoint a = outline[i];
            SvgPoint b = outline[(i + 1) % outline.Count];
            double fa = a.X + a.Y - c;
            double fb = b.X + b.Y - c;
            if (fa < 0 != fb < 0)
                xs.Add(a.X + (b.X - a.X) * (fa / (fa - fb)));
        }

        xs.Sort();
        return [.. xs];
    }
}
