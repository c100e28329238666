using Chandlery.Core.Assessed;
using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Tests.Paper;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.SafetyFiles;

/// <summary>The technical file and the page of duties say what is there, what is missing, and until when it is kept.</summary>
public sealed class TechnicalFileTests
{
    private static string Text(MakersFolder folder, Assessment a)
    {
        PaperKind kind = PaperList.Own.Find("technical-file")!;
        var catalogue = folder.Catalogue;
        var made = Assert.IsType<MadePaper>(
            kind.Make(
                new PaperRequest(
                    a,
                    a.Languages[0],
                    catalogue.Find<Chandlery.Core.Declared.Wax>(a.Candle.Wax, new Chandlery.Yaml.Problems())!,
                    TestLaw.Lawbook,
                    TestLaw.Shop,
                    new PaperSettings(Revision: 3)
                )
                {
                    Catalogue = catalogue,
                }
            )
        );
        using var reader = new PdfReader(PdfDrawing.Draw(made.Document));
        return System.Text.RegularExpressions.Regex.Replace(
            string.Join(' ', Enumerable.Range(0, reader.Pages.Count).Select(reader.Text)),
            @"\s+",
            " "
        );
    }

    [Fact]
    [Outside("Regulation (EU) 2023/988, Art. 9(2) and 9(3): description, risks, tests, standards; kept 10 years")]
    public void It_holds_what_the_law_asks_and_how_long_it_is_kept()
    {
        using var folder = new MakersFolder();
        string text = Text(folder, folder.Assess("harbour-bowl", "DE"));
        foreach (
            string part in new[]
            {
                "version 3",
                "1 Description",
                "2 Composition",
                "3 Risks",
                "4 Standards",
                "5 Burn tests",
                "6 Classification",
                "8 Batches",
            }
        )
        {
            Assert.Contains(part, text, StringComparison.Ordinal);
        }

        Assert.Contains("until 2036-11-19", text, StringComparison.Ordinal);
        Assert.Contains("No burn test is declared", text, StringComparison.Ordinal);
        Assert.Contains("cedar-smoke CS-1107", text, StringComparison.Ordinal);
        Assert.Contains("Skin Sens. 1B", text, StringComparison.Ordinal);
        Assert.Contains("scorched a table mat", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Orlane", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Risks_follow_the_candle()
    {
        using var folder = new MakersFolder();
        string[] Risks(string candle)
        {
            Assessment a = folder.Assess(candle, "IE");
            var rules = TestLaw.Lawbook.Safety.File.Value;
            return
            [
                .. RiskFinder
                    .Of(a, Chandlery.Core.SafetyFiles.Tests.CandleTests.Of(a.Candle, folder.Catalogue, rules), rules)
                    .Select(r => r.Row.Id),
            ];
        }

        Assert.Contains("glass", Risks("slate-jar"));
        Assert.DoesNotContain("glass", Risks("harbour-bowl"));
        Assert.Contains("wind", Risks("harbour-bowl"));
        Assert.Contains("several-wicks", Risks("harbour-bowl"));
        Assert.DoesNotContain("wind", Risks("slate-jar"));
        Assert.Contains("skin", Risks("fig-tin"));
        Assert.DoesNotContain("skin", Risks("slate-jar"));
    }

    [Fact]
    public void It_is_made_of_a_candle_that_must_not_be_sold_and_says_so()
    {
        using var folder = new MakersFolder();
        folder.Change("candles/slate-jar.yaml", "looksLikeFood: no", "looksLikeFood: yes");
        Assert.Contains(
            "Stops the sale: The candle can be taken for food",
            Text(folder, folder.Assess("slate-jar", "IE")),
            StringComparison.Ordinal
        );
    }

    private static DutyLine Duty(
        MakersFolder folder,
        string id,
        string place = "IE",
        DateOnly? day = null,
        string candle = "harbour-bowl"
    ) => new DutyFinder(folder.Catalogue, TestLaw.Lawbook).Of(folder.Assess(candle, place, day)).Single(d => d.Duty.Id == id);

    [Fact]
    public void Duties_are_open_until_something_shows_them_done()
    {
        using var folder = new MakersFolder();
        Assert.Equal(DutyState.Open, Duty(folder, "tests").State);
        Assert.Equal(DutyState.Done, Duty(folder, "tests", candle: "slate-jar").State);
        Assert.Equal(DutyState.Done, Duty(folder, "suppliers").State);
        folder.Change("batches/hb-2611.yaml", ", cotton-26-09]", "]");
        Assert.Equal(
            (DutyState.Open, "HB-2611-02 names no lot of braided cotton"),
            (Duty(folder, "suppliers").State, Duty(folder, "suppliers").Shown)
        );
        Assert.Equal(DutyState.Done, Duty(folder, "complaints").State);
        folder.Change("incidents/bowl-tall-flame.yaml", "clock: danger", "clock: dangers");
        Assert.Equal(DutyState.Open, Duty(folder, "complaints").State);
    }

    [Fact]
    [Outside("CLP Art. 48a from 1 January 2028 (Regulation (EU) 2025/2439, Art. 1)")]
    public void A_coming_duty_has_its_day()
    {
        using var folder = new MakersFolder();
        Assert.Equal((DutyState.Later, "due from 2028-01-01"), (Duty(folder, "offers").State, Duty(folder, "offers").Shown));
        Assert.Equal(DutyState.ByHand, Duty(folder, "offers", day: new DateOnly(2028, 1, 1)).State);
    }

    [Fact]
    public void A_place_without_known_duties_is_said()
    {
        using var folder = new MakersFolder();
        (_, _, string errors) = Command.Run("duties", Path.Combine(folder.Path, "candles", "fig-tin.yaml"), "--place", "UN");
        Assert.Contains("no duties are known here", errors, StringComparison.Ordinal);
    }
}
