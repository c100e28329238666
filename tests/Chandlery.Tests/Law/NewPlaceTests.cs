using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Tests.Paper;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law;

/// <summary>Places whose law is known in part: what is sure is printed, the rest is refused and said.</summary>
public sealed class NewPlaceTests
{
    private static readonly string[] InPart = ["australia", "canada", "new-zealand", "norway", "switzerland"];

    private static PaperOutcome Make(MakersFolder folder, Assessment a, string paper, Language? language = null)
    {
        Catalogue catalogue = folder.Catalogue;
        Wax wax = catalogue.Find<Wax>(a.Candle.Wax, new Problems())!;
        return PaperList
            .Own.Find(paper)!
            .Make(
                new PaperRequest(a, language ?? a.Languages[0], wax, TestLaw.Lawbook, TestLaw.Shop, new PaperSettings())
                {
                    Catalogue = catalogue,
                }
            );
    }

    private static string TextOf(MadePaper made)
    {
        using var reader = new PdfReader(PdfDrawing.Draw(made.Document));
        return string.Join(' ', Enumerable.Range(0, reader.Pages.Count).Select(reader.Text));
    }

    private static IEnumerable<Finding> Stops(Assessment a) => a.Findings.Where(f => f.Gravity == Gravity.Stop);

    [Fact]
    public void Five_editions_are_known_in_part_and_say_what_they_leave_out()
    {
        Assert.Equal(InPart, TestLaw.Lawbook.Editions.Where(e => e.IsKnownInPart).Select(e => e.Id).Order(StringComparer.Ordinal));
        Assert.All(InPart, id => Assert.NotEmpty(TestLaw.Lawbook.Edition(id).DoesNotCover));
    }

    [Theory]
    [InlineData("CA", "CA: Only part of the local law was checked for this paper.")]
    [InlineData("AU", "AU: Only part of the local law was checked for this paper.")]
    public void Every_paper_but_the_label_says_that_the_law_is_known_in_part(string place, string says)
    {
        using var folder = new MakersFolder();
        Assessment a = folder.Assess("slate-jar", place);
        int said = 0;
        foreach (PaperKind kind in PaperList.Own.All.Where(k => !k.IsPerCandle))
        {
            if (Make(folder, a, kind.Id, a.Languages[0]) is not MadePaper made)
            {
                continue;
            }

            string text = TextOf(made);
            Assert.Equal(kind.Id != "label", text.Contains(says, StringComparison.Ordinal));
            Assert.NotEmpty(made.Warnings);
            said++;
        }

        Assert.True(said >= 4, $"{said} papers");
    }

