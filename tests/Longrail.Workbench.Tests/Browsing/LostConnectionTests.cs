using Longrail.Workbench.Tests.Hosting;
using Microsoft.Playwright;

namespace Longrail.Workbench.Tests.Browsing;

/// <summary>The program ends under an open page and is started again.</summary>
public sealed class LostConnectionTests(Bench bench)
{
    [Fact]
    public async Task The_table_is_there_again_when_the_program_is()
    {
        WorkbenchProcess program = await WorkbenchProcess.StartAsync("--port", "0");
        string port = new Uri(program.Address).Port.ToString(System.Globalization.CultureInfo.InvariantCulture);
        await using OpenPage open = await bench.OpenAsync(address: program.Address);
        open.MayComplain = true;
        await open.DragAsync("ball:9", 33, -12);
        string link = open.Link;

        await program.DisposeAsync();
        await Assertions.Expect(open.Page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();

        await using WorkbenchProcess again = await WorkbenchProcess.StartAsync("--port", port);
        await Assertions.Expect(open.Page.Locator("#components-reconnect-modal")).ToBeHiddenAsync(
            new LocatorAssertionsToBeHiddenOptions { Timeout = 40_000 });
        await open.ReadyAsync();
        Assert.Equal(link, open.Link);
        await Assertions.Expect(open.Undo).ToBeEnabledAsync();
    }
}
