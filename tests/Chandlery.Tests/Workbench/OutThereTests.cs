using System.IO.Compression;
using System.Net.Http.Json;
using Microsoft.Data.Sqlite;
using Microsoft.Playwright;

namespace Chandlery.Tests.Workbench;

/// <summary>What leaves the bench, on the page: texts for shops, who has what, and the papers of a recall.</summary>
public sealed class OutThereTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task A_shop_gets_its_text_in_each_language_of_the_label_with_a_clause_beside_each_part()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl/papers");
        await visit.Page.Locator("summary").Filter(new() { HasText = "Texts for shop and advertisement" }).ClickAsync();
        await visit.Button("Text for a shop").ClickAsync();
        ILocator listing = visit.Page.Locator(".listing");
        await Assertions.Expect(listing).ToContainTextAsync("Kann allergische Hautreaktionen verursachen.");
        await Assertions.Expect(listing).ToContainTextAsync("May cause an allergic skin reaction.");
        await Assertions.Expect(listing).ToContainTextAsync("Regulation (EU) 2023/988, Art. 19(d)");
        await visit.Picture("listing");
        IDownload file = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Button("HTML").ClickAsync());
        Assert.Equal("harbour-bowl-shop.html", file.SuggestedFilename);
        string html = await File.ReadAllTextAsync(await file.PathAsync());
        Assert.Contains("https://schema.org/Product", html, StringComparison.Ordinal);
        Assert.Equal(2, html.Split("<article").Length - 1);
        Assert.Empty(visit.Trouble);
    }

    [Fact]
    public async Task What_must_not_be_sold_gets_no_text_for_a_shop_and_the_reason()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/storm-jar/papers");
        await visit.Page.Locator("summary").Filter(new() { HasText = "Texts for shop and advertisement" }).ClickAsync();
        await visit.Button("Text for an advertisement").ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".listing .problems")).ToContainTextAsync("something stops the sale");
        await Assertions.Expect(visit.Button("HTML")).ToHaveCountAsync(0);
    }

    private static async Task Find(Visit visit, string by, string text)
    {
        await visit.Page.Locator("#recall-by").SelectOptionAsync(by);
        await visit.Page.Locator("#recall-text").FillAsync(text);
        await visit.Button("Find").ClickAsync();
    }

    [Theory]
    [InlineData("batch", "HB-2611-02")]
    [InlineData("lot", "SO-4471")]
    [InlineData("oil", "Sweet Orange")]
    [InlineData("substance", "5989-27-5")]
    public async Task Who_has_it_is_found_by_batch_lot_oil_and_substance(string by, string text)
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/register");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Who has it, and a recall" }).ClickAsync();
        await Find(visit, by, text);
        await Assertions.Expect(visit.Page.Locator("main h2").First).ToContainTextAsync("are out there, in");
        await Assertions.Expect(visit.Page.Locator("main table")).ToContainTextAsync("Lantern Nook");
        await visit.Picture("recall");
        await Find(visit, by, "of no such name");
        await Assertions.Expect(visit.Page.Locator("main .stop")).ToHaveTextAsync("Nothing of that name is declared.");
    }

    [Fact]
    public async Task The_papers_of_a_recall_are_one_download_once_the_danger_is_said_and_not_played_down()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/recall");
        await Find(visit, "batch", "HB-2611-02");
        await visit.Page.Locator("summary").Filter(new() { HasText = "Papers of a recall" }).ClickAsync();
        await visit.Button("All papers of the recall").ClickAsync();
        await visit.Says("Say what the danger is, in English at least.");
        await Assertions.Expect(visit.Page.Locator("#danger-en")).ToBeFocusedAsync();
        await visit.Page.Locator("#danger-en").FillAsync("As a precaution: the bowl can crack.");
        await visit.Button("All papers of the recall").ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".recall-papers .problems")).ToContainTextAsync("lessens the risk");
        await visit.Page.Locator("#danger-en").FillAsync("The bowl can crack and hot wax can run out.");
        await visit.Page.Locator("#danger-de").FillAsync("Die Schale kann springen und heißes Wachs auslaufen.");
        IDownload file = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Button("All papers of the recall").ClickAsync());
        using ZipArchive zip = ZipFile.OpenRead(await file.PathAsync());
        string[] names = [.. zip.Entries.Select(e => e.FullName)];
        Assert.Contains("harbour-bowl-recall-notice-de.pdf", names);
        Assert.Contains("harbour-bowl-recall-shelf-card-en.pdf", names);
        Assert.Contains("recall-authority.pdf", names);
        Assert.Contains("recall-receivers.csv", names);
        using var first = new StreamReader(zip.GetEntry("read-this-first.txt")!.Open());
        Assert.Contains("free of charge", await first.ReadToEndAsync(), StringComparison.Ordinal);
        using var web = new StreamReader(zip.GetEntry("harbour-bowl-recall-web-de.html")!.Open());
        Assert.Contains("heißes Wachs", await web.ReadToEndAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_what_is_searched_was_emptied_it_is_said_and_a_click_makes_it_anew()
    {
        await using Visit visit = await browser.Open();
        using HttpClient client = await visit.Client();
        (await client.PostAsJsonAsync("/api/enter", new { id = "hb-2611", by = "M. Hale" })).EnsureSuccessStatusCode();
        using (var register = new SqliteConnection($"Data Source={Path.Combine(visit.Folder, "register.sqlite")};Pooling=False"))
        {
            register.Open();
            using SqliteCommand empty = register.CreateCommand();
            empty.CommandText = "DELETE FROM held_substance";
            empty.ExecuteNonQuery();
        }

        await visit.Go("#/register");
        await visit.Page.GetByLabel("Batch, substance").FillAsync("5989-27-5");
        await visit.Button("Find").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("main .problems")).ToContainTextAsync("held_substance");
        await Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync("The register was changed afterwards.");
        await visit.Button("Make anew what is searched").ClickAsync();
        await visit.Says("made anew");
        await Assertions.Expect(visit.Page.Locator("main .problems")).ToHaveCountAsync(0);
        await Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync("1 entry is about that.");
    }
}
