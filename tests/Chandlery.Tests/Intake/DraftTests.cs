using System.Diagnostics;
using System.Text;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Sheets;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Intake;

public sealed class DraftTests
{
    private static readonly string[] Heads = ["Chemical name", "CAS No.", "EC No.", "Conc. (%)", "Classification"];

    [Fact]
    public void Ifra_certificate_and_allergen_statement_join_the_sheet()
    {
        OilDraft draft = CorpusScore.Draft("dune.chromium-plain-en.pdf", "dune.ifra-en.pdf", "dune.allergens-en.pdf");
        Assert.Equal(51, draft.Ifra!.Amendment!.Value);
        Assert.Equal("not restricted", draft.Ifra.Limits.Single(l => l.Category == "12").Limit.Value);
        Assert.Equal("2.4", draft.Ifra.Limits.Single(l => l.Category == "4").Limit.Value);
        Assert.Contains(draft.Doubts, d => d.Contains("outside the sheet's", StringComparison.Ordinal));
        Assert.Equal(7, draft.Ingredients.Count);
    }

    [Theory]
    [InlineData("pine-smoke")]
    [InlineData("night-fig")]
    public void A_limit_far_right_of_a_wrapped_description_is_read(string product)
    {
        OilDraft draft = CorpusScore.Draft(product + ".ifra-en.pdf");
        Assert.Equal("not permitted", draft.Ifra!.Limits.Single(l => l.Category == "10A").Limit.Value);
        Assert.DoesNotContain(draft.Doubts, d => d.Contains("category 10A", StringComparison.Ordinal));
    }

    [Fact]
    public void A_draft_is_a_declaration_that_stops_every_label_until_it_is_reviewed()
    {
        (string yaml, _) = DraftYaml.Write(CorpusScore.Draft("dune.writer-grid-de.pdf"));
        Assert.Contains(Assess(yaml).Findings, f => f.Gravity == Gravity.Stop && f.What.Contains("drafted", StringComparison.Ordinal));
        string reviewed = yaml.Replace("reviewed: no #", "reviewed: { by: M. Hale, on: 2026-11-20 } #", StringComparison.Ordinal);
        Assert.DoesNotContain(
            Assess(reviewed).Findings,
            f => f.Gravity == Gravity.Stop && f.What.Contains("drafted", StringComparison.Ordinal)
        );
    }

