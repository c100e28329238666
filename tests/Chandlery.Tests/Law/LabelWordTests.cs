using System.Text.RegularExpressions;
using Chandlery.Core.Assessed;
using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>Words on the label that depend on substances: names, organs, statements of single ingredients.</summary>
public sealed class LabelWordTests
{
    private static Language English => TestLaw.Lawbook.FindLanguage("en")!;

    private static string Said(string code, LabelElements label) => StatementText.Printed(English, StatementCode.Of(code), label);

    [Fact]
    [Outside("CLP Annex I, Table 3.9.5: state all organs affected, if known, consolidated text of 1 May 2026")]
    public void Organs_that_every_cause_names_are_printed()
    {
        LabelElements one = TestLaw.Label(TestLaw.Line("a", 12, ["STOT RE 2, H373 (kidneys)"]));
        Assert.Equal("May cause damage to organs through prolonged or repeated exposure (kidneys).", Said("H373", one));
        LabelElements two = TestLaw.Label(
            TestLaw.Line("a", 12, ["STOT RE 2, H373 (kidneys)"]),
            TestLaw.Line("b", 12, ["STOT RE 2, H373 (liver)"])
        );
        Assert.Equal("May cause damage to organs through prolonged or repeated exposure (kidneys, liver).", Said("H373", two));
        LabelElements milder = TestLaw.Label(TestLaw.Line("a", 2, ["STOT RE 1, H372 (kidneys)"]));
        Assert.Equal("May cause damage to organs through prolonged or repeated exposure (kidneys).", Said("H373", milder));
    }

    [Fact]
    public void An_organ_of_one_cause_is_not_said_of_all()
    {
        LabelElements label = TestLaw.Label(
            TestLaw.Line("a", 12, ["STOT RE 2, H373 (kidneys)"]),
            TestLaw.Line("b", 12, ["STOT RE 2, H373"])
        );
        Assert.Equal("May cause damage to organs through prolonged or repeated exposure.", Said("H373", label));
    }

    [Fact]
    [Outside(
        "CLP Art. 18(3)(b) asks no names for hazards to waters; Annex II, 2.8 names the sensitiser in EUH208, consolidated text of 1 May 2026"
    )]
    public void A_sensitiser_is_named_once_where_only_the_environment_is_at_stake()
    {
        LabelElements label = TestLaw.Label(
            TestLaw.Line("Linalool", 0.5, ["Skin Sens. 1B, H317"]),
            TestLaw.Line("Resin", 30, ["Aquatic Chronic 3, H412"])
        );
        Assert.Equal("Contains Linalool. May produce an allergic reaction.", Said("EUH208", label));
        Assert.Empty(label.Contained);
    }

    [Fact]
    [Outside("CLP Art. 18(3)(b) and Annex II, 2.8, consolidated text of 1 May 2026")]
    public void What_is_behind_a_class_is_not_called_a_sensitiser()
    {
        LabelElements label = TestLaw.Label(
            TestLaw.Line("Linalool", 0.5, ["Skin Sens. 1B, H317"]),
            TestLaw.Line("Suspect", 2, ["Carc. 2, H351"])
        );
        Assert.Equal("Contains Linalool. May produce an allergic reaction.", Said("EUH208", label));
        Assert.Equal(["Suspect"], label.Contained.Select(n => n.Name));
    }

    [Theory]
    [InlineData("2026-12-31", 1, true)]
    [InlineData("2026-12-31", 0.99, false)]
    [InlineData("2027-01-01", 1, false)]
    [Outside("CLP Annex II, 2.12, consolidated text of 1 May 2026; notice C/2025/6670 (annulled)")]
    public void Titanium_dioxide_calls_for_its_statement_until_a_day(string on, double percent, bool due)
    {
        Verdict verdict = TestLaw
            .Law(day: DateOnly.ParseExact(on, "yyyy-MM-dd"))
            .Judge(TestLaw.Mixture(TestLaw.Line("White", percent, [], cas: "13463-67-7")));
        Assert.Equal(due, verdict.Label.Supplemental.Any(s => s.Code.Text == "EUH212"));
    }

