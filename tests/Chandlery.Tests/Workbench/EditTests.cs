using System.Globalization;
using Microsoft.Playwright;

namespace Chandlery.Tests.Workbench;

/// <summary>What the page makes of the figures that are dragged, typed and converted.</summary>
public sealed class EditTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    /// <summary>Lets an answer to what was asked come late, as it does on a slow machine.</summary>
    private static Task Delay(Visit visit, int milliseconds) =>
        visit.Page.RouteAsync(
            "**/api/desk",
            async route =>
            {
                await Task.Delay(milliseconds);
                await route.ContinueAsync();
            }
        );

    private static async Task<(float Left, float Width, float Y)> Line(Visit visit)
    {
        ILocator line = visit.Page.Locator("svg.line");
        await line.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await line.BoundingBoxAsync())!;
        return (box.X, box.Width, box.Y + (box.Height / 2));
    }

    [Fact]
    public async Task Three_steps_of_the_load_to_the_right_and_three_to_the_left_leave_the_drops_as_they_were()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/fig-tin");
        string before = visit.Read("candles/fig-tin.yaml");
        await visit.Page.Locator("#load-range").FocusAsync();
        foreach (string key in new[] { "ArrowRight", "ArrowRight", "ArrowRight" })
        {
            await visit.Page.Keyboard.PressAsync(key);
        }

        await Assertions.Expect(visit.Amount("Fig Leaf")).Not.ToHaveValueAsync("160");
        foreach (string key in new[] { "ArrowLeft", "ArrowLeft", "ArrowLeft" })
        {
            await visit.Page.Keyboard.PressAsync(key);
        }

        await Assertions.Expect(visit.Amount("Fig Leaf")).ToHaveValueAsync("160");
        await visit.Kept();
        Assert.Equal(before, visit.Read("candles/fig-tin.yaml"));
    }

    [Fact]
    public async Task A_weighed_blend_is_scaled_from_what_was_typed_however_late_the_answers_come()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/fig-tin");
        await Delay(visit, 300);
        (float left, float width, float y) = await Line(visit);
        await visit.Page.Mouse.MoveAsync(left + (width * 0.7f), y);
        await visit.Page.Mouse.DownAsync();
        foreach (float at in new[] { 0.95f, 0.5f, 0.9f, 0.6f, 0.9f })
        {
            await visit.Page.Mouse.MoveAsync(left + (width * at), y, new() { Steps = 6 });
        }

        await visit.Page.Mouse.UpAsync();
        double load = double.Parse(
            await visit.Page.Locator("#load-range").InputValueAsync(),
            NumberStyles.Float,
            CultureInfo.InvariantCulture
        );
        double drops = double.Parse(await visit.Amount("Fig Leaf").InputValueAsync(), NumberStyles.Float, CultureInfo.InvariantCulture);

        // 76 g of wax and drops of 24 mg, as declared.
        Assert.Equal(load / 100 * 76 / 0.024, drops, 0.01 * drops);
    }

    [Theory]
    [InlineData("Net weight", "2,900")]
    [InlineData("Load, %", "7,500")]
    [InlineData("Amount of Fig Leaf", "15,000")]
    public async Task A_figure_that_can_be_read_in_two_ways_or_is_no_count_is_refused_beside_its_field(string field, string typed)
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        string before = visit.Read("candles/harbour-bowl.yaml");
        ILocator input = visit.Page.GetByLabel(field, new() { Exact = true });
        await input.FillAsync(typed);
        await Assertions.Expect(input).ToHaveAttributeAsync("aria-invalid", "true");
        string beside = (await input.GetAttributeAsync("aria-describedby"))!;
        await Assertions.Expect(visit.Page.Locator($"[id='{beside}']")).ToContainTextAsync(typed);
        await visit.NotKept();
        Assert.Equal(before, visit.Read("candles/harbour-bowl.yaml"));
        await visit.Page.Locator("#summary a").First.ClickAsync();
        await Assertions.Expect(input).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Another_measure_converts_the_amount_and_the_first_one_gives_it_back()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/fig-tin");
        string before = visit.Read("candles/fig-tin.yaml");
        ILocator measure = visit.Page.GetByLabel("Measure of Fig Leaf");
        await measure.SelectOptionAsync("grams");

        // 160 drops of 24 mg; 0.96 g in a millilitre.
        await Assertions.Expect(visit.Amount("Fig Leaf")).ToHaveValueAsync("3.84");
        await measure.SelectOptionAsync("millilitres");
        await Assertions.Expect(visit.Amount("Fig Leaf")).ToHaveValueAsync("4");
        await measure.SelectOptionAsync("drops");
        await Assertions.Expect(visit.Amount("Fig Leaf")).ToHaveValueAsync("160");
        await visit.Kept();
        Assert.Equal(before, visit.Read("candles/fig-tin.yaml"));
    }

    [Fact]
    public async Task A_measure_that_cannot_be_reckoned_empties_the_field_and_says_why()
    {
        await using Visit visit = await browser.Open();
        string oil = Path.Combine(visit.Folder, "oils", "fig-leaf.yaml");
        File.WriteAllText(oil, File.ReadAllText(oil).Replace("densityGramsPerMl: 0.96\n", "", StringComparison.Ordinal));
        await visit.Go("#/candle/fig-tin");
        await visit.Page.GetByLabel("Measure of Fig Leaf").SelectOptionAsync("millilitres");
        await Assertions.Expect(visit.Amount("Fig Leaf")).ToHaveValueAsync("");
        await Assertions.Expect(visit.Amount("Fig Leaf")).ToHaveAttributeAsync("aria-invalid", "true");
        await Assertions.Expect(visit.Page.Locator("#blend")).ToContainTextAsync("density of Fig Leaf is not declared");
    }

    [Fact]
    public async Task The_load_of_the_wax_is_told_of_the_melt_and_back()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        string before = visit.Read("candles/harbour-bowl.yaml");
        ILocator load = visit.Load;
        await visit.Page.GetByLabel("Load of", new() { Exact = true }).SelectOptionAsync("candle");

        // 8 of oil for 100 of wax and 0.2 of an extra.
        await Assertions.Expect(load).ToHaveValueAsync("7.3937");
        await visit.Kept();
        await Assertions.Expect(visit.Page.Locator("#load-hint")).ToContainTextAsync("8 % of the wax");
        await visit.Page.GetByLabel("Load of", new() { Exact = true }).SelectOptionAsync("wax");
        await Assertions.Expect(load).ToHaveValueAsync("8");
        await visit.Kept();
        Assert.Equal(before, visit.Read("candles/harbour-bowl.yaml"));
    }

    [Fact]
    public async Task A_weighed_amount_among_shares_takes_the_others_along_and_a_share_brings_them_back()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        string before = visit.Read("candles/harbour-bowl.yaml");
        ILocator measure = visit.Page.GetByLabel("Measure of Sweet Orange Essential Oil");
        await measure.SelectOptionAsync("millilitres");

        // 30 g in 100 g of the blend, 0.845 g in a millilitre.
        await Assertions.Expect(visit.Amount("Sweet Orange Essential Oil")).ToHaveValueAsync("35.503");
        await Assertions.Expect(visit.Page.GetByLabel("Measure of Fig Leaf")).ToHaveValueAsync("grams");
        await Assertions.Expect(visit.Amount("Fig Leaf")).ToHaveValueAsync("15");
        await Assertions.Expect(visit.Page.Locator("#measure-note")).ToContainTextAsync("for 100 g of the blend");
        await visit.Kept();
        await measure.SelectOptionAsync("share");
        await Assertions.Expect(visit.Amount("Sweet Orange Essential Oil")).ToHaveValueAsync("30");
        await Assertions.Expect(visit.Page.GetByLabel("Measure of Fig Leaf")).ToHaveValueAsync("share");
        await visit.Kept();
        Assert.Equal(before, visit.Read("candles/harbour-bowl.yaml"));
    }

    [Theory]
    [InlineData("2,900")]
    [InlineData("0")]
    [InlineData("2.5")]
    public async Task A_number_of_candles_that_is_none_is_refused_beside_its_field(string typed)
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl/papers");
        await visit.Button("Bench sheet").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#preview img").First).ToBeVisibleAsync();
        ILocator count = visit.Page.GetByLabel("How many candles");
        await count.FillAsync(typed);
        await Assertions.Expect(count).ToHaveAttributeAsync("aria-invalid", "true");
        await Assertions.Expect(visit.Page.Locator("#count-wrong")).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.Locator("#preview img")).ToHaveCountAsync(0);
    }

    [Theory]
    [InlineData("2.5")]
    [InlineData("0.5")]
    public async Task A_number_of_wicks_that_is_none_is_refused_beside_its_field(string typed)
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl/details");
        string before = visit.Read("candles/harbour-bowl.yaml");
        ILocator count = visit.Page.Locator("[id='f-wicks.count']");
        await count.FillAsync(typed);
        await Assertions.Expect(count).ToHaveAttributeAsync("aria-invalid", "true");
        await visit.NotKept();
        Assert.Equal(before, visit.Read("candles/harbour-bowl.yaml"));
    }

    [Fact]
    public async Task What_follows_is_shown_while_the_finger_is_still_down()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await Assertions.Expect(visit.Page.Locator("#verdict.none, .verdict.stop")).ToHaveCountAsync(0);
        (float left, float width, float y) = await Line(visit);
        await visit.Page.Mouse.MoveAsync(left + (width * 0.7f), y);
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(left + (width * 0.96f), y, new() { Steps = 8 });
        await Assertions.Expect(visit.Page.Locator("#verdict")).ToContainTextAsync("Must not be sold");
        await Assertions.Expect(visit.Page.Locator("#follows")).ToContainTextAsync("over");
        await visit.Page.Mouse.MoveAsync(left + (width * 0.45f), y, new() { Steps = 8 });
        await Assertions.Expect(visit.Page.Locator("#verdict")).Not.ToContainTextAsync("Must not be sold");
        await visit.Page.Mouse.UpAsync();
        await visit.Kept();
    }

    [Fact]
    public async Task A_late_answer_to_an_earlier_question_is_dropped()
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        int asked = 0;
        await visit.Page.RouteAsync(
            "**/api/desk",
            async route =>
            {
                await Task.Delay(Interlocked.Increment(ref asked) == 1 ? 1500 : 0);
                await route.ContinueAsync();
            }
        );
        ILocator load = visit.Load;
        await load.FillAsync("3");
        await visit.Page.WaitForTimeoutAsync(600);
        await load.FillAsync("12");
        await Assertions.Expect(visit.Page.Locator("#verdict")).ToContainTextAsync("Must not be sold");
        await visit.Page.WaitForTimeoutAsync(2000);
        await Assertions.Expect(visit.Page.Locator("#verdict")).ToContainTextAsync("Must not be sold");
        await Assertions.Expect(visit.Page.Locator("#load-hint")).ToContainTextAsync("12 % of the wax");
    }
}
