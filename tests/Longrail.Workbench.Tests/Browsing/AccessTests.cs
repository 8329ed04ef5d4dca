using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Longrail.Workbench.Tests.Browsing;

/// <summary>For everyone: axe's rules at WCAG 2.2 AA, small screens, zoom, sizes of targets.</summary>
public sealed class AccessTests(Bench bench)
{
    private static readonly AxeRunOptions _rules = new()
    {
        RunOnly = new RunOnlyOptions
        {
            Type = "tag",
            Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
        },
    };

    [Theory]
    [InlineData("", 1360, null)]
    [InlineData("", 390, null)]
    [InlineData("contrast", 1360, null)]
    [InlineData("contrast", 390, null)]
    [InlineData("not-found", 1360, null)]
    [InlineData("", 1360, "Open…")]
    [InlineData("", 1360, "Export…")]
    [InlineData("", 1360, "Units…")]
    public async Task Axe_finds_nothing(string path, int width, string? press)
    {
        await using OpenPage open = await bench.OpenAsync(path, width);
        await open.Page.WaitForTimeoutAsync(400);
        if (press is not null)
            await open.Page.GetByText(press).ClickAsync();
        await AssertCleanAsync(open.Page);
    }

    [Fact]
    public async Task Axe_finds_nothing_where_a_number_comes_from_or_on_the_print_sheet()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.Page.Locator(".figure").First.ClickAsync();
        await Assertions.Expect(open.Page.Locator("#where-from")).ToBeVisibleAsync();
        await AssertCleanAsync(open.Page);
        string sheet = (await open.Page.Locator("#export-dialog a[target]").GetAttributeAsync("href"))!;
        await open.Page.GotoAsync(bench.Address + sheet[1..]);
        await AssertCleanAsync(open.Page);
    }

    [Theory]
    [InlineData("", 390, 844)]
    [InlineData("", 320, 640)]
    [InlineData("contrast", 320, 640)]
    // A window of 1280 x 800 at 200 % has 640 x 400 CSS pixels.
    [InlineData("", 640, 400)]
    [InlineData("contrast", 640, 400)]
    public async Task Nothing_is_cut_off_on_a_small_screen_or_at_twice_the_size(string path, int width, int height)
    {
        await using OpenPage open = await bench.OpenAsync(path, width, height);
        await open.Page.WaitForTimeoutAsync(300);
        Assert.False(await open.ScrollsSidewaysAsync());
    }

    [Theory]
    [InlineData(1360)]
    [InlineData(390)]
    public async Task Everything_to_press_is_large_enough(int width)
    {
        await using OpenPage open = await bench.OpenAsync(width: width);
        await open.Page.WaitForTimeoutAsync(500);
        string[] small = await open.Page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll("button, a, select, input, .handle")]
              .filter(one => one.checkVisibility() && !one.classList.contains("skip"))
              .filter(one => {
                const { width, height } = one.getBoundingClientRect();
                const least = one.classList.contains("handle") ? 32 : 24;
                return Math.min(width, height) < least - 0.01;
              })
              .map(one => one.outerHTML.slice(0, 120))
            """);
        Assert.Empty(small);
    }

    [Fact]
    public async Task Everything_can_be_reached_with_the_tab_key_and_seen_when_it_is()
    {
        await using OpenPage open = await bench.OpenAsync();
        var reached = new HashSet<string>();
        for (int k = 0; k < 120; k++)
        {
            await open.Page.Keyboard.PressAsync("Tab");
            string? covered = await open.Page.EvaluateAsync<string?>(
                """
                () => {
                  const one = document.activeElement, box = one.getBoundingClientRect();
                  const name = one.dataset?.handle ?? one.textContent.trim() ?? one.id;
                  if (one === document.body) return "";
                  const seen = box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth;
                  return (seen ? "" : "unseen: ") + name;
                }
                """);
            Assert.DoesNotContain("unseen", covered, StringComparison.Ordinal);
            reached.Add(covered ?? "");
        }

        foreach (string name in (string[])["ball:cue", "ball:9", "aim", "contact", "tip", "▶ Play", "Hold this line",
            "Export…"])
            Assert.Contains(name, reached);
    }

    private static async Task AssertCleanAsync(IPage page)
    {
        AxeResult result = await page.RunAxe(_rules);
        Assert.NotEmpty(result.Passes);
        Assert.Empty(result.Violations.Select(rule =>
            $"{rule.Id}: {rule.Help}\n  {string.Join("\n  ", rule.Nodes.Take(3).Select(node => node.Html))}"));
    }
}
