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
        Assert.Contains("bowl-26-10", text, StringComparison.Ordinal);
        Assert.Contains("Cedar Smoke CS-1107", text, StringComparison.Ordinal);
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
                    .Of(a, Chandlery.Core.SafetyFiles.Tests.CandleTests.Of(a.Candle, folder.Catalogue, rules), rules, [])
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

    private static RiskLine Risk(MakersFolder folder, string risk)
    {
        Assessment a = folder.Assess("harbour-bowl", "IE");
        Chandlery.Core.Declared.Catalogue catalogue = folder.Catalogue;
        var rules = TestLaw.Lawbook.Safety.File.Value;
        var tests = Chandlery.Core.SafetyFiles.Tests.CandleTests.Of(a.Candle, catalogue, rules);
        return RiskFinder.Of(a, tests, rules, [.. catalogue.OfKind<Chandlery.Core.Declared.Incident>()]).Single(r => r.Row.Id == risk);
    }

    [Fact]
    public void An_incident_puts_the_risks_that_it_touches_in_question()
    {
        using var folder = new MakersFolder();
        RiskLine touched = Risk(folder, "several-wicks");
        Assert.True(touched.IsInQuestion);
        Assert.Null(touched.Holds);
        Assert.Contains("accident bowl-tall-flame, known 2026-11-21, open: review", touched.Proof, StringComparison.Ordinal);
        Assert.Equal((true, false), (Risk(folder, "tipping").Holds, Risk(folder, "tipping").IsInQuestion));
        Assert.Contains(
            "An open incident touches the risk several-wicks: review",
            Text(folder, folder.Assess("harbour-bowl", "IE")),
            StringComparison.Ordinal
        );
        Assert.Equal(DutyState.Open, Duty(folder, "technical-file").State);

        folder.Change("incidents/bowl-tall-flame.yaml", "harm: damage\n", "harm: damage\nclosed: 2026-11-24\n");
        touched = Risk(folder, "several-wicks");
        Assert.Equal((true, false), (touched.Holds, touched.IsInQuestion));
        Assert.Contains("closed 2026-11-24", touched.Proof, StringComparison.Ordinal);
        Assert.Equal(DutyState.ByHand, Duty(folder, "technical-file").State);
    }

    [Fact]
    public void An_accident_that_names_no_risk_is_missing_something_and_a_wrong_name_is_a_problem()
    {
        using var folder = new MakersFolder();
        folder.Change("incidents/bowl-tall-flame.yaml", "risks: [several-wicks, wind]\n", "");
        Assert.Contains(
            "bowl-tall-flame does not say which risks it touches",
            Text(folder, folder.Assess("harbour-bowl", "IE")),
            StringComparison.Ordinal
        );
        folder.Change("incidents/bowl-tall-flame.yaml", "harm: damage\n", "harm: damage\nrisks: [several-wick]\n");
        (int code, _, string errors) = Command.Run("incidents", folder.Path);
        Assert.Equal(2, code);
        Assert.Contains("There is no risk named 'several-wick'. Did you mean 'several-wicks'?", errors, StringComparison.Ordinal);
    }

    private static string Made(MakersFolder folder, params string[] options)
    {
        string into = Path.Combine(folder.Path, "out");
        (int code, _, string errors) = Command.Run([
            "technical-file",
            Path.Combine(folder.Path, "candles", "fig-tin.yaml"),
            "--out",
            into,
            .. options,
        ]);
        Assert.True(code == 0, errors);
        using var reader = new PdfReader(File.ReadAllBytes(Path.Combine(into, "fig-tin-technical-file.pdf")));
        return System.Text.RegularExpressions.Regex.Replace(
            string.Join(' ', Enumerable.Range(0, reader.Pages.Count).Select(reader.Text)),
            @"\s+",
            " "
        );
    }

    [Fact]
    public void What_has_changed_since_the_register_or_an_earlier_file_is_said()
    {
        using var folder = new MakersFolder();
        Assert.Contains("there is no register yet", Made(folder), StringComparison.Ordinal);
        string earlier = Path.Combine(folder.Path, "earlier.pdf");
        File.Copy(Path.Combine(folder.Path, "out", "fig-tin-technical-file.pdf"), earlier);
        string candle = Path.Combine(folder.Path, "candles", "fig-tin.yaml");
        Assert.Equal(0, Command.Run("register", "add", candle, "--by", "M. Hale").Code);
        Assert.Contains("Nothing has changed of what is declared", Made(folder), StringComparison.Ordinal);

        folder
            .Change("candles/fig-tin.yaml", "wicks: { count: 1,", "wicks: { count: 1, kind: wood,")
            .Change("candles/fig-tin.yaml", "drops: 160", "drops: 20");
        foreach (
            (string text, string with) in new[]
            {
                (Made(folder), "entry 1 of the register"),
                (Made(folder, "--since", earlier), "earlier.pdf"),
            }
        )
        {
            Assert.Contains("Compared with " + with, text, StringComparison.Ordinal);
            Assert.Contains("wicks before 1 x kind not declared", text, StringComparison.Ordinal);
            Assert.Contains("wicks now 1 x wood", text, StringComparison.Ordinal);
            Assert.Contains("material before Fig Leaf", text, StringComparison.Ordinal);
            Assert.Contains("supplemental statement before EUH208", text, StringComparison.Ordinal);
        }

        Assert.Contains("it is no PDF that can be read", Made(folder, "--since", candle), StringComparison.Ordinal);
        Assert.NotEqual(0, Command.Run("technical-file", candle, "--since", "no-such.pdf").Code);
    }

    [Fact]
    public void Papers_that_are_kept_name_the_head_of_the_register()
    {
        using var folder = new MakersFolder();
        Assert.DoesNotContain("Head of the register", Made(folder), StringComparison.Ordinal);
        string candle = Path.Combine(folder.Path, "candles", "fig-tin.yaml");
        Assert.Equal(0, Command.Run("register", "add", candle, "--by", "M. Hale").Code);
        string head = File.ReadAllText(Path.Combine(folder.Path, "register.sqlite.head")).Split(' ')[1].Trim();
        string into = Path.Combine(folder.Path, "out");
        Command.Run("incidents", folder.Path, "--out", into);
        Command.Run("duties", candle, "--out", into);
        Assert.Contains($"entry 1, {head}", Made(folder), StringComparison.Ordinal);
        foreach (string paper in new[] { "register-of-complaints.pdf", "fig-tin-duties.pdf" })
        {
            using var reader = new PdfReader(File.ReadAllBytes(Path.Combine(into, paper)));
            Assert.Contains(head, reader.Text(0), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_label_is_drawn_as_it_is_printed_in_lines()
    {
        using var folder = new MakersFolder();
        Assessment a = folder.Assess("fig-tin", "IE");
        var request = new PaperRequest(
            a,
            a.Languages[0],
            folder.Catalogue.Find<Chandlery.Core.Declared.Wax>(a.Candle.Wax, new Chandlery.Yaml.Problems())!,
            TestLaw.Lawbook,
            TestLaw.Shop,
            new PaperSettings()
        )
        {
            Catalogue = folder.Catalogue,
        };
        Scene label = Assert.IsAssignableFrom<MadePaper>(PaperList.Own.Find("label")!.Make(request)).Document.Pages[0];
        var file = Assert.IsType<MadePaper>(PaperList.Own.Find("technical-file")!.Make(request));
        TaggedItem drawn = file
            .Document.Pages.SelectMany(p => p.All)
            .OfType<TaggedItem>()
            .Single(t => t.Alternative?.StartsWith("The label of Fig Tin", StringComparison.Ordinal) == true);
        Assert.Empty(drawn.All.OfType<PictureItem>());
        Assert.Equal(label.All.OfType<TextItem>().Select(t => t.Shaped.Text), drawn.All.OfType<TextItem>().Select(t => t.Shaped.Text));

        // All of it is smaller or larger by one factor, about one point.
        List<TextItem> there = [.. label.All.OfType<TextItem>()];
        List<TextItem> here = [.. drawn.All.OfType<TextItem>()];
        double factor = here[0].SizeMm / there[0].SizeMm;
        Assert.InRange(factor, 0.1, 1);
        Assert.All(there.Zip(here), pair => Assert.Equal(pair.First.SizeMm * factor, pair.Second.SizeMm, 6));
        Assert.All(there.Zip(here), pair => Assert.Equal((pair.First.XMm - there[0].XMm) * factor, pair.Second.XMm - here[0].XMm, 6));
        folder.Change("candles/fig-tin.yaml", "looksLikeFood: no", "looksLikeFood: yes");
        Assert.Contains(
            "There is no drawing of the label: what stops the sale is said under 10.",
            Text(folder, folder.Assess("fig-tin", "IE")),
            StringComparison.Ordinal
        );
    }

    /// <summary>Each demo product's label is drawn on the page that has its heading, whatever stands before it.</summary>
    [Fact]
    public void The_label_is_drawn_on_the_page_of_its_heading()
    {
        using var folder = new MakersFolder();
        foreach (Chandlery.Core.Declared.Candle candle in folder.Catalogue.OfKind<Chandlery.Core.Declared.Candle>())
        {
            Assessment a = TestLaw.Demo($"candles/{candle.Id}.yaml", "IE");
            IReadOnlyList<Scene> pages = TestLaw.Made("technical-file", a).Document.Pages;
            int heading = pages
                .ToList()
                .FindIndex(p => p.All.OfType<TextItem>().Any(t => t.Shaped.Text.StartsWith("7 Label", StringComparison.Ordinal)));
            int drawn = pages
                .ToList()
                .FindIndex(p =>
                    p.All.OfType<TaggedItem>().Any(t => t.Alternative?.StartsWith("The label of", StringComparison.Ordinal) == true)
                );
            Assert.True(heading >= 0 && drawn == heading, $"{candle.Id}: heading on page {heading + 1}, drawing on page {drawn + 1}");
        }
    }

    [Fact]
    public void What_is_missing_is_said_once()
    {
        using var folder = new MakersFolder();
        File.Delete(Path.Combine(folder.Path, "tests", "slate-jar-26-10.yaml"));
        string text = Text(folder, folder.Assess("slate-jar", "IE"));
        Assert.Equal(2, text.Split("No burn test is declared").Length);
        Assert.Equal(2, text.Split("No batch is declared").Length);
        folder.Change("candles/slate-jar.yaml", "looksLikeFood: no", "looksLikeFood: yes");
        text = Text(folder, folder.Assess("slate-jar", "IE"));
        Assert.Equal(2, text.Split("Stops the sale: ").Length);
    }

    [Fact]
    public void What_is_wrong_in_the_folder_of_then_is_said()
    {
        using var folder = new MakersFolder();
        using var then = new MakersFolder();
        then.Change("candles/fig-tin.yaml", "netGrams: ", "netGramms: ");
        string text = Made(folder, "--since", then.Path);
        Assert.Contains("it cannot be assessed any more: ", text, StringComparison.Ordinal);
        string called = Path.GetFileName(then.Path);
        // Lines may break after a hyphen or a stroke, so spaces do not count.
        Assert.Contains($"anymore:{called}/candles/fig-tin.yaml:3:1:‘netGrams’ismissing", text.Replace(" ", ""), StringComparison.Ordinal);
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
        Assert.Equal(DutyState.Done, Duty(folder, "tests").State);
        folder.Change("tests/bowl-26-10.yaml", "count: 12", "count: 11");
        Assert.Equal(DutyState.Open, Duty(folder, "tests").State);
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

    /// <summary>The lead of a wick is a question of its own: other answers do not show it.</summary>
    [Theory]
    [InlineData("US", "metalCoreWick: no, ", DutyState.Done)]
    [InlineData("US", "metalCoreWick: yes, ", DutyState.ByHand)]
    [InlineData("US", "", DutyState.Open)]
    [InlineData("AU", "metalCoreWick: no, ", DutyState.Done)]
    [InlineData("NZ", "", DutyState.Open)]
    [Outside("16 CFR 1500.17(a)(13), from memory; Consumer Protection Notice No 7 of 2002: no lead in wicks")]
    public void Whether_a_wick_can_hold_lead_is_shown_by_its_own_answer(string place, string answer, DutyState expected)
    {
        using var folder = new MakersFolder();
        folder.Change("candles/fig-tin.yaml", "metalCoreWick: no, ", answer);
        Assert.Equal(expected, Duty(folder, "wick", place, candle: "fig-tin").State);
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
