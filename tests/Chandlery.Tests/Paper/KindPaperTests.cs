using System.Text.RegularExpressions;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Making;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.BenchSheets;
using Chandlery.Tests.Sheets;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Paper;

/// <summary>No paper of one kind of product speaks of another kind.</summary>
public sealed class KindPaperTests
{
    // Words that a paper of a sort of product must not hold. Fire may be spoken of everywhere: a wax melt's sheet says how it burns.
    private const string OfCandles = @"candles?|wicks?";
    private const string OfFlames = @"burn\w*|wax(es)?|lighting";
    private const string OfWarmers = @"warmers?";
    private const string OfLiquids = @"reeds?|diffusers?|refills?|sprays?|linen|pump";

    private static readonly string[] Products =
    [
        "fig-tin",
        "harbour-bowl",
        "breakwater-pillar",
        "quay-tea-lights",
        "chapel-votive",
        "slipway-torch",
        "fig-melts",
        "dune-reeds",
        "dune-refill",
        "sailcloth-spray",
    ];

    public static TheoryData<string> All() => [.. Products];

    private static string Foreign(ProductKind kind) =>
        kind.State == PhysicalState.Liquid ? $"{OfCandles}|{OfFlames}|{OfWarmers}"
        : kind.Burns ? $"{OfWarmers}|{OfLiquids}"
        : $"{OfCandles}|{OfLiquids}";

