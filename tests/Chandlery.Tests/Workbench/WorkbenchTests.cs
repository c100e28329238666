using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Tests.Paper;
using Chandlery.Tests.Support;
using Microsoft.Playwright;

namespace Chandlery.Tests.Workbench;

/// <summary>The local page in a real browser.</summary>
public sealed class WorkbenchTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task The_main_path_from_the_list_to_a_new_load_to_the_label()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("");
        int all = new[] { "candles", "batches" }.Sum(f => Directory.GetFiles(Path.Combine(visit.Folder, f), "*.yaml").Length);
        await Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync($"{all} candles and batches; 1 must not be sold as it is.");
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Listitem)).ToHaveCountAsync(all);
        await Assertions.Expect(visit.Page.GetByText("null")).ToHaveCountAsync(0);
        await visit.Picture("list");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Harbour Bowl" }).First.ClickAsync();
        await Assertions.Expect(visit.Page.GetByText("“Warning”").First).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.GetByAltText("Label, page 1 of 1")).ToBeVisibleAsync();

        await visit.Load.FillAsync("3");
        await Assertions.Expect(visit.Sentence).ToContainTextAsync("without a warning");
        await Assertions.Expect(visit.Page.GetByText("No signal word").First).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.Locator("#load-hint")).ToContainTextAsync("3 % of the wax");

        await visit.Load.FillAsync("12");
        await Assertions.Expect(visit.Sentence).ToContainTextAsync("Must not be sold");
        await Assertions.Expect(visit.Page.GetByText("% of wax over").First).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.Locator("#preview")).ToContainTextAsync("not printed");
        await visit.Picture("broken-limit");
        Assert.Empty(visit.Trouble);
    }

    [Fact]
    public async Task What_is_typed_is_kept_with_comments_found_again_and_taken_back()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        string before = visit.Read("candles/harbour-bowl.yaml");
        await visit.Load.FillAsync("7,5");
        await visit.Amount("Fig Leaf").FillAsync("20");
        await visit.Amount("Cedar Smoke").FillAsync("20");
        await visit.Kept();
        string expected = before
            .Replace("load: { percent: 8,", "load: { percent: 7.5,", StringComparison.Ordinal)
            .Replace("fig-leaf, share: 15", "fig-leaf, share: 20", StringComparison.Ordinal)
            .Replace("cedar-smoke, share: 25", "cedar-smoke, share: 20", StringComparison.Ordinal);
        Assert.Equal(expected, visit.Read("candles/harbour-bowl.yaml"));
        await visit.Page.ReloadAsync();
        await Assertions.Expect(visit.Load).ToHaveValueAsync("7.5");
        while (await visit.Page.Locator("#undo").IsEnabledAsync())
        {
            await visit.Page.Locator("#undo").ClickAsync();
            await visit.Says("Taken back");
            await visit.Page.WaitForTimeoutAsync(300);
        }

        Assert.Equal(before, visit.Read("candles/harbour-bowl.yaml"));
        await Assertions.Expect(visit.Load).ToHaveValueAsync("8");
        Assert.Empty(visit.Trouble);
    }

    [Fact]
    public async Task Oils_are_added_and_taken_out()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/slate-jar");
        await visit.Page.GetByLabel("Add an oil").SelectOptionAsync("fig-leaf");
        await visit.Amount("Rain on Slate").FillAsync("90");
        await visit.Kept();
        Assert.Contains(
            "  - { oil: rain-on-slate, share: 90 }\n  - { oil: fig-leaf, share: 10 }\n",
            visit.Read("candles/slate-jar.yaml"),
            StringComparison.Ordinal
        );
        await visit.Button("Take out Rain on Slate").ClickAsync();
        await visit.Amount("Fig Leaf").FillAsync("100");
        await visit.Kept();
        Assert.DoesNotContain("rain-on-slate", visit.Read("candles/slate-jar.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wrong_input_is_said_and_not_kept()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        string before = visit.Read("candles/harbour-bowl.yaml");
        await visit.Page.GetByLabel("Net weight").FillAsync("many");
        await visit.NotKept();
        await Assertions.Expect(visit.Page.Locator(".problems").First).ToContainTextAsync("must be a number");
        await visit.Picture("problem");
        Assert.Equal(before, visit.Read("candles/harbour-bowl.yaml"));
    }

    [Fact]
    public async Task A_file_that_changed_on_disk_is_not_overwritten()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        string file = Path.Combine(visit.Folder, "candles", "harbour-bowl.yaml");
        string others = File.ReadAllText(file) + "# somebody else was here\n";
        File.WriteAllText(file, others);
        await visit.Load.FillAsync("7");
        await visit.Says("changed on disk");
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
        await Assertions.Expect(visit.Page.Locator("#load-range")).ToBeAttachedAsync();
        await Reach(visit, visit.Page.Locator("#load-range"));
        await visit.Page.Keyboard.PressAsync("ArrowLeft");
        await visit.Page.Keyboard.PressAsync("ArrowLeft");
        await Assertions.Expect(visit.Load).ToHaveValueAsync("7.8");
        await visit.Kept();
        await Assertions.Expect(visit.Page.Locator("#load-range")).ToBeFocusedAsync();
        Assert.Contains("percent: 7.8", visit.Read("candles/harbour-bowl.yaml"), StringComparison.Ordinal);
        await visit.Page.Keyboard.PressAsync("PageDown");
        await Assertions.Expect(visit.Load).ToHaveValueAsync("3.9");
        await Assertions.Expect(visit.Sentence).ToContainTextAsync("without a warning");
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
    public async Task The_handle_can_be_dragged_and_escape_puts_it_back()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        LocatorBoundingBoxResult line = (await visit.Page.Locator("svg.line").BoundingBoxAsync())!;
        float y = line.Y + (line.Height / 2);
        await visit.Page.Mouse.MoveAsync(line.X + (line.Width * 0.6f), y);
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(line.X + (line.Width * 0.25f), y, new() { Steps = 4 });
        await visit.Page.Mouse.UpAsync();
        await visit.Kept();
        string load = await visit.Load.InputValueAsync();
        Assert.InRange(double.Parse(load, System.Globalization.CultureInfo.InvariantCulture), 2, 4);
        string kept = visit.Read("candles/harbour-bowl.yaml");
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(line.X + (line.Width * 0.8f), y, new() { Steps = 4 });
        await visit.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(visit.Load).ToHaveValueAsync(load);
        await visit.Page.Mouse.UpAsync();
        await visit.Kept();
        Assert.Equal(kept, visit.Read("candles/harbour-bowl.yaml"));
    }

    // As in 2026-11-25T09:30.
    private const string RawMoment = "/[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}/.test(document.body.innerText)";

    private static readonly string[] Views =
    [
        "",
        "#/new",
        "#/candle/harbour-bowl",
        "#/candle/storm-jar",
        "#/candle/hb-2611",
        "#/candle/harbour-bowl/details",
        "#/candle/harbour-bowl/papers",
        "#/candle/harbour-bowl/duties",
        "#/candle/harbour-bowl/pour",
        "#/candle/harbour-bowl/past",
        "#/notebook",
        "#/supplies",
        "#/declaration/oil/fig-leaf",
        "#/declaration/brand/brand",
        "#/declaration/vessel",
        "#/register",
        "#/recall",
        "#/changes",
        "#/changes/wax/soy-flake",
    ];

    public static TheoryData<string> AllViews => [.. Views];

    public static TheoryData<string> SomeViews => [.. Views.Where((_, i) => i % 3 == 2)];

    [Theory]
    [MemberData(nameof(AllViews))]
    public async Task A_phone_shows_everything_without_scrolling_sideways(string hash)
    {
        await using Visit visit = await browser.Open(360, 780);
        await visit.Go(hash);
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
        Assert.True(await visit.Page.EvaluateAsync<bool>("![...document.querySelectorAll('[hidden]')].some((e) => e.checkVisibility())"));
        Assert.False(await visit.Page.EvaluateAsync<bool>(RawMoment), "A time stands there as the program writes it.");
        await visit.Picture("phone-" + hash.Replace("#/", "", StringComparison.Ordinal).Replace('/', '-'));
    }

    [Theory]
    [MemberData(nameof(AllViews))]
    [Outside("axe-core 4.10.3, rules of WCAG 2.0 to 2.2, levels A and AA")]
    public async Task Axe_finds_nothing(string hash)
    {
        await using Visit visit = await browser.Open();
        await visit.Go(hash);
        await FindNothing(visit);
        await visit.Picture("view-" + hash.Replace("#/", "", StringComparison.Ordinal).Replace('/', '-'));
        Assert.Empty(visit.Trouble);
    }

    [Theory]
    [MemberData(nameof(SomeViews))]
    [Outside("axe-core 4.10.3, rules of WCAG 2.0 to 2.2, levels A and AA")]
    public async Task Axe_finds_nothing_in_the_dark(string hash)
    {
        await using Visit visit = await browser.Open(dark: true);
        await visit.Go(hash);
        await FindNothing(visit);
        await visit.Picture("dark-" + hash.Replace("#/", "", StringComparison.Ordinal).Replace('/', '-'));
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
        await visit.Amount("Fig Leaf").FillAsync("15.0");
        await Assertions.Expect(visit.Page.Locator("#merge")).ToBeFocusedAsync();
        await visit.Page.GetByLabel("Net weight").FillAsync("2,900");
        await visit.Amount("Fig Leaf").FillAsync("10");
        await Assertions.Expect(visit.Page.Locator("#problems-title")).ToHaveTextAsync("2 problems");
        await FindNothing(visit);
        await visit.Picture($"refused-{width}");
    }

    // A window of 1440 by 900 at 200 %: half as wide and half as high in its own measure.
    [Theory]
    [MemberData(nameof(SomeViews))]
    [Outside("WCAG 2.2, 1.4.4 and 1.4.10: text at 200 % without loss, and without scrolling in two directions")]
    public async Task AtTwiceTheSizeNothingIsLostAndNothingScrollsSideways(string hash)
    {
        await using Visit visit = await browser.Open(720, 450);
        await visit.Go(hash);
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
        string[] cut = await visit.Page.EvaluateAsync<string[]>(
            """
            [...document.querySelectorAll("button, a, label, h1, h2, h3, p, summary, th, td")]
              .filter((e) => e.checkVisibility() && !e.closest(".scroll, .unseen, .kinds") && (e.scrollWidth > e.clientWidth + 1 && getComputedStyle(e).overflowX !== "visible"))
              .map((e) => e.textContent)
            """
        );
        Assert.Empty(cut);
    }

    [Theory]
    [InlineData("#/candle/harbour-bowl")]
    [InlineData("#/candle/storm-jar")]
    [Outside("CSS Color Adjustment Module Level 1, 3.1 (forced-colors), and WCAG 2.2, 1.4.11: graphics that carry meaning stay visible")]
    public async Task WithForcedColoursWhatIsDrawnStaysVisible(string hash)
    {
        await using Visit visit = await browser.Open();
        await visit.Page.EmulateMediaAsync(new() { ForcedColors = ForcedColors.Active });
        await visit.Go(hash);
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        string[] lost = await visit.Page.EvaluateAsync<string[]>(
            """
            (() => {
              const ground = getComputedStyle(document.body).backgroundColor;
              const shown = (e) => { const s = getComputedStyle(e); return (s.fill !== "none" && s.fill !== ground && s.fill !== "rgba(0, 0, 0, 0)") || (s.stroke !== "none" && s.stroke !== ground); };
              return [...document.querySelectorAll(".limits svg *, svg.line .wall, svg.line .handle, svg.wicks *, .verdict svg path")].filter((e) => !shown(e)).map((e) => e.outerHTML.slice(0, 120));
            })()
            """
        );
        await visit.Picture("forced-" + hash.Replace("#/candle/", "", StringComparison.Ordinal));
        Assert.Empty(lost);
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
        await visit.Go("#/candle/fig-tin/papers");
        foreach (
            string title in new[]
            {
                "Burn-safety card",
                "Pocket card",
                "Shop card",
                "Bench sheet",
                "Safety data sheet",
                "Product information",
                "Technical file",
                "Label",
            }
        )
        {
            await visit.Button(title).ClickAsync();
            await Assertions.Expect(visit.Page.GetByAltText(title + ", page 1").First).ToBeVisibleAsync();
        }

        foreach (
            (string format, string start) in new[]
            {
                ("PDF", "%PDF-"),
                ("PNG", "\u0089PNG"),
                ("SVG", "<svg"),
                ("YAML", "# yaml"),
                ("JSON", "["),
                ("All papers in one file", "PK"),
            }
        )
        {
            IDownload download = await visit.Page.RunAndWaitForDownloadAsync(() =>
                visit.Page.GetByRole(AriaRole.Button, new() { Name = format, Exact = true }).ClickAsync()
            );
            byte[] bytes = await File.ReadAllBytesAsync(await download.PathAsync());
            Assert.StartsWith(start, Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
        }

        await visit.Go("#/candle/fig-tin");
        await visit.Page.GetByLabel("True size").CheckAsync();
        await Assertions.Expect(visit.Page.Locator("#preview.true img")).ToBeVisibleAsync();
        Assert.Empty(visit.Trouble);
    }

    [Fact]
    public async Task A_label_is_entered_in_the_register_and_found_by_its_oil()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/hb-2611/papers");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Enter the label" }).ClickAsync();
        await visit.Says("who issues");
        await visit.Page.GetByLabel("Issued by").FillAsync("M. Hale");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Enter the label" }).ClickAsync();
        await visit.Says("number 1");
        // What is kept for ten years is the same whether the page or the command line makes it.
        using HttpClient client = await visit.Client();
        HttpResponseMessage kept = await client.PostAsJsonAsync(
            visit.Address + "/api/paper",
            new { id = "hb-2611", paper = new { kind = "technical-file" } }
        );
        using var reader = new PdfReader(await kept.Content.ReadAsByteArrayAsync());
        string file = string.Join(' ', Enumerable.Range(0, reader.Pages.Count).Select(reader.Text));
        Assert.Contains("Head of the register when this was printed: entry 1,", file, StringComparison.Ordinal);
        Assert.Contains("entry 1 of the register, made", file, StringComparison.Ordinal);
        Assert.DoesNotContain("was not at hand", file, StringComparison.Ordinal);
        // A second click is asked about, and enters nothing by itself.
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Enter the label" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#enter-doubts")).ToContainTextAsync("stands in entry 1 already");
        await Assertions.Expect(visit.Button("Enter it all the same")).ToBeVisibleAsync();
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Register" }).ClickAsync();
        await visit.Page.GetByLabel("Batch, substance").FillAsync("OA-1950");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Find" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("h1")).ToContainTextAsync("is about that");
        await visit.Page.GetByText("HB-2611-02").First.ClickAsync();
        await Assertions.Expect(visit.Page.GetByText("Declarations of that day")).ToBeVisibleAsync();
        Assert.False(await visit.Page.EvaluateAsync<bool>(RawMoment), "A time stands there as the program writes it.");
        Assert.True(
            await visit.Page.EvaluateAsync<bool>(
                """
                () => [...document.querySelectorAll("dd button")].every((b) => {
                  const after = b.nextElementSibling?.getBoundingClientRect(), here = b.getBoundingClientRect();
                  return !after || after.left >= here.right + 8 || after.top >= here.bottom;
                })
                """
            ),
            "The names of the declarations run together."
        );
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "candles/harbour-bowl.yaml" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("pre")).ToContainTextAsync("declares: candle");
        await visit.Picture("register");
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
        using var request = new HttpRequestMessage(HttpMethod.Get, visit.Address + "/api/candles");
        request.Headers.TryAddWithoutValidation(header, value);
        HttpResponseMessage answer = await client.SendAsync(request);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.DoesNotContain("key", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../../etc/passwd")]
    [InlineData("/etc/passwd")]
    [InlineData("candles/fig-tin")]
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
            (await client.PostAsJsonAsync(visit.Address + "/api/keep", new { declares = "candle", id = "fig-tin" })).StatusCode
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
