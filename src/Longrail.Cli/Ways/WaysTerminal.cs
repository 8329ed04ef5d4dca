using System.Globalization;
using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Ways;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace Longrail.Cli.Ways;

/// <summary>Shows at a terminal how far a search has come, and the best ways so far. Nothing of it stays.</summary>
internal sealed class WaysTerminal : IProgress<WaysProgress>
{
    private const int BarWidth = 30;
    private const int MostWays = 6;
    private const int LeastWidth = 40;

    private static readonly TimeSpan _interval = TimeSpan.FromMilliseconds(80);

    private volatile WaysProgress _latest = new(0, "searching", []);

    /// <inheritdoc/>
    public void Report(WaysProgress value) => _latest = value;

    /// <summary>Shows the progress of a run until it ends.</summary>
    /// <param name="error">The terminal.</param>
    /// <param name="run">The run, which reports to this object.</param>
    internal void Follow(TextWriter error, Task run)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.Yes,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.Yes,
            Out = new AnsiConsoleOutput(error),
        });
        console.Profile.Width = WindowWidth();
        console.Live(Picture(_latest, console.Profile.Width)).AutoClear(true).Start(context =>
        {
            while (!HasEnded(run))
                context.UpdateTarget(Picture(_latest, console.Profile.Width));
        });
    }

    /// <summary>What is shown: a bar, and a line for each of the best ways.</summary>
    internal static IReadOnlyList<string> Lines(WaysProgress progress, int width)
    {
        int full = (int)Math.Round(BarWidth * progress.Done);
        string bar = new string('#', full) + new string('.', BarWidth - full);
        string found = progress.Ways.Count == 1 ? "1 way" : $"{progress.Ways.Count} ways";
        var lines = new List<string>
        {
            string.Create(
                CultureInfo.InvariantCulture,
                $"{progress.Stage,-9}  [{bar}] {100 * progress.Done,3:0} %  {found} so far"),
        };
        for (int k = 0; k < Math.Min(MostWays, progress.Ways.Count); k++)
        {
            Way way = progress.Ways[k];
            lines.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"{VariantLetter.Of(k)}  {100 * way.Plan,3:0} %  {way.Stroke.Stroke.Speed:0.00} m/s  {way.Words}"));
        }

        return [.. lines.Select(line => line.Length <= width ? line : line[..width])];
    }

    private static Rows Picture(WaysProgress progress, int width) =>
        new(Lines(progress, width).Select(line => (IRenderable)new Spectre.Console.Text(line)));

    private static bool HasEnded(Task run) => ((IAsyncResult)run).AsyncWaitHandle.WaitOne(_interval);

    private static int WindowWidth()
    {
        try
        {
            return Math.Max(Console.WindowWidth - 1, LeastWidth);
        }
        catch (IOException)
        {
            return 2 * LeastWidth;
        }
    }
}
