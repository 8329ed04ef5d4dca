using System.Globalization;
using Longrail.Drawing.Balls;
using Longrail.Drawing.Sheets;
using Longrail.Drawing.Svg;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Drawing.Paths;

/// <summary>Draws the way of one ball: double line while it skids, single while it rolls, a tick every tenth of a
/// second.</summary>
internal static class TrackDrawing
{
    /// <summary>Time between two ticks, seconds.</summary>
    internal const double TickInterval = 0.1;

    private const int TicksPerFace = 3;

    // Half the distance between the two lines of a skid, sheet units.
    private const double HalfGap = 3.4;
    private const double SkidLine = 1.9;
    private const double HalfTick = 8.0;
    private const double HalfSecondTick = 15.0;
    private const double SecondSize = 20;

    /// <summary>The lines of a track, with an arrow head on each long stretch.</summary>
    internal static void DrawLines(SvgWriter svg, Viewport view, BallTrack track, TrackStyle style)
    {
        var single = new SvgPath();
        var twin = new SvgPath();
        foreach (TrackPiece piece in track.Pieces)
        {
            SvgPoint[] points = [.. piece.Points.Select(view.ToSheet)];
            if (piece.Phase == MotionPhase.Sliding)
                twin.Polyline(Beside(points, HalfGap)).Polyline(Beside(points, -HalfGap));
            else
                single.Polyline(points);
        }

        svg.Path(twin, null, new Pen(style.Colour, SkidLine, style.Dash));
        svg.Path(single, null, new Pen(style.Colour, style.Width, style.Dash));
        svg.Path(Arrows(view, track), style.Colour);
    }

    /// <summary>The ball's face at some of its ticks, where there is room.</summary>
    internal static void DrawFaces(
        SvgWriter svg, Viewport view, BallTrack track, Vec3 stripeAxis, string colour, Occupancy taken)
    {
        double radius = view.ToSheet(track.Radius);
        foreach (double time in TickTimes(track).Where((_, k) => k % TicksPerFace == TicksPerFace - 1))
        {
            SvgPoint centre = view.ToSheet(track.PositionAt(time));
            if (!taken.TryTake(centre, 1.15 * radius))
                continue;
            Vec3 turned = track.OrientationAt(time).Apply(stripeAxis);
            BallFace.Draw(svg, centre, radius, turned, colour, Ink.Fine, Tint.Of(colour, 0.55));
        }
    }

    /// <summary>The times of the ticks while the ball moves.</summary>
    internal static IEnumerable<double> TickTimes(BallTrack track)
    {
        if (!track.Moves)
            yield break;
        double start = track.Pieces[0].Start;
        double end = track.Pieces[^1].End;
        for (int k = (int)Math.Floor(start / TickInterval) + 1; k * TickInterval < end; k++)
            yield return k * TickInterval;
    }

    /// <summary>The middle line of a track alone, whatever its phases.</summary>
    internal static void DrawCentre(SvgWriter svg, Viewport view, BallTrack track, Pen pen)
    {
        var path = new SvgPath();
        foreach (TrackPiece piece in track.Pieces)
            path.Polyline(piece.Points.Select(view.ToSheet));
        svg.Path(path, null, pen);
    }

    /// <summary>A tick across the path every tenth of a second, a long one with its number at each whole
    /// second.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="view">Where the table lies.</param>
    /// <param name="track">The track.</param>
    /// <param name="colour">Colour of the ticks.</param>
    /// <param name="taken">What is drawn where; null to leave the numbers out.</param>
    internal static void DrawTicks(SvgWriter svg, Viewport view, BallTrack track, string colour, Occupancy? taken)
    {
        var ticks = new SvgPath();
        double radius = view.ToSheet(track.Radius);
        SvgPoint last = view.ToSheet(track.EndPoint);
        var seconds = new List<(SvgPoint At, SvgPoint Direction, int Second)>();
        foreach (double time in TickTimes(track))
        {
            BallState state = track.StateAt(time);
            SvgPoint at = view.ToSheet(TablePoint.From(state.Position));
            // The last ticks of a ball that comes to rest crowd together inside its own outline.
            if (state.Velocity.Length == 0 || at.DistanceTo(last) < radius)
                continue;
            SvgPoint direction = Viewport.Direction(state.Velocity.Normalized());
            int tenths = (int)Math.Round(time / TickInterval);
            bool whole = tenths % 10 == 0;
            double half = whole ? HalfSecondTick : HalfTick;
            ticks.Move(at.Moved(-direction.Y * half, direction.X * half))
                .Line(at.Moved(direction.Y * half, -direction.X * half));
            if (whole && taken is not null)
                seconds.Add((at, direction, tenths / 10));
        }

        svg.Path(ticks, null, new Pen(colour, 1.7));
        foreach ((SvgPoint at, SvgPoint direction, int second) in seconds)
            DrawSecond(svg, at, direction, second, colour, taken!);
    }

