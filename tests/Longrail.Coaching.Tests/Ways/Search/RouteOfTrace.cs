using Longrail.Coaching.Ways;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Tests.Ways.Search;

/// <summary>The route by which a finished shot made the ball, read from its trace after the fact: written apart from
/// the search, from the definition in the remarks of its watch.</summary>
internal static class RouteOfTrace
{
    private static readonly double _glancing = Math.Sin(25 * Math.PI / 180);

    internal static WayRoute? Read(Trace trace, int cueBall, int objectBall)
    {
        // To the end: no scratch.
        if (trace.Balls[cueBall].Pocket is not null || trace.Balls[objectBall].Pocket is not { } pocket) return null;
        ShotEvent[] all = [.. trace.Events.Where(e => e.Kind is not (ShotEventKind.Tip or ShotEventKind.SlideEnds))];
        int meeting = Array.FindIndex(all, e => Touches(e, cueBall) && e.Kind == ShotEventKind.BallsMeet);
        if (meeting < 0 || !Touches(all[meeting], objectBall)) return null;
        ShotEvent[] before = [.. all[..meeting].Where(e => Touches(e, cueBall))];
        if (before.Any(e => e.Kind != ShotEventKind.Cushion)) return null;
        ShotEvent[] way = [.. all[(meeting + 1)..].Where(e => Touches(e, objectBall))];
        Vec2 start = trace.Setup.Balls[objectBall].Start.Position;
        double radius = trace.Setup.Balls[objectBall].Radius;
        var cushions = new List<ShotEvent>();
        bool jaws = false;
        foreach (ShotEvent e in way)
        {
            switch (e.Kind)
            {
                case ShotEventKind.BallsMeet:
                    Vec2 at = (e.BallA == objectBall ? e.BeforeA : e.BeforeB!.Value).Position;
                    if (!Touches(e, cueBall) || at.DistanceTo(start) >= radius) return null;
                    break;
                case ShotEventKind.Stops:
                    return null;
                case ShotEventKind.Jaw:
                    if (e.Pocket != pocket) return null;
                    jaws = true;
                    break;
                case ShotEventKind.Cushion when jaws:
                    if (!LeadsInto(trace, e, pocket, radius)) return null;
                    break;
                case ShotEventKind.Cushion:
                    cushions.Add(e);
                    break;
            }
        }

        // Those at the end that only lead into the pocket do not count; a cushion twice in a row counts once.
        while (cushions.Count > 0 && LeadsInto(trace, cushions[^1], pocket, radius)) cushions.RemoveAt(cushions.Count - 1);
        return new WayRoute(Once(before), Once(cushions), pocket);
    }

    private static bool Touches(ShotEvent e, int ball) => e.BallA == ball || e.BallB == ball;

    private static CushionName[] Once(IReadOnlyList<ShotEvent> touches) =>
        [.. touches.Where((e, i) => i == 0 || touches[i - 1].Cushion != e.Cushion).Select(e => e.Cushion!.Value)];

    private static bool LeadsInto(Trace trace, ShotEvent touch, PocketName pocket, double radius)
    {
        RubberPiece[] pieces = new TableOutline(trace.Setup.Equipment.Table).Pieces;
        foreach (RubberPiece piece in pieces.Where(p => p.Cushion == touch.Cushion))
        {
            foreach (JawEnd jaw in new[] { piece.AtStart, piece.AtEnd }.Where(jaw => jaw.Pocket == pocket))
            {
                Vec2 v = touch.BeforeA.Velocity;
                bool glances = Math.Abs(v.Dot(piece.Inward)) < _glancing * v.Length;
                if (glances || (jaw.Corner - touch.BeforeA.Position).Dot(jaw.TowardPocket) < 2 * radius) return true;
            }
        }

        return false;
    }
}
