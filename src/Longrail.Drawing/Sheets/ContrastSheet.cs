using Longrail.Coaching.Contrasts;
using Longrail.Drawing.Balls;
using Longrail.Drawing.Paths;
using Longrail.Drawing.Svg;
using Longrail.Drawing.Tables;
using Longrail.Physics.Equipment;

namespace Longrail.Drawing.Sheets;

/// <summary>Lays out and draws the sheet of a comparison: all variants over the base's ghost.</summary>
internal static class ContrastSheet
{
    private const double GhostWidth = 9;
    private const double LabelRadius = 17;

    internal static string Draw(ContrastDrawing contrast)
    {
        Viewport view = Sheet.Place(contrast.Equipment.Table);
        SvgWriter svg = Sheet.Begin(Title(contrast), Description(contrast));
        TablePlan.Draw(svg, view, contrast.Equipment.Table);
        DrawShots(svg, view, contrast);
        ContrastStrip.Draw(svg, view, contrast, Title(contrast));
        return svg.Finish();
    }

    /// <summary>The table alone, without table of numbers and title block.</summary>
    internal static string DrawPlan(ContrastDrawing contrast)
    {
        TableSpec table = contrast.Equipment.Table;
        SvgWriter svg = Sheet.BeginPlan(table, Title(contrast), Description(contrast), out Viewport view);
        TablePlan.Draw(svg, view, table, dimensions: false);
        DrawShots(svg, view, contrast);
        if (contrast.VariesTwoThings)
        {
            svg.Text(
                new SvgPoint(Sheet.PlanWidth / 2, 20), Contrast.TwoThingsMark,
                new TextStyle(Ink.Small, Ink.Graphite, Bold: true, TextAnchor.Middle));
        }

        return svg.Finish();
    }

    /// <summary>The table alone in two parts, each variant's paths in a group of their own.</summary>
    internal static Plan DrawParts(ContrastDrawing contrast, double width)
    {
        (Viewport view, double height) = Sheet.PlacePlan(contrast.Equipment.Table, width);
        var table = SvgWriter.Part();
        table.Rectangle(0, 0, width, height, Ink.Paper);
        TablePlan.Draw(table, view, contrast.Equipment.Table, dimensions: false);
        var over = SvgWriter.Part();
        DrawShots(over, view, contrast, apart: true);
        return new Plan
        {
            Width = width,
            Height = height,
            View = view,
            Title = Title(contrast),
            Description = Description(contrast),
            Table = table.FinishPart(),
            Shot = over.FinishPart(),
            Numbered = 0,
        };
    }

    private static void DrawShots(SvgWriter svg, Viewport view, ContrastDrawing contrast, bool apart = false)
    {
        var taken = new Occupancy();
        TakePlaces(view, contrast, taken);
        for (int k = 0; k < contrast.Variants.Count; k++)
        {
            if (apart)
                svg.Begin("variant", k);
            DrawPaths(svg, view, contrast.Variants[k]);
            if (apart)
                svg.End();
        }

        DrawRests(svg, view, contrast);
        DrawBalls(svg, view, contrast, taken);
        DrawLabels(svg, view, contrast, taken);
    }

    private static void TakePlaces(Viewport view, ContrastDrawing contrast, Occupancy taken)
    {
        for (int ball = 0; ball < contrast.Radii.Count; ball++)
            taken.Take(view.ToSheet(contrast.Variants[0].Starts[ball]), view.ToSheet(contrast.Radii[ball]));
        foreach (VariantDrawing variant in contrast.Variants)
        {
            if (variant.Bank is not null)
                taken.TakeLine(TrackDrawing.Points(view, variant.Bank));
            if (variant.Cue is not null)
                taken.TakeLine(TrackDrawing.Points(view, variant.Cue));
        }
    }

    private static void DrawPaths(SvgWriter svg, Viewport view, VariantDrawing variant)
    {
        svg.Begin("path");
        if (variant.Mark is { } mark)
        {
            if (variant.Cue is { } cue)
            {
                // Before the hit as strong as the bank, after it only a hint of where the cue ball goes.
                TrackDrawing.DrawLines(
                    svg, view, cue.Until(variant.CueMeets), new TrackStyle(mark.Colour, mark.Dash, Ink.Thin));
                TrackDrawing.DrawCentre(
                    svg, view, cue.From(variant.CueMeets), new Pen(Tint.Of(mark.Colour, 0.6), 1.6, mark.Dash));
            }

            if (variant.Bank is { } bank)
            {
                TrackDrawing.DrawLines(svg, view, bank, new TrackStyle(mark.Colour, mark.Dash, Ink.Medium));
                TrackDrawing.DrawTicks(svg, view, bank, mark.Colour, taken: null);
            }
        }
        else
        {
            var ghost = new Pen(Ink.Ghost, GhostWidth);
            if (variant.Cue is { } cue)
            {
                TrackDrawing.DrawCentre(svg, view, cue.Until(variant.CueMeets), ghost);
                TrackDrawing.DrawCentre(svg, view, cue.From(variant.CueMeets), ghost with { Width = GhostWidth / 2 });
            }

            if (variant.Bank is { } bank)
            {
                TrackDrawing.DrawCentre(svg, view, bank, ghost);
                TrackDrawing.DrawTicks(svg, view, bank, Ink.Faint, taken: null);
            }
        }

        svg.End();
    }

