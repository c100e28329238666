using System.Net;
using Chandlery.Tests.Support;
using Chandlery.Workbench;
using Chandlery.Yaml;
using Microsoft.Playwright;

namespace Chandlery.Tests.Workbench;

/// <summary>Debian's Chromium, driven by Playwright, and a workbench over a copy of the demo for each page.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    // The law is read once for all pages, as it is for the folders of one workbench.
    private static readonly Workroom Demo = Workroom.Open(TestLaw.DemoFolder, new Problems())!;

    // The shell is the same engine without a browser's windows round it, which are half the work where nobody looks at them.
    private static readonly string[] Browsers = ["/usr/bin/chromium-headless-shell", "/usr/bin/chromium", "/usr/bin/chromium-browser"];

    private IPlaywright? playwright;
    private IBrowser? browser;

    public async Task InitializeAsync()
    {
        // A machine that builds beside it is slow; what never comes still fails.
        Assertions.SetDefaultExpectTimeout(20_000);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(
            new BrowserTypeLaunchOptions { ExecutablePath = Browsers.First(File.Exists), Args = ["--no-sandbox"] }
        );
    }

    public async Task DisposeAsync()
    {
        await browser!.DisposeAsync();
        playwright!.Dispose();
    }

    /// <summary>A page on a fresh copy of the demo, with the candle that must not be sold.</summary>
    internal Task<Visit> Open(int width = 1440, int height = 900, bool dark = false, IPAddress? nearby = null)
    {
        string folder = NewFolder();
        foreach (string file in Files(TestLaw.DemoFolder))
        {
            string copy = Path.Combine(folder, Path.GetRelativePath(TestLaw.DemoFolder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        const string Stopped = "candles/storm-jar.yaml";
        File.Copy(Path.Combine(TestLaw.StoppedFolder, Stopped), Path.Combine(folder, Stopped));

        return Over(folder, width, height, dark, nearby);
    }

    // The declarations, and the pictures that they name; not the pictures of the guide.
    private static IEnumerable<string> Files(string folder) =>
        Directory
            .GetFiles(folder, "*.yaml", SearchOption.AllDirectories)
            .Concat(Directory.GetFiles(Path.Combine(folder, "candles"), "*.svg"));

    /// <summary>A page on an empty folder.</summary>
    internal Task<Visit> OpenEmpty(int width = 1440, int height = 900) => Over(NewFolder(), width, height, dark: false);

    /// <summary>A page on a folder, which goes with the visit.</summary>
    internal async Task<Visit> Over(string folder, int width, int height, bool dark, IPAddress? nearby = null)
    {
        WorkbenchServer server = await WorkbenchServer.Start(Demo.Beside(folder), 0, () => nearby);
        IBrowserContext context = await browser!.NewContextAsync(
            new BrowserNewContextOptions
            {
                ViewportSize = new ViewportSize { Width = width, Height = height },
                ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
                AcceptDownloads = true,
                Locale = "en-GB",
            }
        );
        IPage page = await context.NewPageAsync();
        return new Visit(folder, server, context, page);
    }

    private static string NewFolder() => Directory.CreateTempSubdirectory("chandlery-workbench-").FullName;
}

/// <summary>A visit to the workbench.</summary>
internal sealed class Visit(string folder, WorkbenchServer server, IBrowserContext context, IPage page) : IAsyncDisposable
{
    private readonly List<string> outside = [];

    public string Folder => folder;

    public IPage Page => page;

    public WorkbenchServer Server => server;

    public string Address => server.Address;

    /// <summary>A client that was let in, as the page is.</summary>
    public async Task<HttpClient> Client()
    {
        var client = new HttpClient { BaseAddress = new Uri(server.Address) };
        client.DefaultRequestHeaders.Add("X-Workbench", "1");
        (await client.GetAsync(server.WayIn)).EnsureSuccessStatusCode();
        return client;
    }

    /// <summary>Errors on the page's console, and requests to anywhere else.</summary>
    public IReadOnlyList<string> Trouble => outside;

    public async Task Go(string hash)
    {
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
            {
                outside.Add(message.Text);
            }
        };
        page.PageError += (_, error) => outside.Add(error);
        page.Request += (_, request) =>
        {
            if (
                !request.Url.StartsWith(server.Address, StringComparison.Ordinal)
                && !request.Url.StartsWith("blob:", StringComparison.Ordinal)
                && !request.Url.StartsWith("data:", StringComparison.Ordinal)
            )
            {
                outside.Add(request.Url);
            }
        };
        await page.GotoAsync(server.WayIn + hash);
        await page.Locator("h1").WaitForAsync();
    }

    /// <summary>Keeps what is asked of an address waiting until the result is set.</summary>
    public async Task<TaskCompletionSource> Hold(string address)
    {
        var held = new TaskCompletionSource();
        await page.RouteAsync(
            address,
            async route =>
            {
                await held.Task;
                await route.ContinueAsync();
            }
        );
        return held;
    }

    public ILocator Status => page.Locator("#status");

    public ILocator Sentence => page.Locator("#sentence");

    public ILocator Load => page.GetByLabel("Load, %", new() { Exact = true });

    public ILocator Amount(string oil) => page.GetByLabel("Amount of " + oil);

    public ILocator Button(string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    /// <summary>Waits until what was changed is in the files.</summary>
    public Task Kept() => Assertions.Expect(page.Locator("#kept")).ToHaveTextAsync("All changes kept");

    /// <summary>Waits until the page says that something is wrong and so was not kept.</summary>
    public Task NotKept() => Assertions.Expect(page.Locator("#kept")).ToHaveTextAsync("Not kept: see the problem");

    public Task Says(string text) => Assertions.Expect(Status).ToContainTextAsync(text);

    /// <summary>A picture of the whole page, for people to look at.</summary>
    public async Task Picture(string name) =>
        await page.ScreenshotAsync(
            new PageScreenshotOptions
            {
                Path = Path.Combine(TestLaw.Repository, "tests", ".cache", "workbench", name + ".png"),
                FullPage = true,
            }
        );

    public string Read(string file) => File.ReadAllText(Path.Combine(folder, file));

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        await server.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }
}
