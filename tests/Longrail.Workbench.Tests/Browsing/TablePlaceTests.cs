using Microsoft.Playwright;

namespace Longrail.Workbench.Tests.Browsing;

/// <summary>The table in a real browser: first sight, every handle by hand and by keyboard, steps, links.</summary>
public sealed class TablePlaceTests(Bench bench)
{
    [Fact]
    public async Task First_sight_is_a_made_bank_with_its_numbers()
    {
        await using OpenPage open = await bench.OpenAsync();

        await Assertions.Expect(open.Page.Locator("h1")).ToHaveTextAsync("My first bank");
        await Assertions.Expect(open.Events).ToContainTextAsync("9 in left-side");
        await Assertions.Expect(open.Events).ToContainTextAsync("throw 1.6° left");
        // docs/guide/first-bank.md shows the same shot from the command line: stick at -46.84 degrees, 2.50 m/s.
        Assert.Equal(-46.84, await open.ValueAsync("Stick's line"));
        Assert.Equal(2.5, await open.ValueAsync("Ball speed"));
        foreach (string handle in (string[])["ball:cue", "ball:9", "aim", "contact", "tip"])
            await Assertions.Expect(open.Handle(handle)).ToHaveCountAsync(1);
        await Assertions.Expect(open.Page.Locator("#said"))
            .ToContainTextAsync("9 off the right cushion at 2.83 drops in left-side.");
    }

    [Fact]
    public async Task A_dragged_ball_and_its_fields_agree_and_the_bank_is_found_anew()
    {
        await using OpenPage open = await bench.OpenAsync();
        string before = open.Link;

        await open.DragAsync("ball:9", 31, -27);
        await open.LinkOtherThanAsync(before);

        Assert.NotEqual(2.6, await open.ValueOnceAsync("Along, from the head", value => value != 2.6));
        string along = await open.Field("Along, from the head").InputValueAsync();
        string across = await open.Field("Across, from the right").InputValueAsync();
        string said = (await open.Handle("ball:9").GetAttributeAsync("aria-valuetext"))!;
        Assert.Equal($"{along} diamonds along, {across} diamonds across", said);
        await Assertions.Expect(open.Events).ToContainTextAsync("9 in left-side");
        Assert.NotEqual(-46.84, await open.ValueOnceAsync("Stick's line", value => value != -46.84));
    }

    [Theory]
    [InlineData("aim", "Stick's line", 40, 0)]
    [InlineData("contact", "Stick's line", 8, -3)]
    [InlineData("tip", "Tip right, R", 14, 0)]
    [InlineData("tip", "Tip above, R", 0, -14)]
    public async Task Dragging_a_handle_changes_its_number(string handle, string field, int dx, int dy)
    {
        await using OpenPage open = await bench.OpenAsync();
        (string link, double before) = (open.Link, await open.ValueAsync(field));

        await open.DragAsync(handle, dx, dy);
        await open.LinkOtherThanAsync(link);

        double after = await open.ValueOnceAsync(field, value => value != before);
        Assert.NotEqual(before, after);
        if (handle == "tip")
            Assert.True(after > 0.05, $"to the right and up are positive: {after}");
    }

