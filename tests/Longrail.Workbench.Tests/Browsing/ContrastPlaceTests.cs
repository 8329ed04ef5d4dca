using Microsoft.Playwright;

namespace Longrail.Workbench.Tests.Browsing;

/// <summary>Changing one thing and holding the rest, in the browser.</summary>
public sealed class ContrastPlaceTests(Bench bench)
{
    [Fact]
    public async Task Three_speeds_of_the_table_are_compared_at_once()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.Page.Locator("nav").GetByText("Contrast").ClickAsync();
        ILocator rows = open.Page.Locator(".wide-table tbody tr");
        await Assertions.Expect(rows).ToHaveCountAsync(3);
        await Assertions.Expect(rows.First).ToContainTextAsync("in left-side");
        await Assertions.Expect(open.Page.Locator(".two")).ToHaveCountAsync(0);

        // docs/guide/first-bank.md: 4 m/s lands 0.25 diamond shorter and misses.
        await open.Page.Locator("#levels").FillAsync("2.5 m/s, 4 m/s");
        await open.Page.GetByText("Compare").ClickAsync();
        await Assertions.Expect(rows).ToHaveCountAsync(2);
        await Assertions.Expect(rows.Last).ToContainTextAsync("0.25 shorter");
        await Assertions.Expect(rows.Last).ToContainTextAsync("misses short");
    }

    [Fact]
    public async Task A_second_change_is_marked()
    {
        await using OpenPage open = await bench.OpenAsync("contrast");
        await open.Page.GetByLabel("Change a second thing").SelectOptionAsync("ballSet.state");
        await Assertions.Expect(open.Page.Locator(".two")).ToHaveTextAsync("two things changed");
        await Assertions.Expect(open.Page.Locator(".shot-note").First).ToContainTextAsync("two things changed");
    }

    [Fact]
    public async Task A_row_and_its_path_are_marked_together_and_variants_stand_side_by_side()
    {
        await using OpenPage open = await bench.OpenAsync("contrast");
        await open.Page.Locator(".wide-table tbody tr").Nth(1).HoverAsync();
        await Assertions.Expect(open.Page.Locator(".only-1")).ToHaveCountAsync(1);
        await open.Page.GetByText("Side by side").ClickAsync();
        await Assertions.Expect(open.Page.Locator(".multiples figure")).ToHaveCountAsync(3);
    }

    [Fact]
    public async Task A_wrong_level_is_named()
    {
        await using OpenPage open = await bench.OpenAsync("contrast");
        foreach ((string levels, string words) in new[] { ("2 mp", "no unit known here"),
            (" , ", "no level is given") })
        {
            await open.Page.Locator("#levels").FillAsync(levels);
            await open.Page.GetByText("Compare").ClickAsync();
            await Assertions.Expect(open.Page.Locator(".state.bad").First).ToContainTextAsync(words);
        }
    }

    [Fact]
    public async Task All_variants_play_on_one_clock()
    {
        await using OpenPage open = await bench.OpenAsync("contrast");
        await open.Page.GetByText("Event ▶").ClickAsync();
        // A banked ball and a cue ball for each of three rows.
        await Assertions.Expect(open.Page.Locator(".moving")).ToHaveCountAsync(6);
    }
}
