using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>What the law makes of liquids: by what was measured, never by shares; both sides of each bound.</summary>
public sealed class LiquidTests
{
    private const string ClosedCup = "EN ISO 3679";

    private static LiquidFacts Facts(
        double? flash = null,
        double? boiling = null,
        bool? sustains = null,
        double? viscosity = null,
        string method = ClosedCup
    ) =>
        new()
        {
            Density = null,
            FlashPoint = flash is { } f ? new FlashPoint(new Celsius(f), false, method) : null,
            Boiling = boiling is { } b ? new Celsius(b) : null,
            SustainsCombustion = sustains,
            Viscosity = viscosity is { } v ? new SquareMillimetresPerSecond(v) : null,
            FormsFlammableVapour = null,
            Classes = null,
            Document = "report 1",
        };

    private static Verdict Judge(LiquidFacts? facts, params Ingredient[] lines) =>
        TestLaw.Law().ForState(PhysicalState.Liquid).Judge(TestLaw.Mixture(lines) with { Liquid = facts });

    private static string Codes(Verdict verdict) => string.Join(", ", verdict.Classification.Classes.Select(c => c.Category.Code));

    [Theory]
    [InlineData(22.9, 35, "Flam. Liq. 1")]
    [InlineData(22.9, 35.1, "Flam. Liq. 2")]
    [InlineData(-40, 36, "Flam. Liq. 2")]
    [InlineData(23, 35, "Flam. Liq. 3")]
    [InlineData(60, 150, "Flam. Liq. 3")]
    [InlineData(60.1, 150, "")]
    [Outside("CLP Annex I, 2.6.1 and Table 2.6.1, consolidated text of 1 May 2026")]
    public void Flash_point_and_boiling_point_give_the_category(double flash, double boiling, string code)
    {
        Verdict verdict = Judge(Facts(flash, boiling));
        Assert.Equal(code, Codes(verdict));
        Assert.Null(verdict.FlammabilityUnknown);
    }

    [Theory]
    [InlineData(35, false, "Flam. Liq. 3")]
    [InlineData(35.1, false, "")]
    [InlineData(60, false, "")]
    [InlineData(35.1, true, "Flam. Liq. 3")]
    [InlineData(35.1, null, "Flam. Liq. 3")]
    [InlineData(22.9, false, "Flam. Liq. 2")]
    [Outside("CLP Annex I, 2.6.4.5, consolidated text of 1 May 2026")]
    public void A_negative_test_on_file_frees_from_category_3_above_35_degrees(double flash, bool? sustains, string code) =>
        Assert.Equal(code, Codes(Judge(Facts(flash, 100, sustains))));

    [Theory]
    [InlineData("Flam. Liq. 1, H224", "GHS02", "Danger", "H224")]
    [InlineData("Flam. Liq. 2, H225", "GHS02", "Danger", "H225")]
    [InlineData("Flam. Liq. 3, H226", "GHS02", "Warning", "H226")]
    [Outside("CLP Annex I, Table 2.6.2, consolidated text of 1 May 2026; its pictogram from Annex V (from memory)")]
    public void The_label_has_the_elements_of_the_table(string claim, string pictogram, string word, string statement)
    {
        LabelElements label = Judge(Facts() with { Classes = [TestLaw.Claim(claim)] }).Label;
        Assert.Equal([pictogram], label.Pictograms.Select(p => p.Code.Code));
        Assert.Equal(word, label.SignalWord!.Text);
        Assert.Equal([statement], label.Hazard.Select(h => h.Code.Text));
        Assert.Contains("P210", label.Precautionary.Select(p => p.Code.Text));
        Assert.Contains("P501", label.Precautionary.Select(p => p.Code.Text));
    }

    public static TheoryData<string> Unknown() => ["nothing declared", "open cup", "no boiling point", "only above 59 degrees"];

    [Theory]
    [MemberData(nameof(Unknown))]
    public void What_is_not_known_is_said_and_never_taken_as_harmless(string what)
    {
        LiquidFacts? facts = what switch
        {
            "open cup" => Facts(90, 150, method: "open cup"),
            "no boiling point" => Facts(20),
            "only above 59 degrees" => Facts() with { FlashPoint = new FlashPoint(new Celsius(59), true, ClosedCup) },
            _ => null,
        };
        Assert.NotNull(Judge(facts, TestLaw.Line("ethanol", 80, ["Flam. Liq. 2"])).FlammabilityUnknown);
    }

