using System.Globalization;

namespace Longrail.Workbench.Hosting;

/// <summary>What the command line asks of the workbench.</summary>
/// <param name="Port">The port to listen on; 0 for any free one.</param>
/// <param name="IsLan">Whether other machines of the local network may open the page, with a code.</param>
/// <param name="IsHelp">Whether only the usage is asked for.</param>
internal sealed record WorkbenchSettings(int Port, bool IsLan, bool IsHelp = false)
{
    /// <summary>The port when none is named. Links and the browser's memory belong to one port, so it stays the
    /// same.</summary>
    public const int UsualPort = 5217;

    /// <summary>How the program is called.</summary>
    public const string Usage = """
        The table on a page: opens a local web page on a worked bank.

        dotnet run --project src/Longrail.Workbench -- [--port N] [--lan]

          --port N   listen on port N (1 to 65535), or on any free one for 0; 5217 if not given
          --lan      let other machines of the local network in; they need the code printed here
        """;

    /// <summary>Reads the arguments.</summary>
    /// <returns>Null if they are wrong; why has then been written to <paramref name="error"/>.</returns>
    public static WorkbenchSettings? Parse(IReadOnlyList<string> args, TextWriter error)
    {
        var settings = new WorkbenchSettings(UsualPort, false);
        for (int i = 0; i < args.Count; i++)
        {
            switch (args[i])
            {
                case "--help" or "-h":
                    settings = settings with { IsHelp = true };
                    break;
                case "--lan":
                    settings = settings with { IsLan = true };
                    break;
                case "--port" when i + 1 < args.Count && IsPort(args[i + 1], out int port):
                    settings = settings with { Port = port };
                    i++;
                    break;
                case "--port":
                    error.WriteLine("longrail workbench: --port: needs a number from 0 (any free port) to 65535");
                    return null;
                default:
                    error.WriteLine($"longrail workbench: unknown argument \"{args[i]}\"; allowed: --port N, --lan");
                    return null;
            }
        }

        return settings;
    }

    private static bool IsPort(string text, out int port) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out port) && port <= 65535;
}
