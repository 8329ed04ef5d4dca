namespace Longrail.Coaching.Charts;

/// <summary>A map of the table: how good a bank is from each place of the object ball.</summary>
/// <param name="Request">The question.</param>
/// <param name="Cells">The cells, row by row from the right, each row from the head.</param>
/// <param name="ShotsPlayed">How many of the player's strokes were played.</param>
public sealed record OddsMap(MapRequest Request, IReadOnlyList<MapCell> Cells, long ShotsPlayed)
{
    /// <summary>A cell.</summary>
    /// <param name="column">From 0, counted from the head.</param>
    /// <param name="row">From 0, counted from the right.</param>
    public MapCell this[int column, int row] => Cells[row * Request.Columns + column];

    /// <summary>The number that a cell shows: a chance from 0 to 1, or a leeway in degrees; 0 where the bank cannot be
    /// made.</summary>
    public double Value(MapCell cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return Request.Measure == MapMeasure.Odds
            ? cell.Made?.Share ?? 0
            : (cell.Leeway ?? 0) * (180 / Math.PI);
    }

    /// <summary>The usual half-width of a cell's 95 % interval (root mean square over the cells with odds); null on a
    /// map of leeway.</summary>
    public double? TypicalHalfWidth
    {
        get
        {
            double[] halves =
                [.. Cells.Where(c => c.Made is not null).Select(c => 0.5 * (c.Made!.Value.High - c.Made.Value.Low))];
            return halves.Length == 0 ? null : Math.Sqrt(halves.Average(h => h * h));
        }
    }

    /// <summary>The reasons of all cells without an answer, each once.</summary>
    public IReadOnlyList<NoBank> Failures =>
        [.. Cells.Select(cell => cell.Failure).Where(f => f != NoBank.None).Distinct().Order()];
}
