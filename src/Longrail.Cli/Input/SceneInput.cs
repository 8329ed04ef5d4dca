using Longrail.Scenes;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Reading;

namespace Longrail.Cli.Input;

/// <summary>Reads the scene that a verb is to work on, from a file or from standard input, and says what is wrong with
/// it.</summary>
public static class SceneInput
{
    /// <summary>The name under which standard input is asked for.</summary>
    public const string StandardInput = "-";

    // The library that parses arguments takes a lone dash for an option without a name, so it never sees one.
    private const string Disguised = "\u0001";
    private const string StandardInputDisguised = Disguised + "standard-input";

    /// <summary>Reads a scene and makes it ready; what is wrong with it is printed.</summary>
    /// <param name="file">The file, or "-".</param>
    /// <param name="streams">Where to read and where to print.</param>
    /// <param name="exitCode">What the program should return if there is no scene.</param>
    /// <returns>The ready scene, or null.</returns>
    public static ReadyScene? Read(string file, ProgramStreams streams, out int exitCode) =>
        Read(file, streams, asLayout: false, out exitCode);

    /// <summary>Reads a scene for a question that leaves open how it is played, and makes its layout ready; what is
    /// wrong with it is printed.</summary>
    /// <param name="file">The file, or "-".</param>
    /// <param name="streams">Where to read and where to print.</param>
    /// <param name="exitCode">What the program should return if there is no scene.</param>
    /// <returns>The ready layout, or null.</returns>
    public static ReadyScene? ReadLayout(string file, ProgramStreams streams, out int exitCode) =>
        Read(file, streams, asLayout: true, out exitCode);

    private static ReadyScene? Read(string file, ProgramStreams streams, bool asLayout, out int exitCode)
    {
        exitCode = ExitCode.BadInput;
        if (!TryReadBytes(file, streams, out byte[] utf8))
            return null;
        SceneCompilation compilation = asLayout ? SceneReader.ReadLayout(utf8) : SceneReader.ReadReady(utf8);
        if (compilation.Ready is null)
        {
            PrintErrors(compilation.Errors, NameOf(file), streams.Error);
            exitCode = compilation.IsUnreachable ? ExitCode.Failed : ExitCode.BadInput;
        }

        return compilation.Ready;
    }

    /// <summary>Prints what is wrong with a scene, one line each.</summary>
    /// <param name="errors">What is wrong.</param>
    /// <param name="file">What the scene came from, or null if that means nothing to the user.</param>
    /// <param name="writer">Where to print.</param>
    public static void PrintErrors(IReadOnlyList<SceneError> errors, string? file, TextWriter writer)
    {
        foreach (SceneError error in errors)
            writer.WriteLine($"longrail: {error with { File = file }}");
    }

    /// <summary>Whether a file's name stands for standard input.</summary>
    public static bool IsStandardInput(string file) => file is StandardInput or StandardInputDisguised;

    /// <summary>An argument as the library that parses arguments may see it: a lone dash, or a negative number, which it
    /// would take for options.</summary>
    public static string Disguise(string argument) => argument switch
    {
        StandardInput => StandardInputDisguised,
        ['-', >= '0' and <= '9' or '.', ..] => Disguised + argument,
        _ => argument,
    };

    /// <summary>A message of that library, or an argument that it handed on, as the user may see it.</summary>
    public static string Undisguise(string message) => message
        .Replace(StandardInputDisguised, StandardInput, StringComparison.Ordinal)
        .Replace(Disguised, "", StringComparison.Ordinal);

    /// <summary>Opens a file, or standard input.</summary>
    /// <param name="file">The file, or "-".</param>
    /// <param name="streams">Where standard input is, and where to print.</param>
    /// <returns>The stream, or null if it cannot be opened; it was printed why.</returns>
    public static Stream? Open(string file, ProgramStreams streams)
    {
        if (IsStandardInput(file))
            return streams.Input;
        try
        {
            return new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);
        }
        catch (Exception e) when (
            e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            streams.Error.WriteLine($"longrail: cannot read {file}: {Explain(e)}");
            return null;
        }
    }

    /// <summary>Reads a file, or standard input, as a whole.</summary>
    /// <param name="file">The file, or "-".</param>
    /// <param name="streams">Where standard input is, and where to print.</param>
    /// <param name="utf8">What was read.</param>
    /// <param name="noun">What it is, with its article, for a message that it is too large.</param>
    /// <returns>Whether it could be read; if not, it was printed why.</returns>
    internal static bool TryReadBytes(string file, ProgramStreams streams, out byte[] utf8, string noun = "a scene")
    {
        utf8 = [];
        using Stream? stream = Open(file, streams);
        if (stream is null)
            return false;
        // One byte more than allowed is enough to know that there is too much.
        byte[] buffer = new byte[SceneReader.LargestScene + 1];
        int length;
        try
        {
            length = stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            streams.Error.WriteLine($"longrail: cannot read {NameOf(file)}: {Explain(e)}");
            return false;
        }

        if (length > SceneReader.LargestScene)
        {
            streams.Error.WriteLine(
                $"longrail: {NameOf(file)}: more than {SceneReader.LargestScene} bytes, the most for {noun}");
            return false;
        }

        utf8 = buffer[..length];
        return true;
    }

    /// <summary>What a message calls a file.</summary>
    internal static string NameOf(string file) => IsStandardInput(file) ? "standard input" : file;

    private static string Explain(Exception e) => e switch
    {
        FileNotFoundException => "there is no such file",
        DirectoryNotFoundException => "there is no such folder",
        UnauthorizedAccessException => "it is a folder, or reading it is not allowed",
        _ => e.Message,
    };
}
