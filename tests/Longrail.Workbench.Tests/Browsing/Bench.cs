using Longrail.Workbench.Tests.Browsing;
using Longrail.Workbench.Tests.Hosting;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Bench))]

// One page at a time: the browser draws in software and would starve itself.
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.None)]

namespace Longrail.Workbench.Tests.Browsing;

/// <summary>The workbench and a browser, started once for all tests.</summary>
public sealed class Bench : IAsyncLifetime
{
    /// <summary>Why browser tests are skipped where there is no browser.</summary>
    public const string NoBrowser = "no Chromium on this machine: install Debian's package chromium, as check.sh does";

    private static readonly string[] _places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/snap/bin/chromium"];
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>The program.</summary>
    public WorkbenchProcess Program { get; private set; } = null!;

    /// <summary>The page's address.</summary>
    public string Address => Program.Address;

    /// <summary>A client without a browser around it.</summary>
    public HttpClient Http { get; } = new(new HttpClientHandler { AllowAutoRedirect = false });

    public async ValueTask InitializeAsync() => Program = await WorkbenchProcess.StartAsync("--port", "0");

    /// <summary>The browser; the test is skipped where there is none.</summary>
    public async Task<IBrowser> BrowserAsync()
    {
        if (_browser is not null)
            return _browser;
        string? path = _places.FirstOrDefault(File.Exists);
        Assert.SkipWhen(path is null, NoBrowser);
        _playwright = await Playwright.CreateAsync();
        // A busy machine is slow, not wrong.
        Assertions.SetDefaultExpectTimeout(20_000);
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = path,
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update",
                    "--disable-sync",
            ],
        });
        return _browser;
    }

    /// <summary>Opens the page as a user who has never been there.</summary>
    /// <param name="path">What follows the address.</param>
    /// <param name="width">Width of the window, CSS pixels.</param>
    /// <param name="height">Height of the window, CSS pixels.</param>
    /// <param name="scale">Device pixels per CSS pixel.</param>
    /// <param name="stills">Whether the user asks for reduced motion.</param>
    /// <param name="address">Another program's address.</param>
    public async Task<OpenPage> OpenAsync(
        string path = "", int width = 1360, int height = 900, float scale = 1, bool stills = false,
            string? address = null)
    {
        IBrowser browser = await BrowserAsync();
        IBrowserContext context = await browser.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = height },
            DeviceScaleFactor = scale,
            ReducedMotion = stills ? ReducedMotion.Reduce : ReducedMotion.NoPreference,
            Permissions = ["clipboard-read", "clipboard-write"],
        });
        context.SetDefaultTimeout(30_000);
        IPage page = await context.NewPageAsync();
        var open = new OpenPage(context, page, address ?? Address);
        await page.GotoAsync((address ?? Address) + path);
        await open.ReadyAsync();
        return open;
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
        Http.Dispose();
        if (Program is not null)
            await Program.DisposeAsync();
    }
}
