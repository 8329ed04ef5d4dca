using System.Globalization;
using Microsoft.Playwright;

namespace Longrail.Workbench.Tests.Browsing;

/// <summary>An open page, with what a test asks of it; closing it fails if the page complained or asked another
/// machine for anything.</summary>
public sealed class OpenPage : IAsyncDisposable
{
    private readonly IBrowserContext _context;
    private readonly List<string> _complaints = [];

    public OpenPage(IBrowserContext context, IPage page, string address)
    {
        _context = context;
        Page = page;
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
                _complaints.Add($"{message.Type}: {message.Text}");
        };
        page.PageError += (_, error) => _complaints.Add($"script: {error}");
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(address, StringComparison.Ordinal)
                && !request.Url.StartsWith("blob:", StringComparison.Ordinal)
                && !request.Url.StartsWith("data:", StringComparison.Ordinal))
            {
                _complaints.Add($"asked elsewhere: {request.Url}");
            }
        };
    }

    /// <summary>The page.</summary>
    public IPage Page { get; }

    /// <summary>Whether the page may complain: where a lost connection is what is tested.</summary>
    public bool MayComplain { get; set; }

    /// <summary>What is heard of the shot, the list under the drawing.</summary>
    public ILocator Events => Page.Locator("section.events");

    /// <summary>The button that takes a step back.</summary>
    public ILocator Undo => Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "↶ Undo" });

    /// <summary>The button that does a step again.</summary>
    public ILocator Redo => Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "↷ Redo" });

    /// <summary>Waits until the page answers to hand and keyboard.</summary>
    public async Task ReadyAsync()
    {
        await Page.Locator("main h1").WaitForAsync();
        ILocator deaf = Page.Locator(".table-place .stage:not([data-ready]), .playback:not([data-ready])");
        await Assertions.Expect(deaf).ToHaveCountAsync(0);
        if (!Page.Url.Contains("/not-found", StringComparison.Ordinal))
            await Assertions.Expect(Page.Locator(".playback[data-ready]")).ToHaveCountAsync(1);
        await SettledAsync();
    }

    /// <summary>A handle on the table or on the tip.</summary>
    public ILocator Handle(string name) => Page.Locator($"[data-handle=\"{name}\"]");

    /// <summary>A number field by its label.</summary>
    public ILocator Field(string label) => Page.GetByLabel(label, new PageGetByLabelOptions { Exact = true });

    /// <summary>What a number field shows.</summary>
    public async Task<double> ValueAsync(string label) =>
        double.Parse(await Field(label).InputValueAsync(), CultureInfo.InvariantCulture);

    /// <summary>What a number field shows once it is as wanted, or after ten seconds: the address and the fields do not
    /// change in the same moment.</summary>
    public async Task<double> ValueOnceAsync(string label, Func<double, bool> isWanted)
    {
        for (int k = 0; k < 200 && !isWanted(await ValueAsync(label)); k++)
            await Page.WaitForTimeoutAsync(50);
        return await ValueAsync(label);
    }

    /// <summary>Drags a handle by screen pixels, in steps as a hand does.</summary>
    public async Task DragAsync(string name, float dx, float dy)
    {
        await Handle(name).ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await Handle(name).BoundingBoxAsync())!;
        (float x, float y) = (box.X + box.Width / 2, box.Y + box.Height / 2);
        await Page.Mouse.MoveAsync(x, y);
        await Page.Mouse.DownAsync();
        await Page.Mouse.MoveAsync(x + dx, y + dy, new MouseMoveOptions { Steps = 6 });
        await Page.Mouse.UpAsync();
        await SettledAsync();
    }

    /// <summary>Waits until nothing is looked for any more and the address holds the table.</summary>
    public async Task SettledAsync()
    {
        await Page.WaitForTimeoutAsync(150);
        await Assertions.Expect(Page.Locator(".state", new PageLocatorOptions { HasText = "Looking" }))
            .ToHaveCountAsync(
            0, new LocatorAssertionsToHaveCountOptions { Timeout = 20_000 });
    }

    /// <summary>The table's part of the address.</summary>
    public string Link => Page.Url.Split('#').Last().Split('&')
        .First(part => part.StartsWith("t=", StringComparison.Ordinal));

    /// <summary>Waits until the address holds another table than before.</summary>
    public async Task<string> LinkOtherThanAsync(string link)
    {
        for (int k = 0; k < 200 && Link == link; k++)
            await Page.WaitForTimeoutAsync(50);
        Assert.NotEqual(link, Link);
        return Link;
    }

    /// <summary>Whether the page is wider than its window.</summary>
    public Task<bool> ScrollsSidewaysAsync() =>
        Page.EvaluateAsync<bool>("document.documentElement.scrollWidth > document.documentElement.clientWidth");

    public async ValueTask DisposeAsync()
    {
        await _context.CloseAsync();
        if (!MayComplain)
            Assert.Empty(_complaints);
    }
}