    [Fact]
    public void A_statement_of_a_single_ingredient_can_be_traced()
    {
        using var folder = new MakersFolder();
        folder.Change(
            "extras/uv-guard.yaml",
            "{ name: Bumetrizole, cas: 3896-11-5, ec: 223-445-4,",
            "{ name: Titanium dioxide, cas: 13463-67-7, ec: 236-675-5,"
        );
        folder.Change("extras/uv-guard.yaml", "highestPercentOfWax: 0.5", "highestPercentOfWax: 5");
        string bowl = folder.Read("candles/harbour-bowl.yaml");
        folder.Write("candles/harbour-bowl.yaml", Regex.Replace(bowl, "percentOfWax: [0-9.]+", "percentOfWax: 4"));
        Assessment a = folder.Assess("harbour-bowl", "IE", new DateOnly(2026, 12, 31));
        string traced = Tracer.Explain(a, "EUH212")!;
        Assert.Contains("EUH212 is on the label: titanium dioxide", traced, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("clause: CLP Annex II, 2.12", traced, StringComparison.Ordinal);
    }

    [Fact]
    public void An_international_name_on_a_label_in_another_language_is_said_in_one_line()
    {
        static bool HasTexts(LanguageCode language) =>
            TestLaw.Lawbook.FindLanguage(language) is not null && !TestLaw.Lawbook.WithoutTexts.ContainsKey(language);

        const string Begins = "Names of substances are printed as the English table gives them";
        foreach (Place place in TestLaw.Lawbook.Places.Where(p => p.Languages.All(HasTexts)))
        {
            Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml", place.Code);
            bool isForeign = a.Label.Named.Count > 0 && a.Languages.Any(l => l.Code != "en");
            Assert.Equal(isForeign ? 1 : 0, a.Findings.Count(f => f.What.StartsWith(Begins, StringComparison.Ordinal)));
            string traced = Tracer.Explain(a, "d-Limonene")!;
            Assert.Equal(isForeign, traced.Contains("its international name", StringComparison.Ordinal));
        }
    }

    [Fact]
    [Outside(
        "CLP Annex II, 2.12, consolidated text of 1 May 2026: the statement stands there; its words are those of the text of 1 September 2025"
    )]
    public void What_is_printed_of_titanium_dioxide_is_nowhere_called_annulled()
    {
        var code = StatementCode.Of("EUH212");
        IEnumerable<Language> having = TestLaw.Lawbook.Languages.Where(l => l.Statement(code) is not null);
        Assert.All(having, l => Assert.True(l.OriginOf(code).IsVerified, $"{l.Code}: {l.OriginOf(code).Checked}"));
        LabelElements label = TestLaw
            .Law(day: new DateOnly(2026, 12, 31))
            .Judge(TestLaw.Mixture(TestLaw.Line("White", 1, [], cas: "13463-67-7")))
            .Label;
        Assert.Contains(
            "it is printed until the text of 1 January 2027",
            label.Supplemental.Single(s => s.Code == code).Because,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("eu-clp", false)]
    [InlineData("northern-ireland", false)]
    [InlineData("gb-clp", true)]
    [Outside("from memory: the Union's annulment of the class of titanium dioxide (notice C/2025/6670) does not change the retained law")]
    public void Titanium_dioxide_keeps_its_statement_where_the_annulment_does_not_hold(string edition, bool due)
    {
        Verdict verdict = TestLaw
            .Law(TestLaw.Lawbook.Edition(edition), new DateOnly(2027, 1, 1))
            .Judge(TestLaw.Mixture(TestLaw.Line("White", 1, [], cas: "13463-67-7")));
        Assert.Equal(due, verdict.Label.Supplemental.Any(s => s.Code.Text == "EUH212"));
    }

    [Theory]
    [InlineData(0.1, true)]
    [InlineData(0.09, false)]
    [Outside("REACH Annex II, 3.2.1, older table, and CLP Annex I, Table 5.1: 0.1 % for what harms the ozone layer")]
    public void The_sheet_names_what_harms_the_ozone_layer(double percent, bool named)
    {
        IReadOnlyList<Substance> substances = TestLaw.Substances(TestLaw.Mixture(TestLaw.Line("Gas", percent, ["Ozone 1, H420"])));
        Assert.Equal(named, SheetDuties.Named(TestLaw.Eu.SafetySheet, substances).Any(s => s.Name == "Gas"));
    }

    [Fact]
    [Outside("CLP Annex I, 3.1.3.6.2.2: x percent of the mixture consists of ingredient(s) of unknown acute toxicity")]
    public void Unknown_hazards_are_said_with_their_share()
    {
        Classification c = TestLaw.Judge(TestLaw.Line("a", 1.5, []) with { Claims = null }).Classification;
        Assert.Equal(
            "1.5 percent of the mixture consists of ingredient(s) of unknown acute toxicity.",
            StatementText.UnknownToxicity(English, c.UnknownToxicity!)
        );
        Assert.Equal(
            "Contains 1.5 % of components with unknown hazards to the aquatic environment.",
            StatementText.UnknownAquatic(English, c.UnknownAquatic!)
        );
    }
}
