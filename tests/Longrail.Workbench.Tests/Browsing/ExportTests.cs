using System.Xml.Linq;
using Longrail.Workbench.Tables;
using Microsoft.Playwright;
using SkiaSharp;
using UglyToad.PdfPig;

namespace Longrail.Workbench.Tests.Browsing;

/// <summary>Files that leave the page, and that they open.</summary>
public sealed class ExportTests(Bench bench)
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_picture_is_downloaded_as_svg_png_and_pdf()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.Page.GetByText("Export…").ClickAsync();

        XDocument svg = XDocument.Parse(System.Text.Encoding.UTF8.GetString(await DownloadAsync(open,
            "#export-dialog >> text=SVG")));
        Assert.Equal("svg", svg.Root!.Name.LocalName);
        Assert.Contains("My first bank", svg.ToString(), StringComparison.Ordinal);
        Assert.Contains("counted at the nose", svg.ToString(), StringComparison.Ordinal);

        using SKBitmap png = SKBitmap.Decode(await DownloadAsync(open, "#export-dialog >> text=PNG"));
        Assert.Equal(2339, png.Width);

        using PdfDocument pdf = PdfDocument.Open(await DownloadAsync(open, "#export-dialog >> text=PDF"));
        // A4 across, in points.
        Assert.Equal(842, pdf.GetPage(1).Width, 0);
        Assert.Contains("pool-9ft", pdf.GetPage(1).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_saved_scene_opens_again_as_the_same_table()
    {
        await using OpenPage open = await bench.OpenAsync();
        await open.DragAsync("ball:9", 35, -10);
        string link = open.Link;
        byte[] file = await DownloadAsync(open, "text=Save scene");

        await using OpenPage other = await bench.OpenAsync();
        string before = other.Link;
        await other.Page.GetByText("Open…").ClickAsync();
        await other.Page.Locator("input[type=file]").SetInputFilesAsync(
            new FilePayload { Name = "scene.json", MimeType = "application/json", Buffer = file });
        Assert.Equal(link, await other.LinkOtherThanAsync(before));
    }

    [Fact]
    public async Task The_print_sheet_fits_one_page_and_says_where_the_balls_stand()
    {
        IBrowser browser = await bench.BrowserAsync();
        await using IBrowserContext context = await browser.NewContextAsync();
        IPage page = await context.NewPageAsync();
        string link = SceneLink.Of(SampleScenes.Opening.Scene!);
        await page.GotoAsync($"{bench.Address}sheet?t={link}&u=Inches.mph.Tens&d=2026-11-25");

        string text = await page.Locator("main").InnerTextAsync();
        // 1.6 and 2.2 diamonds of 317.5 mm.
        foreach (string words in (string[])["508 mm", "699 mm", "16.0, 22.0", "in tens", "2026-11-25", "pool-9ft",
            "5.59 mph"])
            Assert.Contains(words, text, StringComparison.Ordinal);
        using PdfDocument pdf = PdfDocument.Open(await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true }));
        Assert.Equal(1, pdf.NumberOfPages);
        Assert.Equal(842, pdf.GetPage(1).Width, 0);
    }

    [Theory]
    [InlineData("svg")]
    [InlineData("pdf")]
    public async Task A_comparison_is_a_picture_too(string form)
    {
        string link = SceneLink.Of(SampleScenes.Opening.Scene!);
        using HttpResponseMessage answer = await bench.Http.GetAsync(
            $"{bench.Address}contrast.{form}?t={link}&f=stroke.speed&l=2%20m/s,3%20m/s"
            + "&f2=ballSet.state&l2=clean,dirty", Stop);
        answer.EnsureSuccessStatusCode();
        byte[] file = await answer.Content.ReadAsByteArrayAsync(Stop);
        string text = form == "svg" ? System.Text.Encoding.UTF8.GetString(file)
            : PdfDocument.Open(file).GetPage(1).Text;
        Assert.Contains("two things changed", text, StringComparison.Ordinal);
    }

    private static async Task<byte[]> DownloadAsync(OpenPage open, string selector)
    {
        IDownload download = await open.Page.RunAndWaitForDownloadAsync(() =>
            open.Page.Locator(selector).First.ClickAsync());
        await using Stream stream = await download.CreateReadStreamAsync();
        using var bytes = new MemoryStream();
        await stream.CopyToAsync(bytes, Stop);
        return bytes.ToArray();
    }
}
