using System.Text.RegularExpressions;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Chandlery.Tests.Pdf;

/// <summary>PDFs for people: what those hear who cannot see them.</summary>
public class PeopleTests
{
    private static RawPdf Raw { get; } = new(PdfDrawing.Draw(TestPages.Document));

    [Outside("ISO 14289-1, 7.1: marked, a title shown in the window's bar, title and language told; 7.2: language; from memory")]
    [Fact]
    public void The_document_says_that_it_is_tagged_and_what_it_is_called()
    {
        Assert.Contains("/MarkInfo<</Marked true>>", Raw.Catalog, StringComparison.Ordinal);
        Assert.Contains("/ViewerPreferences<</DisplayDocTitle true>>", Raw.Catalog, StringComparison.Ordinal);
        Assert.Contains("/Lang(en)", Raw.Catalog, StringComparison.Ordinal);
        string xmp = System.Text.Encoding.UTF8.GetString(Raw.Stream(Raw.Catalog, "/Metadata"));
        Assert.Contains("<rdf:li xml:lang=\"x-default\">Test – page (1)</rdf:li>", xmp, StringComparison.Ordinal);
    }

    [Outside(
        "ISO 32000-1, 14.8.4 (standard structure types), 14.9.2 (language), 14.9.3 (alternate descriptions); ISO 14289-1, 7.5 (Scope of headers): from memory"
    )]
    [Fact]
    public void Parts_have_their_roles_languages_and_words()
    {
        string[] types = [.. Raw.Bodies.Select(b => Regex.Match(b, "^<</S/(\\w+)/P").Groups[1].Value).Where(t => t.Length > 0).Order()];
        Assert.Equal(
            ["Document", "Figure", "H1", "P", "P", "P", "P", "TD", "TD", "TH", "TH", "TR", "TR", "Table"],
            types.Order(StringComparer.Ordinal)
        );
        Assert.Contains("/Lang(de)", Raw.Single("/S/P/P ", "/Lang"), StringComparison.Ordinal);
        Assert.Contains(
            $"/Alt<FEFF{Convert.ToHexString(System.Text.Encoding.BigEndianUnicode.GetBytes("Warning sign – hazard"))}>",
            Raw.Single("/S/Figure"),
            StringComparison.Ordinal
        );
        Assert.All(Raw.All("/S/TH/P"), h => Assert.Contains("/A<</O/Table/Scope/Column>>", h, StringComparison.Ordinal));
        Assert.Equal(2, Raw.All("/S/TH/P").Count);
    }

    [Outside("ISO 32000-1, 14.7.4.4: the parent tree leads from each marked content to its element; from memory")]
    [Fact]
    public void Every_marked_content_finds_its_element_and_back()
    {
        string tree = Raw.Follow(Raw.Follow(Raw.Catalog, "/StructTreeRoot"), "/ParentTree");
        int[] elements = [.. Regex.Matches(Raw.Follow(tree, "/Nums[0"), "([0-9]+) 0 R").Select(m => int.Parse(m.Groups[1].Value))];
        int[] marks = [.. Regex.Matches(Raw.Content(), "/MCID ([0-9]+)").Select(m => int.Parse(m.Groups[1].Value))];
        Assert.Equal(Enumerable.Range(0, elements.Length), marks);
        Assert.All(marks, mark => Assert.Matches($@"/K\[[^\]]*\b{mark} ", Raw.Body(elements[mark])));
        Assert.Contains("/StructParents 0", Raw.Single("/Type/Page/"), StringComparison.Ordinal);
        Assert.Contains("/Tabs/S", Raw.Single("/Type/Page/"), StringComparison.Ordinal);
    }

    [Outside("ISO 14289-1, 7.1: all content is either a part of the structure or an artifact; read back with PdfPig; from memory")]
    [Fact]
    public void Nothing_is_drawn_outside_of_parts_and_artifacts()
    {
        int open = 0;
        foreach (string line in Raw.Content().Split('\n'))
        {
            open += line.EndsWith("BDC", StringComparison.Ordinal) || line.EndsWith("BMC", StringComparison.Ordinal) ? 1 : 0;
            open -= line == "EMC" ? 1 : 0;
            Assert.InRange(open, 0, 1);
            bool draws = Regex.IsMatch(line, @"(TJ|Tj) ET$| (f|S|B|Do) Q$");
            Assert.True(!draws || open == 1, line);
        }

        Assert.Equal(0, open);
        using PdfDocument pdf = PdfDocument.Open(PdfDrawing.Draw(TestPages.Document));
        IReadOnlyList<MarkedContentElement> parts = pdf.GetPage(1).GetMarkedContents();
        string heard = string.Concat(parts.Where(p => !p.IsArtifact).SelectMany(p => p.Letters).Select(l => l.Value));
        Assert.All(TestPages.Page.All.OfType<TextItem>(), t => Assert.Contains(t.Shaped.Text, heard, StringComparison.Ordinal));
        Assert.DoesNotContain(parts.Where(p => p.IsArtifact), p => p.Letters.Count > 0);
    }

    [Outside("poppler's pdfinfo -struct-text reads roles and texts in the order of the page")]
    [NeedsToolFact("pdfinfo")]
    public void Another_program_hears_the_same()
    {
        using var tool = new Tool();
        string pdf = tool.Write("page.pdf", PdfDrawing.Draw(TestPages.Document));
        string said = tool.Run("pdfinfo", "-struct-text", pdf);
        Assert.Matches(@"(?s)Document\s+H1.*Harbour Bowl.*P.*Kann allergische.*Table.*TR.*TH.*Substance.*TD.*Linalool", said);
    }

    [Outside("ISO 32000-1, 7.5.7 and 7.5.8: object streams and cross-reference streams come with PDF 1.5; from memory")]
    [Fact]
    public void Small_objects_are_packed_together()
    {
        Assert.StartsWith("%PDF-1.7\n", Raw.Text, StringComparison.Ordinal);
        Assert.Contains("/Type/ObjStm", Raw.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("\ntrailer\n", Raw.Text, StringComparison.Ordinal);
    }

    [Outside("ISO 32000-1, table 122 and 9.9: what is embedded of a font is its outlines and measures; from memory")]
    [Fact]
    public void Fonts_hold_the_glyphs_in_use_and_nothing_that_a_page_does_not_need()
    {
        IReadOnlyList<string> descriptors = Raw.All("/Type/FontDescriptor");
        Assert.Equal(4, descriptors.Count);
        foreach (string descriptor in descriptors)
        {
            Assert.Matches(@"/FontName/[A-Z]{6}\+Inter-", descriptor);
            byte[] font = Raw.Stream(descriptor, "/FontFile2");
            int count = (font[4] << 8) | font[5];
            IEnumerable<string> tables = Enumerable
                .Range(0, count)
                .Select(i => System.Text.Encoding.ASCII.GetString(font, 12 + (16 * i), 4));
            Assert.Equal(["glyf", "head", "hhea", "hmtx", "loca", "maxp"], tables.Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void A_label_is_small()
    {
        FittedLabel label = LabelDocument
            .Make(TestLaw.Demo("candles/fig-tin.yaml"), TestLaw.Shop, TestLaw.Lawbook.Burning, new Problems())!
            .Fitted!;
        int length = PdfDrawing.Draw(new PaperDocument("Fig Tin", "en", label.Pages)).Length;
        Assert.True(length < 12_000, $"{length} bytes");
    }
}