    [Fact]
    public void A_flash_point_known_to_lie_above_every_category_is_known()
    {
        Verdict verdict = Judge(Facts() with { FlashPoint = new FlashPoint(new Celsius(60), true, ClosedCup) });
        Assert.Null(verdict.FlammabilityUnknown);
        Assert.Equal("", Codes(verdict));
    }

    [Theory]
    [InlineData(70, "Flam. Liq. 3, H226", "Flam. Liq. 3")]
    [InlineData(20, "Flam. Liq. 3, H226", "Flam. Liq. 2")]
    public void Of_a_measured_and_a_declared_class_the_worse_counts(double flash, string claim, string code) =>
        Assert.Equal(code, Codes(Judge(Facts(flash, 80) with { Classes = [TestLaw.Claim(claim)] })));

    [Theory]
    [InlineData(22.9, null, "not classified", null)] // Category 1 or 2
    [InlineData(23, null, "not classified", "Flam. Liq. 3")]
    [InlineData(22.9, null, "Flam. Liq. 3, H226", null)]
    [InlineData(22.9, null, "Flam. Liq. 2, H225", "Flam. Liq. 2")]
    [InlineData(22.9, null, "Flam. Liq. 1, H224", "Flam. Liq. 1")]
    [InlineData(22.9, 80.0, "not classified", "Flam. Liq. 2")]
    [Outside("CLP Annex I, Table 2.6.1, consolidated text of 1 May 2026: what a flash point without a boiling point leaves open")]
    public void A_document_does_not_make_harmless_what_a_flash_point_leaves_open(double flash, double? boiling, string told, string? code)
    {
        IReadOnlyList<HazardClaim> classes = told == "not classified" ? [] : [TestLaw.Claim(told)];
        Verdict verdict = Judge(Facts(flash, boiling) with { Classes = classes });
        Assert.Equal(code is null, verdict.FlammabilityUnknown is not null);
        Assert.Equal(code ?? "", Codes(verdict));
    }

    [Theory]
    [InlineData(35, false, true)]
    [InlineData(34.9, false, false)]
    [InlineData(59.9, true, false)]
    [InlineData(60, true, true)]
    [Outside("CLP Annex I, Table 2.6.1 and 2.6.4.5, consolidated text of 1 May 2026")]
    public void A_flash_point_above_35_degrees_is_enough_where_the_test_was_negative(double above, bool sustains, bool known)
    {
        LiquidFacts facts = Facts(sustains: sustains) with { FlashPoint = new FlashPoint(new Celsius(above), true, ClosedCup) };
        Assert.Equal(known, Judge(facts).FlammabilityUnknown is null);
        Assert.Equal("", Codes(Judge(facts)));
    }

    [Fact]
    public void A_class_that_the_boiling_point_rules_out_does_not_settle_a_flash_point_known_to_lie_above_a_figure()
    {
        LiquidFacts Above(double boiling) =>
            Facts(boiling: boiling) with
            {
                FlashPoint = new FlashPoint(new Celsius(10), true, ClosedCup),
                Classes = [TestLaw.Claim("Flam. Liq. 2, H225")],
            };
        Assert.NotNull(Judge(Above(35)).FlammabilityUnknown);
        Assert.Equal("Flam. Liq. 2", Codes(Judge(Above(35.1))));
    }

    [Fact]
    public void A_class_from_a_document_comes_with_no_figure_that_nobody_measured()
    {
        double? ValueOf(LiquidFacts facts) => Assert.Single(Judge(facts).Classification.Classes).Working.Value;
        IReadOnlyList<HazardClaim> flammable = [TestLaw.Claim("Flam. Liq. 3, H226")];
        Assert.Null(ValueOf(Facts() with { Classes = flammable }));
        Assert.Null(ValueOf(Facts(70, 150) with { Classes = flammable }));
        Assert.Equal(40, ValueOf(Facts(40, 150) with { Classes = flammable }));
    }

