using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Making;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Papers;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Bench;

public sealed class PourTests : IDisposable
{
    private readonly MakersFolder folder = new();

    public void Dispose() => folder.Dispose();

    private (Assessment Candle, Wax Wax) Candle(string id, string place = "IE")
    {
        Assessment a = folder.Assess(id, place);
        return (a, folder.Catalogue.Find<Wax>(a.Candle.Wax, new Problems())!);
    }

    [Fact]
    public void The_gap_says_what_the_first_pour_and_the_top_up_come_to()
    {
        folder.Change("candles/tide-bowl.yaml", "topUp: { scented: yes, percentOfCandle: 15 }", "topUp: { scented: yes }");
        (Assessment a, Wax wax) = Candle("tide-bowl");
        var plan = PouringPlan.Make(a, wax, new PourOrder(1, 0) { Gap = new Millimetres(20) });

        // 790 ml to the brim, 12 mm of headspace and 20 mm of gap in a bowl of 120 mm, molten soy at 0.86 g/ml.
        double first = 0.86 * (790 - (Math.PI * 60 * 60 * 32 / 1000));
        Assert.Equal(first, plan.FirstPourEach.Value, 6);
        Assert.Equal(550 - first, plan.TopUpEach.Value, 6);
        Assert.Contains("tops it up", plan.Sizes[0].Gap, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gap_does_not_overrule_what_was_declared_and_assessed()
    {
        (Assessment a, Wax wax) = Candle("harbour-bowl");
        var plan = PouringPlan.Make(a, wax, new PourOrder(1, 0) { Gap = new Millimetres(20) });
        Assert.Equal(0.12 * 2900, plan.TopUpEach.Value, 6);
        Assert.Contains("the candle declares 348 g, and that is what was assessed", plan.Sizes[0].Gap, StringComparison.Ordinal);
        (Assessment tin, Wax soy) = Candle("fig-tin");
        Assert.Contains(
            "the candle declares no second pour",
            PouringPlan.Make(tin, soy, new PourOrder(1, 0) { Gap = new Millimetres(5) }).Sizes[0].Gap,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Several_sizes_come_from_one_melt_and_add_up()
    {
        folder.Write(
            "candles/slate-tin.yaml",
            folder
                .Read("candles/slate-jar.yaml")
                .Replace("name: Slate Jar", "name: Slate Tin", StringComparison.Ordinal)
                .Replace("vessel: jar-300", "vessel: tin-100", StringComparison.Ordinal)
                .Replace("netGrams: 210", "netGrams: 80", StringComparison.Ordinal)
                .Replace("headspaceMm: 12", "headspaceMm: 4", StringComparison.Ordinal)
                .Replace("gtin: \"2012345678903\"\n", "", StringComparison.Ordinal)
        );
        string jar = Path.Combine(folder.Path, "candles", "slate-jar.yaml");
        string into = Path.Combine(folder.Path, "out");
        (int code, _, string errors) = Command.Run("bench-sheet", jar, "--count", "3", "--also", "slate-tin=6", "--out", into);
        Assert.Equal((0, ""), (code, errors));

        (Assessment a, Wax wax) = Candle("slate-jar");
        (Assessment tin, _) = Candle("slate-tin");
        var plan = PouringPlan.Make(
            a,
            wax,
            new PourOrder(3, 5) { Also = [new PourSize(tin.Candle, tin.Vessel, tin.Composition.Recipe, 6)] }
        );
        Assert.Equal(((3 * 210) + (6 * 80)) * 1.05, plan.Total.Value, 6);
        Assert.Equal(plan.Total.Value, plan.FirstPour.Sum(p => p.Mass.Value), 6);
        Assert.Equal(0.06, plan.FirstPour.Single(p => p.Kind == "fragrance oil").Mass.Value / plan.Total.Value, 9);
        Assert.Equal([("Slate Jar", 3, 210.0), ("Slate Tin", 6, 80.0)], plan.Sizes.Select(s => (s.Name, s.Count, s.FirstEach.Value)));
    }

    [Theory]
    [InlineData("--also", "fig-tin=6", "Fig Tin and Slate Jar are not of one melt")]
    [InlineData("--also", "slate-jug=6", "There is no candle named 'slate-jug'")]
    [InlineData("--also", "slate-tin", "write it as slate-tin=6")]
    [InlineData("--leftover-of", "fig-tin", "It would bring Fig Leaf")]
    [InlineData("--leftover", "5000", "there would be more")]
    public void What_does_not_go_into_one_melt_is_refused(string option, string value, string says)
    {
        string jar = Path.Combine(folder.Path, "candles", "slate-jar.yaml");
        string into = Path.Combine(folder.Path, "out");
        string[] leftover = option == "--leftover-of" ? ["--leftover", "50"] : [];
        (int code, _, string errors) = Command.Run(["bench-sheet", jar, option, value, .. leftover, "--out", into]);
        Assert.Equal(2, code);
        Assert.Contains(says, errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(into));
    }

    [Fact]
    public void The_scent_of_melt_left_over_is_counted()
    {
        (Assessment a, Wax wax) = Candle("slate-jar");
        var plan = PouringPlan.Make(
            a,
            wax,
            new PourOrder(2, 0) { Leftover = new LeftoverMelt("Slate Jar", a.Composition.Recipe, new Grams(100)) }
        );
        Assert.Equal(420, plan.FirstPour.Sum(p => p.Mass.Value), 6);
        Assert.Equal((420 - 100) * 0.06, plan.FirstPour.Single(p => p.Kind == "fragrance oil").Mass.Value, 6);
        Assert.Equal(100, plan.FirstPour.Single(p => p.Kind == "leftover").Mass.Value);
        Assert.Contains("The leftover holds oil", plan.Temperatures[0].Note, StringComparison.Ordinal);

        // Another candle's leftover may hold more of an oil than there may be, and less of another.
        (Assessment bowl, _) = Candle("tide-bowl");
        var strong = new LeftoverMelt("Slate Jar", a.Composition.Recipe, new Grams(500));
        Assert.Contains("at most", strong.WhyNot(bowl.Composition.Recipe, new Grams(550)), StringComparison.Ordinal);
        Assert.Null((strong with { Mass = new Grams(100) }).WhyNot(bowl.Composition.Recipe, new Grams(550)));
    }

    [Fact]
    public void Every_temperature_stands_beside_the_flash_points_in_the_order_of_the_work()
    {
        folder.Change("candles/harbour-bowl.yaml", "pourCelsius: 48", "pourCelsius: 50");
        (Assessment a, Wax wax) = Candle("harbour-bowl");
        IReadOnlyList<TemperatureStep> steps = PouringPlan.Make(a, wax, 1, 0).Temperatures;
        Assert.Equal(["Melt the wax", "Stir in the oil", "Pour", "Top up, when the first pour has set"], steps.Select(s => s.Step));
        Assert.StartsWith("2 °C below the lowest flash point (Sweet Orange Essential Oil 50 °C", steps[1].Note, StringComparison.Ordinal);
        Assert.Contains("TOO HOT: at or above the flash point of Sweet Orange Essential Oil,", steps[2].Note, StringComparison.Ordinal);
        Assert.DoesNotContain("flash", steps[3].Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Times_say_that_they_are_common_practice_and_the_sheet_prints_them()
    {
        (Assessment a, Wax wax) = Candle("tide-bowl");
        IReadOnlyList<TimeStep> times = PouringPlan.Make(a, wax, 1, 0).Times;
        Assert.All(times.SkipLast(1), t => Assert.Contains("common practice, no source", t.Source, StringComparison.Ordinal));
        Assert.Equal("to 5 mm", times[^1].Time);
        Assert.Equal(791.681, VesselVolume.ByGeometry(a.Vessel)!.Value.Value, 3);
        var made = (MadePaper)TestLaw.Make(PaperList.Own.Find("bench-sheet")!, TestLaw.Demo("candles/tide-bowl.yaml"));
        using var pdf = new Paper.PdfReader(Chandlery.Paper.Drawing.PdfDrawing.Draw(made.Document));
        string text = string.Join(' ', Enumerable.Range(0, pdf.Pages.Count).Select(pdf.Text));
        Assert.Contains("until the next day", text, StringComparison.Ordinal);
        Assert.Contains("one to two weeks", text, StringComparison.Ordinal);
        Assert.Contains("467.5 g", text, StringComparison.Ordinal);
        Assert.Contains("82.5 g", text, StringComparison.Ordinal);
    }
}
