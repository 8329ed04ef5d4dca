using Longrail.Workbench.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

// Read the arguments, build the page's host, say where it is, wait.
WorkbenchSettings? settings = WorkbenchSettings.Parse(args, Console.Error);
if (settings is null)
    return 2;
if (settings.IsHelp)
{
    Console.Out.WriteLine(WorkbenchSettings.Usage);
    return 0;
}

await using WebApplication app = WorkbenchHost.Build(settings);
try
{
    await app.StartAsync();
}
catch (IOException e)
{
    Console.Error.WriteLine($"longrail workbench: cannot listen on port {settings.Port}: {e.Message}");
    return 1;
}

ICollection<string> addresses = app.Services.GetRequiredService<IServer>()
    .Features.Get<IServerAddressesFeature>()!.Addresses;
Announcement.Write(Console.Out, settings, addresses, app.Services.GetRequiredService<LanCode>());
await app.WaitForShutdownAsync();
return 0;
