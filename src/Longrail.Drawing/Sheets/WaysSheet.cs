using Longrail.Drawing.Svg;
using Longrail.Drawing.Tables;
using Longrail.Physics.Equipment;

namespace Longrail.Drawing.Sheets;

/// <summary>Lays out and draws the sheet of the ways to play a ball: the first on the table, the others beside it in
/// one small scale, a table of all below.</summary>
internal static class WaysSheet
{
    private const double Left = Sheet.Frame + 30;
    private const double Right = Sheet.Width - Sheet.Frame - 30;

    // The upper part: table and sketches. The lower part: table of numbers, the first in full, title block.
    private const double Divide = 1262;
    private const double TableWidth = 1994;
    private const double SketchesLeft = Left + TableWidth + 24;
    private const double BlockTop = 1660;

    internal static string Draw(WaysDrawing ways)
    {
        TableSpec table = ways.Equipment.Table;
        Viewport view = Place(table);
        SvgWriter svg = Sheet.Begin(Title(ways), Description(ways));
        TablePlan.Draw(svg, view, table, dimensions: false);
        WaysPlan.Draw(svg, view, ways);
        double below = WaySketches.Draw(svg, SketchesLeft, Sheet.Frame + 24, Right - SketchesLeft, Divide, ways);
        DrawLegend(svg, ways);
        DrawNotPlayable(svg, below, ways);
        DrawLowerPart(svg, view, ways);
        return svg.Finish();
    }

    /// <summary>The table alone with the first way.</summary>
    internal static string DrawPlan(WaysDrawing ways)
    {
        TableSpec table = ways.Equipment.Table;
        SvgWriter svg = Sheet.BeginPlan(table, Title(ways), Description(ways), out Viewport view);
        TablePlan.Draw(svg, view, table, dimensions: false);
        WaysPlan.Draw(svg, view, ways);
        return svg.Finish();
    }

    // The largest scale 1 : n with a whole n at which the table fits into its part.
    private static Viewport Place(TableSpec table)
    {
        const double Numbers = 56;
        double wide = (TableWidth - 2 * Numbers) / (table.Length + 2 * TablePlan.RailWidth);
        double high = (Divide - Sheet.Frame - 2 * Numbers) / (table.Width + 2 * TablePlan.RailWidth);
        double reduction = Viewport.UnitsPerMetre / Math.Min(wide, high);
        double scale = Viewport.UnitsPerMetre / (reduction < 1 ? reduction : Math.Ceiling(reduction));
        double left = Left + (TableWidth - scale * table.Length) / 2;
        double middle = (Sheet.Frame + Divide) / 2;
        return new Viewport(left, middle + scale * table.Width / 2, scale);
    }

    private static void DrawLegend(SvgWriter svg, WaysDrawing ways)
    {
        if (ways.Ways.Count == 0)
            return;
        svg.Begin("legend");
        var style = new TextStyle(Ink.Small, Ink.Soft);
        const double Line = Divide - 16;
        double x = Left;
        svg.Rectangle(x, Line - 17, 60, 17, Tint.Of(ways.Ways[0].Mark.Colour, WaysPlan.FanStrength));
        x = Word(svg, x + 72, Line, "how far the aim may be off", style);
        svg.Path(
            new SvgPath().Ellipse(new SvgPoint(x + 30, Line - 8), 30, 10, 0), null,
            new Pen(Ink.Soft, Ink.Thin, "9 5"));
        x = Word(svg, x + 72, Line, "where the cue ball stops, nine in ten", style);
        if (ways.Ways[0].Next.Count > 0)
        {
            svg.Line(
                new SvgPoint(x, Line - 8), new SvgPoint(x + 60, Line - 8),
                new Pen(WaysPlan.NextColour, Ink.Thin, WaysPlan.NextDash));
            x = Word(svg, x + 72, Line, "the next shot from there", style);
        }

        Word(svg, x, Line, "double line: skid; single: roll; a tick every 0.1 s", style);
        svg.End();
    }

    private static double Word(SvgWriter svg, double x, double line, string text, TextStyle style)
    {
        svg.Text(new SvgPoint(x, line), text, style);
        return x + TextWidth.Of(text, style.Size) + 44;
    }

    private static void DrawLowerPart(SvgWriter svg, Viewport view, WaysDrawing ways)
    {
        svg.Line(
            new SvgPoint(Sheet.Frame, Divide), new SvgPoint(Sheet.Width - Sheet.Frame, Divide),
            new Pen(Ink.Soft, Ink.Fine));
        double detailsTop = Sheet.StripBottom - 12 - WaysDetails.Height(ways);
        if (ways.Ways.Count > 0)
        {
            int[] columns = [.. Enumerable.Range(1, ways.Columns.Count - 1)];
            new KeyTable(ways.Columns, columns, [.. ways.Ways.Select(Row)], widestColumn: 760)
                .Draw(svg, Left, Divide + 14, Right - Left, Math.Min(detailsTop, BlockTop) - Divide - 40);
        }
        else
        {
            svg.Text(
                new SvgPoint(Left, Divide + 70),
                $"No way was found to make {SvgText.Clean(ways.Names[ways.ObjectBall])}.",
                new TextStyle(Ink.Heading, Ink.Graphite, Bold: true));
        }

        WaysDetails.Draw(svg, Left, detailsTop, Sheet.BlockLeft - 30 - Left, ways);
        List<(string Name, string Value)> rows =
            EquipmentWords.Rows(ways.Equipment, ways.TableName, view.Reduction, ways.Date);
        rows.InsertRange(0, [("BALL", ways.Asked), ("ODDS", $"for {ways.Player}")]);
        TitleBlock.Draw(
            svg, Sheet.BlockLeft, BlockTop, Sheet.Width - Sheet.Frame - Sheet.BlockLeft, Sheet.StripBottom - BlockTop,
            Title(ways), rows);
    }

    private static void DrawNotPlayable(SvgWriter svg, double top, WaysDrawing ways)
    {
        const double Line = 27;
        const double Size = 20;
        if (ways.NotPlayable.Count == 0 || top + 3 * Line > Divide)
            return;
        svg.Begin("not-playable");
        double y = top + Line;
        svg.Text(new SvgPoint(SketchesLeft, y), "not playable", new TextStyle(Ink.Small, Ink.Soft));
        foreach (string reason in ways.NotPlayable)
        {
            foreach (string line in TextWidth.Wrap(SvgText.Clean(reason), Right - SketchesLeft, Size, 4))
            {
                y += Line;
                if (y > Divide - 14)
                    break;
                svg.Text(new SvgPoint(SketchesLeft, y), line, new TextStyle(Size, Ink.Graphite));
            }
        }

        svg.End();
    }

    private static KeyTableRow Row(WayDrawing way) => new(
        way.Mark.Letter, true, new Pen(way.Mark.Colour, Ink.Medium, way.Mark.Dash), way.Cells);

    private static string Title(WaysDrawing ways) =>
        string.IsNullOrWhiteSpace(ways.Title) ? $"Ways to play {ways.Asked}" : ways.Title;

    private static string Description(WaysDrawing ways) =>
        $"Ways to play {ways.Asked}, best first. The head of the table is on the left. "
        + string.Join(" ", ways.Ways.Take(12).Select(way => $"{way.Mark.Letter}: {way.Words}, {way.Odds}."));
}
