using Longrail.Drawing.Balls;
using Longrail.Drawing.Paths;
using Longrail.Drawing.Svg;
using Longrail.Drawing.Tables;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Drawing.Sheets;

/// <summary>Lays out and draws the sheet of one shot.</summary>
internal static class ShotSheet
{
    private const double KeyTop = Sheet.StripTop + 58;
    private const double NoteHeight = 33;
    private const int MostNotes = 4;
    private const int MostNumbersOnPlan = 12;

    internal static string Draw(ShotDrawing shot)
    {
        Viewport view = Sheet.Place(shot.Equipment.Table);
        SvgWriter svg = Sheet.Begin(Title(shot), Description(shot));
        TablePlan.Draw(svg, view, shot.Equipment.Table);
        DrawShot(svg, view, shot, EventKey.Room(KeyHeight(shot), shot.Key.Count));
        DrawStrip(svg, view, shot);
        return svg.Finish();
    }

    /// <summary>The table alone, without key and title block.</summary>
    internal static string DrawPlan(ShotDrawing shot)
    {
        SvgWriter svg = Sheet.BeginPlan(shot.Equipment.Table, Title(shot), Description(shot), out Viewport view);
        TablePlan.Draw(svg, view, shot.Equipment.Table, dimensions: false);
        DrawShot(svg, view, shot, Math.Min(shot.Key.Count, MostNumbersOnPlan));
        return svg.Finish();
    }

    /// <summary>The table alone in two parts, so that a page can renew the shot without the table under it.</summary>
    internal static Plan DrawParts(ShotDrawing shot, double width)
    {
        (Viewport view, double height) = Sheet.PlacePlan(shot.Equipment.Table, width);
        var table = SvgWriter.Part();
        table.Rectangle(0, 0, width, height, Ink.Paper);
        TablePlan.Draw(table, view, shot.Equipment.Table, dimensions: false);
        var over = SvgWriter.Part();
        DrawShot(over, view, shot, Math.Min(shot.Key.Count, MostNumbersOnPlan), apart: true);
        return new Plan
        {
            Width = width,
            Height = height,
            View = view,
            Title = Title(shot),
            Description = Description(shot),
            Table = table.FinishPart(),
            Shot = over.FinishPart(),
            Numbered = Math.Min(shot.Key.Count, MostNumbersOnPlan),
        };
    }

    private static void DrawShot(SvgWriter svg, Viewport view, ShotDrawing shot, int numbered, bool apart = false)
    {
        IReadOnlyList<string> colours = BallInk.Assign(shot.Tracks.Count, shot.Struck);
        var taken = new Occupancy();
        TakePlaces(view, shot, taken);
        DrawTracks(svg, view, shot, colours, taken);
        DrawGhost(svg, view, shot, colours);
        DrawBalls(svg, view, shot, colours, taken);
        DrawFaces(svg, view, shot, colours, taken);
        double ball = shot.Tracks.Count == 0 ? 0 : view.ToSheet(shot.Tracks[0].Radius);
        EventKey.DrawCircles(svg, view, [.. shot.Key.Take(numbered)], ball, taken, apart);
    }

    private static void TakePlaces(Viewport view, ShotDrawing shot, Occupancy taken)
    {
        foreach (BallTrack track in shot.Tracks)
        {
            taken.TakeLine(TrackDrawing.Points(view, track));
            double radius = view.ToSheet(track.Radius);
            taken.Take(view.ToSheet(track.StartPoint), radius);
            if (track.Moves)
                taken.Take(view.ToSheet(track.EndPoint), track.End.Phase == MotionPhase.Pocketed ? 10 : radius);
        }

        if (shot.Ghost is { } ghost)
            taken.Take(view.ToSheet(ghost.StrikerAt), view.ToSheet(shot.Tracks[ghost.Striker].Radius));
    }

    private static void DrawTracks(
        SvgWriter svg, Viewport view, ShotDrawing shot, IReadOnlyList<string> colours, Occupancy taken)
    {
        for (int ball = 0; ball < shot.Tracks.Count; ball++)
        {
            BallTrack track = shot.Tracks[ball];
            if (!track.Moves)
                continue;
            svg.Begin("path");
            TrackDrawing.DrawLines(svg, view, track, new TrackStyle(colours[ball], null, Ink.Medium));
            TrackDrawing.DrawTicks(svg, view, track, colours[ball], taken);
            svg.End();
        }
    }

    private static void DrawGhost(SvgWriter svg, Viewport view, ShotDrawing shot, IReadOnlyList<string> colours)
    {
        if (shot.Ghost is not { } ghost)
            return;
        SvgPoint striker = view.ToSheet(ghost.StrikerAt);
        SvgPoint struck = view.ToSheet(ghost.StruckAt);
        svg.Begin("contact");
        BallFace.Ghost(svg, striker, view.ToSheet(shot.Tracks[ghost.Striker].Radius), colours[ghost.Striker]);
        BallFace.Ghost(svg, struck, view.ToSheet(shot.Tracks[ghost.Struck].Radius), colours[ghost.Struck]);
        // The line of centres, a little beyond both balls.
        double dx = struck.X - striker.X;
        double dy = struck.Y - striker.Y;
        var thin = new Pen(Ink.Soft, Ink.Fine, "18 5 4 5");
        svg.Line(striker.Moved(-0.8 * dx, -0.8 * dy), struck.Moved(1.2 * dx, 1.2 * dy), thin);
        svg.End();
    }