    [Fact]
    public void Cards_say_it_in_the_language_of_their_page()
    {
        using var folder = new MakersFolder();
        var made = Assert.IsType<MadePaper>(Make(folder, folder.Assess("slate-jar", "CA"), "pocket-card"));
        using var reader = new PdfReader(PdfDrawing.Draw(made.Document));
        Assert.Contains("CA: Only part of the local law was checked", reader.Text(0), StringComparison.Ordinal);
        Assert.Contains("CA: Pour ce papier, seule une partie du droit local a été vérifiée.", reader.Text(1), StringComparison.Ordinal);
        made = Assert.IsType<MadePaper>(Make(folder, folder.Assess("slate-jar", "IE"), "pocket-card"));
        Assert.DoesNotContain("Only part", TextOf(made), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_refused_paper_is_one_that_there_is() =>
        Assert.All(
            TestLaw.Lawbook.Editions.SelectMany(e => e.Refuses).SelectMany(r => r.Papers),
            id => Assert.NotNull(PaperList.Own.Find(id))
        );

    [Theory]
    [InlineData("canada", "Skin Irrit. 2", 10, true)]
    [InlineData("canada", "Skin Irrit. 2", 9.9, false)]
    [InlineData("canada", "Skin Sens. 1", 5, false)]
    [InlineData("australia", "Eye Irrit. 2", 10, true)]
    [InlineData("australia", "Eye Irrit. 2", 9.9, false)]
    [InlineData("australia", "Skin Sens. 1", 5, false)]
    [InlineData("new-zealand", "Skin Sens. 1", 0.1, true)]
    [InlineData("new-zealand", "Skin Sens. 1", 0.09, false)]
    [InlineData("switzerland", "Skin Sens. 1", 5, false)]
    public void A_class_whose_label_is_not_surely_known_refuses_it(string edition, string hazard, double percent, bool refused)
    {
        Edition law = TestLaw.Lawbook.Edition(edition);
        Verdict verdict = TestLaw.Law(law).Judge(TestLaw.Mixture(TestLaw.Line("a", percent, [hazard])));
        bool stops = law.Refuses.Any(r => r.StopsSale && r.Holds(verdict.Classification.Classes.Select(c => c.Category)));
        Assert.Equal(refused, stops);
    }

    [Theory]
    [InlineData("CA", "Consumer Chemicals and Containers Regulations, 2001")]
    [InlineData("AU", "Poisons Standard")]
    public void Who_knows_nothing_of_an_ingredient_cannot_rule_the_class_out(string place, string clause)
    {
        using var folder = new MakersFolder();
        Assert.Empty(Stops(folder.Assess("fig-tin", place)));
        string oil = folder.Read("oils/fig-leaf.yaml");
        Assert.Contains("classes: [\"Aquatic Chronic 3, H412\"]", oil, StringComparison.Ordinal);
        folder.Change("oils/fig-leaf.yaml", ", classes: [\"Aquatic Chronic 3, H412\"]", "");
        Assert.Contains(Stops(folder.Assess("fig-tin", place)), f => f.Clause.Text.Contains(clause, StringComparison.Ordinal));
    }

    [Fact]
    [Outside("Consumer Packaging and Labelling Regulations (C.R.C., c. 417), s. 6: English and French")]
    public void Canada_gets_English_and_French_side_by_side_and_no_hazards()
    {
        using var folder = new MakersFolder();
        Assessment a = folder.Assess("fig-tin", "CA");
        Assert.Equal(["en", "fr"], a.Languages.Select(l => l.Code));
        string label = TextOf(Assert.IsAssignableFrom<MadePaper>(Make(folder, a, "label")));
        Assert.Contains("Scented candle / Bougie parfumée", label, StringComparison.Ordinal);
        Assert.DoesNotContain("allergic", label, StringComparison.Ordinal);
        Assert.Contains("contenant", a.Languages[1].Safety["hotVessel"], StringComparison.Ordinal);
        Assert.Contains("récipient", TestLaw.Lawbook.FindLanguage("fr")!.Safety["hotVessel"], StringComparison.Ordinal);
        Assert.Equal("2,5", a.Languages[1].Figures.Declared(2.5));
    }

    [Theory]
    [InlineData("CA")]
    [InlineData("AU")]
    [InlineData("NZ")]
    [InlineData("CH")]
    public void Sheets_are_refused_with_the_reason(string place)
    {
        using var folder = new MakersFolder();
        Assessment a = folder.Assess("fig-tin", place);
        MissingPaper missing = Assert.IsType<MissingPaper>(Make(folder, a, "safety-sheet"));
        Assert.False(missing.IsDue);
        Assert.Contains("not at hand", missing.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_refused_label_is_due_and_says_why()
    {
        using var folder = new MakersFolder();
        MissingPaper missing = Assert.IsType<MissingPaper>(Make(folder, folder.Assess("fig-tin", "NZ"), "label"));
        Assert.True(missing.IsDue);
        Assert.Contains("Labelling) Notice 2017", missing.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("CA")]
    [InlineData("AU")]
    public void Every_paper_says_what_was_not_looked_at(string place)
    {
        using var folder = new MakersFolder();
        Assessment a = folder.Assess("fig-tin", place);
        int made = 0;
        foreach (PaperKind paper in PaperList.Own.All.Where(p => !p.IsPerCandle))
        {
            if (Make(folder, a, paper.Id) is MadePaper outcome)
            {
                made++;
                Assert.All(
                    a.Edition.DoesNotCover,
                    left => Assert.Contains(outcome.Warnings, w => w.Contains(left, StringComparison.Ordinal))
                );
            }
        }

        Assert.True(made >= 5, $"{made} papers");
        string file = TextOf(Assert.IsAssignableFrom<MadePaper>(Make(folder, a, "technical-file")));
        Assert.Contains("What was not looked at", file, StringComparison.Ordinal);
        Assert.All(a.Edition.DoesNotCover, left => Assert.Contains(left[..30], string.Join(' ', file.Split()), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("CA")]
    [InlineData("AU")]
    public void What_does_not_burn_is_refused_where_only_a_candle_is_known(string place)
    {
        using var folder = new MakersFolder();
        Assert.Contains(
            Stops(folder.Assess("dune-reeds", place)),
            f => f.What.Contains("is the label of a candle", StringComparison.Ordinal)
        );
    }

    [Fact]
    [Outside("ChemO Art. 10 (as told by the authority's page): a name and address in Switzerland")]
    public void Switzerland_asks_for_a_Swiss_name_and_prints_three_languages()
    {
        using var folder = new MakersFolder();
        Assessment without = folder.Assess("fig-tin", "CH");
        Assert.Equal(["ChemO Art. 10"], Stops(without).Select(f => f.Clause.Text));
        Assert.Equal(["de", "fr", "it"], without.Languages.Select(l => l.Code));
        folder.Change(
            "maker.yaml",
            "importers:\n",
            "importers:\n  - { name: Seewind Handel, address: [1 Uferweg, Kleinstein], country: CH, telephone: +999 40 555 021, email: post@seewind.example }\n"
        );
        Assessment with = folder.Assess("fig-tin", "CH");
        Assert.Empty(Stops(with));
        string label = TextOf(Assert.IsAssignableFrom<MadePaper>(Make(folder, with, "label")));
        Assert.Contains("Seewind Handel", label, StringComparison.Ordinal);
        Assert.IsType<MissingPaper>(Make(folder, with, "poison-facts"));
    }

    [Fact]
    public void Norway_labels_what_needs_no_statement_and_refuses_the_rest_with_the_reason()
    {
        using var folder = new MakersFolder();
        Catalogue catalogue = folder.Catalogue;
        var problems = new Problems();
        IDeclaration tin = catalogue.All.First(d => d.Id == "fig-tin" && d is Candle);
        Assert.Empty(new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today).Assess(tin, "NO", problems));
        Assert.Contains("Norway publishes the statements in an act of its own", problems.Found[0].What, StringComparison.Ordinal);

        string scented = folder.Read("candles/fig-tin.yaml");
        Assert.Contains("oils:\n  - { oil: fig-leaf, drops: 160 }\n", scented, StringComparison.Ordinal);
        folder.Write(
            "candles/plain.yaml",
            scented.Replace("oils:\n  - { oil: fig-leaf, drops: 160 }\n", "oils: []\n", StringComparison.Ordinal)
        );
        Assessment plain = folder.Assess("plain", "NO");
        string label = TextOf(Assert.IsAssignableFrom<MadePaper>(Make(folder, plain, "label")));
        Assert.Contains("Lys", label, StringComparison.Ordinal);
        string card = TextOf(Assert.IsAssignableFrom<MadePaper>(Make(folder, plain, "burn-card")));
        Assert.Contains("Brenn lyset trygt", card, StringComparison.Ordinal);
        Assert.IsType<MissingPaper>(Make(folder, plain, "safety-sheet"));
        Assert.Contains(
            new DutyFinder(folder.Catalogue, TestLaw.Lawbook).Of(plain),
            d => d.Duty.Id == "product-register" && d.State == DutyState.ByHand
        );
    }

    [Fact]
    public void Only_Norway_has_its_product_register()
    {
        DutyRules rules = TestLaw.Lawbook.Safety.For(TestLaw.Lawbook.Safety.Duties, "NO")!;
        Assert.Equal(["NO"], rules.Rows.Single(r => r.Id == "product-register").SoldIn);
        using var folder = new MakersFolder();
        Assert.DoesNotContain(
            new DutyFinder(folder.Catalogue, TestLaw.Lawbook).Of(folder.Assess("fig-tin", "IE")),
            d => d.Duty.Id is "product-register" or "norwegian"
        );
    }

    [Theory]
    [InlineData("CA", "no-relighting")]
    [InlineData("AU", "wick")]
    [InlineData("NZ", "wick")]
    [InlineData("CH", "notification")]
    public void The_new_places_have_their_duties(string place, string duty)
    {
        using var folder = new MakersFolder();
        var finder = new DutyFinder(folder.Catalogue, TestLaw.Lawbook);
        Assessment a = folder.Assess("fig-tin", place);
        Assert.Contains(finder.Of(a), d => d.Duty.Id == duty);
        Assert.Empty(finder.WithoutRules(a));
    }
}
