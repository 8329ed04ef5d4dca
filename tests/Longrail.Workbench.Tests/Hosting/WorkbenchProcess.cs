using System.Diagnostics;
using System.Text;

namespace Longrail.Workbench.Tests.Hosting;

/// <summary>The workbench as a process of its own, as a user starts it.</summary>
public sealed class WorkbenchProcess : IAsyncDisposable
{
    private static readonly TimeSpan _patience = TimeSpan.FromSeconds(60);
    private readonly Process _process;
    private readonly StringBuilder _said = new();

    private WorkbenchProcess(Process process) => _process = process;

    /// <summary>The page's address, ending in a slash.</summary>
    public string Address { get; private set; } = "";

    /// <summary>What the program has written on its standard output so far.</summary>
    public string Said => _said.ToString();

    /// <summary>How long it took from the start of the process until the address was printed.</summary>
    public TimeSpan StartTime { get; private set; }

    /// <summary>The process.</summary>
    public Process Process => _process;

    /// <summary>Starts it and waits until it says where it is.</summary>
    public static async Task<WorkbenchProcess> StartAsync(params string[] args)
    {
        var clock = Stopwatch.StartNew();
        var start = new ProcessStartInfo("dotnet", [Program, .. args])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        var workbench = new WorkbenchProcess(Process.Start(start)!);
        using var limit = new CancellationTokenSource(_patience);
        while (await workbench._process.StandardOutput.ReadLineAsync(limit.Token) is { } line)
        {
            workbench._said.AppendLine(line);
            if (line.StartsWith("Longrail workbench: open ", StringComparison.Ordinal))
                workbench.Address = line["Longrail workbench: open ".Length..];
            if (line.StartsWith("Stop it", StringComparison.Ordinal))
                break;
        }

        workbench.StartTime = clock.Elapsed;
        if (workbench.Address.Length == 0)
        {
            string error = await workbench._process.StandardError.ReadToEndAsync(limit.Token);
            Assert.Fail($"The workbench did not start: {error}");
        }

        // Nobody reads on; a full pipe must not stop the program.
        _ = workbench._process.StandardOutput.ReadToEndAsync(CancellationToken.None);
        _ = workbench._process.StandardError.ReadToEndAsync(CancellationToken.None);
        return workbench;
    }

    /// <summary>Ends it as a power cut would.</summary>
    public async Task KillAsync()
    {
        if (!_process.HasExited)
            _process.Kill();
        await _process.WaitForExitAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await KillAsync();
        _process.Dispose();
    }

    // The program's own folder, not the tests': what is run is what is built.
    private static string Program =>
        AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar)
            .Replace("Longrail.Workbench.Tests", "Longrail.Workbench", StringComparison.Ordinal)
        + Path.DirectorySeparatorChar + "Longrail.Workbench.dll";
}
