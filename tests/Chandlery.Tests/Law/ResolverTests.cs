using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>Whose word on a substance counts.</summary>
public sealed class ResolverTests
{
    private static readonly DateOnly Day = TestLaw.Today;

    private static Ingredient Line(
        string[]? classes,
        string[]? limits = null,
        double? acuteM = null,
        double? chronicM = null,
        ToxicityEstimate[]? ate = null
    ) =>
        TestLaw.Line("d-Limonene", 10, classes ?? [], limits, cas: "5989-27-5", ate: ate) with
        {
            Claims = classes is null ? null : [.. classes.Select(TestLaw.Claim)],
            AcuteM = acuteM,
            ChronicM = chronicM,
        };

    // Two sheets about one substance, each in its own oil.
    private static Substance Resolve(SubstanceList list, params Ingredient[] sheets) => Resolve(list, true, sheets);

    private static Substance Resolve(SubstanceList list, bool binding, params Ingredient[] sheets)
    {
        List<OilShare> oils = [.. sheets.Select((s, i) => new OilShare(Oil(i, s), new MassPercent(50), new MassPercent(50)))];
        var recipe = new Recipe(oils, [], [], MassPercent.Zero, MassPercent.Zero, MassPercent.Whole, MassPercent.Zero);
        return new SubstanceResolver(list, Day, new HarmonisedClasses(binding, "CLP Annex VI, {index} ({act})", Citation.None))
            .Resolve(Composer.Compose(recipe))
            .Single(s => s.Ingredient.Identity.Cas?.Text == "5989-27-5");
    }

    private static Oil Oil(int i, Ingredient line) => TestLaw.Oil($"oil{i}", $"Oil {i}", line) with { Document = $"SDS {i}" };

    private static SubstanceList Nothing => SubstanceList.Empty;

    private static SubstanceList Harmonised(
        string[] classes,
        string[]? limits = null,
        double? acuteM = null,
        double? chronicM = null,
        ToxicityEstimate[]? ate = null
    ) =>
        TestLaw.Listing(
            TestLaw.Listed("5989-27-5", "Limonene by law", "another name of the law") with
            {
                IndexNumber = "601-096-00-2",
                Classes = [.. classes.Select(c => new HarmonisedClass(c, TestLaw.Claim(c), false))],
                Limits =
                [
                    .. (limits ?? []).Select(l => new SpecificLimit(
                        TestLaw.Claim(l.Split(':')[0]).Category,
                        new MassPercent(double.Parse(l.Split(':')[1], System.Globalization.CultureInfo.InvariantCulture)),
                        null
                    )),
                ],
                AcuteM = acuteM,
                ChronicM = chronicM,
                Toxicity = ate ?? [],
            }
        );

    [Fact]
    public void The_worst_word_of_two_sheets_counts_and_the_difference_is_said()
    {
        Substance s = Resolve(Nothing, Line(["Skin Sens. 1B, H317"]), Line(["Skin Sens. 1A, H317"]));
        SubstanceHazard hazard = Assert.Single(s.Hazards);
        Assert.Equal("Skin Sens. 1A", hazard.Category.Code);
        Assert.Equal("Oil 1 (SDS 1, revised 2026-11-25)", hazard.Source);
        string remark = Assert.Single(s.Remarks);
        Assert.StartsWith(
            "d-Limonene: the sheets disagree; the worst class, Skin Sens. 1A (Oil 1 (SDS 1",
            remark,
            StringComparison.Ordinal
        );
        Assert.EndsWith("), is used.", remark, StringComparison.Ordinal);
    }

    [Fact]
    public void Equal_words_of_two_sheets_are_named_both_and_need_no_remark()
    {
        Substance s = Resolve(Nothing, Line(["Skin Sens. 1B, H317"]), Line(["Skin Sens. 1B, H317"]));
        Assert.Empty(s.Remarks);
        Assert.Contains("Oil 0", s.Hazards[0].Source, StringComparison.Ordinal);
        Assert.Contains("; Oil 1", s.Hazards[0].Source, StringComparison.Ordinal);
    }

