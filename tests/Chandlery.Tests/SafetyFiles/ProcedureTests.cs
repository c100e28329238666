using Chandlery.Core.Assessed;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Core.SafetyFiles.Procedures;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Sheets;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.SafetyFiles;

/// <summary>The page on how a maker looks after product safety says what is declared, and leaves to be written what is not.</summary>
public sealed class ProcedureTests
{
    private static SafetyProcedure Of(MakersFolder folder, string candle, string place, string language = "en") =>
        new ProcedureMaker(
            folder.Assess(candle, place),
            folder.Catalogue,
            TestLaw.Lawbook,
            TestLaw.Lawbook.Safety.ProcedureWords.Find(language)!
        ).Make();

    private static string State(MakersFolder folder, string task) =>
        Of(folder, "harbour-bowl", "IE").Tasks.Single(t => t.Name == task).State;

    [Fact]
    [Outside("Regulation (EU) 2023/988, Art. 14: internal processes for product safety")]
    public void The_duty_has_its_paper_where_the_law_asks_for_it_and_names_no_other_law()
    {
        using var folder = new MakersFolder();
        DutyLine duty = new DutyFinder(folder.Catalogue, TestLaw.Lawbook)
            .Of(folder.Assess("harbour-bowl", "IE"))
            .Single(d => d.Duty.By == Artefact.Procedure);
        Assert.Equal((DutyState.ByHand, "Regulation (EU) 2023/988, Art. 14"), (duty.State, duty.Duty.Clause.Text));
        Assert.Contains("'chandlery procedure'", duty.Shown, StringComparison.Ordinal);
        Assert.Contains(
            "Regulation (EU) 2023/988, Art. 14",
            string.Join(' ', Of(folder, "harbour-bowl", "IE").Lines),
            StringComparison.Ordinal
        );
        SafetyProcedure british = Of(folder, "fig-tin", "GB");
        string all = string.Join(' ', british.Lines.Concat(british.Tasks.Select(t => $"{t.How} {t.State} {t.Clause}")));
        Assert.Contains("No rule that asks for this page is known here for GB", all, StringComparison.Ordinal);
        Assert.DoesNotContain("2023/988", all, StringComparison.Ordinal);
    }

    [Fact]
    public void It_counts_what_is_declared_and_what_is_missing()
    {
        using var folder = new MakersFolder();
        Assert.Equal("Tests: 9. Products still to test: 0", State(folder, "Tests"));
        Assert.Equal("Entered: 1. Open: 1", State(folder, "Complaints"));
        Assert.Equal("Deliveries: 6. Batches without one: 0", State(folder, "Where it goes"));
        File.Delete(Path.Combine(folder.Path, "dispatches", "qt-2611-net-loft.yaml"));
        File.Delete(Path.Combine(folder.Path, "tests", "slate-jar-26-10.yaml"));
        folder.Change("batches/hb-2611.yaml", ", cotton-26-09]", "]");
        Assert.Equal("Tests: 8. Products still to test: 1", State(folder, "Tests"));
        Assert.Equal("Deliveries: 5. Batches without one: 1", State(folder, "Where it goes"));
        Assert.EndsWith("Batches that lack one: 1", State(folder, "Where it comes from"), StringComparison.Ordinal);
        Assert.Contains(
            "+999 20 555 014, shed@tarnvey.example",
            Of(folder, "harbour-bowl", "IE").Tasks.Single(t => t.Name == "Complaints").How
        );
    }

    [Fact]
    public void It_is_one_page_in_every_language_that_has_words_and_says_where_there_are_none()
    {
        using var folder = new MakersFolder();
        string into = Path.Combine(folder.Path, "out");
        string bowl = Path.Combine(folder.Path, "candles", "harbour-bowl.yaml");
        foreach (SafetyWords words in TestLaw.Lawbook.Safety.ProcedureWords)
        {
            Assessment a = folder.Assess("harbour-bowl", "IE");
            var request = new PaperRequest(
                a,
                TestLaw.Lawbook.FindLanguage(words.Code)!,
                TestLaw.WaxOf(a),
                TestLaw.Lawbook,
                TestLaw.Shop,
                new PaperSettings()
            )
            {
                Catalogue = folder.Catalogue,
            };
            PaperDocument document = Assert.IsType<MadePaper>(PaperList.Own.Find("procedure")!.Make(request)).Document;
            Assert.Equal((words.Code, 1), (document.Language, document.Pages.Count));
            string text = PrintedText.Of(Chandlery.Paper.Drawing.PdfDrawing.Draw(document));
            Assert.Contains(words.Words["roleRecall"], text, StringComparison.Ordinal);
            Assert.DoesNotContain("{", text, StringComparison.Ordinal);
        }

        (int code, string output, string errors) = Command.Run("procedure", bowl, "--place", "FI", "--out", into);
        Assert.True(code == 0, errors);
        Assert.Contains("it is in English, and a translation is yours to add", errors, StringComparison.Ordinal);
        Assert.Contains("procedure.pdf", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_gives_the_makers_page_once()
    {
        using var folder = new MakersFolder();
        string into = Path.Combine(folder.Path, "out");
        Assert.Equal(0, Command.Run("procedure", folder.Path, "--place", "IE", "--out", into).Code);
        Assert.Equal(["eu-clp-procedure.pdf"], Directory.GetFiles(into).Select(Path.GetFileName));
    }
}
