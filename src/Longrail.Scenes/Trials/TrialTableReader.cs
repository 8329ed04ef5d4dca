using System.Globalization;
using System.Text;
using System.Text.Unicode;
using CsvHelper;
using Longrail.Scenes.Fields;

namespace Longrail.Scenes.Trials;

/// <summary>Reads the results of a trial: a table with commas, semicolons or tabs between the cells (RFC 4180), names
/// in its first row, lines that begin with # left out. Nothing that can be in a file makes it throw.</summary>
public static class TrialTableReader
{
    /// <summary>The size of the largest table that is read, bytes.</summary>
    public const int LargestTable = 1_000_000;

    // A table with one mistake in each row has one mistake.
    private const int MostErrors = 10;

    private static readonly string[] _yes = ["1", "y", "yes", "x", "made", "true"];
    private static readonly string[] _no = ["0", "n", "no", "-", "missed", "false"];

    /// <summary>Reads a table.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    /// <param name="needs">What is known of the trial.</param>
    public static TrialTableReading Read(ReadOnlySpan<byte> utf8, TrialTableNeeds needs)
    {
        ArgumentNullException.ThrowIfNull(needs);
        if (utf8.Length > LargestTable)
            return Wrong(
                new SceneError("", $"the table is more than {LargestTable} bytes long", $"up to {LargestTable} bytes"));
        if (utf8.StartsWith(Encoding.UTF8.Preamble)) utf8 = utf8[3..];
        if (!Utf8.IsValid(utf8)) return Wrong(new SceneError("", "this is no text in UTF-8", "a table in UTF-8"));
        string text = Encoding.UTF8.GetString(utf8);
        return new Run(text, needs).Read();
    }

    private static TrialTableReading Wrong(params SceneError[] errors) => new(null, errors);

    private sealed class Run
    {
        private readonly TrialTableNeeds _needs;
        private readonly char _delimiter;
        private readonly CsvReader _csv;
        private readonly List<SceneError> _errors = [];
        private readonly List<TrialShot> _shots = [];
        private readonly List<string> _words;
        private TrialColumns _columns = null!;

        internal Run(string text, TrialTableNeeds needs)
        {
            _needs = needs;
            _words = [.. needs.Conditions?.Select(condition => condition.Words) ?? []];
            _delimiter = DelimiterOf(text);
            _csv = CsvReader.FromText(text, CsvReaderOptions.Default with
            {
                HasHeader = false,
                Separator = _delimiter,
                CommentPrefix = '#',
                MalformedData = CsvMalformedDataHandling.Throw,
                TrackLineNumbers = true,
            });
        }

        internal TrialTableReading Read()
        {
            using CsvReader csv = _csv;
            try
            {
                if (!csv.Read())
                    return Wrong(new SceneError("", "the table is empty", "a head, and one line for each shot"));
                _columns = TrialColumns.Of(Cells(), _needs.Diamond, Add);
                if (_errors.Count > 0) return Wrong([.. _errors]);
                while (_errors.Count < MostErrors && csv.Read()) ReadShot(Cells());
            }
            catch (CsvFormatException broken)
            {
                return Wrong(new SceneError(
                    "", "a quotation mark stands where it does not belong",
                    "one at each end of a cell, doubled within it")
                {
                    Line = (int)broken.LineNumber,
                    Column = 1,
                });
            }

            if (_errors.Count == 0) CheckWhole();
            return _errors.Count > 0
                ? Wrong([.. _errors])
                : new TrialTableReading(
                    new TrialTable(
                        Sorted(out IReadOnlyList<TrialShot> shots), shots, _columns.Landing >= 0, _columns.Speed >= 0,
                        _columns.SpeedIsRollOut,
                        _columns.Made >= 0),
                    []);
        }

        // Without a plan the alphabet says which condition is the first.
        private List<string> Sorted(out IReadOnlyList<TrialShot> shots)
        {
            shots = _shots;
            if (_needs.Conditions is not null) return _words;
            List<string> sorted = [.. _words.Order(StringComparer.OrdinalIgnoreCase)];
            shots = [.. _shots.Select(shot => shot with { Condition = sorted.IndexOf(_words[shot.Condition]) })];
            return sorted;
        }

        private string[] Cells() => [.. Enumerable.Range(0, _csv.FieldCount).Select(_csv.GetString)];

        private void ReadShot(string[] cells)
        {
            if (cells.All(string.IsNullOrWhiteSpace)) return;
            if (cells.Length != _columns.Names.Count)
            {
                string like = _delimiter == ',' ? "; a decimal comma needs semicolons between the cells" : "";
                Add(-1, new SceneError(
                    "", $"{cells.Length} cells where the head has {_columns.Names.Count}",
                    "as many as the head" + like));
                return;
            }

            if (IsUntouched(cells)) return;
            int before = _errors.Count;
            int number = Number(cells);
            int condition = Condition(cells[_columns.Condition].Trim());
            double? landing = Measure(cells, _columns.Landing, _columns.LandingFactor);
            double? speed = Measure(cells, _columns.Speed, _columns.SpeedFactor);
            bool? made = Made(cells);
            CheckRange(landing, speed);
            if (_errors.Count == before)
                _shots.Add(new TrialShot((int)_csv.LineNumber, number, condition, landing, speed, made));
        }