    private static void DrawBalls(SvgWriter svg, Viewport view, ContrastDrawing contrast, Occupancy taken)
    {
        svg.Begin("balls");
        for (int ball = 0; ball < contrast.Names.Count; ball++)
        {
            double radius = view.ToSheet(contrast.Radii[ball]);
            SvgPoint start = view.ToSheet(contrast.Variants[0].Starts[ball]);
            foreach (VariantDrawing variant in contrast.Variants)
            {
                SvgPoint other = view.ToSheet(variant.Starts[ball]);
                if (variant.Mark is { } mark && other.DistanceTo(start) > 0.5)
                {
                    string stripe = Tint.Of(mark.Colour, 0.55);
                    BallFace.Draw(svg, other, radius, contrast.StripeAxes[ball], mark.Colour, Ink.Thin, stripe);
                }
            }

            BallFace.Draw(svg, start, radius, contrast.StripeAxes[ball], Ink.Graphite, Ink.Medium, Ink.Soft);
            BallName.Draw(
                svg, start, radius, contrast.Names[ball], contrast.StripeAxes[ball] is not null, Ink.Graphite, taken);
        }

        svg.End();
    }

    // Where each variant's cue ball comes to rest, if that is not what the comparison is about anyway.
    private static void DrawRests(SvgWriter svg, Viewport view, ContrastDrawing contrast)
    {
        svg.Begin("rests");
        foreach (VariantDrawing variant in contrast.Variants)
        {
            if (variant.BankRests && variant.Bank is { } bank)
            {
                string ring = variant.Mark?.Colour ?? Ink.Ghost;
                svg.Circle(view.ToSheet(bank.EndPoint), view.ToSheet(bank.Radius), "#ffffff", new Pen(ring, Ink.Thin));
            }

            if (variant.Cue is not { Moves: true, End.Phase: Physics.Motion.MotionPhase.AtRest } cue)
                continue;
            string colour = variant.Mark?.Colour ?? Ink.Ghost;
            SvgPoint end = view.ToSheet(cue.EndPoint);
            svg.Circle(end, view.ToSheet(cue.Radius), "#ffffff", new Pen(colour, Ink.Thin));
            if (variant.Mark is not null)
            {
                svg.Text(
                    end.Moved(0, 20 * Ink.HalfCapital), variant.Label,
                    new TextStyle(20, Ink.Graphite, false, TextAnchor.Middle));
            }
        }

        svg.End();
    }

    // Each variant's letter where its bank ends, outside the cushion if it lands on one.
    private static void DrawLabels(SvgWriter svg, Viewport view, ContrastDrawing contrast, Occupancy taken)
    {
        svg.Begin("letters");
        foreach (VariantDrawing variant in contrast.Variants)
        {
            if (variant.Mark is not { } mark || (variant.Bank ?? variant.Cue) is not { Moves: true } track)
                continue;
            SvgPoint anchor = view.ToSheet(track.EndPoint);
            SvgPoint at = taken.Place(anchor, view.ToSheet(0.06) + LabelRadius, LabelRadius, Outwards(contrast, track));
            double distance = anchor.DistanceTo(at);
            svg.Line(
                anchor,
                at.Moved((anchor.X - at.X) / distance * LabelRadius, (anchor.Y - at.Y) / distance * LabelRadius),
                new Pen(mark.Colour, Ink.Fine));
            svg.Circle(at, LabelRadius, Ink.Paper, new Pen(mark.Colour, Ink.Thin));
            svg.Text(
                at.Moved(0, Ink.Small * Ink.HalfCapital), variant.Label,
                new TextStyle(variant.Label.Length > 1 ? 18 : Ink.Small, Ink.Graphite, Bold: true, TextAnchor.Middle));
        }

        svg.End();
    }

    // From the middle of the table through the nearest edge.
    private static SvgPoint Outwards(ContrastDrawing contrast, BallTrack track)
    {
        double length = contrast.Equipment.Table.Length;
        double width = contrast.Equipment.Table.Width;
        TablePoint p = track.EndPoint;
        double least = Math.Min(Math.Min(p.X, length - p.X), Math.Min(p.Y, width - p.Y));
        if (least > 0.15)
            return new SvgPoint(0, -1);
        return least == p.X ? new SvgPoint(-1, 0)
            : least == length - p.X ? new SvgPoint(1, 0)
            : least == p.Y ? new SvgPoint(0, 1)
            : new SvgPoint(0, -1);
    }

    private static string Title(ContrastDrawing contrast) =>
        string.IsNullOrWhiteSpace(contrast.Title) ? "A comparison" : contrast.Title;

    private static string Description(ContrastDrawing contrast)
    {
        string mark = contrast.VariesTwoThings ? $" ({Contrast.TwoThingsMark})" : "";
        return $"A table in plan, the head on the left; {contrast.Varied} varied{mark}, {contrast.Held} held. "
            + string.Join(
                " ", contrast.Variants.Take(12).Select(v => $"{v.Cells[0]}: {string.Join(", ", v.Cells.Skip(1))}."));
    }
}
