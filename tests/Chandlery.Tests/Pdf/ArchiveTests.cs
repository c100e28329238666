using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Chandlery.Paper.Drawing;
using Chandlery.Tests.Support;
using UglyToad.PdfPig;

namespace Chandlery.Tests.Pdf;

/// <summary>PDFs for keeping.</summary>
public class ArchiveTests
{
    private static readonly PdfAttachment[] Files =
    [
        new("candles/harbour-bowl.yaml", "application/yaml", "declares: candle\n"u8.ToArray(), "The candle as its maker declares it"),
        new("assessment.json", "application/json", "{}"u8.ToArray(), "What the law makes of it – in full"),
    ];

    private static byte[] Bytes { get; } = PdfDrawing.Archive(TestPages.Document, Files);

    private static RawPdf Raw { get; } = new(Bytes);

    [Outside("ISO 19005-3, 6.6.4 (part and conformance in XMP) and 6.1.2, 6.1.3 (header, identifier, no encryption): from memory")]
    [Fact]
    public void The_file_says_what_it_was_made_after()
    {
        Assert.StartsWith("%PDF-1.7\n%", Raw.Text, StringComparison.Ordinal);
        Assert.All(Raw.Text[10..14], c => Assert.True(c > 127));
        Assert.Matches(@"/ID\[<[0-9A-F]{32}><[0-9A-F]{32}>\]", Raw.Text);
        Assert.DoesNotContain("/Encrypt", Raw.Text, StringComparison.Ordinal);
        Assert.EndsWith("%%EOF\n", Raw.Text, StringComparison.Ordinal);
        string metadata = Raw.Follow(Raw.Catalog, "/Metadata");
        Assert.DoesNotContain("/Filter", metadata, StringComparison.Ordinal);
        XDocument xmp = Xmp();
        XNamespace id = "http://www.aiim.org/pdfa/ns/id/";
        Assert.Equal("3", Assert.Single(xmp.Descendants(id + "part")).Value);
        Assert.Equal("B", Assert.Single(xmp.Descendants(id + "conformance")).Value);
    }

    [Outside("ISO 19005-3, 6.6.3: the information dictionary says the same as XMP; from memory")]
    [Fact]
    public void Both_descriptions_of_the_document_agree()
    {
        XDocument xmp = Xmp();
        XNamespace basic = "http://ns.adobe.com/xap/1.0/";
        XNamespace pdf = "http://ns.adobe.com/pdf/1.3/";
        Assert.Contains("/CreationDate(D:20260101000000Z)", Raw.Information, StringComparison.Ordinal);
        Assert.Contains("/ModDate(D:20260101000000Z)", Raw.Information, StringComparison.Ordinal);
        Assert.Equal("2026-01-01T00:00:00Z", xmp.Descendants(basic + "CreateDate").Single().Value);
        Assert.Equal("2026-01-01T00:00:00Z", xmp.Descendants(basic + "ModifyDate").Single().Value);
        Assert.Contains($"/Creator({xmp.Descendants(basic + "CreatorTool").Single().Value})", Raw.Information, StringComparison.Ordinal);
        Assert.Contains($"/Producer({xmp.Descendants(pdf + "Producer").Single().Value})", Raw.Information, StringComparison.Ordinal);
    }

    [Outside(
        "ISO 19005-3, 6.2.3 and 6.2.4: colours of a device only under an output intent of their kind; 6.2.11: fonts inside; from memory"
    )]
    [Fact]
    public void Colours_and_fonts_need_nothing_from_outside()
    {
        Assert.Contains("/S/GTS_PDFA1/", Raw.Catalog, StringComparison.Ordinal);
        byte[] profile = Raw.Stream(Raw.Catalog, "/DestOutputProfile");
        Assert.Equal("RGB XYZ ", Encoding.ASCII.GetString(profile, 16, 8));
        Assert.DoesNotContain(
            Raw.Bodies,
            b => b.Contains("/DeviceCMYK", StringComparison.Ordinal) || b.Contains("/Separation", StringComparison.Ordinal)
        );
        Assert.DoesNotMatch(@"\b(k|K|scn|SCN)\n", Raw.Content());
        Assert.All(Raw.All("/Type/FontDescriptor"), d => Assert.Contains("/FontFile2 ", d, StringComparison.Ordinal));
        Assert.All(Raw.All("/Subtype/Type0"), f => Assert.Contains("/ToUnicode ", f, StringComparison.Ordinal));
        Assert.All(Raw.All("/Subtype/CIDFontType2"), f => Assert.Contains("/CIDToGIDMap", f, StringComparison.Ordinal));
    }

    [Outside("ISO 19005-3, 6.2: no transparency groups, no XObject references, no LZW; 6.6.1: no actions; from memory")]
    [Fact]
    public void Nothing_is_in_it_that_archives_bar()
    {
        foreach (
            string barred in new[]
            {
                "/SMask",
                "/LZWDecode",
                "/JavaScript",
                "/Launch",
                "/OpenAction",
                "/AA",
                "/PS",
                "/Ref ",
                "/TR ",
                "/Interpolate",
            }
        )
        {
            Assert.All(Raw.Bodies, b => Assert.DoesNotContain(barred, b, StringComparison.Ordinal));
        }
    }

    [Outside(
        "ISO 19005-3, 6.8: files inside have F, UF, a media type and a relationship, and the catalog names them (AF); read with PdfPig; from memory"
    )]
    [Fact]
    public void Files_travel_inside_and_come_out_whole()
    {
        Assert.Equal(2, Regex.Count(Regex.Match(Raw.Catalog, @"/AF\[([^\]]*)\]").Groups[1].Value, " 0 R"));
        IReadOnlyList<string> specifications = Raw.All("/Type/Filespec");
        Assert.Equal(2, specifications.Count);
        Assert.All(specifications, s => Assert.Matches(@"/F\(.*\)/UF\(.*\)/Desc.*/AFRelationship/Source/EF<</F [0-9]+ 0 R/UF ", s));
        Assert.Contains(
            "/Subtype/application#2Fjson/Params<</Size 2/ModDate(",
            Raw.Single("/Type/EmbeddedFile", "json"),
            StringComparison.Ordinal
        );
        using PdfDocument pdf = PdfDocument.Open(Bytes);
        Assert.True(pdf.Advanced.TryGetEmbeddedFiles(out IReadOnlyList<UglyToad.PdfPig.Content.EmbeddedFile>? found));
        Assert.Equal(
            Files.Select(f => (f.Name, Encoding.UTF8.GetString(f.Bytes))).Order(),
            found!.Select(f => (f.Name, Encoding.UTF8.GetString(f.Memory.Span))).Order()
        );
    }

    [Fact]
    public void Two_files_of_one_name_are_refused() =>
        Assert.Contains(
            "assessment.json",
            Assert.Throws<ArgumentException>(() => PdfDrawing.Archive(TestPages.Document, [Files[1], Files[1]])).Message,
            StringComparison.Ordinal
        );

    private static XDocument Xmp() => XDocument.Parse(Encoding.UTF8.GetString(Raw.Stream(Raw.Catalog, "/Metadata")).TrimStart('\uFEFF'));
}
