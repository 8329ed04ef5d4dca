using Longrail.Coaching.Charts.Solving;

namespace Longrail.Coaching.Charts;

public static partial class ChartRunner
{
    /// <summary>Computes a map.</summary>
    /// <param name="request">The question.</param>
    /// <param name="progress">Is told how much is done, from 0 to 1; may be called from any thread. Null for
    /// nobody.</param>
    /// <param name="stop">Ends the work.</param>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static MapAnswer Run(
        MapRequest request, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (MapCheck.Errors(request) is { Count: > 0 } errors)
            return new MapAnswer(null, errors);
        var cells = new MapCell[request.Columns * request.Rows];
        int done = 0;
        long shots = 0;
        Parallel.For(
            0, cells.Length,
            new ParallelOptions { MaxDegreeOfParallelism = request.Threads, CancellationToken = stop },
            () => new MapSolver(request),
            (k, _, solver) =>
            {
                cells[k] = solver.Solve(k % request.Columns, k / request.Columns, stop);
                progress?.Report((double)Interlocked.Increment(ref done) / cells.Length);
                return solver;
            },
            solver => Interlocked.Add(ref shots, solver.ShotsPlayed));
        return new MapAnswer(new OddsMap(request, cells, shots), []);
    }
}
