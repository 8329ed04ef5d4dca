using Longrail.Coaching.Charts;
using Longrail.Drawing.Sheets;
using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Charts;

/// <summary>Numbered contours over a map.</summary>
internal static class MapContours
{
    /// <summary>A shorter line gets no number, sheet units.</summary>
    private const double LeastLabelled = 150;

    /// <summary>A shorter line is noise and is left out, sheet units.</summary>
    private const double LeastDrawn = 60;

    internal static void Draw(SvgWriter svg, Viewport view, OddsMap map)
    {
        MapRequest request = map.Request;
        double[,] values = new double[request.Columns, request.Rows];
        for (int row = 0; row < request.Rows; row++)
        {
            for (int column = 0; column < request.Columns; column++)
            {
                MapCell cell = map[column, row];
                values[column, row] = cell.Failure == NoBank.None ? map.Value(cell) : double.NaN;
            }
        }

        svg.Begin("contours");
        var taken = new Occupancy();
        foreach (double level in MapScale.Contours(request.Measure))
        {
            foreach (IReadOnlyList<(double X, double Y)> line in Contours.At(values, level))
            {
                SvgPoint[] points = [.. line.Select(p => MapCells.Middle(view, request, p.X, p.Y))];
                double length = points.Zip(points.Skip(1), (a, b) => a.DistanceTo(b)).Sum();
                if (length < LeastDrawn)
                    continue;
                // Pale under dark: it shows on every colour of the scale.
                svg.Path(new SvgPath().Polyline(points), null, new Pen(Ink.Paper, 4.6));
                svg.Path(new SvgPath().Polyline(points), null, new Pen(Ink.Graphite, 1.8));
                if (length >= LeastLabelled)
                    Label(svg, points, MapScale.Label(request.Measure, level), taken);
            }
        }

        svg.End();
    }

    private static void Label(SvgWriter svg, SvgPoint[] points, string text, Occupancy taken)
    {
        const double Size = Ink.Small - 3;
        double half = TextWidth.Of(text, Size) / 2 + 4;
        for (int k = 0; k < points.Length; k++)
        {
            // From the middle of the line outwards.
            SvgPoint at =
                points[(points.Length / 2 + (k % 2 == 0 ? k / 2 : -(k / 2) - 1) + points.Length) % points.Length];
            if (!taken.TryTake(at, half + 4))
                continue;
            svg.Rectangle(at.X - half, at.Y - 0.62 * Size, 2 * half, 1.24 * Size, Ink.Paper, corner: 5);
            svg.Text(
                at.Moved(0, Size * Ink.HalfCapital), text, new TextStyle(Size, Ink.Graphite, false, TextAnchor.Middle));
            return;
        }
    }
}
