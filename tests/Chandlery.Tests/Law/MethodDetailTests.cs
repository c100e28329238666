using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Classified;
using Chandlery.Core.Classified.Methods;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>The corners of the methods, one by one.</summary>
public sealed class MethodDetailTests
{
    private static HazardCategory Category(string code) => TestLaw.Lawbook.Vocabulary.Find(code)!;

    private static SubstanceHazard Hazard(string code, double m = 1) => new(Category(code), Category(code).Statement, "", m, true, "test");

    private static Substance With(string code, bool milder = false, double m = 1, params (string Code, double From)[] limits) =>
        Of("x", 1, 1) with
        {
            Hazards = [Hazard(code, m)],
            OwnLimits =
            [
                .. limits
                    .GroupBy(l => Category(l.Code).Group)
                    .Select(g => new OwnLimits(
                        g.Key,
                        [.. g.Select(l => new SpecificLimit(Category(l.Code), new MassPercent(l.From), null))],
                        milder
                    )),
            ],
        };

    private static double OwnLimit(Rung rung, Term term, Substance substance) =>
        LimitMethod.OwnLimit(rung, term, substance.Hazards[0], substance);

    private static (Rung Rung, Term Term) Rung(string group, string result, string hazard)
    {
        LimitRule rule = TestLaw.Eu.Rules.OfType<LimitRule>().First(r => r.Group == group);
        Rung rung = rule.Rungs.First(r => r.Result.Code == result);
        return (rung, rung.Terms.First(t => t.Hazards.Contains(Category(hazard))));
    }

    [Theory]
    [InlineData(5, false, 5)]
    [InlineData(5, true, 5)]
    [InlineData(15, false, 10)]
    [InlineData(15, true, 15)]
    [Outside("CLP Art. 10(1) and Annex I, 3.2.3.3.2: a specific limit replaces the general one (10 %, Table 3.2.3)")]
    public void A_milder_own_limit_counts_only_when_every_source_gives_it(double own, bool milder, double limit)
    {
        (Rung rung, Term term) = Rung("skin corrosion and irritation", "Skin Irrit. 2", "Skin Irrit. 2");
        Assert.Equal(limit, OwnLimit(rung, term, With("Skin Irrit. 2", milder, 1, ("Skin Irrit. 2", own))));
    }

    [Theory]
    [InlineData("Skin Sens. 1A", "Skin Sens. 1", "Skin Sens. 1A", 0.02)]
    [InlineData("Skin Sens. 1A", "Skin Sens. 1A", "Skin Sens. 1A", 0.02)]
    [InlineData("Skin Sens. 1A", "Resp. Sens. 1A", "Skin Sens. 1A", 0.1)]
    [InlineData("Skin Sens. 1A", "Skin Irrit. 2", "Skin Sens. 1A", 0.1)]
    public void A_limit_fits_its_own_class_whatever_the_letter(string hazard, string limitFor, string countedAs, double expected)
    {
        LimitRule rule = TestLaw.Eu.Rules.OfType<LimitRule>().First(r => r.Group == "skin sensitisation");
        Rung rung = rule.Rungs.First(r => r.Terms.Any(t => t.Hazards.Contains(Category(countedAs))));
        Term term = rung.Terms.First(t => t.Hazards.Contains(Category(countedAs)));
        Assert.Equal(expected, OwnLimit(rung, term, With(hazard, false, 1, (limitFor, 0.02))), 12);
    }

    [Fact]
    public void A_limit_for_one_effect_is_none_for_another()
    {
        (Rung rung, Term term) = Rung("single exposure, narcotic effects", "STOT SE 3 (narcotic effects)", "STOT SE 3 (narcotic effects)");
        Assert.Equal(20, OwnLimit(rung, term, With("STOT SE 3 (narcotic effects)", false, 1, ("STOT SE 3 (respiratory irritation)", 5))));
        Assert.Equal(5, OwnLimit(rung, term, With("STOT SE 3 (narcotic effects)", false, 1, ("STOT SE 3 (narcotic effects)", 5))));
        (Rung corrosive, Term own) = Rung("skin corrosion and irritation", "Skin Irrit. 2", "Skin Corr. 1B");
        Assert.Equal(1, OwnLimit(corrosive, own, With("Skin Corr. 1B", false, 1, ("Skin Corr. 1B", 0.5))));
    }

