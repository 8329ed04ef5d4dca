using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Ways.Search;

/// <summary>Walks from a stroke that makes the ball to a window of the same route without missing on the
/// way.</summary>
/// <param name="player">Plays the shots.</param>
internal sealed class RouteWalk(StrokePlayer player)
{
    private const double LongestStep = 1.0 / 8;
    private const double ShortestStep = 1.0 / 512;

    /// <summary>Whether the walk gets there.</summary>
    internal bool Reaches(RouteKey route, Stroke from, AimWindow to)
    {
        var goal = new Stroke(0, to.Speed, to.TipRight, to.TipAbove, from.Elevation);
        double squirtThere = player.Squirt(goal);
        double direction = from.Aim + player.Squirt(from);
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

        double aim = Math.IEEERemainder(direction - squirtThere - to.Middle, 2 * Math.PI);
        return Math.Abs(aim) <= 0.5 * to.Width + SearchResolution.Edge;
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
