using Microsoft.Playwright;

namespace Chandlery.Tests.Workbench;

/// <summary>How the page shows what it knows: in words, within its bounds, and with the focus where it was.</summary>
public sealed class PageTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task Of_two_that_changed_the_file_the_second_can_put_its_changes_on_the_first()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        string file = Path.Combine(visit.Folder, "candles", "harbour-bowl.yaml");
        File.WriteAllText(file, File.ReadAllText(file).Replace("netGrams: 2900", "netGrams: 2800", StringComparison.Ordinal));
        await visit.Load.FillAsync("7");
        await visit.Says("changed on disk");
        await visit.Button("Load it with my changes").ClickAsync();
        await Assertions.Expect(visit.Page.GetByLabel("Net weight")).ToHaveValueAsync("2800");
        await Assertions.Expect(visit.Load).ToHaveValueAsync("7");
        await visit.Kept();
        Assert.Contains("netGrams: 2800", File.ReadAllText(file), StringComparison.Ordinal);
        Assert.Contains("percent: 7,", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("#/candle/nonsense")]
    [InlineData("#/nowhere")]
    [InlineData("#/%")]
    [InlineData("#/declaration/nonsense/x")]
    public async Task An_address_that_leads_nowhere_says_so_and_leads_back(string hash)
    {
        await using Visit visit = await browser.Open();
        await visit.Go(hash);
        await Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync("Not found");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Back to the candles" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("h1")).ToContainTextAsync("candles and batches");
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
        await Assertions.Expect(visit.Page.Locator("h1")).ToContainTextAsync("candles and batches");
        Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1440)]
    public async Task The_texts_of_the_load_line_are_whole_and_lie_on_nothing(int width)
    {
        await using Visit visit = await browser.Open(width);
        await visit.Go("#/candle/storm-jar");
        ILocator line = visit.Page.Locator("svg.line");
        await line.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await line.BoundingBoxAsync())!;
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width * 0.6f), box.Y + (box.Height / 2));
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width * 0.9f), box.Y + (box.Height / 2), new() { Steps = 5 });
        await visit.Page.Mouse.UpAsync();
        await visit.Kept();
        const string Trouble = """
            () => {
              const svg = document.querySelector("svg.line"), whole = svg.getBoundingClientRect(), trouble = [];
              const texts = [...svg.querySelectorAll(":scope > text")].filter(t => getComputedStyle(t).display !== "none").map(t => [t.textContent, t.getBoundingClientRect()]);
              for (const [text, box] of texts) {
                if (box.left < whole.left - 0.5 || box.right > whole.right + 0.5 || box.bottom > whole.bottom + 0.5) trouble.push("cut: " + text);
                for (const [other, at] of texts)
                  if (at !== box && box.left < at.right - 1 && at.left < box.right - 1 && box.top < at.bottom - 3 && at.top < box.bottom - 3) trouble.push(text + " on " + other);
              }
              return trouble;
            }
            """;
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>(Trouble));
        await visit.Picture($"load-line-{width}");
    }

    [Fact]
    public async Task What_is_broken_at_every_load_does_not_colour_the_line()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/storm-jar");

        // The oil goes in hotter than its flash point, whatever the load; only beyond ten percent is there too much for the wax.
        await Assertions.Expect(visit.Page.Locator(".zone.broken")).ToHaveCountAsync(1);
        await Assertions.Expect(visit.Page.Locator("#load-marks")).ToContainTextAsync("Highest within every limit: 10 %");
    }

    [Fact]
    public async Task On_a_phone_verdict_label_and_line_share_the_first_screen_and_every_oil_is_whole()
    {
        await using Visit visit = await browser.Open(360, 740);
        await visit.Go("#/candle/harbour-bowl");
        ILocator label = visit.Page.GetByAltText("Label, page 1 of 1");
        await label.WaitForAsync();
        LocatorBoundingBoxResult box = (await label.BoundingBoxAsync())!;
        Assert.InRange(box.Y, 0, 740);
        Assert.InRange((await visit.Page.Locator("svg.line").BoundingBoxAsync())!.Y, box.Y, 740);
        foreach (ILocator inside in await visit.Page.Locator("#blend input, #blend select, #blend button").AllAsync())
        {
            LocatorBoundingBoxResult own = (await inside.BoundingBoxAsync())!;
            Assert.InRange(own.X, 0, 360);
            Assert.InRange(own.X + own.Width, 0, 360);
        }

        await visit.Picture("phone-360");
    }

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("es")]
    public async Task On_the_smallest_phone_the_label_is_whole_above_the_load_and_nothing_of_the_load_covers_another(string language)
    {
        await using Visit visit = await browser.Open(360, 660);
        await visit.Go("");
        await visit.Page.Locator("#page-language").SelectOptionAsync(language);
        await Assertions.Expect(visit.Page.Locator("html")).ToHaveAttributeAsync("lang", language);
        await visit.Page.GotoAsync(visit.Address + "/#/candle/harbour-bowl");
        ILocator label = visit.Page.Locator("#preview img");
        await label.WaitForAsync();
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        LocatorBoundingBoxResult strip = (await visit.Page.Locator("#load").BoundingBoxAsync())!;
        LocatorBoundingBoxResult box = (await label.BoundingBoxAsync())!;
        Assert.InRange(box.Y + box.Height, 0, strip.Y);
        Assert.InRange(strip.Y + strip.Height, 0, 660);
        var parts = new List<LocatorBoundingBoxResult>();
        foreach (
            ILocator part in await visit.Page.Locator("#load button:visible, #load input:not(.unseen), #load select, svg.line").AllAsync()
        )
        {
            parts.Add((await part.BoundingBoxAsync())!);
        }

        Assert.Equal(5, parts.Count);
        Assert.All(
            parts.SelectMany((a, i) => parts.Skip(i + 1).Select(b => (a, b))),
            pair => Assert.False(Overlap(pair.a, pair.b), $"{pair.a.X} {pair.a.Y} lies on {pair.b.X} {pair.b.Y}")
        );
        await visit.Picture("phone-660-" + language);
    }

    private static bool Overlap(LocatorBoundingBoxResult a, LocatorBoundingBoxResult b) =>
        a.X + a.Width > b.X && b.X + b.Width > a.X && a.Y + a.Height > b.Y && b.Y + b.Height > a.Y;

    [Fact]
    public async Task Signal_word_and_pictogram_are_told_in_the_language_of_the_page()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await Assertions.Expect(visit.Page.GetByAltText("Pictogram: exclamation mark")).ToBeVisibleAsync();
        await visit.Page.Locator("#page-language").SelectOptionAsync("de");
        await Assertions.Expect(visit.Page.Locator("#follows .word")).ToContainTextAsync("„Achtung“");
        await Assertions.Expect(visit.Page.GetByAltText("Piktogramm: Ausrufezeichen")).ToBeVisibleAsync();
        await visit.Page.GotoAsync(visit.Address + "/#/");
        await Assertions.Expect(visit.Page.GetByText("Warnetikett „Achtung“").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task When_the_program_goes_away_it_is_said_and_what_was_typed_is_kept_as_soon_as_it_answers()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.GetByAltText("Label, page 1 of 1").WaitForAsync();
        await visit.Page.Context.SetOfflineAsync(true);
        await visit.Load.FillAsync("6");
        ILocator away = visit.Page.Locator("#away");
        await Assertions.Expect(away).ToContainTextAsync("The program does not answer.");
        await visit.Picture("away");
        await visit.Load.FillAsync("7");
        Assert.Contains("percent: 8", visit.Read("candles/harbour-bowl.yaml"), StringComparison.Ordinal);
        await visit.Page.Context.SetOfflineAsync(false);
        await Assertions.Expect(away).ToBeEmptyAsync();
        await visit.Kept();
        Assert.Contains("percent: 7", visit.Read("candles/harbour-bowl.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_keeping_that_found_nobody_is_done_when_the_program_is_back()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.RouteAsync("**/api/keep", route => route.AbortAsync());
        await visit.Load.FillAsync("6");
        await Assertions.Expect(visit.Page.Locator("#kept")).ToHaveTextAsync("Not kept");
        await visit.Page.UnrouteAsync("**/api/keep");
        await visit.Kept();
        Assert.Contains("percent: 6", visit.Read("candles/harbour-bowl.yaml"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("storm-jar", "")]
    [InlineData("storm-jar", "/duties")]
    [InlineData("harbour-bowl", "/details")]
    [InlineData("harbour-bowl", "/duties")]
    [InlineData("breakwater-pillar", "/duties")]
    public async Task Nobody_on_the_page_is_sent_to_a_command_a_file_or_the_key_of_one(string candle, string tab)
    {
        await using Visit visit = await browser.Open();
        string file = Path.Combine(visit.Folder, "candles", candle + ".yaml");
        // Without these a maker is asked for them.
        string[] left =
        [
            .. File.ReadAllLines(file)
                .Where(l =>
                    !l.StartsWith("formulationNumber", StringComparison.Ordinal) && !l.StartsWith("answers", StringComparison.Ordinal)
                ),
        ];
        File.WriteAllLines(file, left);
        await visit.Go($"#/candle/{candle}{tab}");
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        string text = await visit.Page.Locator("main").EvaluateAsync<string>("m => m.textContent");
        Assert.DoesNotMatch(@"chandlery |\.yaml\b|'[a-z]+[A-Z]\w*|'\w+: ", text);
    }

    [Fact]
    public async Task On_a_desk_blend_label_verdict_and_line_are_in_view_together()
    {
        await using Visit visit = await browser.Open(1440, 900);
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.GetByAltText("Label, page 1 of 1").WaitForAsync();
        foreach (string part in new[] { "#sentence", "#preview img", "#oils", "svg.line", ".result .word" })
        {
            LocatorBoundingBoxResult box = (await visit.Page.Locator(part).First.BoundingBoxAsync())!;
            Assert.InRange(box.Y, 0, 900 - box.Height);
        }

        await visit.Picture("desk-1440");
    }

    [Theory]
    [InlineData(1440, 900, 2)]
    [InlineData(360, 780, 3)]
    public async Task What_follows_of_a_candle_takes_few_screens(int width, int height, int screens)
    {
        await using Visit visit = await browser.Open(width, height);
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.GetByAltText("Label, page 1 of 1").WaitForAsync();
        Assert.InRange(await visit.Page.EvaluateAsync<int>("document.documentElement.scrollHeight"), 1, screens * height);
    }

    [Fact]
    public async Task The_focus_stays_near_after_an_oil_is_taken_out()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await visit.Button("Take out Harbour Fog").ClickAsync();
        await Assertions.Expect(visit.Button("Take out Cedar Smoke")).ToBeFocusedAsync();
        await visit.Button("Take out Fig Leaf").ClickAsync();
        await Assertions.Expect(visit.Button("Take out Cedar Smoke")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Shares_that_are_not_the_whole_are_made_so_by_one_click()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await visit.Button("Take out Fig Leaf").ClickAsync();
        await visit.NotKept();
        await Assertions.Expect(visit.Page.Locator("#summary")).ToContainTextAsync("85 %, not 100 %");
        await Assertions.Expect(visit.Page.Locator("#blend")).ToContainTextAsync("Together 85 %");
        await visit.Button("Make the shares 100 %").ClickAsync();

        // 30, 30 and 25 of 85.
        await Assertions.Expect(visit.Amount("Sweet Orange Essential Oil")).ToHaveValueAsync("35.3");
        await Assertions.Expect(visit.Amount("Harbour Fog")).ToHaveValueAsync("35.29");
        await Assertions.Expect(visit.Amount("Cedar Smoke")).ToHaveValueAsync("29.41");
        await visit.Kept();
        await Assertions.Expect(visit.Page.Locator("#summary section")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task While_a_field_is_wrong_the_label_of_before_stays_to_be_read()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.GetByLabel("Net weight").FillAsync("2,900");
        await visit.NotKept();
        await Assertions.Expect(visit.Sentence).ToContainTextAsync("Not known");
        await Assertions.Expect(visit.Page.GetByAltText("Label, page 1 of 1")).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.Locator("#verdict")).ToContainTextAsync("from before");
        await visit.Page.GetByLabel("Net weight").FillAsync("2900");
        await visit.Kept();
        await Assertions.Expect(visit.Sentence).ToContainTextAsync("May be sold");
    }

    [Fact]
    public async Task The_safety_data_sheet_is_offered_in_each_language_with_its_warnings()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl/papers");
        await visit.Button("Safety data sheet").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#warnings")).ToContainTextAsync("Not assessed");
        await Assertions.Expect(visit.Page.Locator("#warnings")).Not.ToContainTextAsync("nicht in dieser Sprache");
        await visit.Page.GetByLabel("Language", new() { Exact = true }).SelectOptionAsync("de");
        await Assertions.Expect(visit.Page.Locator("#warnings")).ToContainTextAsync("nicht in dieser Sprache (Deutsch)");
    }

    [Fact]
    public async Task Nothing_that_comes_later_pushes_the_papers_away_from_a_click()
    {
        await using Visit visit = await browser.Open();
        TaskCompletionSource seen = await visit.Hold("**/api/preview");
        await visit.Go("#/candle/harbour-bowl/papers");
        ILocator sheet = visit.Button("Safety data sheet");
        float before = (await sheet.BoundingBoxAsync())!.Y;
        await Assertions.Expect(visit.Page.Locator("#verdict")).ToContainTextAsync("Tightest: ");
        seen.SetResult();
        await visit.Page.GetByAltText("Label, page 1 of 1").WaitForAsync();
        Assert.Equal(before, (await sheet.BoundingBoxAsync())!.Y);
    }

    [Fact]
    public async Task What_was_printed_does_not_stay_to_be_printed_from_another_view()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.GetByAltText("Label, page 1 of 1").WaitForAsync();
        await visit.Page.EvaluateAsync("() => { window.print = () => {}; }");
        await visit.Page.Keyboard.PressAsync("Control+p");
        await Assertions.Expect(visit.Page.Locator("#sheet img")).ToHaveCountAsync(1);
        await visit.Page.EvaluateAsync("() => dispatchEvent(new Event('afterprint'))");
        await Assertions.Expect(visit.Page.Locator("#sheet img")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Classes_are_told_in_words_first_the_pictograms_are_drawn_and_the_verdict_is_a_sentence()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await Assertions.Expect(visit.Page.Locator(".class summary").First).ToContainTextAsync("May cause an allergic skin reaction.");
        await Assertions.Expect(visit.Page.Locator(".class summary .code").First).ToHaveTextAsync("Skin Sens. 1, H317");
        await Assertions.Expect(visit.Sentence).ToHaveTextAsync("May be sold in Ireland, Germany and Austria, with this warning label.");
        await Assertions.Expect(visit.Page.Locator("#verdict")).ToContainTextAsync("Tightest: ");
        await Assertions.Expect(visit.Page.Locator(".result > .limits > .limit")).ToHaveCountAsync(3);
        ILocator pictogram = visit.Page.GetByAltText("Pictogram: exclamation mark");
        await Assertions.Expect(pictogram).ToBeVisibleAsync();
        Assert.Equal(
            100,
            await pictogram.EvaluateAsync<double>(
                "async i => { await i.decode(); return Math.round(100 * i.naturalWidth / i.naturalHeight); }"
            )
        );
        await visit.Go("#/candle/storm-jar");
        await Assertions.Expect(visit.Sentence).ToContainTextAsync("Must not be sold in Ireland: limit broken: ");
    }

    [Fact]
    public async Task The_label_is_printed_as_large_as_it_is_with_nothing_else_on_the_sheet()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.GetByAltText("Label, page 1 of 1").WaitForAsync();
        string size = await visit.Page.Locator("#label-size").InnerTextAsync();
        await visit.Page.EvaluateAsync("() => { window.print = () => {}; }");
        await visit.Button("Print").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#sheet img")).ToHaveCountAsync(1);
        await visit.Page.WaitForTimeoutAsync(500);
        byte[] pdf = await visit.Page.PdfAsync(
            new PagePdfOptions
            {
                PreferCSSPageSize = true,
                Format = "A4",
                Landscape = true,
            }
        );
        using UglyToad.PdfPig.PdfDocument document = UglyToad.PdfPig.PdfDocument.Open(pdf);
        Assert.Equal(1, document.NumberOfPages);
        UglyToad.PdfPig.Content.Page page = document.GetPage(1);
        Assert.DoesNotContain("Notebook", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Tightest", page.Text, StringComparison.Ordinal);
        double declared = double.Parse(size.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);

        // The label's ground is the widest thing on the sheet; a point is 25.4/72 mm.
        double widest = page
            .Paths.Select(p => p.GetBoundingRectangle())
            .OfType<UglyToad.PdfPig.Core.PdfRectangle>()
            .Select(r => r.Width * 25.4 / 72)
            .Where(w => w < 290)
            .DefaultIfEmpty(0)
            .Max();
        Assert.InRange(widest, declared - 0.6, declared + 0.6);
    }
}
