using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Tests.Support;
using Microsoft.Playwright;

namespace Chandlery.Tests.Workbench;

/// <summary>The local page in a real browser.</summary>
public sealed class WorkbenchTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private static readonly string Pictures = Path.Combine(TestLaw.Repository, "tests", ".cache", "workbench");

    private static async Task Picture(Visit visit, string name)
    {
        Directory.CreateDirectory(Pictures);
        await visit.Page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(Pictures, name + ".png"), FullPage = true });
    }

    private static Task Says(Visit visit, string text) => Assertions.Expect(visit.Status).ToContainTextAsync(text);

    [Fact]
    public async Task The_main_path_from_catalogue_to_a_new_load_to_the_label()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("");
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Row)).ToHaveCountAsync(7);
        await Assertions.Expect(visit.Page.GetByText("null")).ToHaveCountAsync(0);
        await Picture(visit, "catalogue");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Harbour Bowl" }).First.ClickAsync();
        await Assertions.Expect(visit.Page.GetByText("Signal word: Warning").First).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.GetByAltText("Label, page 1 of 1")).ToBeVisibleAsync();
        await Picture(visit, "candle");

        await visit.Page.GetByLabel("Load, %", new() { Exact = true }).FillAsync("3");
        await Says(visit, "with your changes");
        await Assertions.Expect(visit.Page.GetByText("No signal word").First).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.Locator("#load-hint")).ToContainTextAsync("3 % of the wax");

        await visit.Page.GetByLabel("Load, %", new() { Exact = true }).FillAsync("12");
        await Assertions.Expect(visit.Page.GetByText("broken").First).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.GetByText("Stop: this candle must not be sold").First).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.Locator("#preview")).ToContainTextAsync("not printed");
        await Picture(visit, "broken-limit");
        Assert.Empty(visit.Trouble);
    }

    [Fact]
    public async Task Edits_are_saved_with_comments_and_found_again()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        string before = visit.Read("candles/harbour-bowl.yaml");
        await visit.Page.GetByLabel("Load, %", new() { Exact = true }).FillAsync("7,5");
        await visit.Page.GetByLabel("Amount of Fig Leaf").FillAsync("20");
        await visit.Page.GetByLabel("Amount of Cedar Smoke").FillAsync("20");
        await Says(visit, "with your changes");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save to the file" }).ClickAsync();
        await Says(visit, "Saved");
        string expected = before
            .Replace("load: { percent: 8,", "load: { percent: 7.5,", StringComparison.Ordinal)
            .Replace("fig-leaf, share: 15", "fig-leaf, share: 20", StringComparison.Ordinal)
            .Replace("cedar-smoke, share: 25", "cedar-smoke, share: 20", StringComparison.Ordinal);
        Assert.Equal(expected, visit.Read("candles/harbour-bowl.yaml"));
        await visit.Page.ReloadAsync();
        await Assertions.Expect(visit.Page.GetByLabel("Load, %", new() { Exact = true })).ToHaveValueAsync("7.5");
        Assert.Empty(visit.Trouble);
    }

    [Fact]
    public async Task Oils_are_added_and_taken_out()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/slate-jar");
        await visit.Page.GetByLabel("Another oil").SelectOptionAsync("fig-leaf");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await visit.Page.GetByLabel("Amount of Rain on Slate").FillAsync("90");
        await Says(visit, "with your changes");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save to the file" }).ClickAsync();
        await Says(visit, "Saved");
        Assert.Contains(
            "  - { oil: rain-on-slate, share: 90 }\n  - { oil: fig-leaf, share: 10 }\n",
            visit.Read("candles/slate-jar.yaml"),
            StringComparison.Ordinal
        );
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Take out Rain on Slate" }).ClickAsync();
        await visit.Page.GetByLabel("Amount of Fig Leaf").FillAsync("100");
        await Says(visit, "with your changes");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save to the file" }).ClickAsync();
        await Says(visit, "Saved");
        Assert.DoesNotContain("rain-on-slate", visit.Read("candles/slate-jar.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wrong_input_is_said_and_cannot_be_saved()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        string before = visit.Read("candles/harbour-bowl.yaml");
        await visit.Page.GetByLabel("Net grams").FillAsync("many");
        await Says(visit, "problem");
        await Assertions.Expect(visit.Page.Locator(".problems").First).ToContainTextAsync("must be a number");
        await Picture(visit, "problem");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save to the file" }).ClickAsync();
        await Says(visit, "Not saved");
        Assert.Equal(before, visit.Read("candles/harbour-bowl.yaml"));
    }

    [Fact]
    public async Task A_file_that_changed_on_disk_is_not_overwritten()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.GetByLabel("Load, %", new() { Exact = true }).FillAsync("7");
        await Says(visit, "with your changes");
        string file = Path.Combine(visit.Folder, "candles", "harbour-bowl.yaml");
        string others = File.ReadAllText(file) + "# somebody else was here\n";
        File.WriteAllText(file, others);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save to the file" }).ClickAsync();
        await Says(visit, "changed on disk");
        Assert.Equal(others, File.ReadAllText(file));
    }

    [Fact]
    public async Task Keyboard_alone_is_enough()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("");
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(visit.Page.GetByText("Skip to the work")).ToBeFocusedAsync();
        await Reach(visit, visit.Page.GetByRole(AriaRole.Link, new() { Name = "Harbour Bowl" }).First);
        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator("#load-range")).ToBeVisibleAsync();
        await Reach(visit, visit.Page.Locator("#load-range"));
        await visit.Page.Keyboard.PressAsync("ArrowLeft");
        await visit.Page.Keyboard.PressAsync("ArrowLeft");
        await Assertions.Expect(visit.Page.GetByLabel("Load, %", new() { Exact = true })).ToHaveValueAsync("7.8");
        await Says(visit, "with your changes");
        await Assertions.Expect(visit.Page.Locator("#load-range")).ToBeFocusedAsync();
        await Reach(visit, visit.Page.GetByLabel("Name", new() { Exact = true }));
        await visit.Page.Keyboard.PressAsync("Enter");
        await Says(visit, "Saved");
        Assert.Contains("percent: 7.8", visit.Read("candles/harbour-bowl.yaml"), StringComparison.Ordinal);
    }

    private static async Task Reach(Visit visit, ILocator target)
    {
        for (int i = 0; i < 80; i++)
        {
            if (await target.EvaluateAsync<bool>("e => e === document.activeElement"))
            {
                return;
            }

            await visit.Page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail("the keyboard does not reach it");
    }

    [Fact]
    public async Task The_mark_of_the_plot_can_be_dragged()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.Locator("svg.plot").ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult plot = (await visit.Page.Locator("svg.plot").BoundingBoxAsync())!;
        float y = plot.Y + (plot.Height / 2);
        await visit.Page.Mouse.MoveAsync(plot.X + (plot.Width * 0.7f), y);
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(plot.X + (plot.Width * 0.52f), y, new() { Steps = 4 });
        await visit.Page.Mouse.UpAsync();
        await Says(visit, "with your changes");
        string load = await visit.Page.GetByLabel("Load, %", new() { Exact = true }).InputValueAsync();
        Assert.InRange(double.Parse(load, System.Globalization.CultureInfo.InvariantCulture), 2, 4);
    }

    [Theory]
    [InlineData("")]
    [InlineData("#/candle/harbour-bowl")]
    [InlineData("#/candle/storm-jar")]
    [InlineData("#/register")]
    [InlineData("#/changes")]
    public async Task A_phone_shows_everything_without_scrolling_sideways(string hash)
    {
        await using Visit visit = await browser.Open(390, 844);
        await visit.Go(hash);
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
        await Picture(visit, "phone-" + hash.Replace("#/", "", StringComparison.Ordinal).Replace('/', '-'));
    }

    [Theory]
    [InlineData("", false)]
    [InlineData("", true)]
    [InlineData("#/candle/harbour-bowl", false)]
    [InlineData("#/candle/harbour-bowl", true)]
    [InlineData("#/candle/storm-jar", false)]
    [InlineData("#/candle/hb-2611", false)]
    [InlineData("#/register", false)]
    [InlineData("#/changes", true)]
    [Outside("axe-core 4.10.3, rules of WCAG 2.0 to 2.2, levels A and AA")]
    public async Task Axe_finds_nothing(string hash, bool dark)
    {
        await using Visit visit = await browser.Open(dark: dark);
        await visit.Go(hash);
        await FindNothing(visit);
        if (dark && hash.Length > 0)
        {
            await Picture(visit, "dark" + hash.Replace("#/", "-", StringComparison.Ordinal).Replace('/', '-'));
        }
    }

    [Theory]
    [InlineData(1280, false)]
    [InlineData(360, true)]
    [Outside("axe-core 4.10.3, rules of WCAG 2.0 to 2.2, levels A and AA")]
    public async Task Axe_finds_nothing_beside_a_problem_and_after_a_refused_save(int width, bool dark)
    {
        await using Visit visit = await browser.Open(width, dark: dark);
        await visit.Go("#/candle/harbour-bowl");
        string file = Path.Combine(visit.Folder, "candles", "harbour-bowl.yaml");
        File.WriteAllText(file, File.ReadAllText(file) + "# somebody else was here\n");
        await visit.Page.GetByLabel("Net grams").FillAsync("2,900");
        await visit.Page.GetByLabel("Amount of Fig Leaf").FillAsync("10");
        await Says(visit, "2 problems");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save to the file" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#merge")).ToBeFocusedAsync();
        await FindNothing(visit);
        await Picture(visit, $"refused-{width}");
    }

    private static async Task FindNothing(Visit visit)
    {
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        string axe = await File.ReadAllTextAsync(Path.Combine(TestLaw.Repository, "tests", ".cache", "axe", "package", "axe.min.js"));
        await visit.Page.EvaluateAsync(axe);
        JsonElement? result = await visit.Page.EvaluateAsync(
            "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }).then(r => r.violations.map(v => v.id + ': ' + v.nodes.map(n => n.target.join(' ') + ' ' + n.failureSummary).join(' | ')))"
        );
        Assert.Equal("[]", result!.Value.GetRawText());
    }

    [Fact]
    public async Task Papers_are_previewed_and_downloaded()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/fig-tin");
        foreach (
            string kind in new[] { "burn-card", "pocket-card", "shop-card", "bench-sheet", "safety-sheet", "product-information", "label" }
        )
        {
            await visit.Page.GetByLabel("Paper", new() { Exact = true }).SelectOptionAsync(kind);
            await Assertions.Expect(visit.Page.Locator("#preview img").First).ToBeVisibleAsync();
        }

        foreach (
            (string format, string start) in new[]
            {
                ("PDF", "%PDF-"),
                ("PNG", "\u0089PNG"),
                ("SVG", "<svg"),
                ("YAML", "# yaml"),
                ("JSON", "["),
            }
        )
        {
            IDownload download = await visit.Page.RunAndWaitForDownloadAsync(() =>
                visit.Page.GetByRole(AriaRole.Button, new() { Name = format, Exact = true }).ClickAsync()
            );
            byte[] bytes = await File.ReadAllBytesAsync(await download.PathAsync());
            Assert.StartsWith(start, Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
        }

        await visit.Page.GetByLabel("True size").CheckAsync();
        await Assertions.Expect(visit.Page.Locator("#preview.fit")).ToHaveCountAsync(0);
        Assert.Empty(visit.Trouble);
    }

    [Fact]
    public async Task A_label_is_entered_in_the_register_and_found_by_its_oil()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/hb-2611");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Enter the label" }).ClickAsync();
        await Says(visit, "who issues");
        await visit.Page.GetByLabel("Issued by").FillAsync("M. Hale");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Enter the label" }).ClickAsync();
        await Says(visit, "number 1");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Register" }).ClickAsync();
        await visit.Page.GetByLabel("Batch, substance").FillAsync("OA-1950");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Find" }).ClickAsync();
        await Assertions.Expect(visit.Page.GetByText("HB-2611-02")).ToBeVisibleAsync();
        await Picture(visit, "register");
    }

    [Fact]
    public async Task Names_from_files_never_become_markup()
    {
        await using Visit visit = await browser.Open();
        string file = Path.Combine(visit.Folder, "candles", "fig-tin.yaml");
        File.WriteAllText(
            file,
            File.ReadAllText(file).Replace("name: Fig Tin", "name: '<img src=x onerror=alert(1)>'", StringComparison.Ordinal)
        );
        await visit.Go("");
        await Assertions.Expect(visit.Page.GetByText("<img src=x onerror=alert(1)>")).ToBeVisibleAsync();
        Assert.Empty(visit.Trouble);
    }

    [Theory]
    [InlineData("Host", "evil.example")]
    [InlineData("Host", "127.0.0.1:1")]
    [InlineData("Origin", "http://evil.example")]
    [InlineData("Origin", "null")]
    public async Task Foreign_origins_and_hosts_are_refused(string header, string value)
    {
        await using Visit visit = await browser.Open();
        using HttpClient client = await visit.Client();
        using var request = new HttpRequestMessage(HttpMethod.Get, visit.Address + "/api/catalogue");
        request.Headers.TryAddWithoutValidation(header, value);
        HttpResponseMessage answer = await client.SendAsync(request);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.DoesNotContain("key", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../../etc/passwd")]
    [InlineData("/etc/passwd")]
    [InlineData("candles/fig-tin")]
    [InlineData("")]
    public async Task No_name_leads_out_of_the_folder(string id)
    {
        await using Visit visit = await browser.Open();
        using HttpClient client = await visit.Client();
        Assert.Equal(HttpStatusCode.NotFound, (await client.PostAsJsonAsync(visit.Address + "/api/desk", new { id })).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await client.GetAsync(visit.Address + "/" + Uri.EscapeDataString(id + "x"))).StatusCode);
    }

    [Fact]
    public async Task Requests_without_the_header_too_large_or_broken_are_refused()
    {
        await using Visit visit = await browser.Open();
        using HttpClient client = await visit.Client();
        client.DefaultRequestHeaders.Remove("X-Workbench");
        Assert.Equal(
            HttpStatusCode.Forbidden,
            (await client.PostAsJsonAsync(visit.Address + "/api/save", new { id = "fig-tin" })).StatusCode
        );
        client.DefaultRequestHeaders.Add("X-Workbench", "1");
        Assert.Equal(
            HttpStatusCode.BadRequest,
            (await client.PostAsync(visit.Address + "/api/desk", new StringContent("{", Encoding.UTF8, "application/json"))).StatusCode
        );
        HttpResponseMessage large = await client.PostAsync(
            visit.Address + "/api/desk",
            new StringContent(new string(' ', 300_000), Encoding.UTF8, "application/json")
        );
        Assert.Contains(large.StatusCode, new[] { HttpStatusCode.RequestEntityTooLarge, HttpStatusCode.BadRequest });
        HttpResponseMessage page = await client.GetAsync(visit.Address + "/");
        Assert.Contains("default-src 'none'", page.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
    }
}
