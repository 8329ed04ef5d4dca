namespace Longrail.TestKit;

/// <summary>A published or independently computed table, kept as CSV beside the tests.</summary>
/// <remarks>Lines that begin with # are the header and hold "key: value"; "source" must be among them. The first
/// other line names the columns. Numbers keep the digits they were printed with, because the tolerance comes from
/// them.</remarks>
public sealed class GoldenTable
{
    private readonly string[] _columns;

    private GoldenTable(string name, string source, string[] columns, Func<GoldenTable, List<GoldenRow>> rows)
    {
        Name = name;
        Source = source;
        _columns = columns;
        Rows = rows(this);
    }

    /// <summary>File name without extension.</summary>
    public string Name { get; }

    /// <summary>Where the numbers come from.</summary>
    public string Source { get; }

    /// <summary>The rows, top down.</summary>
    public IReadOnlyList<GoldenRow> Rows { get; }

    /// <summary>The columns' names, in order.</summary>
    public IReadOnlyList<string> Columns => _columns;

    /// <summary>Folder of the tables in the output of the running test project.</summary>
    public static string Folder => Path.Combine(AppContext.BaseDirectory, "Golden");

    /// <summary>Reads a table by its name.</summary>
    public static GoldenTable Load(string name) => Parse(name, File.ReadAllText(Path.Combine(Folder, name + ".csv")));

    /// <summary>Reads a table from its text.</summary>
    /// <exception cref="FormatException">The source is missing, or a row has another number of cells than there are
    /// columns.</exception>
    public static GoldenTable Parse(string name, string text)
    {
        List<string> lines = [.. text.ReplaceLineEndings("\n").Split('\n').Where(line => line.Trim().Length > 0)];
        string? source = lines
            .Where(line => line.StartsWith("# source:", StringComparison.Ordinal))
            .Select(line => line["# source:".Length..].Trim())
            .FirstOrDefault();
        if (string.IsNullOrEmpty(source)) throw new FormatException($"{name}: no line \"# source: ...\".");
        List<string[]> body = [.. lines
            .Where(line => !line.StartsWith('#'))
            .Select(line => line.Split(',').Select(cell => cell.Trim()).ToArray())];
        if (body.Count < 2)
            throw new FormatException($"{name}: a line of column names and at least one row are needed.");
        string[]? odd = body.FirstOrDefault(row => row.Length != body[0].Length);
        if (odd is not null)
            throw new FormatException(
                $"{name}: {odd.Length} cells for {body[0].Length} columns in \"{string.Join(",", odd)}\".");
        return new GoldenTable(
            name, source, body[0], table => [.. body.Skip(1).Select(cells => new GoldenRow(table, cells))]);
    }

    internal int IndexOf(string column)
    {
        int index = Array.IndexOf(_columns, column);
        return index >= 0
            ? index
            : throw new ArgumentException(
                $"{Name} has no column \"{column}\"; it has {string.Join(", ", _columns)}.", nameof(column));
    }
}