    [Fact]
    [Outside("CLP Annex I, Table 4.1.2: M multiplies Chronic 1 only in the sums that say so")]
    public void M_divides_a_limit_only_where_the_term_uses_it()
    {
        (Rung chronic, Term withM) = Rung("aquatic, chronic", "Aquatic Chronic 1", "Aquatic Chronic 1");
        Assert.Equal(2.5, OwnLimit(chronic, withM, With("Aquatic Chronic 1", m: 10)));
        Assert.Equal(0.01, LimitMethod.IgnoreBelow(withM, Hazard("Aquatic Chronic 1", m: 10), ownLimit: 2.5), 12);
        (Rung sens, Term without) = Rung("skin sensitisation", "Skin Sens. 1B", "Skin Sens. 1B");
        Assert.Equal(1, OwnLimit(sens, without, With("Skin Sens. 1B", m: 10)));
    }

    [Fact]
    public void A_natural_oil_counts_whole_where_substances_are_not_added()
    {
        Substance oil = Of("Orange oil", 2, 10);
        Assert.Equal(2, LimitMethod.Share(adds: true, oil).Value);
        Assert.Equal(10, LimitMethod.Share(adds: false, oil).Value);
    }

    private static Substance Of(string name, double high, double whole, params ToxicityEstimate[] toxicity) =>
        new Substance
        {
            Ingredient = new ComposedIngredient(
                new SubstanceIdentity(name, null, null),
                MassPercent.Zero,
                new MassPercent(high),
                new MassPercent(whole),
                []
            ),
            IsKnown = true,
            Hazards = [],
            FromLimits = [],
            OwnLimits = [],
            Toxicity = toxicity,
            Name = name,
            NonAdditiveKind = null,
            Remarks = [],
        };

    [Theory]
    [InlineData(new double[0], false, 0.01)]
    [InlineData(new[] { 0.05 }, false, 0.005)]
    [InlineData(new[] { 0.05 }, true, 0.005)]
    [InlineData(new[] { 1.0 }, false, 0.01)]
    [InlineData(new[] { 1.0 }, true, 0.1)]
    [InlineData(new[] { 0.05, 0.02 }, false, 0.002)]
    [Outside("CLP Annex I, Table 3.4.6 and note 1: 0.01 % for 1A, or a tenth of the specific limit")]
    public void A_tenth_of_the_lowest_own_limit_elicits(double[] limits, bool milder, double expected)
    {
        Elicitation elicitation = TestLaw.Eu.Rules.OfType<LimitRule>().First(r => r.Group == "skin sensitisation").Elicitation!;
        Substance substance = With("Skin Sens. 1A", milder, 1, [.. limits.Select(l => ("Skin Sens. 1A", l))]);
        Assert.Equal(expected, ElicitationMethod.LimitFor(elicitation, substance.Hazards[0], substance)!.Value.Value, 12);
        Assert.Null(ElicitationMethod.LimitFor(elicitation, Hazard("Skin Irrit. 2"), substance));
    }

    private static AcuteToxicityRule Acute(string group) => TestLaw.Eu.Rules.OfType<AcuteToxicityRule>().First(r => r.Group == group);

    private static ToxicityEstimate Oral(double value) => new(ExposureRoute.Oral, value);

    private static ClassResult? Evaluate(string group, double unknown, params Substance[] substances) =>
        AcuteToxicityMethod.Evaluate(Acute(group), substances, new MassPercent(unknown));

    [Theory]
    [InlineData(0, 1000)]
    [InlineData(10, 1000)]
    [InlineData(10.1, 899)]
    [InlineData(20, 800)]
    [Outside("CLP Annex I, 3.1.3.6.2.3: taken out of the hundred when over 10 %")]
    public void Unknown_shares_are_taken_out_only_above_a_tenth(double unknown, double estimate) =>
        Assert.Equal(estimate, Evaluate("acute toxicity, oral", unknown, Of("x", 30, 30, Oral(300)))!.Working.Value!.Value, 9);

