using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Pdf;

/// <summary>PDFs for a print shop.</summary>
public class PressTests
{
    private const double PointsPerMm = 72 / 25.4;

    private static RawPdf Raw { get; } = new(PdfDrawing.Draw(TestPages.Document, PdfPurpose.Press));

    [Outside(
        "ISO 15930-1:2001, clause 6: identification, trapping, title and dates in the information dictionary, identifier; from memory"
    )]
    [Fact]
    public void The_file_says_what_it_was_made_after()
    {
        Assert.StartsWith("%PDF-1.3\n", Raw.Text, StringComparison.Ordinal);
        foreach (
            string entry in new[]
            {
                "/GTS_PDFXVersion(PDF/X-1:2001)",
                "/GTS_PDFXConformance(PDF/X-1a:2001)",
                "/Trapped/False",
                "/Title<FEFF",
                "/CreationDate(D:",
                "/ModDate(D:",
                "/Producer(",
            }
        )
        {
            Assert.Contains(entry, Raw.Information, StringComparison.Ordinal);
        }

        Assert.Matches(@"trailer\n<<.*/ID\[<[0-9A-F]{32}><[0-9A-F]{32}>\]", Raw.Text);
    }

    [Outside(
        "ISO 15930-1:2001, clause 6: one output intent GTS_PDFX; a condition of the ICC's register goes by name, without profile; from memory"
    )]
    [Fact]
    public void The_output_condition_is_a_registered_one()
    {
        Assert.Contains("/S/GTS_PDFX/", Raw.Catalog, StringComparison.Ordinal);
        Assert.Contains("/OutputConditionIdentifier(FOGRA39)", Raw.Catalog, StringComparison.Ordinal);
        Assert.Contains("/RegistryName(http://www.color.org)", Raw.Catalog, StringComparison.Ordinal);
        Assert.DoesNotContain("/DestOutputProfile", Raw.Text, StringComparison.Ordinal);
    }

    [Outside("ISO 15930-1:2001, clause 6: no transparency, layers, encryption, scripts, forms, LZW, object streams, RGB; from memory")]
    [Fact]
    public void Nothing_is_in_it_that_such_files_must_not_hold()
    {
        foreach (
            string barred in new[]
            {
                "/SMask",
                "/Group",
                "/CA ",
                "/ca ",
                "/BM",
                "/OCProperties",
                "/Encrypt",
                "/JavaScript",
                "/AcroForm",
                "/Annots",
                "/LZWDecode",
                "/ObjStm",
                "/XRef",
                "/DeviceRGB",
                "/ICCBased",
                "/CalRGB",
                "/Metadata",
                "/StructTreeRoot",
            }
        )
        {
            Assert.All(Raw.Bodies, b => Assert.DoesNotContain(barred, b, StringComparison.Ordinal));
        }

        Assert.DoesNotMatch(@"\b(rg|RG|g|G|sh|BDC|BMC)\n", Raw.Content());
        Assert.Empty(Raw.All("/Subtype/Type3"));
        Assert.Equal(Raw.All("/Type/FontDescriptor").Count, Raw.All("/FontFile2").Count);
    }

    [Outside("ISO 15930-1:2001, clause 6, and ISO 32000-1, 14.11.2: TrimBox within BleedBox within MediaBox; from memory")]
    [Fact]
    public void The_page_has_a_trim_and_a_bleed_that_is_drawn()
    {
        string page = Raw.Single("/Type/Page/");
        double bleed = TestPages.BleedMm * PointsPerMm;
        double width = TestPages.WidthMm * PointsPerMm;
        double height = TestPages.HeightMm * PointsPerMm;
        Assert.Equal([bleed, bleed, width + bleed, height + bleed], Box(page, "/TrimBox"), Near);
        Assert.Equal([0, 0, width + (2 * bleed), height + (2 * bleed)], Box(page, "/BleedBox"), Near);
        Assert.Equal(Box(page, "/MediaBox"), Box(page, "/BleedBox"));
        Assert.DoesNotContain("/ArtBox", page, StringComparison.Ordinal);
        Assert.Contains("1 0 0 1 -3 -3 cm", Raw.Content(), StringComparison.Ordinal);
    }

    [Outside("ISO 32000-1, 8.6.6.4 (separations), 8.6.7 (overprint); from memory")]
    [Fact]
    public void Spot_inks_have_names_and_only_some_of_them_overprint()
    {
        Assert.Contains("/DeviceCMYK", Raw.Single("[/Separation/Copper#20#28foil#29"), StringComparison.Ordinal);
        Assert.Contains("/C1[0 1 0 0 ]", Raw.Single("[/Separation/CutLine"), StringComparison.Ordinal);
        Assert.Contains("/Over<</Type/ExtGState/OP true/op true/OPM 1>>", Raw.Single("/ExtGState<<"), StringComparison.Ordinal);
        string content = Raw.Content();
        Assert.Equal(
            [
                ("0 .4 .6 0 k", false),
                ("0 0 0 1 k", true),
                ("0 1 1 0 k", false),
                ("0 0 0 1 K", false),
                ("0 0 0 1 k", true),
                ("0 0 0 .5 K", false),
                ("/S0 cs 1 scn", false),
                ("/S1 cs 1 scn", true),
            ],
            [.. Painted(content).Take(8)]
        );
        Assert.Equal(("/S2 CS 1 SCN", true), Painted(content).Last());
    }

