using Microsoft.Playwright;

namespace Longrail.Workbench.Tests.Browsing;

/// <summary>The pictures of the pages in docs/figures. With UPDATE_SNAPSHOTS=1 they are taken anew; else it is only
/// checked that there are some, since two machines' fonts never agree to the pixel.</summary>
public sealed class ScreenshotTests(Bench bench)
{
    [Theory]
    [InlineData("workbench-table", "", 1360, 1000)]
    [InlineData("workbench-table-phone", "", 390, 844)]
    [InlineData("workbench-contrast", "contrast", 1360, 1000)]
    [InlineData("workbench-contrast-phone", "contrast", 390, 844)]
    public async Task Each_place_has_its_picture(string name, string path, int width, int height)
    {
        string file = Path.Combine(Folder, name + ".png");
        await using OpenPage open = await bench.OpenAsync(path, width, height);
        await open.Page.WaitForTimeoutAsync(800);
        byte[] picture = await open.Page.ScreenshotAsync(new PageScreenshotOptions { FullPage = width > 400 });
        if (Environment.GetEnvironmentVariable("UPDATE_SNAPSHOTS") == "1")
            await File.WriteAllBytesAsync(file, picture, TestContext.Current.CancellationToken);
        Assert.True(File.Exists(file), $"{file} is missing; UPDATE_SNAPSHOTS=1 takes it");
        using var taken = SkiaSharp.SKBitmap.Decode(picture);
        using var kept = SkiaSharp.SKBitmap.Decode(file);
        Assert.Equal(kept.Width, taken.Width);
    }

    private static string Folder => Path.Combine(Root(AppContext.BaseDirectory), "docs", "figures");

    private static string Root(string folder) =>
        File.Exists(Path.Combine(folder, "Longrail.slnx")) ? folder : Root(Path.GetDirectoryName(folder)!);
}
