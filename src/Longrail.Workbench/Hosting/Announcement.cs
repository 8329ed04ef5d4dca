namespace Longrail.Workbench.Hosting;

/// <summary>What the terminal says once the page is there.</summary>
internal static class Announcement
{
    /// <summary>Writes the address, and the code if one is asked for.</summary>
    public static void Write(TextWriter output, WorkbenchSettings settings, IEnumerable<string> addresses, LanCode code)
    {
        foreach (string address in addresses)
        {
            string open = settings.IsLan
                ? address.Replace("0.0.0.0", Environment.MachineName, StringComparison.Ordinal)
                : address;
            output.WriteLine($"Longrail workbench: open {open}/");
        }

        if (code.IsAsked)
            output.WriteLine($"Code for this session: {code.Text}");
        output.WriteLine("Stop it with Ctrl-C.");
        output.Flush();
    }
}
