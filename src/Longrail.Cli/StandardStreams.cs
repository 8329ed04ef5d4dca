using System.Text;
using Microsoft.Win32.SafeHandles;

namespace Longrail.Cli;

/// <summary>The process's own streams.</summary>
internal static class StandardStreams
{
    private static readonly TimeSpan _timeToTidyUp = TimeSpan.FromSeconds(1);

    /// <summary>Opens them.</summary>
    public static ProgramStreams Open(CancellationToken interrupted)
    {
        var error = new StreamWriter(Console.OpenStandardError(), new UTF8Encoding(false)) { AutoFlush = true };
        return new ProgramStreams(Console.OpenStandardInput(), new GuardedOutput(OpenOutput()), error, interrupted)
        {
            ErrorIsTerminal = !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb",
        };
    }

    /// <summary>Waits for the run, but not for one that is stuck in reading or computing after Ctrl-C.</summary>
    public static int WaitFor(Task<int> run, CancellationToken interrupted)
    {
        try
        {
            run.Wait(interrupted);
        }
        catch (OperationCanceledException)
        {
            ((IAsyncResult)run).AsyncWaitHandle.WaitOne(_timeToTidyUp);
            return ExitCode.Interrupted;
        }
        catch (AggregateException)
        {
            // Thrown again below, as it was.
        }

        return run.GetAwaiter().GetResult();
    }

    // The framework's console stream says nothing when the reader of a pipe has gone, and the program would compute on
    // for nobody. A file stream on the same handle says it. It is not used for files, where it would keep a position of
    // its own.
    private static Stream OpenOutput()
    {
        if (OperatingSystem.IsWindows() || !Console.IsOutputRedirected)
            return Console.OpenStandardOutput();
        var handle = new SafeFileHandle(1, ownsHandle: false);
        var pipe = new FileStream(handle, FileAccess.Write, bufferSize: 0);
        return pipe.CanSeek ? Console.OpenStandardOutput() : pipe;
    }
}
