using System.Globalization;
using System.Text;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using SkiaSharp;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Chandlery.Tests.Pdf;

/// <summary>What other programs read in our PDFs, and where.</summary>
public class ReadBackTests
{
    private const int Reach = 2;
    private const double MmPerPoint = 25.4 / 72;
    private const string CompactFont = "/usr/share/fonts/opentype/ebgaramond/EBGaramond12-Regular.otf";

    [Theory]
    [InlineData(PdfPurpose.People)]
    [InlineData(PdfPurpose.Press)]
    [InlineData(PdfPurpose.Archive)]
    public void Text_reads_back_exactly(PdfPurpose purpose)
    {
        using PdfDocument pdf = PdfDocument.Open(PdfDrawing.Draw(TestPages.Document, purpose));
        string text = string.Concat(pdf.GetPage(1).Letters.Select(l => l.Value));
        foreach (TextItem line in TestPages.Page.All.OfType<TextItem>())
        {
            Assert.Contains(line.Shaped.Text, text, StringComparison.Ordinal);
        }
    }

    [Outside("poppler and MuPDF (Debian) read the text as it was set; poppler gives the blank that does not break as a blank")]
    [NeedsToolFact("pdftotext", "mutool")]
    public void Other_programs_read_the_same_text()
    {
        using var tool = new Tool();
        foreach (PdfPurpose purpose in Enum.GetValues<PdfPurpose>())
        {
            string pdf = tool.Write("page.pdf", PdfDrawing.Draw(TestPages.Document, purpose));
            string wanted = TestPages.HardText.Replace('\u00A0', ' ');
            Assert.Contains(wanted, tool.Run("pdftotext", "-raw", pdf, "-").Replace('\u00A0', ' '), StringComparison.Ordinal);
            Assert.Contains(wanted, tool.Run("mutool", "draw", "-F", "txt", pdf).Replace('\u00A0', ' '), StringComparison.Ordinal);
        }
    }

    [Outside("Outlines of the font's own glyphs by SkiaSharp, beside the letter boxes that PdfPig measures in the PDF")]
    [Theory]
    [InlineData(PdfPurpose.People, 0)]
    [InlineData(PdfPurpose.Press, TestPages.BleedMm)]
    public void Letters_lie_where_the_scene_has_them(PdfPurpose purpose, double bleed)
    {
        using PdfDocument pdf = PdfDocument.Open(PdfDrawing.Draw(TestPages.Document, purpose));
        Page page = pdf.GetPage(1);
        List<Letter> letters = [.. page.Letters];
        double height = page.Height * MmPerPoint;
        int at = 0;
        foreach (TextItem line in TestPages.Page.All.OfType<TextItem>())
        {
            using var font = new SKFont(line.Face.Typeface, line.Face.UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true };
            double scale = line.SizeMm / line.Face.UnitsPerEm;
            for (int i = 0; i < line.Shaped.Glyphs.Length; i++, at++)
            {
                using SKPath? outline = font.GetGlyphPath(line.Shaped.Glyphs[i]);
                if (outline is null || outline.IsEmpty || line.AngleDegrees != 0)
                {
                    continue;
                }

                SKRect box = outline.TightBounds;
                double left = line.XMm + ((line.Shaped.Positions[i] + box.Left) * scale) + bleed;
                double bottom = height - bleed - line.BaselineMm - (box.Bottom * scale);
                Assert.Equal(left, letters[at].BoundingBox.Left * MmPerPoint, 0.01);
                Assert.Equal(bottom, letters[at].BoundingBox.Bottom * MmPerPoint, 0.01);
                Assert.Equal(box.Height * scale, letters[at].BoundingBox.Height * MmPerPoint, 0.01);
            }
        }

        Assert.Equal(letters.Count, at);
    }