    [Fact]
    [Outside("CLP Annex I, 3.1.3.6.2.3: over 10 %; nine point one and nine tenths are ten, whatever binary fractions make of them")]
    public void Exactly_a_tenth_is_not_more_than_a_tenth() =>
        Assert.Equal(1000, Evaluate("acute toxicity, oral", 9.1 + 0.9 + 1e-12, Of("x", 30, 30, Oral(300)))!.Working.Value!.Value, 9);

    [Fact]
    public void Nothing_toxic_gives_no_class() => Assert.Null(Evaluate("acute toxicity, oral", 0, Of("x", 30, 30)));

    [Fact]
    public void Ingredients_known_in_different_forms_are_added_each_against_its_own_bound()
    {
        var vapour = new ToxicityEstimate(ExposureRoute.InhalationVapour, 12);
        var dust = new ToxicityEstimate(ExposureRoute.InhalationDust, 3);
        Assert.Null(Evaluate("acute toxicity, inhalation", 0, Of("x", 50, 50, vapour)));
        Assert.Null(Evaluate("acute toxicity, inhalation", 0, Of("y", 50, 50, dust)));
        ClassResult both = Evaluate("acute toxicity, inhalation", 0, Of("x", 50, 50, vapour), Of("y", 50, 50, dust))!;
        Assert.Equal("Acute Tox. 4 (inhalation)", both.Category.Code);
        Assert.Equal(("%", 100.0), (both.Working.Unit, both.Working.Threshold));
        Assert.Equal((50 * 20 / 12.0) + (50 * 5 / 3.0), both.Working.Value!.Value, 9);
    }

    [Fact]
    public void The_working_starts_with_what_matters_most_and_leaves_out_what_does_not_count()
    {
        ClassResult result = AcuteToxicityMethod.Evaluate(
            Acute("acute toxicity, oral"),
            [Of("mild", 50, 50, Oral(1500)), Of("strong", 20, 20, Oral(301)), Of("trace", 0.5, 0.5, Oral(400))],
            MassPercent.Zero
        )!;
        Assert.Equal(["strong", "mild"], result.Working.Lines.Select(l => l.Substance));
    }

    [Fact]
    [Outside("CLP Annex I, 1.5.2.1.1 and 1.5.2.1.2: relief up to 125 ml, class by class")]
    public void On_small_packages_only_statements_of_relieved_classes_may_go()
    {
        Classification c = TestLaw.Classify(
            TestLaw.Line("a", 20, ["Skin Irrit. 2, H315"]),
            TestLaw.Line("b", 2, ["Skin Sens. 1B, H317"]),
            TestLaw.Line("d", 30, ["Aquatic Chronic 3, H412"])
        );
        LabelElements label = LabelSelector.Select(TestLaw.Eu, c, new PrecautionChoices(TestLaw.Eu.Precautions));
        List<string> gone = [.. SmallPackages.MayLeaveOff(TestLaw.Eu, c, label, new Millilitres(125)).Select(g => g.Code.Text)];
        Assert.Contains("H315", gone);
        Assert.DoesNotContain("H317", gone);
        Assert.DoesNotContain("H412", gone);
        foreach (StatementChoice precaution in label.Precautionary)
        {
            bool calledByKept = TestLaw.Eu.Precautions.Offers.Any(o =>
                o.Code == precaution.Code && o.For.Contains(StatementCode.Of("H317"))
            );
            bool calledByRelieved = TestLaw.Eu.Precautions.Offers.Any(o =>
                o.Code == precaution.Code && (o.For.Contains(StatementCode.Of("H315")) || o.For.Contains(StatementCode.Of("H412")))
            );
            Assert.Equal(!calledByKept && calledByRelieved, gone.Contains(precaution.Code));
        }

        Assert.Empty(SmallPackages.MayLeaveOff(TestLaw.Eu, c, label, new Millilitres(125.01)));
    }
}