    [Fact]
    public void A_page_without_an_outline_of_its_own_has_no_cut_line()
    {
        Scene plain = TestPages.Page with { CutPath = null };
        Assert.DoesNotContain(
            "CutLine",
            new RawPdf(PdfDrawing.Draw(new PaperDocument("t", "en", [plain]), PdfPurpose.Press)).Text,
            StringComparison.Ordinal
        );
        foreach (PdfPurpose purpose in new[] { PdfPurpose.People, PdfPurpose.Archive })
        {
            var other = new RawPdf(PdfDrawing.Draw(TestPages.Document, purpose));
            Assert.DoesNotContain(other.Bodies, b => b.Contains("/Separation", StringComparison.Ordinal));
            Assert.Equal(
                [0, 0, TestPages.WidthMm * PointsPerMm, TestPages.HeightMm * PointsPerMm],
                Box(other.Single("/Type/Page/"), "/MediaBox"),
                Near
            );
        }
    }

    [Outside("Ghostscript's tiffsep (Debian): the plates that a press would get")]
    [NeedsToolFact("gs")]
    public void Plates_hold_what_the_press_should_print()
    {
        var full = new Ink(0, 0, 0, new Cmyk(60, 40, 40, 100));
        Scene page = new(
            60,
            30,
            [
                TestPages.Box(-3, -3, 66, 36, TestPages.Ground),
                Strokes.Text("Black", Weight.Bold, 5, 12, 8, Ink.Black),
                Strokes.Text("Rich", Weight.Bold, 5, 25, 8, full),
                TestPages.Box(40, 5, 10, 10, Ink.Black),
            ],
            []
        )
        {
            BleedMm = 3,
            CutPath = Strokes.BoxPath(60, 30),
        };
        using var tool = new Tool();
        string pdf = tool.Write("plates.pdf", PdfDrawing.Draw(new PaperDocument("t", "en", [page]), PdfPurpose.Press));
        tool.Run(
            "gs",
            "-q",
            "-dBATCH",
            "-dNOPAUSE",
            "-sDEVICE=tiffsep",
            "-r150",
            "-sCompression=none",
            $"-sOutputFile={tool.PathOf("p.tif")}",
            pdf
        );
        Plate magenta = Plate.Read(tool.PathOf("p(Magenta).tif"));
        Plate cyan = Plate.Read(tool.PathOf("p(Cyan).tif"));
        Plate black = Plate.Read(tool.PathOf("p(Black).tif"));
        Plate cut = Plate.Read(tool.PathOf("p(CutLine).tif"));

        // The ground goes out to the edge of the bleed and lies under black letters unbroken; where four inks are, theirs count.
        byte ground = magenta.At(1, 1);
        Assert.InRange(ground, 255 * 0.58, 255 * 0.62);
        Assert.All(magenta.Box(7, 7, 36, 17), v => Assert.Equal(ground, v));
        Assert.Equal(0, black.Box(7, 7, 36, 17).Min());
        Assert.Equal(255, cyan.Box(7, 7, 36, 17).Min());
        Assert.True(cyan.Box(7, 20, 36, 30).Min() < 110);

        // A black area is no text: it leaves out the ground below.
        Assert.Equal(255, magenta.At(48, 13));
        Assert.Equal(0, black.At(48, 13));

        // The cut line is on no plate but its own, and leaves out nothing.
        Assert.Equal(0, cut.Box(2, 10, 4, 20).Min());
        Assert.All(magenta.Box(2, 10, 4, 20), v => Assert.Equal(ground, v));
        Assert.Equal(255, black.Box(2, 10, 4, 20).Min());
    }

    private static IEnumerable<(string Ink, bool Overprints)> Painted(string content)
    {
        bool overprints = false;
        string ink = "";
        foreach (string line in content.Split('\n'))
        {
            overprints = line switch
            {
                "/Over gs" => true,
                "/Apart gs" => false,
                _ => overprints,
            };
            if (Regex.IsMatch(line, @"^[^(]* (k|K|scn|SCN)$"))
            {
                ink = line;
                yield return (ink, overprints);
            }
        }
    }

    private static double[] Box(string page, string name) =>
        [
            .. Regex
                .Match(page, $@"{name}\[([^\]]*)\]")
                .Groups[1]
                .Value.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(v => double.Parse(v, CultureInfo.InvariantCulture)),
        ];

    private static bool Near(double one, double other) => Math.Abs(one - other) < 0.0001;
}
