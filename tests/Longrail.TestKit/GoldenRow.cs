namespace Longrail.TestKit;

/// <summary>One row of a <see cref="GoldenTable"/>.</summary>
public sealed class GoldenRow
{
    private readonly GoldenTable _table;
    private readonly string[] _cells;

    internal GoldenRow(GoldenTable table, string[] cells)
    {
        _table = table;
        _cells = cells;
    }

    /// <summary>The columns' names, in order.</summary>
    public IReadOnlyList<string> Columns => _table.Columns;

    /// <summary>The number in a column.</summary>
    public GoldenCell this[string column] => new(Text(column));

    /// <summary>The text in a column.</summary>
    public string Text(string column) => _cells[_table.IndexOf(column)];

    /// <summary>Whether a column holds anything in this row.</summary>
    public bool Has(string column) => Text(column).Length > 0;

    /// <inheritdoc/>
    public override string ToString() => $"{_table.Name}: {string.Join(", ", _cells)}";
}
