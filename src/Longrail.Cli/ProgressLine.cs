using System.Globalization;

namespace Longrail.Cli;

/// <summary>One line at a terminal that says how far long work has come; nothing where nobody looks.</summary>
/// <param name="streams">The terminal, if there is one.</param>
/// <param name="patience">Work that is over sooner shows nothing.</param>
public sealed class ProgressLine(ProgramStreams streams, TimeSpan patience) : IProgress<double>, IDisposable
{
    private const int Width = 30;
    private const int Hundred = 100;

    private readonly Lock _lock = new();
    private readonly long _began = System.Diagnostics.Stopwatch.GetTimestamp();
    private int _shown = -1;
    private bool _isOver;

    /// <inheritdoc/>
    public void Report(double value)
    {
        if (!streams.ErrorIsTerminal || System.Diagnostics.Stopwatch.GetElapsedTime(_began) < patience)
            return;
        int percent = (int)Math.Clamp(Hundred * value, 0, Hundred);
        lock (_lock)
        {
            // Reports from several threads may come out of turn.
            if (_isOver || percent <= _shown)
                return;
            _shown = percent;
            int full = percent * Width / Hundred;
            string bar = new string('#', full) + new string('.', Width - full);
            streams.Error.Write(string.Create(CultureInfo.InvariantCulture, $"\r[{bar}] {percent,3} %"));
        }
    }

    /// <summary>Takes the line away.</summary>
    public void Clear()
    {
        lock (_lock)
        {
            _isOver = true;
            if (_shown < 0)
                return;
            streams.Error.Write($"\r{new string(' ', Width + 10)}\r");
            _shown = -1;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => Clear();
}