    [Theory]
    [InlineData(9.9, 0, 5, "")]
    [InlineData(10, 0, 5, "Asp. Tox. 1")]
    [InlineData(9.5, 0.9, 5, "")]
    [InlineData(9.5, 1, 5, "Asp. Tox. 1")]
    [InlineData(50, 0, 20.5, "Asp. Tox. 1")]
    [InlineData(50, 0, 20.6, "")]
    [Outside("CLP Annex I, 3.10.3.3.1.1 and 3.10.3.3.1.2 and Table 1.1, consolidated text of 1 May 2026")]
    public void Aspiration_goes_by_share_and_viscosity(double one, double other, double viscosity, string code)
    {
        Ingredient[] lines =
        [
            TestLaw.Line("terpene", one, ["Asp. Tox. 1"]),
            .. other > 0 ? [TestLaw.Line("another", other, ["Asp. Tox. 1"])] : Array.Empty<Ingredient>(),
        ];
        Assert.Equal(code, Codes(Judge(Facts(90, 150, viscosity: viscosity), lines)));
    }

    [Fact]
    public void A_viscosity_that_nobody_measured_is_taken_as_low_and_a_solid_has_none()
    {
        Ingredient terpene = TestLaw.Line("terpene", 12, ["Asp. Tox. 1"]);
        Assert.Equal("Asp. Tox. 1", Codes(Judge(Facts(90, 150), terpene)));
        Assert.NotNull(Judge(Facts(90, 150), terpene).RestsOnViscosity);
        Assert.Equal("", TestLaw.Codes(terpene));
    }

    [Theory]
    [InlineData(61, 1, null, true)]
    [InlineData(61, 1, false, false)]
    [InlineData(61, 0.5, null, false)] // not hazardous: no statement of Annex II, Part 1
    [InlineData(20, 1, null, false)] // flammable itself
    [InlineData(60, 1, true, false)]
    [InlineData(60.1, 1, true, true)]
    [Outside("CLP Art. 25(1) and Annex II, 1.1, consolidated text of 1 May 2026")]
    public void Euh018_is_for_hazardous_liquids_that_are_not_flammable_themselves(double flash, double sensitiser, bool? forms, bool due)
    {
        Verdict verdict = Judge(
            Facts(flash, 80) with
            {
                FormsFlammableVapour = forms,
            },
            TestLaw.Line("ethanol", 8, ["Flam. Liq. 2"]),
            TestLaw.Line("sensitiser", sensitiser, ["Skin Sens. 1B"])
        );
        Assert.Equal(due, verdict.Label.Supplemental.Any(s => s.Code.Text == "EUH018"));
    }

    [Theory]
    [InlineData(125, true)]
    [InlineData(125.1, false)]
    [Outside("CLP Annex I, 1.5.2.1.1, consolidated text of 1 May 2026")]
    public void Statements_of_categories_2_and_3_may_go_from_small_packages(double millilitres, bool may)
    {
        foreach ((double flash, string statement) in new[] { (20.0, "H225"), (40.0, "H226") })
        {
            Assert.Equal(may, LeftOff(Judge(Facts(flash, 80)), millilitres).Contains(statement));
        }

        Assert.DoesNotContain("H224", LeftOff(Judge(Facts(20, 30)), millilitres));
    }

    private static IEnumerable<string> LeftOff(Verdict verdict, double millilitres) =>
        SmallPackages.MayLeaveOff(TestLaw.Eu, verdict.Classification, verdict.Label, new Millilitres(millilitres)).Select(s => s.Code.Text);

    [Theory]
    [InlineData(10, "Skin Sens. 1B", true)]
    [InlineData(10.1, "Skin Sens. 1B", false)]
    [InlineData(10, "Asp. Tox. 1", false)]
    [Outside("CLP Annex I, 1.5.2.4.1, as replaced by Regulation (EU) 2024/2865")]
    public void A_flammable_sample_of_10_ml_may_go_without_most_of_its_label(double millilitres, string other, bool may)
    {
        Verdict verdict = Judge(Facts(20, 80), TestLaw.Line("s", 12, [other]));
        InnerPackage? inner = InnerPackages.Of(
            TestLaw.Eu.SmallPackages,
            TestLaw.Today,
            verdict.Classification,
            verdict.Label,
            new Millilitres(millilitres),
            LabelPlace.OnVessel
        );
        Assert.Equal(may, inner is not null);
        Assert.DoesNotContain("GHS02", inner?.Pictograms.Select(p => p.Code) ?? []);
    }

