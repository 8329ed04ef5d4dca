using System.Diagnostics;
using System.Globalization;

namespace Longrail.Cli.Tests;

/// <summary>The program as a process of its own: what cannot be seen from within.</summary>
public sealed class ProcessTests
{
    private const string Scene = """{"balls":[{"id":"cue","x":1,"y":0.6}],"stroke":{"speed":3,"aim":0.5}}""";

    private static readonly TimeSpan _patience = TimeSpan.FromSeconds(60);

    [Fact]
    public void A_scene_is_played_from_the_command_line()
    {
        using Process process = Start("shoot", CliRun.Scene("bank-alone-firm.json"), "--json");
        string output = process.StandardOutput.ReadToEnd();
        Assert.Equal((ExitCode.Done, ""), (WaitFor(process), process.StandardError.ReadToEnd()));
        Assert.StartsWith("{", output);
    }

    [Fact]
    public async Task A_reader_who_goes_away_is_no_error()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "pipes are closed in another way there");
        using Process process = Start("shoot", "-", "--lines");
        Task feeding = Feed(process);
        Assert.NotNull(await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken));
        process.StandardOutput.Close();
        Assert.Equal(ExitCode.Done, WaitFor(process));
        Assert.Empty(await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken));
        await feeding.WaitAsync(_patience, TestContext.Current.CancellationToken);
    }

    [Fact]
    public void Ctrl_C_ends_the_program_without_a_word()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "there are no signals there");
        using Process process = Started(Interruptible("shoot", "-", "--lines"));
        process.StandardInput.WriteLine(Scene);
        process.StandardInput.Flush();

        // The answer shows that the program is up and waits for more.
        Assert.NotNull(process.StandardOutput.ReadLine());
        using (var signal = Process.Start("kill", ["-INT", process.Id.ToString(CultureInfo.InvariantCulture)]))
            signal.WaitForExit();
        Assert.Equal((ExitCode.Interrupted, ""), (WaitFor(process), process.StandardError.ReadToEnd()));
    }

    private static string Program =>
        Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "longrail.exe" : "longrail");

    private static Process Start(params string[] args) => Started(new ProcessStartInfo(Program, args));

    // A test run in the background inherits an ignored Ctrl-C, and so would the program: give it the usual one back.
    private static ProcessStartInfo Interruptible(params string[] args) => OperatingSystem.IsLinux()
        ? new ProcessStartInfo("env", ["--default-signal=INT", Program, .. args])
        : new ProcessStartInfo(Program, args);

    private static Process Started(ProcessStartInfo start)
    {
        start.RedirectStandardInput = true;
        start.RedirectStandardOutput = true;
        start.RedirectStandardError = true;
        return Process.Start(start)!;
    }

    private static Task Feed(Process process) => Task.Run(() =>
    {
        try
        {
            while (!process.HasExited)
                process.StandardInput.WriteLine(Scene);
        }
        catch (IOException)
        {
            // The program has ended, as it should.
        }
    });

    private static int WaitFor(Process process)
    {
        if (!process.WaitForExit(_patience))
        {
            process.Kill();
            Assert.Fail("the program did not end");
        }

        return process.ExitCode;
    }
}
