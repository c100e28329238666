using System.Text;
using Chandlery.Intake.Pages;
using Chandlery.Sheets.Wild;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Intake;

/// <summary>Text that nobody sees, letters that nobody knows, and pages that are pictures.</summary>
public sealed class SightTests
{
    private const string Plain = "BT /F1 10 Tf 50 700 Td (Linalool 78-70-6, Citral 5392-40-5, and enough letters to be text) Tj ET\n";

    [Theory]
    [InlineData("BT 3 Tr /F1 10 Tf 50 600 Td (Benzene 71-43-2 without ink) Tj ET")]
    [InlineData("BT 1 1 1 rg /F1 10 Tf 50 600 Td (Benzene 71-43-2 in white) Tj ET")]
    [InlineData("BT /F1 0.5 Tf 50 600 Td (Benzene 71-43-2 tiny) Tj ET")]
    [InlineData("BT /F1 10 Tf 50 -40 Td (Benzene 71-43-2 below the page) Tj ET")]
    public void Text_that_cannot_be_seen_is_told_and_never_read(string hidden)
    {
        SheetPage page = Assert.Single(PdfWords.Parse(Pdf(Plain + hidden)).Value);
        Assert.Contains(page.Words, w => w.Text.Contains("78-70-6", StringComparison.Ordinal));
        Assert.DoesNotContain(page.Words, w => w.Text.Contains("71-43-2", StringComparison.Ordinal));
        Assert.Contains(page.Doubts, d => d.Contains("71-43-2", StringComparison.Ordinal));
    }

    [Fact]
    public void White_text_on_a_dark_ground_is_read()
    {
        SheetPage page = Assert.Single(
            PdfWords.Parse(Pdf(Plain + "0 0 0.4 rg 40 590 300 30 re f\nBT 1 1 1 rg /F1 10 Tf 50 600 Td (Geraniol 106-24-1) Tj ET")).Value
        );
        Assert.Contains(page.Words, w => w.Text.Contains("106-24-1", StringComparison.Ordinal));
        Assert.Empty(page.Doubts);
    }