    // On the left of the path, else on its right, else not at all: the long tick is there anyway.
    private static void DrawSecond(
        SvgWriter svg, SvgPoint at, SvgPoint direction, int second, string colour, Occupancy taken)
    {
        foreach (double away in (double[])[HalfSecondTick + 15, -HalfSecondTick - 15])
        {
            SvgPoint centre = at.Moved(direction.Y * away, -direction.X * away);
            if (!taken.TryTakeBlank(centre, 14))
                continue;
            svg.Text(
                centre.Moved(0, SecondSize * Ink.HalfCapital),
                string.Create(CultureInfo.InvariantCulture, $"{second} s"),
                new TextStyle(SecondSize, colour, false, TextAnchor.Middle));
            return;
        }
    }

    private static SvgPath Arrows(Viewport view, BallTrack track)
    {
        const double LongEnough = 150;
        var path = new SvgPath();
        foreach (TrackPiece piece in track.Pieces)
        {
            if (view.ToSheet(piece.Points[0]).DistanceTo(view.ToSheet(piece.Points[^1])) < LongEnough)
                continue;
            // Half way between two ticks near the middle, so that tick and arrow do not run together.
            double middle = (Math.Floor((piece.Start + piece.End) / 2 / TickInterval) + 0.5) * TickInterval;
            if (middle <= piece.Start || middle >= piece.End)
                middle = (piece.Start + piece.End) / 2;
            BallState state = track.StateAt(middle);
            SvgPoint d = Viewport.Direction(state.Velocity.Normalized());
            SvgPoint at = view.ToSheet(TablePoint.From(state.Position)).Moved(d.X * 12, d.Y * 12);
            path.Move(at)
                .Line(at.Moved(-24 * d.X - 8 * d.Y, -24 * d.Y + 8 * d.X))
                .Line(at.Moved(-24 * d.X + 8 * d.Y, -24 * d.Y - 8 * d.X))
                .Close();
        }

        return path;
    }

    /// <summary>Points on a track close enough together that no label slips between them.</summary>
    internal static IEnumerable<SvgPoint> Points(Viewport view, BallTrack track)
    {
        const double Spacing = 15;
        foreach (TrackPiece piece in track.Pieces)
        {
            for (int i = 0; i + 1 < piece.Points.Count; i++)
            {
                SvgPoint a = view.ToSheet(piece.Points[i]);
                SvgPoint b = view.ToSheet(piece.Points[i + 1]);
                int steps = (int)Math.Ceiling(a.DistanceTo(b) / Spacing);
                for (int k = 0; k < steps; k++)
                    yield return a.Moved((b.X - a.X) * k / steps, (b.Y - a.Y) * k / steps);
            }
        }
    }

    // The same curve moved sideways.
    private static IEnumerable<SvgPoint> Beside(SvgPoint[] points, double distance)
    {
        for (int i = 0; i < points.Length; i++)
        {
            SvgPoint before = points[Math.Max(i - 1, 0)];
            SvgPoint after = points[Math.Min(i + 1, points.Length - 1)];
            double length = before.DistanceTo(after);
            if (length > 0)
                yield return points[i].Moved(
                    -(after.Y - before.Y) / length * distance, (after.X - before.X) / length * distance);
        }
    }
}
