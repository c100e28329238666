using Chandlery.Tests.Support;
using Chandlery.Workbench;
using Chandlery.Yaml;
using Microsoft.Playwright;

namespace Chandlery.Tests.Workbench;

/// <summary>Debian's Chromium, driven by Playwright, and a workbench over a copy of the demo for each page.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;

    public async Task InitializeAsync()
    {
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(
            new BrowserTypeLaunchOptions
            {
                ExecutablePath = new[] { "/usr/bin/chromium", "/usr/bin/chromium-browser" }.First(File.Exists),
                Args = ["--no-sandbox"],
            }
        );
    }

    public async Task DisposeAsync()
    {
        await browser!.DisposeAsync();
        playwright!.Dispose();
    }

    /// <summary>A page on a fresh copy of the demo, with the candle that must not be sold.</summary>
    internal async Task<Visit> Open(int width = 1280, int height = 900, bool dark = false)
    {
        string folder = Directory.CreateTempSubdirectory("chandlery-workbench-").FullName;
        foreach (string file in Directory.GetFiles(TestLaw.DemoFolder, "*.yaml", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(folder, Path.GetRelativePath(TestLaw.DemoFolder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        const string Stopped = "candles/storm-jar.yaml";
        File.Copy(Path.Combine(TestLaw.StoppedFolder, Stopped), Path.Combine(folder, Stopped));

        var problems = new Problems();
        WorkbenchServer server = await WorkbenchServer.Start(Workroom.Open(folder, problems)!, 0);
        IBrowserContext context = await browser!.NewContextAsync(
            new BrowserNewContextOptions
            {
                ViewportSize = new ViewportSize { Width = width, Height = height },
                ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
                AcceptDownloads = true,
            }
        );
        IPage page = await context.NewPageAsync();
        return new Visit(folder, server, context, page);
    }
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

    public ILocator Status => page.Locator("#status");

    public string Read(string file) => File.ReadAllText(Path.Combine(folder, file));

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        await server.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }
}
