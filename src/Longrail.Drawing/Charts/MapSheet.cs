using Longrail.Coaching.Charts;
using Longrail.Drawing.Balls;
using Longrail.Drawing.Sheets;
using Longrail.Drawing.Svg;
using Longrail.Drawing.Tables;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Drawing.Charts;

/// <summary>Lays out and draws the sheet of a map.</summary>
internal static class MapSheet
{
    private const double Left = Sheet.Frame + 30;

    internal static string Draw(OddsMap map, DateOnly? date)
    {
        MapRequest request = map.Request;
        Viewport view = Sheet.Place(request.Equipment.Table);
        string title = Title(map);
        SvgWriter svg = Sheet.Begin(title, Description(map));
        DrawMap(svg, view, map, dimensions: true);
        DrawStrip(svg, map);
        TitleBlock.Draw(
            svg, Sheet.BlockLeft, Sheet.StripTop, Sheet.Width - Sheet.Frame - Sheet.BlockLeft,
            Sheet.StripBottom - Sheet.StripTop, title,
            ChartFrame.Rows(request.Equipment, request.Names, view.Reduction, date, DiamondNumbering.Nose));
        return svg.Finish();
    }

    internal static string DrawPlan(OddsMap map)
    {
        SvgWriter svg = Sheet.BeginPlan(map.Request.Equipment.Table, Title(map), Description(map), out Viewport view);
        DrawMap(svg, view, map, dimensions: false);
        return svg.Finish();
    }

    private static void DrawMap(SvgWriter svg, Viewport view, OddsMap map, bool dimensions)
    {
        TableSpec table = map.Request.Equipment.Table;
        TablePlan.Draw(svg, view, table, dimensions, () => MapCells.Draw(svg, view, map));
        MapContours.Draw(svg, view, map);
        DrawRoute(svg, view, map);
        DrawCueBall(svg, view, map);
    }

    // The cushion and the pocket that the bank is about.
    private static void DrawRoute(SvgWriter svg, Viewport view, OddsMap map)
    {
        MapRequest request = map.Request;
        var outline = new TableOutline(request.Equipment.Table);
        svg.Begin("route");
        var cushion = new SvgPath();
        foreach (RubberPiece piece in outline.Pieces.Where(piece => piece.Cushion == request.Route.Off))
        {
            cushion.Move(view.ToSheet(TablePoint.From(piece.Start)))
                .Line(view.ToSheet(TablePoint.From(piece.Start + piece.Length * piece.Direction)));
        }

        svg.Path(cushion, null, new Pen(Ink.Colours[1], 2 * Ink.Medium));
        PocketOutline pocket = outline.Pockets[(int)request.Route.Pocket!.Value];
        svg.Circle(
            view.ToSheet(TablePoint.From(pocket.DropCentre)), view.ToSheet(pocket.DropRadius), null,
            new Pen(Ink.Colours[1], Ink.Wide));
        svg.End();
    }

    private static void DrawCueBall(SvgWriter svg, Viewport view, OddsMap map)
    {
        MapRequest request = map.Request;
        TableSpec table = request.Equipment.Table;
        SvgPoint at = view.ToSheet(
            new TablePoint(request.CueBall.X * table.DiamondAlong, request.CueBall.Y * table.DiamondAcross));
        double radius = view.ToSheet(0.5 * request.Equipment.BallSet.Diameter);
        svg.Begin("balls");
        BallFace.Draw(svg, at, radius, null, Ink.Graphite, Ink.Medium);
        // On the side away from the bank, where the map is blank.
        double middle = Ink.Small * Ink.HalfCapital;
        (SvgPoint label, TextAnchor anchor) = request.Route.Off switch
        {
            CushionName.Right => (at.Moved(0, -radius - 12), TextAnchor.Middle),
            CushionName.Left => (at.Moved(0, radius + 12 + 2 * middle), TextAnchor.Middle),
            CushionName.Foot => (at.Moved(-radius - 12, middle), TextAnchor.End),
            _ => (at.Moved(radius + 12, middle), TextAnchor.Start),
        };
        svg.Text(label, "cue ball", new TextStyle(Ink.Small, Ink.Graphite, true, anchor));
        svg.End();
    }

    private static void DrawStrip(SvgWriter svg, OddsMap map)
    {
        MapKey.Draw(svg, map, Left, Sheet.StripTop + 8);
        var notes = new List<string> { ChartSentences.Measured(map), ChartSentences.Played(map.Request) };
        string[] signs =
        [
            .. map.Failures.Where(f => !MapCells.IsBlank(f))
                .Select(f => $"{ChartWords.Sign(f)} {ChartWords.Sentence(f)}"),
        ];
        string blank = map.Failures.Any(MapCells.IsBlank)
            ? "Blank: the hit would be too thin, or the ball is too near."
            : "";
        string letters = signs.Length > 0 ? $"No bank from there: {string.Join("; ", signs)}." : "";
        if (blank.Length + letters.Length > 0)
            notes.Add($"{letters} {blank}".Trim());
        notes.Add("Places are the ball's centre; a cell stands for a ball in its middle.");
        const double Top = Sheet.StripTop + 130;
        NoteList.Draw(svg, notes, Left, Top, Sheet.BlockLeft - 60 - Left, Sheet.StripBottom - 20 - Top);
    }

    private static string Title(OddsMap map)
    {
        string what = map.Request.Measure == MapMeasure.Odds
            ? $"Odds, player {map.Request.Player!.Name}"
            : "Leeway of the aim";
        return $"{what}: {map.Request.Route.Words}";
    }

    private static string Description(OddsMap map)
    {
        MapCell? best = map.Cells.Where(cell => cell.Failure == NoBank.None).MaxBy(map.Value);
        string where = best is null
            ? "The bank cannot be made from any place."
            : FormattableString.Invariant($"The best place of the ball is {best.Place.X:0.##}, {best.Place.Y:0.##}: ")
                + MapScale.Label(map.Request.Measure, map.Value(best)) + ".";
        return $"A map of the table, the head on the left. {ChartSentences.Measured(map)} {where}";
    }
}
