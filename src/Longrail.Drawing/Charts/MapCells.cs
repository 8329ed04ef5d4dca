using Longrail.Coaching.Charts;
using Longrail.Drawing.Svg;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Charts;

/// <summary>The cells of a map on the bed.</summary>
internal static class MapCells
{
    internal static void Draw(SvgWriter svg, Viewport view, OddsMap map)
    {
        MapRequest request = map.Request;
        TableSpec table = request.Equipment.Table;
        double width = view.ToSheet((request.To.X - request.From.X) / request.Columns * table.DiamondAlong);
        double height = view.ToSheet((request.To.Y - request.From.Y) / request.Rows * table.DiamondAcross);
        double size = Math.Min(0.55 * height, Ink.Small);
        svg.Begin("cells");
        for (int row = 0; row < request.Rows; row++)
        {
            for (int column = 0; column < request.Columns; column++)
            {
                MapCell cell = map[column, row];
                SvgPoint middle = Middle(view, request, column, row);
                if (cell.Failure == NoBank.None)
                {
                    // A hair wider, so that no seam of paper shows between neighbours.
                    svg.Rectangle(
                        middle.X - width / 2, middle.Y - height / 2, width + 0.6, height + 0.6,
                        MapScale.Colour(request.Measure, map.Value(cell)));
                }
                else if (!IsBlank(cell.Failure))
                {
                    svg.Text(
                        middle.Moved(0, size * Ink.HalfCapital), ChartWords.Sign(cell.Failure),
                        new TextStyle(size, Ink.Soft, false, TextAnchor.Middle));
                }
            }
        }

        svg.End();
    }

    /// <summary>Whether nothing stands where a bank fails for that: most of a map, and plain to see.</summary>
    internal static bool IsBlank(NoBank failure) => failure is NoBank.TooThin or NoBank.TooNear;

    /// <summary>The middle of a cell on the sheet.</summary>
    internal static SvgPoint Middle(Viewport view, MapRequest request, double column, double row)
    {
        TableSpec table = request.Equipment.Table;
        Vec2 step =
            new((request.To.X - request.From.X) / request.Columns, (request.To.Y - request.From.Y) / request.Rows);
        Vec2 place = request.From + new Vec2((column + 0.5) * step.X, (row + 0.5) * step.Y);
        return view.ToSheet(new TablePoint(place.X * table.DiamondAlong, place.Y * table.DiamondAcross));
    }
}
