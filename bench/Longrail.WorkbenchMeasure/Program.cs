using System.Diagnostics;
using System.Globalization;
using Longrail.WorkbenchMeasure;
using Microsoft.Playwright;

// How long from the start of the program to a page that can be grabbed; how long from a pointer's move to the redrawn
// path, with one tab and with ten; how much memory an open tab takes. Prints a table in Markdown.
const int Tabs = 10;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
string program = Path.GetFullPath(Path.Combine(
    AppContext.BaseDirectory, "..", "..", "Longrail.Workbench", "release", "Longrail.Workbench.dll"));
using IPlaywright playwright = await Playwright.CreateAsync();
await using IBrowser browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
{
    ExecutablePath = args.Length > 0 ? args[0] : "/usr/bin/chromium",
    Args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update",
        "--disable-sync"],
});

var clock = Stopwatch.StartNew();
using Process process =
    Process.Start(new ProcessStartInfo("dotnet", [program, "--port", "0"]) { RedirectStandardOutput = true })!;
try
{
    string address = (await process.StandardOutput.ReadLineAsync())!.Split("open ")[1];
    double started = clock.Elapsed.TotalSeconds;
    Tab first = await Tab.OpenAsync(browser, address);
    double interactive = clock.Elapsed.TotalSeconds;

    await first.DragAsync(60);
    double[] one = await first.DragAsync(120);
    long before = Memory(process);
    var tabs = new List<Tab> { first };
    for (int k = 1; k < Tabs; k++)
        tabs.Add(await Tab.OpenAsync(browser, address));
    foreach (Tab tab in tabs)
        await tab.DragAsync(10);
    double each = (Memory(process) - before) / (Tabs - 1.0) / 1e6;
    double[][] all = await Task.WhenAll(tabs.Select(tab => tab.DragAsync(60)));
    double[] ten = [.. all.SelectMany(times => times)];

    string load = File.ReadAllText("/proc/loadavg").Split(' ')[0];
    Console.WriteLine($"Cores: {Environment.ProcessorCount}. Load of the machine at the end: {load}.");
    Console.WriteLine();
    Console.WriteLine("| what | value |");
    Console.WriteLine("|---|---|");
    Console.WriteLine($"| program started, address printed | {started:0.00} s |");
    Console.WriteLine($"| first page can be grabbed, from the start of the program | {interactive:0.00} s |");
    Console.WriteLine($"| drag to redraw, one tab, p50 / p95 of {one.Length} | {Times(one)} |");
    Console.WriteLine($"| drag to redraw, {Tabs} tabs dragging at once, p50 / p95 of {ten.Length} | {Times(ten)} |");
    Console.WriteLine($"| memory of the program for each open tab more | {each:0.0} MB |");
}
finally
{
    process.Kill();
}

static string Times(double[] times) => $"{At(times, 0.5):0} / {At(times, 0.95):0} ms";

static double At(double[] times, double part) => times.Order().ElementAt((int)(part * (times.Length - 1)));

static long Memory(Process process)
{
    process.Refresh();
    return process.WorkingSet64;
}
