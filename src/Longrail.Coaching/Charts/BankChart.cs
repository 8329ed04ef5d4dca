namespace Longrail.Coaching.Charts;

/// <summary>A bank chart for one table.</summary>
/// <param name="Request">The question.</param>
/// <param name="Rows">One row for each place.</param>
public sealed record BankChart(ChartRequest Request, IReadOnlyList<ChartRow> Rows)
{
    /// <summary>The cell of a place, a tip and a speed.</summary>
    /// <param name="place">Index of the place.</param>
    /// <param name="tip">Index of the tip.</param>
    /// <param name="speed">Index of the speed.</param>
    public ChartCell this[int place, int tip, int speed] => Rows[place].Cells[tip * Request.Speeds.Count + speed];

    /// <summary>The reasons of all cells without an answer, each once.</summary>
    public IReadOnlyList<NoBank> Failures =>
    [
        .. Rows.SelectMany(row => row.Cells).Select(cell => cell.Failure)
            .Where(failure => failure != NoBank.None).Distinct().Order(),
    ];
}
