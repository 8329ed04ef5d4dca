using System.Text;
using Longrail.Coaching.Contrasts;

namespace Longrail.Cli.Text;

/// <summary>A table as text in columns: names and units above, numbers set to the right.</summary>
internal static class ColumnText
{
    private const string Gap = "  ";

    /// <summary>Appends the table.</summary>
    internal static void Append(
        StringBuilder text, IReadOnlyList<ContrastColumn> columns, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        int[] widths = new int[columns.Count];
        for (int c = 0; c < widths.Length; c++)
        {
            int cells = rows.Count == 0 ? 0 : rows.Max(row => PlainText.Of(row[c]).Length);
            widths[c] = Math.Max(cells, Math.Max(columns[c].Name.Length, columns[c].Unit.Length));
        }

        AppendRow(text, columns, widths, [.. columns.Select(c => c.Name)]);
        if (columns.Any(c => c.Unit.Length > 0))
            AppendRow(text, columns, widths, [.. columns.Select(c => c.Unit)]);
        foreach (IReadOnlyList<string> row in rows)
            AppendRow(text, columns, widths, row);
    }

    private static void AppendRow(
        StringBuilder text, IReadOnlyList<ContrastColumn> columns, int[] widths, IReadOnlyList<string> cells)
    {
        IEnumerable<string> padded = cells.Select((cell, c) => columns[c].IsNumber
            ? PlainText.Of(cell).PadLeft(widths[c])
            : PlainText.Of(cell).PadRight(widths[c]));
        text.Append(string.Join(Gap, padded).TrimEnd()).Append('\n');
    }
}
