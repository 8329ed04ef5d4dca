using Longrail.Coaching.Ways;
using Longrail.Drawing.Balls;
using Longrail.Drawing.Paths;
using Longrail.Drawing.Svg;
using Longrail.Physics.Motion;

namespace Longrail.Drawing.Sheets;

/// <summary>Draws the first way on the table: paths, the leeway of aim as a pale fan, the kiss gap, where the cue ball
/// stops and the next shot from there; and where the balls stand.</summary>
internal static class WaysPlan
{
    /// <summary>How strong the way's colour is in the fan.</summary>
    internal const double FanStrength = 0.22;

    /// <summary>Dashes of the next shot's line.</summary>
    internal const string NextDash = "20 6 4 6";

    private const double PlaceRadius = 2.6;

    /// <summary>The next ball and its line.</summary>
    internal static string NextColour => Ink.Colours[2];

    internal static void Draw(SvgWriter svg, Viewport view, WaysDrawing ways)
    {
        var taken = new Occupancy();
        for (int ball = 0; ball < ways.Radii.Count; ball++)
            taken.Take(view.ToSheet(ways.Starts[ball]), view.ToSheet(ways.Radii[ball]));
        if (ways.Ways.Count == 0)
        {
            DrawBalls(svg, view, ways, taken, null);
            return;
        }

        WayDrawing way = ways.Ways[0];
        taken.TakeLine(TrackDrawing.Points(view, way.Cue));
        taken.TakeLine(TrackDrawing.Points(view, way.Ball));
        DrawFan(svg, view, way);
        DrawRest(svg, view, way);
        DrawPaths(svg, view, way, taken);
        DrawContact(svg, view, ways, way);
        DrawNext(svg, view, ways, way);
        DrawBalls(svg, view, ways, taken, way);
        DrawKiss(svg, view, ways, way, taken);
    }

    // Each leg is one area of its own: areas that overlap must not cancel each other.
    private static void DrawFan(SvgWriter svg, Viewport view, WayDrawing way)
    {
        svg.Begin("leeway");
        foreach (FanLeg leg in way.Fan)
        {
            var area = new SvgPath();
            for (int k = 0; k + 1 < leg.Left.Count; k++)
            {
                area.Move(view.ToSheet(leg.Left[k])).Line(view.ToSheet(leg.Left[k + 1]))
                    .Line(view.ToSheet(leg.Right[k + 1])).Line(view.ToSheet(leg.Right[k])).Close();
            }

            svg.Path(area, Tint.Of(way.Mark.Colour, FanStrength));
        }

        svg.End();
    }

    private static void DrawPaths(SvgWriter svg, Viewport view, WayDrawing way, Occupancy taken)
    {
        svg.Begin("path");
        BallTrack before = way.Cue.Until(way.Meets);
        TrackDrawing.DrawLines(svg, view, before, new TrackStyle(Ink.Graphite, null, Ink.Medium));
        TrackDrawing.DrawTicks(svg, view, before, Ink.Graphite, taken: null);
        BallTrack after = way.Cue.From(way.Meets);
        TrackDrawing.DrawLines(svg, view, after, new TrackStyle(Ink.Soft, null, Ink.Thin));
        TrackDrawing.DrawTicks(svg, view, after, Ink.Soft, taken: null);
        svg.End();
        svg.Begin("path");
        TrackDrawing.DrawLines(svg, view, way.Ball, new TrackStyle(way.Mark.Colour, null, Ink.Medium));
        TrackDrawing.DrawTicks(svg, view, way.Ball, way.Mark.Colour, taken);
        svg.End();
    }

    private static void DrawContact(SvgWriter svg, Viewport view, WaysDrawing ways, WayDrawing way)
    {
        if (way.Contact is not { } contact)
            return;
        svg.Begin("contact");
        SvgPoint striker = view.ToSheet(contact.StrikerAt);
        SvgPoint struck = view.ToSheet(contact.StruckAt);
        BallFace.Ghost(svg, striker, view.ToSheet(ways.Radii[contact.Striker]), Ink.Graphite);
        double dx = struck.X - striker.X;
        double dy = struck.Y - striker.Y;
        svg.Line(
            striker.Moved(-0.8 * dx, -0.8 * dy), struck.Moved(1.2 * dx, 1.2 * dy),
            new Pen(Ink.Soft, Ink.Fine, "18 5 4 5"));
        svg.End();
    }

    // Nine in ten stop within the ellipse; the dots are the places themselves.
    private static void DrawRest(SvgWriter svg, Viewport view, WayDrawing way)
    {
        if (way.Rest is not { } rest)
            return;
        svg.Begin("rest");
        var dots = new SvgPath();
        foreach (Physics.Geometry.Vec2 place in rest.Places)
            dots.Circle(view.ToSheet(TablePoint.From(place)), PlaceRadius);
        svg.Path(dots, Ink.Ghost);
        SvgPoint mean = view.ToSheet(TablePoint.From(rest.Mean));
        svg.Path(Ellipse(view, rest, mean), null, new Pen(Ink.Soft, Ink.Thin, "14 8"));
        svg.Line(mean.Moved(-9, 0), mean.Moved(9, 0), new Pen(Ink.Graphite, Ink.Fine));
        svg.Line(mean.Moved(0, -9), mean.Moved(0, 9), new Pen(Ink.Graphite, Ink.Fine));
        svg.End();
    }

