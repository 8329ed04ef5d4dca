using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Ways.Search;

/// <summary>Walks from a stroke that makes the ball to a window of the same route without missing on the
/// way.</summary>
/// <param name="player">Plays the shots.</param>
internal sealed class RouteWalk(StrokePlayer player)
{
    private const double LongestStep = 1.0 / 8;
    private const double ShortestStep = 1.0 / 512;

    /// <summary>Steps of the flood: the logarithm of the speed, and the tip's place over the miscue limit.</summary>
    private const double SpeedStep = 0.08;

    private const double TipStep = 1.0 / 6;

    /// <summary>So many places are flooded before a stroke counts as outside.</summary>
    private const int MostPlaces = 60;

    private const int NearestTried = 12;
    private const int TriesOfWindow = 4;

    private readonly double _limit = TipContact.MiscueLimit(player.Cue) * player.Radius;

    /// <summary>Whether a stroke hangs together with one of the windows: straight to one of the nearest, or from
    /// place to place about the holes that lie between.</summary>
    internal bool Reaches(RouteKey route, Stroke start, IReadOnlyList<AimWindow> windows)
    {
        double direction = start.Aim + player.Squirt(start);
        IEnumerable<AimWindow> nearest = Nearest(start, direction, windows).Take(NearestTried);
        if (nearest.Any(window => Reaches(route, start, direction, window))) return true;
        var places = new PriorityQueue<(Stroke Stroke, double Direction), double>();
        var seen = new HashSet<(int, int, int)> { (0, 0, 0) };
        var tries = new Dictionary<AimWindow, int>();
        places.Enqueue((start, direction), 0);
        while (places.TryDequeue(out (Stroke Stroke, double Direction) place, out _) && seen.Count < MostPlaces)
        {
            foreach (Stroke beside in Beside(place.Stroke))
            {
                if (!seen.Add(Place(start, beside))) continue;
                double there = place.Direction;
                if (!Walks(route, place.Stroke, beside, ref there)) continue;
                // A window that could not be reached from a few places is left alone, or every place would try it.
                AimWindow[] near =
                [
                    .. Nearest(beside, there, windows).Where(w => tries.GetValueOrDefault(w) < TriesOfWindow).Take(2),
                ];
                foreach (AimWindow window in near)
                {
                    if (Reaches(route, beside, there, window)) return true;
                    tries[window] = tries.GetValueOrDefault(window) + 1;
                }

                places.Enqueue((beside, there), near.Length == 0 ? 0 : Distance(beside, there, near[0]));
            }
        }

        return false;
    }

    private IEnumerable<Stroke> Beside(Stroke s)
    {
        double step = TipStep * _limit;
        Stroke[] all =
        [
            s with { Speed = s.Speed * Math.Exp(SpeedStep) }, s with { Speed = s.Speed * Math.Exp(-SpeedStep) },
            s with { OffsetRight = s.OffsetRight + step }, s with { OffsetRight = s.OffsetRight - step },
            s with { OffsetAbove = s.OffsetAbove + step }, s with { OffsetAbove = s.OffsetAbove - step },
        ];
        return all.Where(b => b.OffsetRight * b.OffsetRight + b.OffsetAbove * b.OffsetAbove < _limit * _limit);
    }

    private (int Speed, int Right, int Above) Place(Stroke start, Stroke s) => (
        (int)Math.Round(Math.Log(s.Speed / start.Speed) / SpeedStep),
        (int)Math.Round((s.OffsetRight - start.OffsetRight) / (TipStep * _limit)),
        (int)Math.Round((s.OffsetAbove - start.OffsetAbove) / (TipStep * _limit)));

    private IEnumerable<AimWindow> Nearest(Stroke s, double direction, IReadOnlyList<AimWindow> windows) =>
        windows.OrderBy(w => Distance(s, direction, w));