    // Who made and supplied it may be called what they like, and water is sprayed on fires of every kind.
    private static string Own(string text, Assessment a)
    {
        IEnumerable<string> names =
        [
            a.Maker.Name,
            "Candle Shed",
            "water spray",
            "Reed and Rill",
            .. a.Composition.Recipe.Waxes.SelectMany(w => new[] { w.Wax.Name, w.Wax.Supplier }),
            .. a.Substances.Select(s => s.Name),
            a.Candle.Name,
            a.Id,
            a.Vessel.Name,
        ];
        return names.OrderByDescending(n => n.Length).Aggregate(text, (t, n) => t.Replace(n, "", StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void No_paper_speaks_of_another_kind(string id)
    {
        Assessment a = TestLaw.Demo($"candles/{id}.yaml", "IE");
        var words = new Regex($@"\b({Foreign(a.Kind)})\b", RegexOptions.IgnoreCase);
        int read = 0;
        foreach (PaperKind paper in PaperList.Own.All.Where(p => p.IsFor(a)))
        {
            if (TestLaw.Make(paper, a) is MadePaper made)
            {
                string text = Own(PrintedText.Of(PdfDrawing.Draw(made.Document)), a);
                Assert.True(text.Length > 100, $"{paper.Id} of {id} says nothing");
                Match found = words.Match(text);
                Assert.False(found.Success, $"{paper.Id} of {id}: ...{Around(text, found)}...");
                read++;
            }
        }

        Assert.True(read >= 6, $"{read} papers of {id} were made");
    }

    private static string Around(string text, Match found) =>
        found.Success ? text[Math.Max(0, found.Index - 40)..Math.Min(text.Length, found.Index + 60)] : "";

    public static TheoryData<string> Languages() => [.. TestLaw.Lawbook.Languages.Codes];

    // What a language calls a wick and wax stands in its words: a message on a liquid names neither, one on a melt no wick.
    [Theory]
    [MemberData(nameof(Languages))]
    public void No_message_in_any_language_names_a_wick_where_there_is_none(string code)
    {
        Language language = TestLaw.Lawbook.FindLanguage(code)!;
        foreach (ProductKind kind in TestLaw.Lawbook.Kinds.Where(k => !k.Burns))
        {
            string[] never =
                kind.State == PhysicalState.Liquid
                    ? [language.Words["wick"], language.Words["wicks"], language.Words["wax"]]
                    : [language.Words["wick"], language.Words["wicks"]];
            IEnumerable<string> said = kind
                .Messages.Values.SelectMany(keys => keys)
                .Distinct()
                .Select(key => language.Safety[key])
                .Append(language.Words[kind.Title])
                .Append(language.Words[kind.Called.Scented]);
            Assert.All(
                said,
                text =>
                    Assert.All(never, word => Assert.DoesNotMatch(new Regex($@"\b{Regex.Escape(word)}\b", RegexOptions.IgnoreCase), text))
            );
        }
    }

    [Theory]
    [InlineData("dune-reeds")]
    [InlineData("dune-refill")]
    [InlineData("sailcloth-spray")]
    public void The_bench_sheet_of_a_liquid_says_what_to_weigh_and_what_to_mind(string id)
    {
        Assessment a = TestLaw.Demo($"candles/{id}.yaml", "IE");
        var plan = MixingPlan.Make(a, 12, 3);
        Assert.Equal("base", plan.Portions[0].Kind);
        Assert.Equal(plan.Total.Value, plan.Portions.Sum(p => p.Mass.Value), 6);
        Assert.Equal(12 * a.Candle.NetMass.Value * 1.03, plan.Total.Value, 6);
        Assert.Equal(
            a.Composition.Recipe.Load.Value,
            100 * plan.Portions.Where(p => p.Kind == "fragrance oil").Sum(p => p.Mass.Value) / plan.Total.Value,
            6
        );
        PaperKind paper = PaperList.Own.All.OfType<BenchSheetPaper>().Single();
        string text = PrintedText.Of(PdfDrawing.Draw(((MadePaper)TestLaw.Make(paper, a)).Document));
        Assert.Contains("Open a window or switch on the extractor", text, StringComparison.Ordinal);
        Assert.Contains($"Finished liquid: {a.Candle.Liquid!.FlashPoint}", text, StringComparison.Ordinal);
        Assert.Contains(plan.Portions[0].Name, text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_bench_sheet_of_a_box_says_what_goes_into_each_and_what_the_box_comes_to()
    {
        Assessment a = TestLaw.Demo("candles/quay-tea-lights.yaml", "IE");
        string text = PrintedText.Of(PdfDrawing.Draw(TestLaw.Made("bench-sheet", a).Document));
        Assert.Matches(@"Quay Tea Lights\s+1 of 12\s+14\.0 g \(12: 168\.0 g\)", text);
        string single = PrintedText.Of(PdfDrawing.Draw(TestLaw.Made("bench-sheet", TestLaw.Demo("candles/fig-tin.yaml", "IE")).Document));
        Assert.Matches(@"Fig Tin\s+1\s+80\.0 g", single);
    }

    [Fact]
    public void The_bench_sheet_of_a_pillar_has_a_mould_of_its_size_and_no_vessel()
    {
        Assessment a = TestLaw.Demo("candles/breakwater-pillar.yaml", "IE");
        string text = PrintedText.Of(PdfDrawing.Draw(TestLaw.Made("bench-sheet", a).Document));
        Assert.DoesNotContain("vessel", text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Into each mould", text, StringComparison.Ordinal);
        Assert.Contains("One wick in the middle of 70 mm", text, StringComparison.Ordinal);

        // A cylinder of 70 mm by 130 mm holds 500.3 ml; 430 g of wax at 0.77 g/ml are 558.4 ml while they are hot.
        Assert.Contains("Poured at once it would overflow: 558", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_bench_sheet_of_wax_melts_has_shells_and_a_warmer_and_neither_wick_nor_burn_test()
    {
        Assessment a = TestLaw.Demo("candles/fig-melts.yaml", "IE");
        var plan = PouringPlan.Make(a, TestLaw.WaxOf(a), 12, 3);
        Assert.Equal(12 * a.Candle.NetMass.Value * 1.03, plan.FirstPour.Sum(p => p.Mass.Value), 6);
        Assert.Equal(a.Composition.Recipe.Load.Value, 100 * plan.FirstPour[^1].Mass.Value / plan.Total.Value, 6);
        string text = PrintedText.Of(PdfDrawing.Draw(TestLaw.Made("bench-sheet", a).Document));
        Assert.Contains("Into each shell", text, StringComparison.Ordinal);
        Assert.Contains("Cure before it is tried in a warmer", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(new Regex("wick|candle|burn|trim", RegexOptions.IgnoreCase), Own(text, a));
    }

    [Theory]
    [InlineData("--gap", "20")]
    [InlineData("--also", "dune-refill=2")]
    [InlineData("--leftover", "50")]
    [InlineData("--leftover-of", "dune-refill")]
    public void What_belongs_to_a_pour_of_wax_is_refused_for_a_liquid(string option, string value)
    {
        string into = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        string reeds = Path.Combine(TestLaw.DemoFolder, "candles", "dune-reeds.yaml");
        (int code, _, string errors) = Command.Run("bench-sheet", reeds, option, value, "--out", into);
        Assert.Equal(2, code);
        Assert.Contains("is a reed diffuser, which is mixed cold", errors, StringComparison.Ordinal);
        Assert.Contains("Leave out --gap", errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(into));
    }

    [Fact]
    public void A_liquid_whose_flash_point_nobody_measured_is_taken_for_flammable()
    {
        Assessment a = TestLaw.Demo("candles/dune-reeds.yaml", "IE");
        Assessment unknown = a with { Candle = a.Candle with { Liquid = a.Candle.Liquid! with { FlashPoint = null } } };
        Assert.Contains("take it for highly flammable", MixingPlan.Make(unknown, 1, 0).FlashPoints[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_liquid_is_sold_by_volume_and_its_figures_are_as_high_as_the_law_asks()
    {
        Assessment a = TestLaw.Demo("candles/sailcloth-spray.yaml");
        Assert.Contains("100 ml", PrintedText.Of("label", a, "en"), StringComparison.Ordinal);
        Assert.DoesNotContain("86 g", PrintedText.Of("label", a, "en"), StringComparison.Ordinal);
        Assert.Equal(3, a.Edition.Formats.Quantity.HeightFor(a.Candle, a.Vessel).Value);
    }

    [Fact]
    public void Messages_follow_wicks_and_place()
    {
        Assessment torch = TestLaw.Demo("candles/slipway-torch.yaml");
        IReadOnlyList<string> before = BurnMessages.Keys(torch.Candle, torch.Kind, MessageList.Before);
        Assert.Contains("outdoorOnly", before);
        Assert.Contains("trimWick", before);
        Assert.DoesNotContain("trimWicks", before);
        Candle indoors = torch.Candle with { Use = CandleUse.Indoor };
        Assert.DoesNotContain("outdoorOnly", BurnMessages.Keys(indoors, torch.Kind, MessageList.Before));
    }

    [Fact]
    public void No_label_of_a_candle_is_put_on_a_diffuser_in_the_united_states() =>
        Assert.True(TestLaw.Demo("candles/dune-reeds.yaml", "US").StopsSale);
}