        // A row of the template that nobody has played yet: number and condition alone. A shot of which nothing could
        // be read has a note.
        private bool IsUntouched(string[] cells)
        {
            for (int i = 0; i < cells.Length; i++)
            {
                if (i != _columns.Shot && i != _columns.Condition && !string.IsNullOrWhiteSpace(cells[i])) return false;
            }

            return true;
        }

        private int Number(string[] cells)
        {
            if (_columns.Shot < 0) return _shots.Count + 1;
            string cell = cells[_columns.Shot].Trim();
            if (!int.TryParse(cell, NumberStyles.None, CultureInfo.InvariantCulture, out int number) || number < 1)
            {
                Add(_columns.Shot, new SceneError("shot", $"\"{cell}\" is no number of a shot", "1, 2, 3, ..."));
                return 0;
            }

            if (_shots.Find(shot => shot.Number == number) is { } twice)
                Add(_columns.Shot,
                    new SceneError("shot", $"shot {number} stands in line {twice.Line} already", "each shot once"));
            return number;
        }

        private int Condition(string cell)
        {
            for (int k = 0; k < _words.Count; k++)
            {
                bool isLetter = _needs.Conditions is { } known && Same(known[k].Letter, cell);
                if (isLetter || Same(_words[k], cell)) return k;
            }

            if (_needs.Conditions is null && cell.Length > 0)
            {
                _words.Add(cell);
                return _words.Count - 1;
            }

            IEnumerable<string> allowed = _needs.Conditions is { } conditions
                ? conditions.Select(c => $"{c.Letter} or {c.Words}")
                : ["the name of a condition"];
            Add(_columns.Condition, new SceneError(
                "condition", cell.Length == 0 ? "is empty" : $"\"{cell}\" is no condition of this trial",
                string.Join("; ", allowed), NearestWord.Of(cell, _words)));
            return 0;
        }

        private double? Measure(string[] cells, int column, double factor)
        {
            if (column < 0 || cells[column].Trim() is not { Length: > 0 } cell) return null;
            // Where commas do not part the cells one may stand in a number.
            string number = _delimiter == ',' ? cell : cell.Replace(',', '.');
            if (double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
                && double.IsFinite(value))
            {
                return value * factor;
            }

            Add(column, new SceneError(
                _columns.Names[column], $"\"{Short(cell)}\" is no number",
                "a number with a decimal point, or nothing where it was not read; the column's name has the unit"));
            return null;
        }

        private bool? Made(string[] cells)
        {
            if (_columns.Made < 0 || cells[_columns.Made].Trim() is not { Length: > 0 } cell) return null;
            if (_yes.Contains(cell.ToLowerInvariant())) return true;
            if (_no.Contains(cell.ToLowerInvariant())) return false;
            Add(_columns.Made,
                new SceneError("made", $"\"{Short(cell)}\" is neither yes nor no", "1 or 0, yes or no, or nothing"));
            return null;
        }

        private void CheckRange(double? landing, double? speed)
        {
            if (landing is { } at && _needs.Rail is { } rail && (at < 0 || at > rail))
                Add(_columns.Landing, new SceneError(
                    _columns.Names[_columns.Landing],
                    string.Create(CultureInfo.InvariantCulture, $"{1000 * at:0} mm lies off the cushion"),
                    string.Create(CultureInfo.InvariantCulture, $"0 to {1000 * rail:0} mm; is the unit right?")));
            if (speed is { } v && !(v > 0))
                Add(_columns.Speed, new SceneError(_columns.Names[_columns.Speed], "is not positive", "more than 0"));
        }

        private void CheckWhole()
        {
            if (_shots.Count == 0)
            {
                _errors.Add(new SceneError("", "no shot has been written down", "one line for each shot"));
                return;
            }

            // Diamonds in a column of millimetres: every ball within a finger's breadth of the corner.
            if (_columns.Landing >= 0 && _needs.Rail is not null
                && _shots.Max(shot => shot.Landing ?? double.PositiveInfinity) < 0.0105)
            {
                _errors.Add(new SceneError(
                    _columns.Names[_columns.Landing],
                    "all shots land within 10 mm of the corner", "landing_diamonds, if these are diamonds"));
            }
        }

        private void Add(int column, SceneError error) => _errors.Add(error with
        {
            Line = (int)_csv.LineNumber,
            Column = column < 0 ? 1 : ColumnOf(_csv.RawRecord, column),
        });

        // Where a cell begins in its line, in bytes from 1.
        private int ColumnOf(ReadOnlySpan<byte> record, int cell)
        {
            bool quoted = false;
            int at = 0;
            for (; at < record.Length && cell > 0; at++)
            {
                if (record[at] == (byte)'"') quoted = !quoted;
                else if (record[at] == (byte)_delimiter && !quoted) cell--;
            }

            return at + 1;
        }

        private static string Short(string cell) => Reading.SceneReadState.Shorten(cell);

        private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

        // The sign that stands most often in the head.
        private static char DelimiterOf(string text)
        {
            string head = text.Split('\n').FirstOrDefault(line => line.Trim().Length > 0 && line[0] != '#') ?? "";
            return ((char[])[',', ';', '\t']).MaxBy(sign => head.Count(c => c == sign));
        }
    }
}
