using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using CsCheck;
using Longrail.Drawing;
using Longrail.Drawing.Balls;
using Longrail.Physics.Geometry;
using Microsoft.Playwright;

namespace Longrail.Workbench.Tests.Browsing;

/// <summary>Playing the shot.</summary>
public sealed partial class PlaybackTests(Bench bench)
{
    [Fact]
    public async Task Balls_move_while_playing_and_stand_when_paused()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.Page.GetByText("▶ Play").ClickAsync();
        await Assertions.Expect(open.Page.Locator(".moving")).ToHaveCountAsync(2);
        await open.Page.GetByText("⏸ Pause").ClickAsync();
        string there = (await open.Page.Locator(".moving").First.GetAttributeAsync("transform"))!;
        await open.Page.WaitForTimeoutAsync(200);
        Assert.Equal(there, await open.Page.Locator(".moving").First.GetAttributeAsync("transform"));
    }

    [Fact]
    public async Task Steps_go_from_event_to_event()
    {
        await using OpenPage open = await bench.OpenAsync();
        ILocator clock = open.Page.Locator("output.clock");
        // The times of docs/guide/first-bank.md.
        foreach (string time in (string[])["0.19 s", "0.32 s", "0.38 s"])
        {
            await open.Page.GetByText("Event ▶").ClickAsync();
            await Assertions.Expect(clock).ToHaveTextAsync(time);
        }

        await open.Page.GetByText("◀ Event").ClickAsync();
        await Assertions.Expect(clock).ToHaveTextAsync("0.32 s");
    }

    [Fact]
    public async Task The_time_line_is_scrubbed_by_keyboard_and_a_change_of_the_shot_resets_it()
    {
        await using OpenPage open = await bench.OpenAsync();
        ILocator line = open.Page.Locator(".timeline");
        await line.FocusAsync();
        await open.Page.Keyboard.PressAsync("End");
        await Assertions.Expect(open.Page.Locator("output.clock")).ToHaveTextAsync("6.45 s");
        await Assertions.Expect(line).ToHaveAttributeAsync("aria-valuetext", "6.45 seconds");
        await open.Field("Ball speed").FillAsync("2");
        await open.Field("Ball speed").PressAsync("Enter");
        await Assertions.Expect(open.Page.Locator("output.clock")).ToHaveTextAsync("0.00 s");
    }

    [Fact]
    public async Task With_reduced_motion_a_press_shows_the_next_still()
    {
        await using OpenPage open = await bench.OpenAsync(stills: true);
        await open.Page.GetByText("▶ Play").ClickAsync();
        await Assertions.Expect(open.Page.Locator("output.clock")).ToHaveTextAsync("0.19 s");
        await open.Page.WaitForTimeoutAsync(200);
        await Assertions.Expect(open.Page.Locator("output.clock")).ToHaveTextAsync("0.19 s");
    }

    [Fact]
    public async Task The_lens_shows_a_ball_ten_times_as_large()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.Page.GetByText("Event ▶").ClickAsync();
        await open.Page.GetByLabel("Lens").SelectOptionAsync("9");
        await Assertions.Expect(open.Page.Locator(".lens")).ToBeVisibleAsync();
        double ratio = await open.Page.EvaluateAsync<double>(
            """
            () => {
              const scale = svg => svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
              const [lens, picture] = [".lens svg", ".board svg.picture"].map(one => document.querySelector(one));
              return scale(lens) / scale(picture);
            }
            """);
        Assert.Equal(10, ratio, 2);
    }

    [Fact]
    public async Task The_script_draws_the_stripe_where_the_drawing_does()
    {
        const double Radius = 20;
        await using OpenPage open = await bench.OpenAsync();
        var axes = new List<Vec3>();
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], (x, y, z) => new Vec3(x, y, z))
            // A stripe seen exactly from the side has edges without depth, which the drawing writes as straight lines.
            .Where(axis => axis.Length > 0.1 && Math.Abs(axis.Z) > 1e-3)
            .Sample(axis => { lock (axes) axes.Add(axis * (1 / axis.Length)); }, iter: 300, threads: 1,
                seed: "0000KOIPe503");
        JsonElement paths = await open.Page.EvaluateAsync<JsonElement>(
            "async axes => { const { stripe } = await import('/play.js'); return axes.map(axis => stripe(axis, 20)); }",
            axes.Select(axis => new[] { axis.X, axis.Y, axis.Z }).ToArray());

        for (int k = 0; k < axes.Count; k++)
        {
            double[] expected = Numbers(StripeProjection.Outline(axes[k], new SvgPoint(0, 0), Radius).ToString());
            double[] actual = Numbers(paths[k].GetString()!);
            Assert.Equal(expected.Length, actual.Length);
            // Both write three decimals; an angle of 180 degrees may be written as -180.
            for (int i = 0; i < expected.Length; i++)
                Assert.True(Math.Abs(expected[i] - actual[i]) < 0.0021
                    || Math.Abs(Math.Abs(expected[i] - actual[i]) - 360) < 0.01, $"{axes[k]}: number {i}");
        }
    }

    private static double[] Numbers(string path) =>
        [.. Number().Matches(path).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"-?\d+(\.\d+)?(e-?\d+)?")]
    private static partial Regex Number();
}