    [Fact]
    public void Fonts_that_do_not_say_what_their_letters_mean_are_told()
    {
        byte[] sheet = File.ReadAllBytes(Path.Combine(CorpusScore.Folder, "dune.own-lines-en.pdf"));
        Assert.True(PdfWords.Parse(sheet).Success);
        string dumb = Encoding.Latin1.GetString(sheet).Replace("/ToUnicode", "/ToUnicodX", StringComparison.Ordinal);
        Assert.Contains("fonts do not say", PdfWords.Parse(Encoding.Latin1.GetBytes(dumb)).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_of_a_page_is_read_only_with_what_recognises_it_and_each_value_is_doubted()
    {
        byte[] scan = Scan([Blank(400, 566)]);
        Assert.Equal(PdfWords.Scanned, PdfWords.Parse(scan).Reason);
        string row = string.Join(
            '\n',
            Enumerable.Range(0, 10).Select(i => $"5\t1\t1\t1\t{i}\t1\t20\t{20 + (30 * i)}\t60\t12\t95.1\tLinalool")
        );
        SheetPage page = Assert.Single(PdfWords.Parse(scan, (_, _) => row).Value);
        Assert.Equal(10, page.Words.Count);
        Assert.True(page.IsPicture);
        Assert.NotNull(page.ValueDoubt);
        Assert.NotEmpty(page.Doubts);
    }

    [NeedsToolFact("tesseract", "pdftoppm")]
    public void A_scanned_table_is_read_cell_by_cell_with_a_doubt_on_every_value()
    {
        using var tool = new Tool();
        string scan = tool.Write("scan.pdf", Scanner.Scan(Press.Print(RuledSheet()), seed: 3, dotsPerInch: 200));
        (int code, string output, string errors) = Command.RunIn(tool.Folder, "draft", scan, "--out", "draft.yaml");
        Assert.True(code == 1, $"{code} {output} {errors}");
        string draft = File.ReadAllText(tool.PathOf("draft.yaml"));
        Assert.All(
            new[] { "cas: \"78-70-6\"", "cas: \"5392-40-5\"", "cas: \"120-51-4\"", "\"Skin Sens. 1B, H317\"" },
            value => Assert.Contains(value, draft, StringComparison.Ordinal)
        );
        Assert.Equal(3, System.Text.RegularExpressions.Regex.Count(draft, "share: \"(?:10 ?- ?25|2.5 ?- ?5|50 ?- ?75) %\""));
        string[] values = [.. draft.Split('\n').Where(l => l.Contains("# page ", StringComparison.Ordinal))];
        Assert.True(values.Length > 10, draft);
        Assert.DoesNotContain(values, v => v.TrimEnd().EndsWith(" 1.00", StringComparison.Ordinal));
    }

    private static WildSheet RuledSheet()
    {
        IReadOnlyList<TableCell> Cells(params string[] texts) => [.. texts.Select(TableCell.Of)];
        var table = new TableBlock(
            [Cells("Chemical name", "CAS No.", "Conc. (%)", "Classification")],
            [
                Cells("Linalool", "78-70-6", "10 - 25", "Skin Sens. 1B, H317"),
                Cells("Citral", "5392-40-5", "2.5 - 5", "Skin Irrit. 2, H315\nSkin Sens. 1, H317"),
                Cells("Benzyl benzoate", "120-51-4", "50 - 75", "Acute Tox. 4, H302"),
            ],
            [34, 22, 20, 40],
            TableRules.Grid,
            true,
            true
        );
        string[] before =
        [
            "SECTION 1: Identification of the substance/mixture",
            "Product name: Night Fig",
            "SECTION 2: Hazards identification",
        ];
        string[] after = ["SECTION 4: First aid measures", "SECTION 5: Firefighting measures"];
        IReadOnlyList<Block> blocks =
        [
            new ParagraphBlock(before),
            new ParagraphBlock(["SECTION 3: Composition/information on ingredients"]),
            table,
            new ParagraphBlock(after),
        ];
        var truth = new WildTruth("", null, null, null, null, null, [], null, null, []);
        return new WildSheet(0, "sheet", "", "en", new SheetForm(210, 150, 15, 9, 1, false, "", ""), blocks, truth);
    }

    private static byte[] Blank(int width, int height)
    {
        using var picture = new SkiaSharp.SKBitmap(width, height);
        picture.Erase(SkiaSharp.SKColors.White);
        using SkiaSharp.SKData file = picture.Encode(SkiaSharp.SKEncodedImageFormat.Png, 100);
        return file.ToArray();
    }

    private static byte[] Scan(IEnumerable<byte[]> pictures)
    {
        var pdf = new MemoryStream();
        using (var document = SkiaSharp.SKDocument.CreatePdf(pdf))
        {
            foreach (byte[] file in pictures)
            {
                using SkiaSharp.SKImage picture = SkiaSharp.SKImage.FromEncodedData(file);
                SkiaSharp.SKCanvas canvas = document.BeginPage(595, 842);
                canvas.DrawImage(picture, new SkiaSharp.SKRect(0, 0, 595, 842), SkiaSharp.SKSamplingOptions.Default);
                document.EndPage();
            }

            document.Close();
        }

        return pdf.ToArray();
    }

    // A page with one of the fonts that every reader has.
    private static byte[] Pdf(string content)
    {
        string[] objects =
        [
            "<< /Type /Catalog /Pages 2 0 R >>",
            "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
            "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 4 0 R /Resources << /Font << /F1 5 0 R >> >> >>",
            $"<< /Length {content.Length} >>\nstream\n{content}\nendstream",
            "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>",
        ];
        var text = new StringBuilder("%PDF-1.4\n");
        var places = new List<int>();
        for (int i = 0; i < objects.Length; i++)
        {
            places.Add(text.Length);
            text.Append($"{i + 1} 0 obj\n{objects[i]}\nendobj\n");
        }

        int table = text.Length;
        text.Append($"xref\n0 {objects.Length + 1}\n0000000000 65535 f \n");
        foreach (int place in places)
        {
            text.Append($"{place:0000000000} 00000 n \n");
        }

        text.Append($"trailer\n<< /Size {objects.Length + 1} /Root 1 0 R >>\nstartxref\n{table}\n%%EOF\n");
        return Encoding.Latin1.GetBytes(text.ToString());
    }
}