    [Theory]
    [InlineData(20, 30, "UN 1993", "I", 100, false)]
    [InlineData(20, 80, "UN 1266", "II", 5000, true)]
    [InlineData(20, 80, "UN 1266", "II", 5001, false)]
    [InlineData(40, 80, "UN 1266", "III", 5000, true)]
    [Outside("ADR Table A of 2017, UN 1266 and UN 1993, columns 4 and 7a")]
    public void Flammable_liquids_travel_by_their_packing_group(
        double flash,
        double boiling,
        string un,
        string group,
        double ml,
        bool limited
    )
    {
        SheetTransport transport = SheetTransport.Of(
            TestLaw.Eu.SafetySheet.Transport,
            Judge(Facts(flash, boiling)).Classification,
            PhysicalState.Liquid,
            new Grams(ml),
            new Millilitres(ml)
        );
        Assert.Equal((un, group, limited), (transport.Entry.UnNumber, transport.Entry.PackingGroup, transport.IsLimitedQuantity));
    }

    [Theory]
    [InlineData(5000, true)]
    [InlineData(5001, false)]
    [Outside("ADR special provision 375, as a public notice of ADR 2015 quotes it")]
    public void Liquids_that_are_dangerous_to_waters_alone_are_free_in_small_packages(double ml, bool free)
    {
        SheetTransport transport = SheetTransport.Of(
            TestLaw.Eu.SafetySheet.Transport,
            Judge(Facts(90, 200), TestLaw.Line("s", 30, ["Aquatic Chronic 2"])).Classification,
            PhysicalState.Liquid,
            new Grams(ml),
            new Millilitres(ml)
        );
        Assert.Equal(("UN 3082", free), (transport.Entry.UnNumber, transport.IsSmallPackage));
    }

    private static bool Stops(Assessment a, string words) =>
        a.Findings.Any(f => f.Gravity == Gravity.Stop && f.What.Contains(words, StringComparison.Ordinal));

    [Theory]
    [InlineData("celsius: 19", true)]
    [InlineData("celsius: 24", false)]
    [Outside("CLP Annex II, 3.2.1, consolidated text of 1 May 2026: flammable liquids of Categories 1 and 2")]
    public void A_tactile_mark_is_due_by_the_category(string flash, bool due)
    {
        using var folder = new MakersFolder();
        folder
            .Change("vessels/spray-bottle-100.yaml", "tactileWarning: yes", "tactileWarning: no")
            .Change("candles/sailcloth-spray.yaml", "celsius: 19", flash);
        Assert.Equal(due, Stops(folder.Assess("sailcloth-spray", "IE"), "a warning of danger that can be felt"));
    }

    [Theory]
    [InlineData("2026-06-30", false)]
    [InlineData("2026-07-01", true)]
    [Outside("CLP Art. 35(2a) and Annex II, 3.4, as Regulation (EU) 2024/2865 adds them: skin sensitisation")]
    public void A_sensitiser_is_not_refilled_in_a_shop(string day, bool stops)
    {
        using var folder = new MakersFolder();
        folder.Change("candles/dune-refill.yaml", "kind: diffuser-refill", "kind: diffuser-refill\nrefilledInShop: yes");
        Assert.Equal(
            stops,
            Stops(
                folder.Assess("dune-refill", "IE", DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture)),
                "must not be refilled in a shop"
            )
        );
    }

    [Fact]
    public void Without_a_flash_point_no_label_is_printed()
    {
        using var folder = new MakersFolder();
        folder.Change("candles/dune-reeds.yaml", "  flashPoint: { celsius: 71, method: EN ISO 3679 }\n", "");
        Assert.True(Stops(folder.Assess("dune-reeds", "IE"), "Whether the liquid is flammable is not known"));
    }
}
