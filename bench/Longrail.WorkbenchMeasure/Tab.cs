using Microsoft.Playwright;

namespace Longrail.WorkbenchMeasure;

/// <summary>An open page whose nine is dragged to and fro, each move timed until the path has been drawn
/// again.</summary>
internal sealed class Tab
{
    // A move is timed from the pointer's event to the frame after the one in which the drawing's paths were renewed.
    // The next move comes only then, so that each is answered by a drawing of its own.
    private const string Drag =
        """
        async count => {
          const handle = document.querySelector('[data-handle="ball:9"]');
          const layer = document.querySelector(".shot-layer");
          const box = handle.getBoundingClientRect();
          const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
          const send = (type, dx, target) => target.dispatchEvent(new PointerEvent(type, {
            bubbles: true, cancelable: true, pointerId: 1, button: 0, buttons: 1, clientX: x + dx, clientY: y - dx / 2,
                altKey: true }));
          const stage = document.querySelector(".board .stage");
          stage.setPointerCapture = () => {};
          const times = [];
          send("pointerdown", 0, handle);
          for (let k = 1; k <= count; k++) {
            const drawn = new Promise(done => {
              const watch = new MutationObserver(() =>
                  { watch.disconnect(); requestAnimationFrame(() => setTimeout(done)); });
              watch.observe(layer, { childList: true, subtree: true, characterData: true });
            });
            const start = performance.now();
            send("pointermove", 8 + (k % 40 < 20 ? k % 20 : 20 - k % 20), stage);
            await drawn;
            times.push(performance.now() - start);
            await new Promise(done => setTimeout(done, 25));
          }
          send("pointerup", 8, stage);
          return times;
        }
        """;

    private readonly IPage _page;

    private Tab(IPage page) => _page = page;

    /// <summary>Opens a page and waits until it can be grabbed.</summary>
    public static async Task<Tab> OpenAsync(IBrowser browser, string address)
    {
        IBrowserContext context = await browser.NewContextAsync(
            new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = 1360, Height = 900 } });
        IPage page = await context.NewPageAsync();
        await page.GotoAsync(address);
        await page.Locator(".board .stage[data-ready]").WaitForAsync();
        return new Tab(page);
    }

    /// <summary>Drags and gives the time of each move, milliseconds.</summary>
    public async Task<double[]> DragAsync(int count)
    {
        double[] times = await _page.EvaluateAsync<double[]>(Drag, count);
        await _page.WaitForTimeoutAsync(600);
        return times;
    }
}
