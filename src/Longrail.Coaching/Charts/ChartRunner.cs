using Longrail.Coaching.Charts.Solving;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Charts;

/// <summary>Computes charts, on all cores. The same request gives the same chart, whatever the number of
/// threads.</summary>
public static partial class ChartRunner
{
    /// <summary>Computes a bank chart.</summary>
    /// <param name="request">The question.</param>
    /// <param name="progress">Is told how much is done, from 0 to 1; may be called from any thread. Null for
    /// nobody.</param>
    /// <param name="stop">Ends the work.</param>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static ChartAnswer Run(
        ChartRequest request, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (ChartCheck.Errors(request) is { Count: > 0 } errors)
            return new ChartAnswer(null, errors);
        Launch[] launches =
        [
            .. from tip in request.Tips
               from speed in request.Speeds
               select FullHit.Of(request, request.Route.IsKick, speed, tip.Right),
        ];
        var rows = new ChartRow[request.Places.Diamonds.Count];
        int done = 0;
        Parallel.For(
            0, rows.Length,
            new ParallelOptions { MaxDegreeOfParallelism = request.Threads, CancellationToken = stop },
            () => new ChartSolver(request),
            (k, _, solver) =>
            {
                rows[k] = Row(request, solver, request.Places.Diamonds[k], launches, stop);
                progress?.Report((double)Interlocked.Increment(ref done) / rows.Length);
                return solver;
            },
            _ => { });
        return new ChartAnswer(new BankChart(request, rows), []);
    }

    private static ChartRow Row(
        ChartRequest request, ChartSolver solver, Vec2 diamonds, Launch[] launches, CancellationToken stop)
    {
        TableSpec table = request.Equipment.Table;
        var place = new Vec2(diamonds.X * table.DiamondAlong, diamonds.Y * table.DiamondAcross);
        Vec2? mirror = solver.Mirror(place);
        var cells = new ChartCell[launches.Length];
        for (int i = 0; i < cells.Length; i++)
        {
            stop.ThrowIfCancellationRequested();
            cells[i] = solver.Solve(place, launches[i]);
        }

        double? number = mirror is { } touch && touch.DistanceTo(place) > 1e-9
            ? solver.MirrorNumber(place, touch)
            : null;
        return new ChartRow(diamonds, mirror, number, cells);
    }
}