    /// <summary>How far a window's node is from a stroke, and how far the aim has to turn.</summary>
    private double Distance(Stroke s, double direction, AimWindow w)
    {
        double speed = Math.Log(w.Speed / s.Speed) / 0.35;
        double right = (w.TipRight - s.OffsetRight) / (0.5 * _limit);
        double above = (w.TipAbove - s.OffsetAbove) / (0.5 * _limit);
        double way = w.Middle + player.Squirt(new Stroke(0, w.Speed, w.TipRight, w.TipAbove, s.Elevation));
        double turn = Math.IEEERemainder(way - direction, 2 * Math.PI) / (5 * SearchResolution.Degree);
        return Math.Sqrt(speed * speed + right * right + above * above + turn * turn);
    }

    private bool Reaches(RouteKey route, Stroke start, double direction, AimWindow to)
    {
        var goal = new Stroke(0, to.Speed, to.TipRight, to.TipAbove, start.Elevation);
        if (!Walks(route, start, goal, ref direction)) return false;
        double aim = Math.IEEERemainder(direction - player.Squirt(goal) - to.Middle, 2 * Math.PI);
        return Math.Abs(aim) <= 0.5 * to.Width + SearchResolution.Edge;
    }

    private bool Walks(RouteKey route, Stroke from, Stroke goal, ref double direction)
    {
        double width = Centre(route, from, goal, 0, ref direction);
        double slope = 0;
        double at = 0;
        double step = LongestStep;
        while (at < 1)
        {
            step = Math.Min(step, 1 - at);
            if (Step(route, from, goal, at, step, direction, width, slope) is not { } next)
            {
                step /= 2;
                if (step < ShortestStep) return false;
                continue;
            }

            double here = next;
            width = Centre(route, from, goal, at + step, ref here);
            slope = (here - direction) / step;
            direction = here;
            at += step;
            step = Math.Min(2 * step, LongestStep);
        }

        return true;
    }

    /// <summary>A direction that makes the ball a step farther on, near to where it is expected; null if none is
    /// found there.</summary>
    private double? Step(
        RouteKey route, Stroke from, Stroke goal, double at, double step, double direction, double width, double slope)
    {
        double expected = direction + slope * step;
        for (int i = 0; i <= 8; i++)
        {
            // Outwards to either side in half widths of the window.
            double trial = expected + (i % 2 == 0 ? 0.25 : -0.25) * i * width;
            if (Makes(route, from, goal, at + step, trial)
                && Makes(route, from, goal, at + 0.5 * step, 0.5 * (direction + trial)))
                return trial;
        }

        return null;
    }

    /// <summary>Moves a direction to the middle of the window that it lies in; gives the window's width.</summary>
    private double Centre(RouteKey route, Stroke from, Stroke goal, double at, ref double direction)
    {
        double up = Edge(route, from, goal, at, direction, 1);
        double down = Edge(route, from, goal, at, direction, -1);
        direction += 0.5 * (up - down);
        return Math.Max(up + down, 0.1 * SearchResolution.Edge);
    }

    private double Edge(RouteKey route, Stroke from, Stroke goal, double at, double direction, double side)
    {
        double made = 0;
        double missed = 0.25 * SearchResolution.Edge;
        while (missed < 0.1 && Makes(route, from, goal, at, direction + side * missed))
        {
            made = missed;
            missed *= 2;
        }

        for (int i = 0; i < 3; i++)
        {
            double middle = 0.5 * (made + missed);
            if (Makes(route, from, goal, at, direction + side * middle)) made = middle;
            else missed = middle;
        }

        return made;
    }

    private bool Makes(RouteKey route, Stroke from, Stroke goal, double at, double direction)
    {
        var stroke = new Stroke(
            0, from.Speed * Math.Pow(goal.Speed / from.Speed, at),
            from.OffsetRight + at * (goal.OffsetRight - from.OffsetRight),
            from.OffsetAbove + at * (goal.OffsetAbove - from.OffsetAbove), from.Elevation);
        return player.Play(stroke with { Aim = direction - player.Squirt(stroke) }).Makes(route);
    }
}