    [Fact]
    [Outside("CLP Art. 4(3)")]
    public void A_harmonised_class_overrides_a_weaker_word()
    {
        Substance s = Resolve(Harmonised(["Skin Sens. 1A, H317"]), Line(["Skin Sens. 1B, H317"]));
        Assert.Equal("Skin Sens. 1A", s.Hazards.Single().Category.Code);
        Assert.Equal("Limonene by law", s.Name);
        Assert.Contains(
            "the harmonised class Skin Sens. 1A (CLP Annex VI, 601-096-00-2 (an act)) is used; the supplier's sheet says Skin Sens. 1B.",
            Assert.Single(s.Remarks),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_harmonised_class_that_no_sheet_has_is_added()
    {
        Substance s = Resolve(Harmonised(["Skin Sens. 1A, H317"]), Line([]));
        Assert.Equal("Skin Sens. 1A", s.Hazards.Single().Category.Code);
        Assert.Contains("the supplier's sheet does not have it.", Assert.Single(s.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_harmonised_classes_do_not_bind_they_are_evidence() =>
        Assert.Contains(
            "is used as evidence, though it does not bind here; ",
            Assert.Single(Resolve(Harmonised(["Skin Sens. 1A, H317"]), false, Line([])).Remarks),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_harsher_word_of_the_supplier_is_kept_and_said()
    {
        Substance s = Resolve(Harmonised(["Skin Sens. 1B, H317"]), Line(["Skin Sens. 1A, H317"]));
        Assert.Equal("Skin Sens. 1A", s.Hazards.Single().Category.Code);
        string remark = Assert.Single(s.Remarks);
        Assert.StartsWith("d-Limonene: the supplier's class Skin Sens. 1A (Oil 0 (SDS 0, ", remark, StringComparison.Ordinal);
        Assert.EndsWith(
            ") is harsher than the harmonised class Skin Sens. 1B (CLP Annex VI, 601-096-00-2 (an act)), and is kept.",
            remark,
            StringComparison.Ordinal
        );
        Assert.Equal(s.Remarks, s.Differences);
    }

    [Fact]
    public void A_hazard_of_the_suppliers_beyond_the_entry_needs_no_remark() =>
        Assert.Empty(Resolve(Harmonised(["Skin Sens. 1B, H317"]), Line(["Skin Sens. 1B, H317", "Eye Irrit. 2, H319"])).Remarks);

    [Fact]
    public void A_silent_sheet_beside_a_speaking_one_is_said()
    {
        Substance s = Resolve(Nothing, Line(null), Line(["Skin Sens. 1B, H317"]));
        Assert.True(s.IsKnown);
        Assert.Equal(
            "d-Limonene: one sheet says nothing about its classes; those of the other sheet are used for all of it.",
            Assert.Single(s.Remarks)
        );
        Assert.False(Resolve(Nothing, Line(null)).IsKnown);
        Assert.Empty(Resolve(Nothing, Line(null)).Remarks);
        Assert.True(Resolve(Harmonised(["Skin Sens. 1B, H317"]), Line(null)).IsKnown);
    }

    [Fact]
    public void The_lowest_specific_limit_counts_and_a_milder_one_only_when_all_have_it()
    {
        Substance both = Resolve(
            Nothing,
            Line(["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.05"]),
            Line(["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.02"])
        );
        Assert.Equal(0.02, both.OwnLimits.Single().Limits.Single().From.Value);
        Assert.True(both.OwnLimits.Single().MilderCount);
        Substance one = Resolve(Nothing, Line(["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.05"]), Line(["Skin Sens. 1A, H317"]));
        Assert.False(one.OwnLimits.Single().MilderCount);
        Assert.False(
            Resolve(Harmonised(["Skin Sens. 1A, H317"]), Line(["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.05"]))
                .OwnLimits.Single()
                .MilderCount
        );
        Assert.True(
            Resolve(
                Harmonised(["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.04"]),
                Line(["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.05"])
            )
                .OwnLimits.Single()
                .MilderCount
        );
        Substance other = Resolve(Nothing, Line(["Skin Sens. 1A, H317"], ["Skin Irrit. 2, H315:5"]));
        Assert.Null(other.LimitsIn("skin sensitisation"));
        Substance silent = Resolve(Nothing, Line(["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.05"]), Line(["Eye Irrit. 2, H319"]));
        Assert.True(silent.OwnLimits.Single().MilderCount);
        Assert.Equal("Skin Irrit. 2", other.FromLimits.Single().Category.Code);
    }

    [Theory]
    [Outside(
        "CLP Art. 4(3) and Art. 10(1): a class of the table binds with its limits; what a supplier knows to be worse is the supplier's"
    )]
    [InlineData("Repr. 1B, H360D", "", true)]
    [InlineData("Repr. 1B, H360D", "Repr. 1B:3", true)]
    [InlineData("", "", true)]
    [InlineData("Repr. 1A, H360D", "", false)]
    [InlineData("Repr. 1B, H360FD", "", false)]
    [InlineData("Repr. 1B, H360", "", false)]
    public void A_sheet_that_repeats_the_class_of_an_entry_need_not_repeat_its_limit(string said, string limit, bool counts)
    {
        Substance s = Resolve(
            Harmonised(["Repr. 1B, H360D"], ["Repr. 1B, H360D:3"]),
            Line(said.Length == 0 ? [] : [said], limit.Length == 0 ? null : [limit])
        );
        Assert.Equal(counts, s.OwnLimits.Single().MilderCount);
        Assert.Equal(!counts, s.Differences.Any(d => d.Contains("count only where they are stricter", StringComparison.Ordinal)));
        Assert.False(
            Resolve(Harmonised(["Repr. 1B, H360D"], ["Repr. 1B, H360D:3"]), false, Line(["Repr. 1B, H360D"])).OwnLimits.Single().MilderCount
        );
    }

    [Fact]
    public void A_limit_of_the_supplier_beside_the_law_s_is_said()
    {
        SubstanceList law = Harmonised(["Repr. 1B, H360D"], ["Repr. 1B, H360D:3"]);
        Substance lower = Resolve(law, Line(["Repr. 1B, H360D"], ["Repr. 1B, H360D:1"]));
        Assert.Equal(1, lower.OwnLimits.Single().Limits.Single().From.Value);
        Assert.StartsWith(
            "d-Limonene: the supplier's limit for Repr. 1B, 1 % (Oil 0",
            Assert.Single(lower.Differences),
            StringComparison.Ordinal
        );
        Substance higher = Resolve(law, Line(["Repr. 1B, H360D"], ["Repr. 1B, H360D:5"]));
        Assert.Equal(3, higher.OwnLimits.Single().Limits.Single().From.Value);
        Assert.EndsWith("is used; the supplier's sheet says 5 %.", Assert.Single(higher.Differences), StringComparison.Ordinal);
    }

    [Fact]
    public void An_M_factor_of_the_supplier_beside_the_law_s_is_said()
    {
        SubstanceList law = Harmonised(["Aquatic Acute 1, H400"], acuteM: 2);
        Substance higher = Resolve(law, Line(["Aquatic Acute 1, H400"], acuteM: 10));
        Assert.Equal(10, higher.Hazards.Single().M);
        Assert.EndsWith(
            "is higher than the harmonised 2 (CLP Annex VI, 601-096-00-2 (an act)), and is kept.",
            Assert.Single(higher.Differences),
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "is used; the supplier's sheet says 1.",
            Assert.Single(Resolve(law, Line(["Aquatic Acute 1, H400"], acuteM: 1)).Differences),
            StringComparison.Ordinal
        );
        Assert.Empty(Resolve(law, Line(["Aquatic Acute 1, H400"], acuteM: 2)).Differences);
        Assert.Empty(Resolve(law, Line(["Aquatic Acute 1, H400"])).Differences);
    }

    [Fact]
    public void The_highest_M_counts_each_for_its_own_class()
    {
        Substance s = Resolve(
            Nothing,
            Line(["Aquatic Acute 1, H400", "Aquatic Chronic 1, H410"], acuteM: 10, chronicM: 1),
            Line(["Aquatic Acute 1, H400", "Aquatic Chronic 1, H410"], acuteM: 1, chronicM: 100)
        );
        Assert.Equal(10, s.Hazards.Single(h => h.Category.Code == "Aquatic Acute 1").M);
        Assert.Equal(100, s.Hazards.Single(h => h.Category.Code == "Aquatic Chronic 1").M);
        Assert.All(s.Hazards, h => Assert.True(h.MIsKnown));
        Substance unknown = Resolve(Nothing, Line(["Aquatic Acute 1, H400", "Aquatic Chronic 1, H410", "Skin Sens. 1B, H317"]));
        Assert.Equal([false, false, true], unknown.Hazards.Select(h => h.MIsKnown));
        Assert.All(unknown.Hazards, h => Assert.Equal(1, h.M));
        Substance other = Resolve(Nothing, Line(["Aquatic Chronic 2, H411", "Skin Irrit. 2, H315"], acuteM: 10, chronicM: 10));
        Assert.All(other.Hazards, h => Assert.Equal((1d, true), (h.M, h.MIsKnown)));
        Assert.Equal(
            10,
            Resolve(Harmonised(["Aquatic Acute 1, H400"], acuteM: 10), Line(["Aquatic Acute 1, H400"], acuteM: 1)).Hazards.Single().M
        );
    }

    [Fact]
    public void The_lowest_estimate_of_each_route_counts_and_the_harmonised_one_before_all()
    {
        ToxicityEstimate Oral(double value) => new(ExposureRoute.Oral, value);
        Substance s = Resolve(
            Nothing,
            Line(["Acute Tox. 4, H302"], ate: [Oral(900)]),
            Line(["Acute Tox. 4, H302"], ate: [Oral(600), new ToxicityEstimate(ExposureRoute.Dermal, 1500)])
        );
        Assert.Equal([600d, 1500d], s.Toxicity.Select(t => t.Value));
        Assert.Equal(
            [1000d],
            Resolve(Harmonised(["Acute Tox. 4, H302"], ate: [Oral(1000)]), Line(["Acute Tox. 4, H302"], ate: [Oral(600)]))
                .Toxicity.Select(t => t.Value)
        );
        // Where the entry is only evidence, nothing raises what a sheet says.
        Assert.Equal(
            [600d],
            Resolve(Harmonised(["Acute Tox. 4, H302"], ate: [Oral(1000)]), false, Line(["Acute Tox. 4, H302"], ate: [Oral(600)]))
                .Toxicity.Select(t => t.Value)
        );
        Assert.Equal(
            [500d],
            Resolve(Harmonised(["Acute Tox. 4, H302"], ate: [Oral(500)]), false, Line(["Acute Tox. 4, H302"], ate: [Oral(600)]))
                .Toxicity.Select(t => t.Value)
        );
    }

    [Fact]
    [Outside("CLP Art. 18(2)(a): the name of a listed substance is one that the table gives")]
    public void Names_come_from_the_law_first_then_the_cosmetics_law_then_the_trade_then_the_sheet()
    {
        Assert.Equal("d-Limonene", Resolve(Nothing, Line([])).Name);
        Assert.Equal("Limonene", Resolve(Knowing(new("5989-27-5", null, ["carvene"], null, "Limonene")), Line([])).Name);
        Assert.Equal("carvene", Resolve(Knowing(new("5989-27-5", null, ["carvene"], null, null)), Line([])).Name);
        Assert.Equal("d-Limonene", Resolve(Knowing(new("5989-27-5", null, ["carvene", "D-LIMONENE"], null, null)), Line([])).Name);
        Assert.Equal(
            "Another name of the law",
            Resolve(
                TestLaw.Listing(
                    TestLaw.Listed("5989-27-5", "by law", "another name of the law") with
                    {
                        Classes = [new("Skin Sens. 1, H317", TestLaw.Claim("Skin Sens. 1, H317"), false)],
                    },
                    new KnownSubstance("5989-27-5", null, ["Another name of the law"], null, "Limonene")
                ),
                Line([])
            ).Name
        );
    }

    [Fact]
    public void An_allergen_that_is_several_substances_names_none_of_them()
    {
        var pinene = new KnownSubstance("5989-27-5", null, ["one of them"], null, "Several") { SharesAllergenName = true };
        Assert.Equal("one of them", Resolve(Knowing(pinene), Line([])).Name);
    }

    private static SubstanceList Knowing(KnownSubstance known) => new(null, [], new Lazy<IReadOnlyList<KnownSubstance>>([known]), [], []);
}