    private static Assessment Assess(string oil)
    {
        var problems = new Problems();
        Catalogue catalogue = TestLaw.Read(
            problems,
            ("oil.yaml", oil),
            ("wax.yaml", "declares: wax\nname: W\nsupplier: S\ningredients:\n  - { name: Wax, share: '100', classes: not classified }\n"),
            ("jar.yaml", "declares: vessel\nname: Jar\nmaterial: glass\nbrimfulMl: 300\n"),
            ("maker.yaml", "declares: maker\nname: M\naddress: [Street 1]\ntelephone: '+353 1 555 0100'\nemail: a@example.org\n"),
            (
                "candle.yaml",
                "declares: candle\nname: C\nuse: indoor\nvessel: jar\nnetGrams: 200\nwax: wax\nload: { percent: 8, of: wax }\noils: [ { oil: oil, share: 100 } ]\nwicks: { count: 1, trimToMm: 5 }\nsoldIn: [IE]\n"
            )
        );
        Assert.Empty(problems.Found);
        IReadOnlyList<Assessment> all = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today).Assess(
            catalogue.OfKind<Candle>().Single(),
            null,
            problems
        );
        Assert.Empty(problems.Found);
        return all[0];
    }

    [Fact]
    public void A_wrong_check_digit_stays_as_printed_and_is_refused_with_its_line()
    {
        OilDraft draft = FromTable(["Linalool", "78-70-5", "201-134-4", "1 - 5", "Skin Sens. 1B, H317"]);
        Assert.Contains("check digit", draft.Ingredients[0].Cas!.Doubts[0], StringComparison.Ordinal);
        var problems = new Problems();
        new DeclarationReader(TestLaw.Lawbook.Vocabulary).Read(DraftYaml.Write(draft).Text, "draft.yaml", "draft", problems);
        Assert.Contains(problems.Found, p => p.What.Contains("78-70-5", StringComparison.Ordinal) && p.Place.Line > 0);
    }

    [Fact]
    public void A_class_that_contradicts_its_statement_is_refused_too()
    {
        OilDraft draft = FromTable(["Linalool", "78-70-6", "201-134-4", "1 - 5", "Skin Sens. 1B, H315"]);
        Assert.NotEmpty(draft.Ingredients[0].Classes!.Doubts);
    }

    [Fact]
    public void A_share_in_parts_per_million_is_converted_and_said()
    {
        OilDraft draft = FromTable(
            ["Chemical name", "CAS No.", "EC No.", "Conc. (ppm)", "Classification"],
            ["Linalool", "78-70-6", "201-134-4", "100 - 500", "Skin Sens. 1B, H317"]
        );
        Assert.Equal("0.01 - 0.05 %", draft.Ingredients[0].Share!.Value);
        Assert.Contains(draft.Ingredients[0].Share!.Doubts, d => d.Contains("parts per million", StringComparison.Ordinal));
    }

    [Fact]
    public void A_share_in_another_unit_is_left_out_and_said()
    {
        OilDraft draft = FromTable(
            ["Chemical name", "CAS No.", "EC No.", "Conc. (vol.-%)", "Classification"],
            ["Linalool", "78-70-6", "201-134-4", "100 - 500", "Skin Sens. 1B, H317"]
        );
        Assert.Null(draft.Ingredients[0].Share);
        Assert.Contains(draft.Ingredients[0].Doubts, d => d.Contains("percent by mass", StringComparison.Ordinal));
    }

    [Fact]
    public void A_silent_classes_cell_leaves_the_classes_unknown()
    {
        OilDraft draft = FromTable(["Linalool", "78-70-6", "201-134-4", "1 - 5", "-"]);
        Assert.Null(draft.Ingredients[0].Classes);
        Assert.Contains(draft.Ingredients[0].Doubts, d => d.Contains("says nothing", StringComparison.Ordinal));
        Assert.DoesNotContain("classes:", DraftYaml.Write(draft).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_from_a_hostile_sheet_stays_inside_its_quotes()
    {
        OilDraft draft = FromTable(["Linalool\" }], draft: x # \\", "78-70-6", "201-134-4", "1 - 5", "Skin Sens. 1B, H317"]);
        var problems = new Problems();
        IDeclaration? oil = new DeclarationReader(TestLaw.Lawbook.Vocabulary).Read(
            Complete(DraftYaml.Write(draft).Text),
            "d.yaml",
            "d",
            problems
        );
        Assert.Empty(problems.Found);
        Assert.Equal("Linalool\" }], draft: x # \\", ((Oil)oil!).Ingredients[0].Identity.Name);
    }

    // The little sheet has no head of its own.
    private static string Complete(string yaml) => yaml + "name: N\nsupplier: S\ndocument: D\nrevised: 2026-01-01\n";

    private static OilDraft FromTable(params string[] row) => FromTable(Heads, row);

    private static OilDraft FromTable(string[] heads, string[] row)
    {
        string Row(string[] cells, string tag) =>
            $"<tr>{string.Concat(cells.Select(c => $"<{tag}>{System.Security.SecurityElement.Escape(c)}</{tag}>"))}</tr>";
        var xml = new StringBuilder(
            "<paper title=\"t\" lang=\"en\" width=\"210\" height=\"297\" margin=\"16\" x-height=\"1.5\" smallest-x-height=\"1.5\">"
        );
        for (int s = 1; s <= 16; s++)
        {
            xml.Append($"<p>SECTION {s}: {Tongue.English.Sections[s - 1]}</p>");
            xml.Append(s == 3 ? $"<table widths=\"30 16 14 14 26\">{Row(heads, "th")}{Row(row, "td")}</table>" : "<p>-</p>");
        }

        var problems = new Problems();
        byte[] pdf = PdfDrawing.Draw(ManyPages.FromMarkup(xml.Append("</paper>").ToString(), "sheet", TestLaw.Shop, problems)!);
        IReadOnlyList<SheetPage> pages = PdfWords.Parse(pdf).Value;
        Assert.Empty(problems.Found);
        return TestDrafts.Of(new SupplierPdf("sheet.pdf", pdf, pages));
    }

    [Fact]
    public void Hostile_and_useless_files_get_a_clear_word()
    {
        byte[] good = File.ReadAllBytes(Path.Combine(CorpusScore.Folder, "dune.own-lines-en.pdf"));
        Assert.Contains("not a PDF", Refusal("hello"u8.ToArray()), StringComparison.Ordinal);
        Assert.Contains("not a PDF", Refusal([]), StringComparison.Ordinal);
        Assert.NotEqual("", Refusal(good[..(good.Length / 3)]));
        Assert.NotEqual("", Refusal([.. "%PDF-1.4\n"u8, .. new byte[200_000]]));
        Assert.Contains("larger than", Refusal(new byte[PdfWords.LargestBytes + 1]), StringComparison.Ordinal);
        Assert.Contains("encrypted", Refusal(Qpdf(good, "--encrypt", "secret", "owner", "256", "--")), StringComparison.Ordinal);
    }

    [Fact]
    public void Scanned_pages_are_refused()
    {
        var pdf = new MemoryStream();
        using (var document = SkiaSharp.SKDocument.CreatePdf(pdf))
        using (var scan = new SkiaSharp.SKBitmap(200, 280))
        {
            document.BeginPage(595, 842).DrawBitmap(scan, 0, 0, SkiaSharp.SKSamplingOptions.Default);
            document.EndPage();
            document.Close();
        }

        Assert.Contains("scanned", Refusal(pdf.ToArray()), StringComparison.Ordinal);
    }

    [Fact]
    public void Cut_and_bent_files_never_make_the_reader_throw()
    {
        byte[] good = File.ReadAllBytes(Path.Combine(CorpusScore.Folder, "dune.latex-grid-de.pdf"));
        var random = new Random(7);
        for (int i = 0; i < 60; i++)
        {
            byte[] bent = [.. good];
            for (int k = 0; k < 40; k++)
            {
                bent[random.Next(bent.Length)] = (byte)random.Next(256);
            }

            Parsed<IReadOnlyList<SheetPage>> pages = PdfWords.Parse(i % 3 == 0 ? bent[..random.Next(bent.Length)] : bent);
            if (!pages.Success)
            {
                Assert.NotEqual("", pages.Reason);
                continue;
            }

            TestDrafts.OrNull(new SupplierPdf("bent.pdf", bent, pages.Value));
        }
    }

    [Fact]
    public void Pages_survive_the_way_between_processes()
    {
        Parsed<IReadOnlyList<SheetPage>> pages = PdfWords.Parse(
            File.ReadAllBytes(Path.Combine(CorpusScore.Folder, "dune.own-lines-en.pdf"))
        );
        var wire = new MemoryStream();
        PageWire.Write(wire, pages);
        wire.Position = 0;
        IReadOnlyList<SheetPage> back = PageWire.Read(wire).Value;
        Assert.Equal(pages.Value.SelectMany(p => p.Words), back.SelectMany(p => p.Words));
        Assert.Equal(pages.Value.SelectMany(p => p.Rules), back.SelectMany(p => p.Rules));
    }

    private static string Refusal(byte[] pdf) => PdfWords.Parse(pdf).Reason ?? "";

    private static byte[] Qpdf(byte[] pdf, params string[] options)
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        string from = Path.Combine(folder, "a.pdf");
        string to = Path.Combine(folder, "b.pdf");
        File.WriteAllBytes(from, pdf);
        using Process qpdf = Process.Start("qpdf", [.. options, from, to]);
        qpdf.WaitForExit();
        return File.ReadAllBytes(to);
    }
}