    [Fact]
    public async Task A_tip_dragged_off_the_ball_stays_at_the_miscue_limit()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.DragAsync("tip", 120, 0);
        // The usual tip holds mu / sqrt(1 + mu^2) = 0.514 R with mu = 0.6.
        Assert.Equal(0.514, await open.ValueOnceAsync("Tip right, R", value => value > 0.5), 3);
        await Assertions.Expect(open.Page.Locator(".refusal")).ToHaveCountAsync(0);
    }

    [Theory]
    [InlineData("ball:9", "ArrowRight", "Along, from the head", 0.001 / 0.3175)]
    [InlineData("ball:9", "Shift+ArrowLeft", "Along, from the head", -0.010 / 0.3175)]
    [InlineData("ball:9", "ArrowUp", "Across, from the right", 0.001 / 0.3175)]
    [InlineData("ball:cue", "Shift+ArrowDown", "Across, from the right", -0.010 / 0.3175)]
    [InlineData("aim", "ArrowRight", "Stick's line", 0.1)]
    [InlineData("aim", "Shift+ArrowLeft", "Stick's line", -1)]
    [InlineData("tip", "ArrowRight", "Tip right, R", 0.01)]
    [InlineData("tip", "Shift+ArrowDown", "Tip above, R", -0.1)]
    public async Task Keys_nudge_by_a_millimetre_a_tenth_of_a_degree_a_hundredth_of_a_radius(
        string handle, string key, string field, double change)
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.Handle(handle).FocusAsync();
        await open.Page.WaitForTimeoutAsync(100);
        (string link, double before) = (open.Link, await open.ValueAsync(field));

        await open.Page.Keyboard.PressAsync(key);
        await open.LinkOtherThanAsync(link);

        // A field shows three decimals of a diamond or of R, two of a degree.
        double digit = field == "Stick's line" ? 0.0101 : 0.00101;
        double after = await open.ValueOnceAsync(field, value => value != before);
        Assert.InRange(after - before, change - digit, change + digit);
        await Assertions.Expect(open.Handle(handle)).ToBeFocusedAsync();
    }

    [Theory]
    [InlineData("ball:9", "Home", "Along, from the head", 0.08, 0.1)]
    [InlineData("ball:9", "End", "Along, from the head", 7.9, 7.92)]
    [InlineData("ball:9", "PageUp", "Across, from the right", 3.9, 3.92)]
    [InlineData("tip", "End", "Tip right, R", 0.513, 0.514)]
    // 85 degrees to the left from 0.496 m: atan2(-0.381, 0.3175) - asin(0.05715 sin 85 / 0.496) = -56.78 degrees.
    [InlineData("contact", "PageUp", "Stick's line", -56.80, -56.76)]
    public async Task Home_and_End_go_to_the_limits(string handle, string key, string field, double least, double most)
    {
        await using OpenPage open = await bench.OpenAsync();
        string link = open.Link;
        await open.Handle(handle).FocusAsync();
        await open.Page.Keyboard.PressAsync(key);
        await open.LinkOtherThanAsync(link);
        await open.SettledAsync();
        double after = await open.ValueOnceAsync(field, value => value >= least && value <= most);
        Assert.InRange(after, least, most);
    }

    [Fact]
    public async Task A_drag_is_one_step_and_steps_survive_a_reload()
    {
        await using OpenPage open = await bench.OpenAsync();
        string first = open.Link;
        await open.DragAsync("ball:9", 40, -20);
        string second = await open.LinkOtherThanAsync(first);
        await open.Field("Ball speed").FillAsync("7 mph");
        await open.Field("Ball speed").PressAsync("Enter");
        string third = await open.LinkOtherThanAsync(second);
        Assert.Equal(3.13, await open.ValueOnceAsync("Ball speed", value => value != 2.5));

        await open.Page.ReloadAsync();
        await open.ReadyAsync();
        Assert.Equal(third, open.Link);
        await open.Undo.ClickAsync();
        Assert.Equal(second, await open.LinkOtherThanAsync(third));
        await open.Undo.ClickAsync();
        Assert.Equal(first, await open.LinkOtherThanAsync(second));
        await Assertions.Expect(open.Undo).ToBeDisabledAsync();
        await open.Redo.ClickAsync();
        Assert.Equal(second, await open.LinkOtherThanAsync(first));
        await open.Page.Keyboard.PressAsync("Control+z");
        Assert.Equal(first, await open.LinkOtherThanAsync(second));
        await open.Page.Keyboard.PressAsync("Control+y");
        Assert.Equal(second, await open.LinkOtherThanAsync(first));
    }

    [Fact]
    public async Task A_link_opened_elsewhere_gives_the_same_numbers()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.DragAsync("ball:cue", -18, 33);
        string numbers = await open.Events.Locator("table").InnerTextAsync();

        await using OpenPage other = await bench.OpenAsync("#" + open.Page.Url.Split('#')[1]);
        await other.SettledAsync();
        Assert.Equal(numbers, await other.Events.Locator("table").InnerTextAsync());
    }

    [Theory]
    [InlineData("#t=1.AAAA", "damaged")]
    [InlineData("#t=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E", "no link")]
    public async Task A_hostile_link_gives_a_message_and_a_table(string hash, string words)
    {
        await using OpenPage open = await bench.OpenAsync(hash);
        await Assertions.Expect(open.Page.Locator(".refusal")).ToContainTextAsync(words);
        await Assertions.Expect(open.Page.Locator("h1")).ToHaveTextAsync("My first bank");
    }

    [Theory]
    [InlineData("not JSON at all", "not JSON")]
    [InlineData("""{"balls":[{"id":"a","x":1,"y":0.6},{"id":"b","x":1.01,"y":0.6}]}""", "overlaps")]
    [InlineData("""{"balls":[{"id":"cue","x":1,"y":0.6}],"stroke":{"sped":2}}""", "did you mean|Did you mean")]
    public async Task A_wrong_file_gives_a_message_and_leaves_the_table(string file, string words)
    {
        await using OpenPage open = await bench.OpenAsync();
        string link = open.Link;
        await OpenFileAsync(open, file);
        await Assertions.Expect(open.Page.Locator(".refusal").First)
            .ToContainTextAsync(new System.Text.RegularExpressions.Regex(words));
        Assert.Equal(link, open.Link);
    }

    [Fact]
    public async Task Names_from_a_file_are_text_and_never_elements()
    {
        const string Hostile = "<script>window.hit=1</script><img src=x onerror=window.hit=1>";
        string name = System.Text.Json.JsonSerializer.Serialize(Hostile);
        await using OpenPage open = await bench.OpenAsync();
        await OpenFileAsync(open,
            $$"""{"title": {{name}}, "balls": [{ "id": "cue", "x": 1, "y": 0.6 }], "stroke": { "speed": 3 } }""");

        await Assertions.Expect(open.Page.Locator("h1")).ToHaveTextAsync(Hostile);
        Assert.False(await open.Page.EvaluateAsync<bool>("'hit' in window"));
        await Assertions.Expect(open.Page.Locator("main script, main img")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Without_dragging_a_ball_is_placed_by_two_clicks()
    {
        await using OpenPage open = await bench.OpenAsync();
        string link = open.Link;
        await open.Page.GetByText("Place 9 by a click").ClickAsync();
        ILocator picture = open.Page.Locator(".board svg.picture");
        await picture.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult stage = (await picture.BoundingBoxAsync())!;
        await open.Page.Mouse.ClickAsync(stage.X + stage.Width * 0.62f, stage.Y + stage.Height * 0.4f);
        await open.LinkOtherThanAsync(link);
        Assert.InRange(await open.ValueOnceAsync("Along, from the head", value => value != 2.6), 4.5, 6);
    }

    [Fact]
    public async Task A_ball_near_a_cushion_is_frozen_to_it_unless_snapping_is_off()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.Field("Across, from the right").FillAsync("0.12");
        await open.Field("Across, from the right").PressAsync("Enter");
        await open.SettledAsync();
        await open.DragAsync("ball:9", 40, 1);
        await Assertions.Expect(open.Field("Frozen to")).ToHaveValueAsync("right");
        await open.Page.GetByText("Snap to half diamonds").ClickAsync();
        await open.DragAsync("ball:9", 40, -5);
        await Assertions.Expect(open.Field("Frozen to")).ToHaveValueAsync("none");
    }

    [Fact]
    public async Task An_aim_that_does_not_exist_is_said_with_its_reason()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.Page.Locator(".task select").Nth(1).SelectOptionAsync("right-side");
        await Assertions.Expect(open.Page.Locator(".state.bad")).ToContainTextAsync("No aim:");
        await Assertions.Expect(open.Handle("ball:9")).ToHaveCountAsync(1);
        await open.Undo.ClickAsync();
        await Assertions.Expect(open.Events).ToContainTextAsync("9 in left-side");
    }

    [Fact]
    public async Task A_miscue_is_refused_in_the_trades_words()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.Field("Tip right, R").FillAsync("2 tip");
        await open.Field("Tip right, R").PressAsync("Enter");
        await Assertions.Expect(open.Page.Locator(".refusal")).ToContainTextAsync("miscue");
        await open.Page.GetByText("Dismiss").ClickAsync();
        await Assertions.Expect(open.Page.Locator(".refusal")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Units_change_how_numbers_are_written_and_not_the_shot()
    {
        await using OpenPage open = await bench.OpenAsync();
        string link = open.Link;
        await open.Page.GetByText("Units…").ClickAsync();
        await open.Page.GetByLabel("Places on the table").SelectOptionAsync("Inches");
        await open.Page.GetByLabel("Speeds").SelectOptionAsync("mph");
        await open.Page.GetByLabel("Diamond numbering").SelectOptionAsync("Tens");
        await open.Page.Locator("#units-dialog").GetByText("Close").ClickAsync();

        // 2.6 diamonds of 12.5 in, and 2.5 m/s in miles of 1609.344 m.
        Assert.Equal(32.5, await open.ValueOnceAsync("Along, from the head", value => value > 8));
        double mph = await open.ValueOnceAsync("Ball speed", value => value != 2.5);
        Assert.Equal(Math.Round(2.5 * 3600 / 1609.344, 2), mph);
        await Assertions.Expect(open.Events).ToContainTextAsync("at 28.3");
        await Assertions.Expect(open.Events).ToContainTextAsync("in tens");
        Assert.Equal(link, open.Link);
        await open.Page.ReloadAsync();
        await open.ReadyAsync();
        Assert.Equal(32.5, await open.ValueOnceAsync("Along, from the head", value => value > 8));
    }

    [Fact]
    public async Task The_list_and_the_drawing_point_at_each_other()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.Page.Locator(".events tbody tr").Nth(3).HoverAsync();
        await Assertions.Expect(open.Page.Locator("svg[data-lit=\"3\"]")).ToHaveCountAsync(1);
        await open.Page.Locator(".event[data-number=\"5\"] text").HoverAsync();
        await Assertions.Expect(open.Page.Locator(".events tr.marked")).ToContainTextAsync("cue, foot cushion");
    }

    [Fact]
    public async Task A_number_says_where_it_comes_from()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.Page.Locator(".figure", new PageLocatorOptions { HasText = "throw" }).ClickAsync();
        ILocator dialog = open.Page.Locator("#where-from");
        await Assertions.Expect(dialog).ToBeVisibleAsync();
        await Assertions.Expect(dialog).ToContainTextAsync("atan(F / J)");
        await Assertions.Expect(dialog).ToContainTextAsync("Am. J. Phys. 56, 815");
        await open.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(dialog).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Balls_come_and_go_and_equipment_changes()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.Page.GetByText("Add", new PageGetByTextOptions { Exact = true }).ClickAsync();
        await Assertions.Expect(open.Handle("ball:1")).ToHaveCountAsync(1);
        await open.Page.GetByText("Take 1 off the table").ClickAsync();
        await Assertions.Expect(open.Handle("ball:1")).ToHaveCountAsync(0);
        string throwBefore = await open.Page.Locator(".figure", new PageLocatorOptions { HasText = "throw" })
            .InnerTextAsync();
        await open.Page.Locator("select")
            .And(open.Page.GetByLabel("Balls", new PageGetByLabelOptions { Exact = true })).SelectOptionAsync("dirty");
        await Assertions.Expect(open.Page.Locator(".figure", new PageLocatorOptions { HasText = "throw" }))
            .Not.ToHaveTextAsync(throwBefore);
        await open.Page.Locator("select")
            .And(open.Page.GetByLabel("Table", new PageGetByLabelOptions { Exact = true }))
            .SelectOptionAsync("pool-8ft");
        await Assertions.Expect(open.Page.Locator(".side")).ToContainTextAsync("2337 × 1168 mm");
    }

    private static async Task OpenFileAsync(OpenPage open, string text)
    {
        await open.Page.GetByText("Open…").ClickAsync();
        await open.Page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload
        {
            Name = "scene.json",
            MimeType = "application/json",
            Buffer = System.Text.Encoding.UTF8.GetBytes(text),
        });
        await Assertions.Expect(open.Page.Locator("#open-dialog")).ToBeHiddenAsync();
    }
}
