using System.Runtime.CompilerServices;
using System.Text;

namespace Longrail.Cli.Tests;

/// <summary>One run of the program within the test's own process.</summary>
/// <param name="ExitCode">What it returned.</param>
/// <param name="Output">What it wrote to standard output.</param>
/// <param name="Error">What it wrote to standard error.</param>
internal sealed record CliRun(int ExitCode, string Output, string Error)
{
    /// <summary>The root of the repository.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Runs the program on a text as standard input.</summary>
    public static CliRun Of(string input, params string[] args) =>
        Of(new MemoryStream(Encoding.UTF8.GetBytes(input)), args);

    /// <summary>Runs the program on a stream as standard input.</summary>
    public static CliRun Of(Stream input, params string[] args)
    {
        using var output = new MemoryStream();
        using var error = new StringWriter();
        var streams = new ProgramStreams(input, output, error, TestContext.Current.CancellationToken);
        int exitCode = LongrailApp.Run(args, streams);
        return new CliRun(exitCode, Encoding.UTF8.GetString(output.ToArray()), error.ToString());
    }

    /// <summary>The path of a scene of the repository.</summary>
    public static string Scene(string name) => Path.Combine(Root, "scenes", name);

    /// <summary>The lines of the output.</summary>
    public string[] Lines() => Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private static string FindRoot([CallerFilePath] string thisFile = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(thisFile)!, "..", ".."));
}
