using Spectre.Console;

namespace Longrail.Cli;

/// <summary>A console of the library that writes plain text.</summary>
internal static class PlainConsole
{
    // Wide enough for a line of help; narrower windows wrap it themselves.
    private const int Width = 120;

    /// <summary>A console on a writer.</summary>
    public static IAnsiConsole On(TextWriter writer)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(writer),
        });
        console.Profile.Width = Width;
        return console;
    }
}
