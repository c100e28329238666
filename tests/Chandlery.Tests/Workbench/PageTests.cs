using Chandlery.Tests.Support;
using Microsoft.Playwright;

namespace Chandlery.Tests.Workbench;

/// <summary>How the page shows what it knows: in words, within its bounds, and with the focus where it was.</summary>
public sealed class PageTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private static Task Says(Visit visit, string text) => Assertions.Expect(visit.Status).ToContainTextAsync(text);

    private static async Task Picture(Visit visit, string name) =>
        await visit.Page.ScreenshotAsync(
            new PageScreenshotOptions
            {
                Path = Path.Combine(TestLaw.Repository, "tests", ".cache", "workbench", name + ".png"),
                FullPage = true,
            }
        );

    private static ILocator Button(Visit visit, string name) => visit.Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    [Fact]
    public async Task Of_two_that_changed_the_file_the_second_can_put_its_changes_on_the_first()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.GetByLabel("Load, %", new() { Exact = true }).FillAsync("7");
        string file = Path.Combine(visit.Folder, "candles", "harbour-bowl.yaml");
        File.WriteAllText(file, File.ReadAllText(file).Replace("netGrams: 2900", "netGrams: 2800", StringComparison.Ordinal));
        await Button(visit, "Save to the file").ClickAsync();
        await Says(visit, "changed on disk");
        await Button(visit, "Load it with my changes").ClickAsync();
        await Assertions.Expect(visit.Page.GetByLabel("Net grams")).ToHaveValueAsync("2800");
        await Assertions.Expect(visit.Page.GetByLabel("Load, %", new() { Exact = true })).ToHaveValueAsync("7");
        await Says(visit, "with your changes");
        await Button(visit, "Save to the file").ClickAsync();
        await Says(visit, "Saved");
        Assert.Contains("netGrams: 2800", File.ReadAllText(file), StringComparison.Ordinal);
        Assert.Contains("percent: 7,", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("#/candle/nonsense")]
    [InlineData("#/nowhere")]
    [InlineData("#/%")]
    public async Task An_address_that_leads_nowhere_says_so_and_leads_back(string hash)
    {
        await using Visit visit = await browser.Open();
        await visit.Go(hash);
        await Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync("Not found");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Back to the candles" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync("Candles");
    }

    [Fact]
    public async Task A_candle_opened_directly_shows_its_maker_and_a_very_long_name_wraps()
    {
        await using Visit visit = await browser.Open(360, 740);
        string file = Path.Combine(visit.Folder, "candles", "fig-tin.yaml");
        File.WriteAllText(file, File.ReadAllText(file).Replace("name: Fig Tin", "name: " + new string('W', 400), StringComparison.Ordinal));
        await visit.Go("#/candle/fig-tin");
        await Assertions.Expect(visit.Page.Locator("#maker")).ToContainTextAsync("Tarnvey");
        Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
        await visit.Go("");
        await Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync("Candles");
        Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task The_texts_of_the_plot_are_whole_and_lie_on_nothing(int width)
    {
        await using Visit visit = await browser.Open(width);
        await visit.Go("#/candle/storm-jar");
        ILocator plot = visit.Page.Locator("svg.plot");
        await plot.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await plot.BoundingBoxAsync())!;
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width * 0.6f), box.Y + (box.Height / 2));
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width * 0.95f), box.Y + (box.Height / 2), new() { Steps = 5 });
        await visit.Page.Mouse.UpAsync();
        await Says(visit, "with your changes");
        const string Trouble = """
            () => {
              const svg = document.querySelector("svg.plot"), whole = svg.getBoundingClientRect(), trouble = [];
              const texts = [...svg.querySelectorAll("text")].map(t => [t.textContent, t.getBoundingClientRect()]);
              const mine = [...svg.querySelectorAll(".now, .handle")].map(t => ["the mark", t.getBoundingClientRect()]);
              for (const [text, box] of texts) {
                if (box.left < whole.left - 0.5 || box.right > whole.right + 0.5 || box.bottom > whole.bottom + 0.5 || text.includes("…")) trouble.push("cut: " + text);
                for (const [other, at] of [...texts, ...mine])
                  if (at !== box && box.left < at.right - 1 && at.left < box.right - 1 && box.top < at.bottom - 3 && at.top < box.bottom - 3) trouble.push(text + " on " + other);
              }
              return trouble;
            }
            """;
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>(Trouble));
        Assert.Contains(
            "limit broken: load against",
            string.Join(' ', await visit.Page.Locator("svg.plot text").AllTextContentsAsync()),
            StringComparison.OrdinalIgnoreCase
        );
        await Picture(visit, $"plot-{width}");
    }

    [Fact]
    public async Task On_a_phone_the_label_is_near_the_top_and_every_oil_is_whole()
    {
        await using Visit visit = await browser.Open(360, 740);
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.GetByAltText("Label, page 1 of 1").WaitForAsync();
        Assert.InRange((await visit.Page.Locator("#preview img").BoundingBoxAsync())!.Y, 0, 740);
        foreach (ILocator inside in await visit.Page.Locator("#editor input, #editor select, #editor button").AllAsync())
        {
            LocatorBoundingBoxResult box = (await inside.BoundingBoxAsync())!;
            Assert.InRange(box.X, 0, 360);
            Assert.InRange(box.X + box.Width, 0, 360);
        }

        Assert.False(
            await visit.Page.EvaluateAsync<bool>(
                "[...document.querySelectorAll('#editor *')].some(e => e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0 && getComputedStyle(e).overflowX !== 'visible' && !e.matches('input, select'))"
            )
        );
        await Picture(visit, "phone-360");
    }

    [Fact]
    public async Task The_focus_stays_near_after_an_oil_is_taken_out_and_after_changes_are_dropped()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await Button(visit, "Take out Harbour Fog").ClickAsync();
        await Assertions.Expect(Button(visit, "Take out Cedar Smoke")).ToBeFocusedAsync();
        await Button(visit, "Take out Fig Leaf").ClickAsync();
        await Assertions.Expect(Button(visit, "Take out Cedar Smoke")).ToBeFocusedAsync();
        await Button(visit, "Drop my changes").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#title")).ToBeFocusedAsync();
        await Assertions.Expect(visit.Page.GetByLabel("Amount of Fig Leaf")).ToHaveValueAsync("15");
    }

    [Fact]
    public async Task Shares_that_are_not_the_whole_are_made_so_by_one_click()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await Button(visit, "Take out Fig Leaf").ClickAsync();
        await Says(visit, "problem");
        await Assertions.Expect(visit.Page.Locator("#summary")).ToContainTextAsync("85 %, not 100 %");
        await Assertions.Expect(visit.Page.Locator("#editor")).ToContainTextAsync("Together 85 %");
        await Button(visit, "Make the shares 100 %").ClickAsync();

        // 30, 30 and 25 of 85.
        await Assertions.Expect(visit.Page.GetByLabel("Amount of Sweet Orange Essential Oil")).ToHaveValueAsync("35.3");
        await Assertions.Expect(visit.Page.GetByLabel("Amount of Harbour Fog")).ToHaveValueAsync("35.29");
        await Assertions.Expect(visit.Page.GetByLabel("Amount of Cedar Smoke")).ToHaveValueAsync("29.41");
        await Says(visit, "with your changes");
        await Assertions.Expect(visit.Page.Locator("#summary section")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task The_safety_data_sheet_is_offered_in_each_language_with_its_warnings()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.GetByLabel("Paper", new() { Exact = true }).SelectOptionAsync("safety-sheet");
        await Assertions.Expect(visit.Page.Locator("#warnings")).ToContainTextAsync("Not assessed");
        await Assertions.Expect(visit.Page.Locator("#warnings")).Not.ToContainTextAsync("Only headings");
        await visit.Page.GetByLabel("Language", new() { Exact = true }).SelectOptionAsync("de");
        await Assertions.Expect(visit.Page.Locator("#warnings")).ToContainTextAsync("Only headings and statements are in Deutsch");
    }

    [Fact]
    public async Task The_languages_are_offered_as_soon_as_the_candle_can_be_assessed()
    {
        await using Visit visit = await browser.Open();
        string candle = Path.Combine(visit.Folder, "candles", "fig-tin.yaml");
        File.WriteAllText(candle, File.ReadAllText(candle).Replace("soldIn: [IE]", "soldIn: [IE, DE]", StringComparison.Ordinal));
        string oil = Path.Combine(visit.Folder, "oils", "fig-leaf.yaml");
        File.WriteAllText(oil, File.ReadAllText(oil).Replace("dropMilligrams: 24\n", "", StringComparison.Ordinal));
        await visit.Go("#/candle/fig-tin");
        await Assertions.Expect(visit.Page.Locator("#summary")).ToContainTextAsync("mass of its drop is not declared");
        await Assertions.Expect(visit.Page.Locator("#verdict")).ToContainTextAsync("Not assessed");
        await visit.Page.GetByLabel("Measure of Fig Leaf").SelectOptionAsync("grams");
        await visit.Page.GetByLabel("Amount of Fig Leaf").FillAsync("4");
        await Says(visit, "with your changes");
        await visit.Page.GetByLabel("Paper", new() { Exact = true }).SelectOptionAsync("safety-sheet");
        await Assertions
            .Expect(visit.Page.GetByLabel("Language", new() { Exact = true }).Locator("option"))
            .ToHaveTextAsync(["English", "Deutsch"]);
        await visit.Page.GetByLabel("Language", new() { Exact = true }).SelectOptionAsync("de");
        await Assertions.Expect(visit.Page.Locator("#warnings")).ToContainTextAsync("Only headings and statements are in Deutsch");
    }

    [Fact]
    public async Task Classes_are_told_in_words_first_the_pictograms_are_drawn_and_the_verdict_is_a_sentence()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await Assertions
            .Expect(visit.Page.Locator("#results summary").First)
            .ToHaveTextAsync("May cause an allergic skin reaction — Skin Sens. 1, H317");
        await Assertions
            .Expect(visit.Page.Locator("#verdict"))
            .ToContainTextAsync("Nothing found that stops the sale in IE, DE, AT. Tightest: ");
        ILocator pictogram = visit.Page.GetByAltText("GHS07");
        await Assertions.Expect(pictogram).ToBeVisibleAsync();
        Assert.Equal(
            100,
            await pictogram.EvaluateAsync<double>(
                "async i => { await i.decode(); return Math.round(100 * i.naturalWidth / i.naturalHeight); }"
            )
        );
        await visit.Go("#/candle/storm-jar");
        await Assertions.Expect(visit.Page.Locator("#verdict")).ToContainTextAsync("Stop: not to be sold in IE. Limit broken: ");
    }
}
