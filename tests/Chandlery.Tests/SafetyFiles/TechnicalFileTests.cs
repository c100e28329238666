using Chandlery.Core.Assessed;
using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Records;
using Chandlery.Paper.Scenes;
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

    private static TaggedItem Plots(MakersFolder folder, string candle)
    {
        Assessment a = folder.Assess(candle, "IE");
        var catalogue = folder.Catalogue;
        var maker = new TechnicalFileMaker(a, catalogue, TestLaw.Lawbook, 1);
        PaperDocument document = RecordDocument.Make(maker.Make(), TestLaw.Shop, new Chandlery.Yaml.Problems())!;
        return document
            .Pages.SelectMany(p => p.All)
            .OfType<TaggedItem>()
            .First(t => t.Alternative?.StartsWith("Plots of test", StringComparison.Ordinal) == true);
    }

    [Fact]
    public void Burn_tests_are_plotted_to_scale_with_the_makers_limits()
    {
        using var folder = new MakersFolder();
        TaggedItem plots = Plots(folder, "slate-jar");
        Assert.Contains("a line for each of 3 samples", plots.Alternative, StringComparison.Ordinal);
        HashSet<string> texts = [.. plots.Items.OfType<TextItem>().Select(t => t.Shaped.Text)];
        string[] wanted =
        [
            "Flame height, mm",
            "Melt pool, mm",
            "Vessel, °C",
            "hours burnt in all",
            "own limit 45",
            "own limit 65",
            "sample C",
        ];
        Assert.Subset(texts, wanted.ToHashSet());

        // The highest flame of sample B, 34 mm, stands at 34 / 45 of the height of the limit.
        List<PathItem> paths = [.. plots.Items.OfType<PathItem>()];
        PathItem[] limits = [.. paths.Where(p => p.Stroke == Ink.SignalRed)];
        Assert.Equal(2, limits.Length);
        PathItem[] marks = [.. paths.Where(p => p.ScaleMm != 1)];
        Assert.Equal((3 * 3 * 3) + 3, marks.Length);
        double bottom = paths.Where(p => p.Stroke == Ink.Black && p.ScaleMm == 1 && p.XMm > 0).Max(p => p.YMm);
        double limitAt = bottom - limits[0].YMm;
        double right = limits[0].XMm + 60;
        double highest = marks.Where(m => m.XMm < right).Min(m => m.YMm);
        Assert.Equal(34.0 / 45, (bottom - highest) / limitAt, 3);
    }

    [Fact]
    public void A_burn_that_was_not_measured_breaks_the_line()
    {
        using var folder = new MakersFolder();
        int All() => Plots(folder, "slate-jar").Items.OfType<PathItem>().Count(p => p.ScaleMm != 1);
        int before = All();
        folder.Change("tests/slate-jar-26-10.yaml", "{ hours: 4, flameMm: 31, poolMm: 74,", "{ hours: 4, poolMm: 74,");
        Assert.Equal(before - 1, All());
    }

    [Fact]
    public void The_command_makes_one_archive_a_version_with_what_it_rests_on_inside()
    {
        using var folder = new MakersFolder();
        string into = Path.Combine(folder.Path, "out");
        string candle = Path.Combine(folder.Path, "candles", "slate-jar.yaml");
        Assert.Equal(0, Command.Run("technical-file", candle, "--place", "IE", "--out", into).Code);
        Assert.Equal(0, Command.Run("technical-file", candle, "--place", "IE", "--file-version", "2", "--out", into).Code);
        Assert.Equal(
            ["slate-jar-technical-file-2.pdf", "slate-jar-technical-file.pdf"],
            Directory.GetFiles(into).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)
        );
        byte[] bytes = File.ReadAllBytes(Path.Combine(into, "slate-jar-technical-file-2.pdf"));
        string raw = System.Text.Encoding.Latin1.GetString(bytes);
        Assert.Contains("pdfaid:part", raw, StringComparison.Ordinal);
        using UglyToad.PdfPig.PdfDocument pdf = UglyToad.PdfPig.PdfDocument.Open(bytes);
        Assert.True(pdf.Advanced.TryGetEmbeddedFiles(out IReadOnlyList<UglyToad.PdfPig.Content.EmbeddedFile>? files));
        Assert.Contains(files!, f => f.Name == "candles/slate-jar.yaml");
        Assert.Contains(files!, f => f.Name == "tests/slate-jar-26-10.yaml");
        Assert.Contains(files!, f => f.Name == "assessment-slate-jar-eu-clp.json");
        Assert.DoesNotContain(files!, f => f.Name.StartsWith("dispatches/", StringComparison.Ordinal));
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