    private static void DrawBalls(
        SvgWriter svg, Viewport view, ShotDrawing shot, IReadOnlyList<string> colours, Occupancy taken)
    {
        svg.Begin("balls");
        for (int ball = 0; ball < shot.Tracks.Count; ball++)
        {
            BallTrack track = shot.Tracks[ball];
            double radius = view.ToSheet(track.Radius);
            Vec3? axis = shot.StripeAxes[ball];
            if (track.Moves)
                DrawEnd(svg, view, track, axis, shot.Names[ball], colours[ball]);
            SvgPoint start = view.ToSheet(track.StartPoint);
            BallFace.Draw(svg, start, radius, axis, colours[ball], Ink.Medium);
            BallName.Draw(svg, start, radius, shot.Names[ball], axis is not null, colours[ball], taken);
        }

        svg.End();
    }

    private static void DrawEnd(
        SvgWriter svg, Viewport view, BallTrack track, Vec3? axis, string name, string colour)
    {
        SvgPoint end = view.ToSheet(track.EndPoint);
        double radius = view.ToSheet(track.Radius);
        if (track.End.Phase == MotionPhase.Pocketed)
        {
            svg.Circle(end, 8, colour, new Pen(Ink.Paper, Ink.Thin));
            return;
        }

        Vec3? turned = axis is { } a ? track.OrientationAt(double.MaxValue).Apply(a) : null;
        BallFace.Draw(svg, end, radius, turned, colour, Ink.Thin, Tint.Of(colour, 0.55));
        if (BallName.FitsInto(name, radius, axis is not null))
        {
            svg.Text(
                end.Moved(0, Ink.Small * Ink.HalfCapital), SvgText.Clean(name),
                new TextStyle(Ink.Small, colour, false, TextAnchor.Middle));
        }
    }

    private static void DrawFaces(
        SvgWriter svg, Viewport view, ShotDrawing shot, IReadOnlyList<string> colours, Occupancy taken)
    {
        svg.Begin("faces");
        for (int ball = 0; ball < shot.Tracks.Count; ball++)
        {
            if (shot.Tracks[ball].Moves && shot.StripeAxes[ball] is { } axis)
                TrackDrawing.DrawFaces(svg, view, shot.Tracks[ball], axis, colours[ball], taken);
        }

        svg.End();
    }

    private static void DrawStrip(SvgWriter svg, Viewport view, ShotDrawing shot)
    {
        const double Left = Sheet.Frame + 30;
        const double InsetRadius = 140;
        double right = Sheet.BlockLeft - 30;
        PathLegend.Draw(svg, Left, Sheet.StripTop + 22);
        if (shot.Tip is { } tip)
        {
            var centre = new SvgPoint(right - InsetRadius - 20, Sheet.StripTop + InsetRadius + 60);
            TipInset.Draw(svg, centre, InsetRadius, tip, Ink.Colours[1]);
            right -= 2 * InsetRadius + 60;
        }

        EventKey.DrawTable(svg, Left, KeyTop, right - Left, KeyHeight(shot), shot.Key);
        DrawNotes(svg, Left, right - Left, shot);
        TitleBlock.Draw(
            svg, Sheet.BlockLeft, Sheet.StripTop, Sheet.Width - Sheet.Frame - Sheet.BlockLeft,
            Sheet.StripBottom - Sheet.StripTop, Title(shot),
            EquipmentWords.Rows(shot.Equipment, shot.TableName, view.Reduction, shot.Date));
    }

    private static double KeyHeight(ShotDrawing shot) =>
        Sheet.StripBottom - KeyTop - 10 - NoteHeight * Math.Min(shot.Notes.Count, MostNotes);

    private static void DrawNotes(SvgWriter svg, double x, double width, ShotDrawing shot)
    {
        svg.Begin("notes");
        int shown = Math.Min(shot.Notes.Count, MostNotes);
        for (int k = 0; k < shown; k++)
        {
            string text = TextWidth.Fit(SvgText.Clean(shot.Notes[k]), width, Ink.Small);
            double line = Sheet.StripBottom - 16 - NoteHeight * (shown - 1 - k);
            svg.Text(new SvgPoint(x, line), text, new TextStyle(Ink.Small, Ink.Graphite));
        }

        svg.End();
    }

    private static string Title(ShotDrawing shot) => string.IsNullOrWhiteSpace(shot.Title) ? "A shot" : shot.Title;

    private static string Description(ShotDrawing shot) =>
        "A table in plan, the head on the left. " + string.Join(" ", shot.Key.Take(20).Select(row =>
            FormattableString.Invariant($"{row.Number}: {row.Time:0.00} s, {row.What}. {row.Reading}.")));
}
