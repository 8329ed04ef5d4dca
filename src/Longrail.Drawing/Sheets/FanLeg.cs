using Longrail.Physics.Shots;

namespace Longrail.Drawing.Sheets;

/// <summary>A stretch between two cushions, as it is walked at both edges of a leeway.</summary>
/// <param name="Left">Points of one edge.</param>
/// <param name="Right">As many points of the other.</param>
internal sealed record FanLeg(IReadOnlyList<TablePoint> Left, IReadOnlyList<TablePoint> Right)
{
    private const int Points = 24;

    /// <summary>The legs that a ball has in both of two shots.</summary>
    /// <param name="left">One shot.</param>
    /// <param name="right">The other.</param>
    /// <param name="ball">Index of the ball.</param>
    /// <param name="until">The ball at whose touch the fan ends; null to follow it to the end of its way.</param>
    internal static IEnumerable<FanLeg> Between(Trace left, Trace right, int ball, int? until)
    {
        List<double> one = Ends(left, ball, until);
        List<double> other = Ends(right, ball, until);
        for (int k = 0; k + 1 < Math.Min(one.Count, other.Count); k++)
        {
            yield return new FanLeg(
                Sample(left, ball, one[k], one[k + 1]), Sample(right, ball, other[k], other[k + 1]));
        }
    }

    // Times at which legs end: start, cushions, end.
    private static List<double> Ends(Trace trace, int ball, int? until)
    {
        var ends = new List<double> { Start(trace, ball) };
        foreach (ShotEvent e in trace.Events)
        {
            bool isOwn = e.BallA == ball || e.BallB == ball;
            if (!isOwn || e.Time <= ends[0])
                continue;
            bool isLast = e.Kind is ShotEventKind.Pocketed or ShotEventKind.Stops;
            if (isLast || e.Kind is ShotEventKind.Cushion or ShotEventKind.BallsMeet)
                ends.Add(e.Time);
            bool met = e.Kind == ShotEventKind.BallsMeet && (until is null || e.BallA == until || e.BallB == until);
            if (met || isLast)
                break;
        }

        return ends;
    }

    // A ball that is struck starts at once, one that is hit when it is hit.
    private static double Start(Trace trace, int ball) =>
        trace.Setup.Balls[ball].Start.Velocity.LengthSquared > 0
            ? 0
            : trace.Events.FirstOrDefault(
                e => e.BallB == ball || (e.BallA == ball && e.Kind == ShotEventKind.BallsMeet))?.Time ?? 0;

    private static TablePoint[] Sample(Trace trace, int ball, double from, double to)
    {
        var points = new TablePoint[Points];
        for (int k = 0; k < Points; k++)
        {
            double time = k == Points - 1 ? Math.BitDecrement(to) : from + (to - from) * k / (Points - 1);
            points[k] = TablePoint.From(trace.StateAt(ball, time).Position);
        }

        return points;
    }
}
