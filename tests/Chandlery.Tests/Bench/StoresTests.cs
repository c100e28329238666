using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Making;
using Chandlery.Core.Making.Stores;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Bench;

public sealed class StoresTests : IDisposable
{
    private static readonly DateOnly Day = new(2026, 11, 25);
    private readonly MakersFolder folder = new();

    public void Dispose() => folder.Dispose();

    private StoreLine Line(string id, DateOnly? day = null)
    {
        var problems = new Problems();
        var store = Storeroom.On(folder.Catalogue, day ?? Day, problems);
        Assert.Empty(problems.Found);
        return store.Lines.Single(l => l.Material.Id == id);
    }

    private CandleCost Cost(string candle, double waste = 0)
    {
        Catalogue catalogue = folder.Catalogue;
        Candle found = catalogue.OfKind<Candle>().Single(c => c.Id == candle);
        Recipe recipe = RecipeMaker.FromPlan(found, catalogue, new Problems())!;
        return CandleCost.Of(found, recipe, catalogue, new Prices(catalogue, Day), waste);
    }

    [Fact]
    public void A_box_of_twelve_takes_twelve_cups_and_wicks_and_one_box()
    {
        using var own = new MakersFolder();
        Assessment a = own.Assess("quay-tea-lights", "IE");
        Dictionary<LotContent, double?> needs = Needs
            .OfCandle(a.Candle, a.Composition.Recipe, own.Catalogue)
            .Where(n => n.Material.IsCounted)
            .ToDictionary(n => n.Material.Content, n => n.Amount);
        Assert.Equal((12, 12, 1), (needs[LotContent.Vessel], needs[LotContent.Wick], needs[LotContent.Packaging]));
        WickPlan plan = WickPlan.Of(a.Candle.Wicks, a.Vessel);
        Assert.Equal((1, 12), (plan.Count, plan.Whole));
        Assert.StartsWith("In each of the 12 pieces one.", plan.Note, StringComparison.Ordinal);
        Assert.Contains(
            "Each of its 12 pieces takes 14 g.",
            PouringPlan.Make(a, own.Catalogue.OfKind<Wax>().Single(w => w.Id == "soy-flake"), 1, 0).Fill.Note,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_a_batch_weighed_goes_out_of_the_lots_that_it_names()
    {
        // The batch of three bowls: 7,100 g of blend and 1,050 g on top, 70 % of it soy; twenty boxes of tea lights and thirty of melts.
        StoreLine soy = Line("soy-flake");
        Assert.Equal((0.7 * (7100 + 1050)) + 3200 + 2000, soy.Out!.Value, 6);
        Assert.Equal(soy.In - soy.Out, soy.Left);
        StoreLine orange = Line("sweet-orange");
        Assert.Equal(176, orange.Out!.Value, 9);
        Assert.Equal(orange.In!.Value - 176, orange.Lots.Single().Left!.Value, 9);
        Assert.Equal(36, Line("braided cotton").Out);
        Assert.Equal(3, Line("garden-bowl").Out);
        Assert.Equal((20 * 12, 20 * 12), (Line("tea-light-cups").Out, Line("tabbed cotton").Out));
        Assert.Equal((1860, 465), (Line("mild-base").Out, Line("dune-grass").Out));
    }

    [Fact]
    public void Nothing_of_a_later_day_counts()
    {
        StoreLine before = Line("sweet-orange", new DateOnly(2026, 11, 13));
        Assert.Equal(0, before.Out);
        Assert.DoesNotContain(
            Storeroom.On(folder.Catalogue, new DateOnly(2020, 1, 1), new Problems()).Lines,
            l => l.Material.Id == "sweet-orange"
        );
    }

    [Fact]
    public void What_nobody_says_is_not_known_and_never_nothing()
    {
        folder.Change("batches/hb-2611.yaml", "made: 3\n", "");
        StoreLine wicks = Line("braided cotton");
        Assert.Null(wicks.Out);
        Assert.Null(wicks.Left);
        Assert.Contains(wicks.Notes, n => n.Contains("add 'made'", StringComparison.Ordinal));
        folder.Change("lots/orange-26-09.yaml", "grams: ", "pieces: ");
        Assert.Null(Line("sweet-orange").In);
        Assert.Contains(Line("sweet-orange").Notes, n => n.Contains("add 'grams'", StringComparison.Ordinal));
        CanMake bowl = Storeroom.On(folder.Catalogue, Day, new Problems()).EnoughFor.Single(c => c.CandleId == "harbour-bowl");
        Assert.Null(bowl.Count);
        Assert.Contains("not known", bowl.Scarce, StringComparison.Ordinal);
    }

    [Fact]
    public void More_used_than_bought_is_said()
    {
        folder.Change("batches/hb-2611.yaml", "{ oil: fig-leaf, grams: 88 }", "{ oil: fig-leaf, grams: 5088 }");
        StoreLine fig = Line("fig-leaf");
        Assert.True(fig.Left < 0);
        Assert.Contains(fig.Notes, n => n.Contains("more than its lots held", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2026-11-24", Keeping.Past)]
    [InlineData("2026-11-25", Keeping.Soon)]
    [InlineData("2027-01-24", Keeping.Soon)]
    [InlineData("2027-01-25", Keeping.Good)]
    public void Best_before_days_are_watched(string day, Keeping keeping)
    {
        folder.Write(
            "lots/fig-26-08.yaml",
            System.Text.RegularExpressions.Regex.Replace(folder.Read("lots/fig-26-08.yaml"), "bestBefore: .*", $"bestBefore: {day}")
        );
        StoreLine fig = Line("fig-leaf");
        Assert.Equal(keeping, fig.Lots.Single().Keeping);
        Assert.Equal(keeping != Keeping.Good, fig.Notes.Any(n => n.Contains("best-before day", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_candle_costs_what_its_lots_cost_and_the_price_follows_from_the_makers_rates()
    {
        folder.Write(
            "lots/fig-26-08.yaml",
            System.Text.RegularExpressions.Regex.Replace(folder.Read("lots/fig-26-08.yaml"), "paid: .*", "paid: 50")
        );
        folder.Write(
            "maker.yaml",
            System.Text.RegularExpressions.Regex.Replace(
                folder.Read("maker.yaml"),
                "rates: .*",
                "rates: { currency: EUR, perHour: 30, marginPercent: 50, taxPercent: 20 }"
            )
        );
        CandleCost cost = Cost("fig-tin");

        // 160 drops of 24 mg in 76 g of wax, in a tin of 80 g; half a kilogram cost 50.
        double oil = 80 * 3.84 / 79.84;
        Assert.Equal(oil * 0.1, (double)cost.Parts.Single(p => p.What == "Fig Leaf").Cost!.Value.Amount, 6);
        Assert.Equal(cost.Candle.WorkMinutes!.Value / 2, (double)cost.Parts.Single(p => p.What == "work").Cost!.Value.Amount, 9);
        Assert.True(cost.IsWhole);
        Assert.Equal(cost.Known.Amount, cost.Parts.Sum(p => p.Cost!.Value.Amount));
        Assert.Equal(2 * cost.Known.Amount, cost.Price!.Value.Amount);
        Assert.Equal(1.2m * cost.Price.Value.Amount, cost.PriceWithTax!.Value.Amount);
        Assert.Equal(1.1 * oil * 0.1, (double)Cost("fig-tin", 10).Parts.Single(p => p.What == "Fig Leaf").Cost!.Value.Amount, 6);
    }

    [Theory]
    [InlineData("lots/fig-26-08.yaml", "paid: .*\n", "no lot says what it cost")]
    [InlineData("lots/tins-26-09.yaml", "pieces: .*\n", "no lot says what it cost")]
    [InlineData("candles/fig-tin.yaml", "minutes: .*\n", "add 'minutes'")]
    [InlineData("maker.yaml", "rates: .*\n", "add 'rates'")]
    public void What_is_not_known_makes_no_price(string file, string without, string says)
    {
        string text = folder.Read(file);
        string cut = System.Text.RegularExpressions.Regex.Replace(text, without, "");
        Assert.NotEqual(text, cut);
        folder.Write(file, cut);
        CandleCost cost = Cost("fig-tin");
        Assert.False(cost.IsWhole);
        Assert.Null(cost.Price);
        Assert.Contains(cost.Parts, p => p.Cost is null && p.By.Contains(says, StringComparison.Ordinal));
        (int code, string said, _) = Command.Run("cost", Path.Combine(folder.Path, "candles", "fig-tin.yaml"), "--as-of", "2026-11-25");
        Assert.Equal(0, code);
        Assert.Contains("cost: not known; what is known comes to", said, StringComparison.Ordinal);
        Assert.DoesNotContain("price:", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rates: { currency: Euro }", "'currency'")]
    [InlineData("rates: { currency: EUR, marginPercent: 100 }", "'marginPercent'")]
    [InlineData("rates: { perHour: 3 }", "'currency' is missing")]
    public void Rates_that_make_no_price_are_refused(string rates, string says)
    {
        var problems = new Problems();
        TestLaw.Read(
            problems,
            ("maker.yaml", $"declares: maker\nname: N\naddress: [A]\ntelephone: +353 1 555 0100\nemail: a@b.example\n{rates}\n")
        );
        Assert.Contains(says, Assert.Single(problems.Found).What, StringComparison.Ordinal);
    }

    [Fact]
    public void Commands_tell_the_store_and_the_cost()
    {
        (int code, string said, string errors) = Command.Run("stores", folder.Path, "--as-of", "2026-11-25");
        Assert.Equal((0, ""), (code, errors));
        Assert.Contains("what runs out first", said, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Command.Run("stores", folder.Path, "--as-of", "2026-11-25", "--json").Output);
        Assert.NotEmpty(json.RootElement.GetProperty("materials").EnumerateArray());
        using JsonDocument cost = JsonDocument.Parse(
            Command.Run("cost", Path.Combine(folder.Path, "candles", "tide-bowl.yaml"), "--as-of", "2026-11-25", "--json").Output
        );
        Assert.Equal(JsonValueKind.Number, cost.RootElement[0].GetProperty("price").ValueKind);
        (code, said, errors) = Command.Run("blend", folder.Path, "--trial", "orchard-pier", "--oil-cost", "2");
        Assert.Equal((0, ""), (code, errors));
        Assert.Contains("Its oil costs", said, StringComparison.Ordinal);
    }
}