    [Fact]
    public void Roundings_do_not_add_up_along_a_line()
    {
        TextItem line = Strokes.Text(string.Concat(Enumerable.Repeat("wavy AVATAR, ", 20)), Weight.Regular, 2, 10, 2, Ink.Black);
        using PdfDocument pdf = PdfDocument.Open(PdfDrawing.Draw(new PaperDocument("t", "en", [new Scene(400, 20, [line], [])])));
        List<Letter> letters = [.. pdf.GetPage(1).Letters];
        for (int i = 0; i < letters.Count; i++)
        {
            double wanted = 2 + (line.Shaped.Positions[i] * 2.0 / line.Face.UnitsPerEm);
            Assert.Equal(wanted, letters[i].StartBaseLine.X * MmPerPoint, 0.0025);
        }
    }

    [Outside("The fonts EB Garamond and Inter: one with CFF outlines, one with TrueType outlines; poppler, MuPDF and PdfPig read both")]
    [NeedsToolFact("pdftotext", "mutool", "pdffonts", CompactFont)]
    public void A_face_of_the_makers_own_with_compact_outlines_is_embedded_and_read()
    {
        byte[] file = File.ReadAllBytes(CompactFont);
        Assert.Null(EmbeddingRight.Refusal(file));
        Face face = Face.Open(file);

        // A ligature for three characters, one glyph for two characters (blanks that break and do not), kerns.
        const string Words = "Office fluff AVATAR \u00A0x Ω\u2126";
        Scene page = new(100, 20, [Strokes.Text(Words, face, 5, 10, 4, Ink.Black)], []);
        foreach (PdfPurpose purpose in Enum.GetValues<PdfPurpose>())
        {
            byte[] bytes = PdfDrawing.Draw(new PaperDocument("t", "en", [page]), purpose);
            using var tool = new Tool();
            string pdf = tool.Write("own.pdf", bytes);
            Assert.Contains("CID Type 0C", tool.Run("pdffonts", pdf), StringComparison.Ordinal);
            using PdfDocument read = PdfDocument.Open(bytes);
            Assert.Equal(Words, string.Concat(read.GetPage(1).Letters.Select(l => l.Value)));
            Assert.Contains("Office fluff AVATAR", tool.Run("pdftotext", pdf, "-"), StringComparison.Ordinal);
            Assert.Contains("Office fluff AVATAR", tool.Run("mutool", "draw", "-F", "txt", pdf), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_same_document_gives_the_same_bytes()
    {
        var many = new PaperDocument("t", "en", [.. Enumerable.Repeat(TestPages.Page, 50)]);
        foreach (PdfPurpose purpose in Enum.GetValues<PdfPurpose>())
        {
            Assert.Equal(PdfDrawing.Draw(many, purpose), PdfDrawing.Draw(many, purpose));
        }
    }

    [Outside("qpdf, MuPDF and Ghostscript (Debian) find the files sound")]
    [NeedsToolFact("qpdf", "mutool", "gs")]
    public void Other_programs_find_the_files_sound()
    {
        using var tool = new Tool();
        var many = new PaperDocument("t", "en", [.. Enumerable.Repeat(TestPages.Page, 300)]);
        foreach (PdfPurpose purpose in Enum.GetValues<PdfPurpose>())
        {
            string pdf = tool.Write("page.pdf", PdfDrawing.Draw(many, purpose));
            Assert.Contains("No syntax or stream encoding errors", tool.Run("qpdf", "--check", pdf), StringComparison.Ordinal);
            Assert.DoesNotContain("error", tool.Run("mutool", "draw", "-r", "20", "-o", "out%d.png", pdf, "1-3"), StringComparison.Ordinal);
            Assert.Equal("", tool.Run("gs", "-q", "-dBATCH", "-dNOPAUSE", "-dPDFSTOPONERROR", "-dLastPage=3", "-sDEVICE=nullpage", pdf));
        }
    }

    // Both put large letters on whole dots, which is a dot by itself; edges are smoothed over one more.
    [Outside("poppler's and MuPDF's drawings of the PDF beside Skia's of the scene")]
    [NeedsToolFact("pdftoppm", "mutool")]
    public void The_pdf_looks_like_the_png_within_a_pixel()
    {
        using var tool = new Tool();
        string pdf = tool.Write("page.pdf", PdfDrawing.Draw(TestPages.Document));
        tool.Run("pdftoppm", "-r", "300", "-png", "-singlefile", pdf, "poppler");
        tool.Run("mutool", "draw", "-r", "300", "-o", "mupdf.png", pdf);
        AssertAlike(tool.PathOf("mupdf.png"));
        AssertAlike(tool.PathOf("poppler.png"));
    }

    [Outside("Chromium's drawing of the SVG beside Skia's of the scene")]
    [NeedsToolFact("chromium")]
    public void The_svg_looks_like_the_png_within_a_pixel()
    {
        const double DotsPerInchOnScreen = 96;
        const double MmPerInch = 25.4;
        using var tool = new Tool();
        Scene page = TestPages.Page;
        string svg = tool.Write("page.svg", Encoding.UTF8.GetBytes(SvgDrawing.Draw(page, "page")));
        double scale = 300 / DotsPerInchOnScreen;
        int width = (int)Math.Round(page.WidthMm / MmPerInch * DotsPerInchOnScreen);
        int height = (int)Math.Round(page.HeightMm / MmPerInch * DotsPerInchOnScreen);
        tool.Run(
            "chromium",
            "--headless",
            "--no-sandbox",
            "--hide-scrollbars",
            string.Create(CultureInfo.InvariantCulture, $"--force-device-scale-factor={scale}"),
            $"--window-size={width},{height}",
            "--screenshot=" + tool.PathOf("chromium.png"),
            "file://" + svg
        );
        AssertAlike(tool.PathOf("chromium.png"));
    }

    private static void AssertAlike(string file)
    {
        using SKBitmap theirs = SKBitmap.Decode(file);
        using SKBitmap ours = SKBitmap.Decode(PngDrawing.Draw(TestPages.Page, 300));
        Assert.InRange(theirs.Width, ours.Width - 1, ours.Width + 1);
        Assert.InRange(theirs.Height, ours.Height - 1, ours.Height + 1);
        var apart = new List<string>();
        for (int y = Reach; y < ours.Height - Reach - 1; y++)
        {
            for (int x = Reach; x < ours.Width - Reach - 1; x++)
            {
                if (!IsNear(ours.GetPixel(x, y), theirs, x, y) || !IsNear(theirs.GetPixel(x, y), ours, x, y))
                {
                    apart.Add($"{x} {y}");
                }
            }
        }

        Assert.True(
            apart.Count == 0,
            $"{file}: {apart.Count} without their like beside them in the other picture: {string.Join(", ", apart.Take(20))}"
        );
    }

    // Edges are smoothed differently, and thin strokes more or less dark: a pixel must lie between the shades of its neighbours in the
    // other picture, or not far off.
    private static bool IsNear(SKColor colour, SKBitmap picture, int x, int y)
    {
        const int Slack = 48;
        (int Low, int High)[] ranges = [(255, 0), (255, 0), (255, 0)];
        for (int dy = -Reach; dy <= Reach; dy++)
        {
            for (int dx = -Reach; dx <= Reach; dx++)
            {
                SKColor other = picture.GetPixel(x + dx, y + dy);
                int[] parts = [other.Red, other.Green, other.Blue];
                for (int i = 0; i < 3; i++)
                {
                    ranges[i] = (Math.Min(ranges[i].Low, parts[i]), Math.Max(ranges[i].High, parts[i]));
                }
            }
        }

        int[] own = [colour.Red, colour.Green, colour.Blue];
        return own.Zip(ranges).All(p => p.First >= p.Second.Low - Slack && p.First <= p.Second.High + Slack);
    }
}
