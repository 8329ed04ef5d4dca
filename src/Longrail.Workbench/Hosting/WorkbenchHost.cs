using System.Net;
using Longrail.Workbench.Components;
using Longrail.Workbench.Sheets;
using Longrail.Workbench.Tables;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Longrail.Workbench.Hosting;

/// <summary>Builds the host of the page: what listens, what is refused, what answers.</summary>
internal static class WorkbenchHost
{
    /// <summary>The largest body of a request, bytes. A scene file may have a megabyte; nothing else that comes in is
    /// nearly as large.</summary>
    public const long LargestBody = 1_200_000;

    // The page's memory of undone steps comes back in one message after a reload; see SceneHistory.
    private const long LargestMessage = 512 * 1024;

    /// <summary>Builds the application, ready to be started.</summary>
    public static WebApplication Build(WorkbenchSettings settings)
    {
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(WorkbenchHost).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = Environments.Production,
        });
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel => Listen(kestrel, settings));
        builder.Logging.ClearProviders().AddSimpleConsole().SetMinimumLevel(LogLevel.Warning);
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        // Hosting repeats a start that failed in twenty lines; Program says it in one.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);

        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.AddAntiforgery();
        builder.Services.AddSingleton(settings);
        builder.Services.AddSingleton(new LanCode(settings.IsLan));
        builder.Services.AddSingleton<AimQueue>();
        builder.Services.AddHostedService<WarmUp>();
        builder.Services.AddScoped<OpenTable>();
        builder.Services.AddScoped<BenchView>();
        builder.Services.AddScoped<ContrastQuestion>();
        builder.Services.AddRazorComponents().AddInteractiveServerComponents(circuit =>
        {
            circuit.DetailedErrors = false;
            // The table is in the page's own address, so a circuit that is gone costs a reload and nothing else.
            circuit.DisconnectedCircuitMaxRetained = 10;
            circuit.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(2);
            circuit.MaxBufferedUnacknowledgedRenderBatches = 10;
        }).AddHubOptions(hub => hub.MaximumReceiveMessageSize = LargestMessage);

        WebApplication app = builder.Build();
        app.UseMiddleware<SecurityHeaders>();
        app.UseMiddleware<RequestGuard>();
        app.UseMiddleware<LanGate>();
        app.UseAntiforgery();
        app.MapStaticAssets();
        LanGate.Map(app);
        SheetEndpoints.Map(app);
        app.MapRazorComponents<App>()
            .AddInteractiveServerRenderMode(render => render.ContentSecurityFrameAncestorsPolicy = null);
        return app;
    }

    private static void Listen(KestrelServerOptions kestrel, WorkbenchSettings settings)
    {
        kestrel.AddServerHeader = false;
        kestrel.Limits.MaxRequestBodySize = LargestBody;
        kestrel.Limits.MaxRequestLineSize = 64 * 1024;
        kestrel.Limits.MaxRequestBufferSize = 128 * 1024;
        kestrel.Limits.MaxConcurrentConnections = 200;
        kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
        kestrel.Listen(settings.IsLan ? IPAddress.Any : IPAddress.Loopback, settings.Port);
    }
}