    private static SvgPath Ellipse(Viewport view, RestRegion rest, SvgPoint mean) => new SvgPath().Ellipse(
        mean, view.ToSheet(rest.HalfLength), view.ToSheet(rest.HalfWidth), -rest.Direction * (180 / Math.PI));

    private static void DrawNext(SvgWriter svg, Viewport view, WaysDrawing ways, WayDrawing way)
    {
        if (way.Next.Count < 4 || ways.NextBall is not { } next)
            return;
        SvgPoint[] at = [.. way.Next.Select(view.ToSheet)];
        string colour = NextColour;
        svg.Begin("next");
        double radius = view.ToSheet(ways.Radii[next]);
        svg.Line(at[0], at[1], new Pen(colour, Ink.Thin, NextDash));
        svg.Line(at[2], at[3], new Pen(colour, Ink.Thin, NextDash));
        BallFace.Ghost(svg, at[0], view.ToSheet(ways.Radii[ways.CueBall]), Ink.Graphite);
        BallFace.Ghost(svg, at[1], radius, colour);
        svg.End();
    }

    private static void DrawKiss(
        SvgWriter svg, Viewport view, WaysDrawing ways, WayDrawing way, Occupancy taken)
    {
        if (way.Kiss is not { } kiss)
            return;
        SvgPoint cue = view.ToSheet(kiss.Cue);
        SvgPoint ball = view.ToSheet(kiss.Ball);
        double cueRadius = view.ToSheet(ways.Radii[ways.CueBall]);
        double ballRadius = view.ToSheet(ways.Radii[ways.ObjectBall]);
        double distance = Math.Max(cue.DistanceTo(ball), 1);
        SvgPoint d = new((ball.X - cue.X) / distance, (ball.Y - cue.Y) / distance);
        SvgPoint from = cue.Moved(d.X * cueRadius, d.Y * cueRadius);
        SvgPoint to = ball.Moved(-d.X * ballRadius, -d.Y * ballRadius);
        svg.Begin("kiss");
        svg.Circle(cue, cueRadius, null, new Pen(Ink.Soft, Ink.Fine, "5 5"));
        svg.Circle(ball, ballRadius, null, new Pen(way.Mark.Colour, Ink.Fine, "5 5"));
        svg.Line(from, to, new Pen(Ink.Graphite, Ink.Thin));
        svg.Line(from.Moved(-d.Y * 9, d.X * 9), from.Moved(d.Y * 9, -d.X * 9), new Pen(Ink.Graphite, Ink.Fine));
        svg.Line(to.Moved(-d.Y * 9, d.X * 9), to.Moved(d.Y * 9, -d.X * 9), new Pen(Ink.Graphite, Ink.Fine));
        double half = Math.Min(TextWidth.Of(kiss.Words, Ink.Small) / 2, 60);
        SvgPoint middle = new((from.X + to.X) / 2, (from.Y + to.Y) / 2);
        SvgPoint label = taken.Place(middle, half + 6, half, new SvgPoint(0, -1));
        svg.Text(
            label.Moved(0, Ink.Small * Ink.HalfCapital), kiss.Words,
            new TextStyle(Ink.Small, Ink.Graphite, false, TextAnchor.Middle));
        svg.End();
    }

    private static void DrawBalls(SvgWriter svg, Viewport view, WaysDrawing ways, Occupancy taken, WayDrawing? way)
    {
        svg.Begin("balls");
        for (int ball = 0; ball < ways.Names.Count; ball++)
        {
            double radius = view.ToSheet(ways.Radii[ball]);
            SvgPoint start = view.ToSheet(ways.Starts[ball]);
            string colour = ball == ways.ObjectBall && way is not null ? way.Mark.Colour
                : ball == ways.NextBall ? NextColour
                : Ink.Graphite;
            bool isStriped = ways.StripeAxes[ball] is not null;
            BallFace.Draw(svg, start, radius, ways.StripeAxes[ball], colour, Ink.Medium);
            BallName.Draw(svg, start, radius, ways.Names[ball], isStriped, colour, taken);
        }

        if (way is { Cue.End.Phase: MotionPhase.AtRest })
        {
            SvgPoint end = view.ToSheet(way.Cue.EndPoint);
            svg.Circle(end, view.ToSheet(ways.Radii[ways.CueBall]), "#ffffff", new Pen(Ink.Soft, Ink.Thin));
        }

        svg.End();
    }
}
