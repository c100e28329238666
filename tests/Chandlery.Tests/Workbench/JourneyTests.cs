using System.Text.RegularExpressions;
using Chandlery.Tests.Support;
using Microsoft.Playwright;

namespace Chandlery.Tests.Workbench;

/// <summary>What a maker does on the page alone, from an empty folder to a batch that was sold.</summary>
public sealed class JourneyTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private static readonly string Sheets = Path.Combine(TestLaw.Repository, "tests", "Chandlery.Sheets", "pdf");

    private static Task Fill(Visit visit, string field, string value) => visit.Page.Locator($"[id='f-{field}']").FillAsync(value);

    private static Task Asks(Visit visit, string question) => Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync(question);

    private static async Task Open(Visit visit, string group) =>
        await visit.Page.Locator("details > summary").Filter(new() { HasText = group }).First.ClickAsync();

    [Fact]
    public async Task From_an_empty_folder_to_a_label_in_ten_minutes()
    {
        await using Visit visit = await browser.OpenEmpty();
        await visit.Go("");
        await Asks(visit, "Nothing here yet. How would you like to begin?");
        await visit.Picture("begin");
        await visit.Page.GetByLabel("What is it called?").FillAsync("Fig in the rain");
        await Assertions.Expect(visit.Page.Locator("svg.blank .name")).ToHaveTextAsync("Fig in the rain");
        await visit.Button("Begin").ClickAsync();

        await Asks(visit, "Who makes it?");
        await visit.Button("Next").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#summary")).ToContainTextAsync("problems");
        await Fill(visit, "name", "Lantern Loft");
        await Fill(visit, "address", "1 Quay Street\nPort Aldrin");
        await Fill(visit, "telephone", "+999 20 555 020");
        await Fill(visit, "email", "loft@lantern.example");
        await Fill(visit, "country", "IE");
        await Open(visit, "VAT number");
        await Fill(visit, "vat.country", "IE");
        await Fill(visit, "vat.number", "7654321QA");
        await visit.Button("Next").ClickAsync();

        await Asks(visit, "What is it poured into?");
        await Fill(visit, "name", "Little jar");
        await Fill(visit, "material", "glass");
        await Fill(visit, "brimfulMl", "250");
        await Open(visit, "Outer");
        await Fill(visit, "outer.diameterMm", "74");
        await Fill(visit, "outer.heightMm", "80");
        await visit.Button("Next").ClickAsync();

        await Asks(visit, "Which wax?");
        await Fill(visit, "name", "Soft soy");
        await Fill(visit, "supplier", "Hollin Waxworks");
        await Open(visit, "Ingredients");
        await visit.Button("Add one").First.ClickAsync();
        await Fill(visit, "ingredients.0.name", "Soybean oil, hydrogenated");
        await Fill(visit, "ingredients.0.cas", "8016-70-4");
        await Fill(visit, "ingredients.0.share", "100");
        await Fill(visit, "ingredients.0.classes", "not classified");
        await Open(visit, "Highest load");
        await Fill(visit, "highestLoad.percent", "10");
        await visit.Page.Locator("[id='f-highestLoad.of']").SelectOptionAsync("wax");
        await visit.Button("Next").ClickAsync();

        await Asks(visit, "Which oils, and how much?");
        await visit
            .Page.Locator("#pdf-files")
            .SetInputFilesAsync([Path.Combine(Sheets, "night-fig.chromium-plain-en.pdf"), Path.Combine(Sheets, "night-fig.ifra-en.pdf")]);
        await Assertions
            .Expect(visit.Page.Locator("h1"))
            .ToContainTextAsync(new Regex("doubts?, then sign|No doubt"), new() { Timeout = 60_000 });
        await visit.Picture("review");
        await Review(visit);
        await visit.Page.GotoAsync(visit.Address + "/#/new");
        await Asks(visit, "Which oils, and how much?");
        await visit.Button("Add one").ClickAsync();
        await visit.Page.Locator("[id='f-oils.0.oil']").SelectOptionAsync("night-fig");
        await Fill(visit, "oils.0.share", "100");
        await Fill(visit, "load.percent", "6");
        await Fill(visit, "netGrams", "180");
        await Fill(visit, "temperatures.addFragranceCelsius", "60");
        await visit.Page.Locator(".ticks").GetByLabel("Ireland", new() { Exact = true }).CheckAsync();
        await visit.Button("Make the candle").ClickAsync();

        await Assertions.Expect(visit.Page.Locator("#title")).ToHaveTextAsync("Fig in the rain");
        await visit.Button("Give this composition number 1").ClickAsync();
        await Assertions.Expect(visit.Sentence).ToHaveTextAsync("May be sold in Ireland, with this warning label.");
        await Assertions.Expect(visit.Page.GetByAltText("Label, page 1 of 1")).ToBeVisibleAsync();
        await visit.Kept();
        await visit.Picture("first-candle");
        IDownload download = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Button("All papers").ClickAsync());
        Assert.EndsWith("fig-in-the-rain.zip", download.SuggestedFilename, StringComparison.Ordinal);
        Assert.Contains("formulationNumber: 1", visit.Read("candles/fig-in-the-rain.yaml"), StringComparison.Ordinal);
        Assert.Empty(visit.Trouble);
    }

    private static async Task Review(Visit visit)
    {
        ILocator doubts = visit.Page.Locator(".doubt");
        while (await doubts.CountAsync() is var open and > 0)
        {
            string text = await doubts.First.InnerTextAsync();
            await doubts.First.GetByRole(AriaRole.Button).Filter(new() { HasTextRegex = new Regex("right as read|stays so") }).ClickAsync();
            await Assertions.Expect(doubts).ToHaveCountAsync(open - 1);
        }

        await visit.Button("Sign").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#summary")).ToContainTextAsync("Write your name");
        await visit.Page.GetByLabel("I compared these values").FillAsync("M. Hale");
        await visit.Button("Sign").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync("Signed by M. Hale.");
    }

    [Fact]
    public async Task An_oil_that_nobody_signed_stops_the_label_and_a_corrected_value_is_what_counts()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/supplies");
        await visit.Page.Locator("#pdf-files").SetInputFilesAsync(Path.Combine(Sheets, "dune.chromium-plain-en.pdf"));
        await Assertions.Expect(visit.Page.Locator("#page img")).ToBeVisibleAsync(new() { Timeout = 60_000 });

        // A click on a value of the page leads to its field, and what is typed there is kept.
        await visit.Page.Locator("#values > summary").ClickAsync();
        await Fill(visit, "densityGramsPerMl", "0.951");
        await visit.Button("Keep corrections").ClickAsync();
        await visit.Says("Kept");
        await Assertions.Expect(visit.Page.Locator("[id='f-densityGramsPerMl']")).ToHaveValueAsync("0.951");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Supplies" }).First.ClickAsync();
        await Assertions.Expect(visit.Page.Locator("h1")).ToContainTextAsync("1 oil waits for your signature");
        Assert.Contains(
            "densityGramsPerMl: 0.951",
            File.ReadAllText(
                Directory
                    .GetFiles(Path.Combine(visit.Folder, "oils"))
                    .Single(f => File.ReadAllText(f).Contains("dune.chromium", StringComparison.Ordinal))
            ),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task The_example_opens_beside_the_empty_folder_which_stays_empty()
    {
        await using Visit visit = await browser.OpenEmpty();
        await visit.Go("");
        await visit.Button("Open the example").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("h1")).ToContainTextAsync("candles and batches may be sold");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Slate Jar" }).ClickAsync();
        await visit.Load.FillAsync("5");
        await visit.Kept();
        Assert.Empty(Directory.GetFileSystemEntries(visit.Folder));
        await visit.Button("Leave the example").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("h1")).ToContainTextAsync("Nothing here yet");
    }

    [Fact]
    public async Task Trials_stand_beside_one_another_with_what_the_law_would_say_and_one_becomes_a_candle()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/notebook");
        await Assertions.Expect(visit.Page.Locator("h1")).ToContainTextAsync("“Orchard pier” smells best so far");
        int before = await visit.Page.Locator(".trial").CountAsync();
        await visit.Button("New trial").ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".trial")).ToHaveCountAsync(before + 1);
        ILocator trial = visit.Page.Locator(".trial").Last;
        await trial.GetByLabel("Name of trial").FillAsync("Pier in the rain");
        await trial.GetByLabel("Add an oil").SelectOptionAsync("rain-on-slate");
        await trial.GetByLabel("Measure of Rain on Slate").SelectOptionAsync("grams");
        await trial.GetByLabel("Rain on Slate in trial").FillAsync("0,5");
        await trial.GetByLabel("How trial").FillAsync("wet stone");
        await trial.Locator("label").Nth(3).ClickAsync();
        await Assertions.Expect(trial).ToContainTextAsync(new Regex("No warning|Warning label|Must not be sold"));
        await Assertions.Expect(visit.Page.Locator("#undo")).ToHaveAttributeAsync("title", new Regex("Pier in the rain"));
        string Kept() =>
            Directory
                .GetFiles(Path.Combine(visit.Folder, "trials"))
                .Select(File.ReadAllText)
                .Single(text => text.Contains("Pier in the rain", StringComparison.Ordinal));
        for (int i = 0; i < 100 && !Kept().Contains("stars: 4", StringComparison.Ordinal); i++)
        {
            await visit.Page.WaitForTimeoutAsync(100);
        }

        Assert.Contains("smells: wet stone", Kept(), StringComparison.Ordinal);
        Assert.Contains("stars: 4", Kept(), StringComparison.Ordinal);
        await visit.Picture("notebook");
        await visit.Page.Locator("#with").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await Assertions.Expect(visit.Page.Locator("#difference")).ToContainTextAsync("What the law asks");
        await visit.Page.Locator(".trial").First.GetByRole(AriaRole.Button, new() { Name = "Make it a candle" }).ClickAsync();
        await Asks(visit, "What is it called?");
        await visit.Button("Next").ClickAsync();
        await Asks(visit, "What is it poured into?");
        await visit.Button("Straight jar").ClickAsync();
        await visit.Button("Soy Flake 52").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("[id='f-oils.0.share']")).Not.ToHaveValueAsync("");
    }

    [Fact]
    public async Task A_batch_is_weighed_step_by_step_and_gets_its_own_label()
    {
        await using Visit visit = await browser.Open(390, 844);
        await visit.Go("#/candle/harbour-bowl/pour");
        await visit.Page.GetByLabel("How many candles").FillAsync("2");
        await visit.Button("Begin to weigh").ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".bench h2")).ToBeVisibleAsync();
        await visit.Picture("bench");
        for (int i = 0; i < 30 && await visit.Page.GetByLabel("How many candles came of it").CountAsync() == 0; i++)
        {
            if (await visit.Page.Locator(".bench").GetByText("flash point").CountAsync() > 0)
            {
                await Assertions.Expect(visit.Page.Locator(".bench")).ToContainTextAsync("Lowest flash point 50 °C");
            }

            await visit.Page.Locator("button.big").ClickAsync();
        }

        await visit.Button("Keep the batch and see its label").ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".way")).ToContainTextAsync("Harbour Bowl");
        await Assertions.Expect(visit.Sentence).ToContainTextAsync("May be sold");
        await Assertions.Expect(visit.Page.Locator("#undo")).ToHaveAttributeAsync("title", new Regex("batch"));
        string batch = File.ReadAllText(
            Directory
                .GetFiles(Path.Combine(visit.Folder, "batches"))
                .Single(f =>
                    File.ReadAllText(f).Contains($"HB-{DateTime.Today:yyMM}-", StringComparison.Ordinal)
                    && !f.EndsWith("hb-2611.yaml", StringComparison.Ordinal)
                )
        );
        Assert.Contains("made: 2", batch, StringComparison.Ordinal);
        Assert.Contains("topUp: { scented: no, grams: ", batch, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_due_is_told_open_first_and_leads_to_where_it_is_done()
    {
        await using Visit visit = await browser.Open();
        // More oil than was ever tested.
        string tin = Path.Combine(visit.Folder, "candles", "fig-tin.yaml");
        await File.WriteAllTextAsync(tin, visit.Read("candles/fig-tin.yaml").Replace("drops: 160", "drops: 220", StringComparison.Ordinal));
        await visit.Go("#/candle/fig-tin/duties");
        await Assertions.Expect(visit.Page.Locator(".duties .sentence")).ToContainTextAsync("open");
        await Assertions.Expect(visit.Page.Locator(".duties h2").First).ToHaveTextAsync("Open");
        ILocator tests = visit.Page.Locator(".duty").Filter(new() { HasText = "Tests of the candle as it is sold" });
        await Assertions.Expect(tests).ToContainTextAsync("Test it again: the candle has");
        await tests.GetByRole(AriaRole.Link).ClickAsync();
        await Asks(visit, "New burn test");
        Assert.Empty(visit.Trouble);
    }

    [Fact]
    public async Task Labels_are_laid_on_a_sheet_from_the_first_free_one_on()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/fig-tin/papers");
        await Open(visit, "Labels on a sheet or roll");
        await visit.Page.GetByLabel("Labels to print on").SelectOptionAsync("a4-2x4");
        await visit.Page.GetByLabel("First free label of the sheet").FillAsync("7");
        await visit.Page.GetByLabel("How many labels").FillAsync("4");
        await visit.Button("Show").ClickAsync();
        // Two stand on the sheet that was begun, two on a new one.
        await Assertions.Expect(visit.Page.Locator("#preview img")).ToHaveCountAsync(2);
        IDownload file = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Button("Sheet as PDF").ClickAsync());
        Assert.StartsWith(
            "%PDF-",
            System.Text.Encoding.Latin1.GetString(await File.ReadAllBytesAsync(await file.PathAsync())),
            StringComparison.Ordinal
        );
        await visit.Page.GetByLabel("First free label of the sheet").FillAsync("9");
        await visit.Button("Show").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#preview")).ToContainTextAsync("The first free label lies between 1 and 8.");
        await visit.Page.GetByLabel("Labels to print on").SelectOptionAsync("roll-300-52x74");
        IDownload dots = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Button("Label as dots (PNG)").ClickAsync());
        Assert.StartsWith(
            "\u0089PNG",
            System.Text.Encoding.Latin1.GetString(await File.ReadAllBytesAsync(await dots.PathAsync())),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_logo_is_chosen_and_lies_beside_the_brand_and_nothing_is_overwritten()
    {
        await using Visit visit = await browser.Open();
        await File.WriteAllTextAsync(Path.Combine(visit.Folder, "Our-logo.svg"), "somebody's own");
        await visit.Go("#/declaration/brand/brand");
        const string Logo = """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M0 0h10v10z" fill="#14394A"/></svg>""";
        await visit
            .Page.Locator(".attach input[type=file][accept='.svg,.png']")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "Our logo.svg",
                    MimeType = "image/svg+xml",
                    Buffer = System.Text.Encoding.UTF8.GetBytes(Logo),
                }
            );
        await Assertions.Expect(visit.Page.Locator("[id='f-logo']")).ToHaveValueAsync("Our-logo-2.svg");
        await visit.Kept();
        Assert.Contains("logo: Our-logo-2.svg", visit.Read("brand.yaml"), StringComparison.Ordinal);
        Assert.Equal("somebody's own", visit.Read("Our-logo.svg"));
        Assert.Equal(Logo, visit.Read("Our-logo-2.svg"));
        await visit
            .Page.Locator(".attach input[type=file][accept='.svg,.png']")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "../../away.exe",
                    MimeType = "image/svg+xml",
                    Buffer = [1],
                }
            );
        await visit.Says("The file's name must end in .svg, .png, .ttf, .otf.");
    }

    [Fact]
    public async Task A_design_is_taken_by_its_picture()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/slate-jar");
        await visit.Button("Design and size").ClickAsync();
        ILocator seal = visit.Page.Locator("button.design").Filter(new() { HasText = "seal" });
        await seal.WaitForAsync(new() { Timeout = 60_000 });
        await visit.Picture("designs");
        await seal.ClickAsync();
        await visit.Kept();
        Assert.Contains("design: { name: seal }", visit.Read("candles/slate-jar.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_new_version_of_an_oil_would_change_is_told_before_it_is_kept()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/changes/oil/fig-leaf");
        string before = visit.Read("oils/fig-leaf.yaml");
        await visit.Page.Locator("details.item > summary").Filter(new() { HasText = "Isoeugenol" }).ClickAsync();
        await Fill(visit, "ingredients.4.share", "2.5 %");
        await visit.Button("Compare").ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".sentence")).ToContainTextAsync("change");
        await Assertions.Expect(visit.Page.GetByText("Batch HB-2611-02").First).ToBeVisibleAsync();
        Assert.Equal(before, visit.Read("oils/fig-leaf.yaml"));
    }

    [Fact]
    public async Task An_earlier_text_is_looked_at_and_put_back()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/slate-jar");
        string before = visit.Read("candles/slate-jar.yaml");
        await visit.Load.FillAsync("5");
        await visit.Kept();
        string first = visit.Read("candles/slate-jar.yaml");
        await visit.Load.FillAsync("4");
        await visit.Kept();
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "History" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".past li")).ToHaveCountAsync(2);
        await visit.Page.Locator(".past li").Last.GetByText("Put back as it was").ClickAsync();
        await visit.Says("It is as it was then");
        await Assertions.Expect(visit.Page.Locator("#undo")).ToHaveAttributeAsync("title", "Undo: slate-jar as it was");
        Assert.Equal(first, visit.Read("candles/slate-jar.yaml"));
        Assert.NotEqual(before, first);
    }

    [Fact]
    public async Task A_row_in_use_stays_in_the_page_when_the_list_scrolls()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("");
        await visit.Page.SetViewportSizeAsync(900, 300);
        await Assertions.Expect(visit.Page.Locator(".one").First).ToBeVisibleAsync();
        int held = await visit.Page.EvaluateAsync<int>(
            """
            async () => {
              const place = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 50)));
              const rows = [...document.querySelectorAll(".one")], first = rows[0].querySelector("button"), last = rows.at(-1);
              first.focus();
              scrollTo(0, 60);
              await place();
              const kept = last.isConnected && rows[1].isConnected;
              scrollTo(0, document.body.scrollHeight);
              await place();
              const order = [...document.querySelectorAll(".one")].map((r) => Number(r.getAttribute("aria-posinset")));
              const inOrder = order.every((n, i) => i === 0 || n > order[i - 1]), shown = Number(order.at(-1)) === Number(rows[0].getAttribute("aria-setsize"));
              return Number(kept) + 2 * Number(document.activeElement === first) + 4 * Number(inOrder) + 8 * Number(shown);
            }
            """
        );
        Assert.Equal(15, held);
    }

    [Fact]
    public async Task What_was_asked_first_and_answered_last_is_not_drawn_over_what_came_after()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("");
        int asked = 0;
        var answered = new TaskCompletionSource();
        await visit.Page.RouteAsync(
            "**/api/candles",
            async route =>
            {
                bool isFirst = Interlocked.Increment(ref asked) == 1;
                IAPIResponse answer = await route.FetchAsync();
                if (isFirst)
                {
                    await Task.Delay(2000);
                }

                await route.FulfillAsync(new() { Response = answer });
                if (isFirst)
                {
                    answered.SetResult();
                }
            }
        );
        await visit.Button("Put Storm Jar (trial) away").ClickAsync();
        await visit.Button("Undo: storm-jar put away").ClickAsync();
        await answered.Task;
        await visit.Page.WaitForTimeoutAsync(1000);
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Link, new() { Name = "Storm Jar (trial)" })).ToBeVisibleAsync();
        Assert.Equal(0, await visit.Page.GetByText("1 file put away").CountAsync());
    }

    [Fact]
    public async Task A_click_counts_though_the_view_is_drawn_anew_under_it()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("");
        TaskCompletionSource pressed = await visit.Hold("**/api/folder");
        await visit.Button("Put Storm Jar (trial) away").ClickAsync();
        await visit.Button("Undo: storm-jar put away").HoverAsync();
        await visit.Page.Mouse.DownAsync();
        await visit.Page.RunAndWaitForResponseAsync(
            () =>
            {
                pressed.SetResult();
                return Task.CompletedTask;
            },
            "**/api/candles"
        );
        await Assertions.Expect(visit.Page.GetByText("1 file put away")).ToBeVisibleAsync();
        await visit.Page.Mouse.UpAsync();
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Link, new() { Name = "Storm Jar (trial)" })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_candle_is_put_away_and_brought_back()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("");
        await visit.Button("Put Storm Jar (trial) away").ClickAsync();
        await Assertions.Expect(visit.Page.GetByText("1 file put away")).ToBeVisibleAsync();
        Assert.False(File.Exists(Path.Combine(visit.Folder, "candles", "storm-jar.yaml")));
        await visit.Page.GetByText("1 file put away").ClickAsync();
        await visit.Button("Bring back").ClickAsync();
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Link, new() { Name = "Storm Jar (trial)" })).ToBeVisibleAsync();
        Assert.True(File.Exists(Path.Combine(visit.Folder, "candles", "storm-jar.yaml")));
    }
}
