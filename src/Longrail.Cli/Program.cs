using Longrail.Cli;

// Ctrl-C ends the run at once, but lets a file that is being written be finished or taken back.
using var interrupted = new CancellationTokenSource();
Console.CancelKeyPress += (_, key) =>
{
    key.Cancel = !interrupted.IsCancellationRequested;
    interrupted.Cancel();
};

ProgramStreams streams = StandardStreams.Open(interrupted.Token);
try
{
    Task<int> run = Task.Run(() => LongrailApp.Run(args, streams));
    return StandardStreams.WaitFor(run, interrupted.Token);
}
catch (OutputClosedException)
{
    // Whoever read the output has seen enough, as "head" does.
    return ExitCode.Done;
}
catch (Exception unforeseen)
{
    // The only place that catches everything: a fault of the program is reported as such, without a stack trace.
    streams.Error.WriteLine($"longrail: a fault of the program: {unforeseen.Message} ({unforeseen.GetType().Name})");
    streams.Error.WriteLine("longrail: please report it, with the scene that brought it about");
    return ExitCode.Failed;
}
