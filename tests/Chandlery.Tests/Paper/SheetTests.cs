using System.Diagnostics;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Quantities;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Papers.LabelSheets;
using Chandlery.Paper.Proofs;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;
using SkiaSharp;
using ZXing;
using ZXing.Common;

namespace Chandlery.Tests.Paper;

public class SheetTests
{
    private static readonly Scene Jar = Fit("slate-jar");

    private static Scene Fit(string candle)
    {
        var problems = new Problems();
        return LabelDocument.Make(TestLaw.Demo($"candles/{candle}.yaml"), TestLaw.Shop, TestLaw.Lawbook.Burning, problems)!.Fitted!.Scene;
    }

    private static Stock StockOf(string name)
    {
        var problems = new Problems();
        Stock? stock = StockShelf.Find(name, problems);
        Assert.Empty(problems.Found);
        return stock!;
    }

    private static SheetOptions Options(int start = 1, bool crop = false, double x = 0, double y = 0) =>
        new(start, crop, new Millimetres(x), new Millimetres(y));

    [Fact]
    public void EveryShippedStockIsSound() => Assert.All(StockShelf.Names, n => Assert.NotNull(StockOf(n)));

    [Fact]
    public void LabelsLieOnTheirCells()
    {
        Stock stock = StockOf("a4-2x4");
        PaperDocument sheets = SheetDocument.Make("t", "en", [.. Enumerable.Repeat(Jar, 9)], stock, Options(start: 3, x: 0.5, y: -0.25));
        Assert.Equal(2, sheets.Pages.Count);
        TextItem name = Jar.All.OfType<TextItem>().First();
        TextItem[] names =
        [
            .. sheets.Pages[0].All.OfType<TextItem>().Where(t => t.Shaped.Text == name.Shaped.Text && t.SizeMm == name.SizeMm),
        ];
        Assert.Equal(6, names.Length);

        // The third label is the first of the second row.
        Assert.Equal(4.75 + 0.5 + name.XMm, names[0].XMm, 9);
        Assert.Equal(13.5 + 67.5 - 0.25 + name.BaselineMm, names[0].BaselineMm, 9);
        Assert.Equal(names[0].XMm + 101.5, names[1].XMm, 9);
        Assert.Equal(names[0].BaselineMm + 67.5, names[2].BaselineMm, 9);
        IReadOnlyList<MeasuredPage> measured = MeasuredPage.ReadAll(PdfDrawing.Draw(sheets));
        Assert.Equal(210, measured[0].WidthMm, 2);
        Assert.Equal(297, measured[0].HeightMm, 2);
    }

    public static TheoryData<string> Stocks => [.. StockShelf.Names.Where(n => StockOf(n).Sheet is not null)];

    private static Scene Blank(Stock stock) =>
        new(
            stock.Label.Size.Width.Value,
            stock.Label.Size.Height.Value,
            [new PathItem(Strokes.BoxPath(500, 500), -100, -100, 1, Ink.Grey, null, 0)],
            []
        );

    [Theory]
    [MemberData(nameof(Stocks))]
    public void CropMarksStandInTheGutterAlone(string name)
    {
        Stock stock = StockOf(name);
        SheetGrid grid = stock.Sheet!;
        Scene sheet = SheetDocument.Make("t", "en", [.. Enumerable.Repeat(Blank(stock), grid.Count)], stock, Options(crop: true)).Pages[0];
        foreach (PathItem mark in sheet.Items.OfType<PathItem>())
        {
            double[] way =
            [
                .. mark
                    .Path.Split('M', 'L', ' ')
                    .Where(t => t.Length > 0)
                    .Select(t => double.Parse(t, System.Globalization.CultureInfo.InvariantCulture)),
            ];
            (double left, double right) = (Math.Min(mark.XMm, mark.XMm + way[2]), Math.Max(mark.XMm, mark.XMm + way[2]));
            (double top, double bottom) = (Math.Min(mark.YMm, mark.YMm + way[3]), Math.Max(mark.YMm, mark.YMm + way[3]));
            for (int cell = 0; cell < grid.Count; cell++)
            {
                double x = grid.Left.Value + (cell % grid.Columns * grid.PitchX.Value);
                double y = grid.Top.Value + (cell / grid.Columns * grid.PitchY.Value);
                bool inside =
                    right > x + 0.001
                    && left < x + stock.Label.Size.Width.Value - 0.001
                    && bottom > y + 0.001
                    && top < y + stock.Label.Size.Height.Value - 0.001;
                Assert.False(inside, $"a mark at {mark.XMm}, {mark.YMm} runs into label {cell + 1}");
            }
        }

        Assert.True(SheetDocument.Calibration(stock, Options()).Pages[0].Items.Count >= grid.Count);
    }

    [Theory]
    [MemberData(nameof(Stocks))]
    public void ArtRunsOverTheEdgeAsFarAsTheStockAllowsAndNeverIntoTheNextLabel(string name)
    {
        foreach (double bleed in new[] { 0, 0.5, 8 })
        {
            Stock stock = StockOf(name) with { Bleed = new Millimetres(bleed) };
            Scene sheet = SheetDocument.Make("t", "en", [Blank(stock), Blank(stock)], stock, Options()).Pages[0];
            ClipItem label = sheet.Items.OfType<ClipItem>().First();
            double gutter = stock.Sheet!.Columns == 1 ? double.PositiveInfinity : stock.Sheet.PitchX.Value - stock.Label.Size.Width.Value;
            Assert.Equal(stock.Sheet.Left.Value - Math.Min(bleed, gutter / 2), label.XMm, 6);
        }
    }

    [Fact]
    public void BacksLieBehindTheirFrontsWhenTheSheetIsTurned()
    {
        Stock stock = StockOf("a4-2x4");
        Scene[] labels = [.. Enumerable.Range(0, 6).Select(i => Blank(stock) with { Marks = [new Mark($"{i}", 0, 0, 1, 1)] })];
        PaperDocument sheets = SheetDocument.Make("t", "en", labels, stock, Options() with { IsDuplex = true });
        Assert.Equal(2, sheets.Pages.Count);
        Assert.Equal(["0", "2", "4"], sheets.Pages[0].Marks.Select(m => m.Name));
        Assert.Equal(["1", "3", "5"], sheets.Pages[1].Marks.Select(m => m.Name));
        foreach ((Mark front, Mark back) in sheets.Pages[0].Marks.Zip(sheets.Pages[1].Marks))
        {
            // Seen through the sheet, the back's left edge lies where the front's right edge is.
            Assert.Equal(210 - front.XMm - stock.Label.Size.Width.Value, back.XMm, 6);
            Assert.Equal(front.YMm, back.YMm, 6);
        }
    }

    [Theory]
    [InlineData("pitchXMm: 101.5", "pitchXMm: 90", "overlap")]
    [InlineData("columns: 2", "columns: 3", "run off the page")]
    [InlineData("label: { widthMm: 99, heightMm: 67.5, cornerMm: 2 }", "", "'label' is missing")]
    [InlineData("sheet: {", "roll: { dotsPerInch: 203 }\nsheet: {", "either a sheet or a roll")]
    public void AnImpossibleStockIsRefused(string right, string wrong, string expected)
    {
        var problems = new Problems();
        string text = File.ReadAllText(Path.Combine(TestLaw.Repository, "data", "stocks", "a4-2x4.yaml"))
            .Replace(right, wrong, StringComparison.Ordinal);
        Assert.Null(StockReader.Read(text, "s.yaml", "s", problems));
        Assert.Contains(problems.Found, p => p.What.Contains(expected, StringComparison.Ordinal));
    }

    // 203 dots per inch are 8 dots per millimetre to a hair: 100 mm are 799 dots.
    [Theory]
    [InlineData(203, 799, 599)]
    [InlineData(300, 1181, 886)]
    public void ARollIsPrintedAtExactDotsWithOneBitEach(double dpi, int width, int height)
    {
        Scene scene = Jar with { WidthMm = 100, HeightMm = 75 };
        byte[] png = ThermalDrawing.Draw(scene, dpi);
        Assert.Equal(width, System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)));
        Assert.Equal(height, System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)));
        Assert.Equal(1, png[24]);
        using SKBitmap decoded = SKBitmap.Decode(png);
        Assert.Equal(width, decoded.Width);
        int dark = 0;
        for (int y = 0; y < height; y += 3)
        {
            for (int x = 0; x < width; x += 3)
            {
                dark += decoded.GetPixel(x, y).Red < 128 ? 1 : 0;
            }
        }

        Assert.InRange(dark, 500, width * height / 18);
    }

    [Outside("GS1 General Specifications, 5.2 and 7.9, and ISO/IEC 18004, read back with the decoder of the library ZXing.Net")]
    [Fact]
    public void QrCodeAndBarCodeAreReadBack()
    {
        Mark qr = Jar.Marks.Single(m => m.Name == "QR code");
        Mark ean = Jar.Marks.Single(m => m.Name == "EAN-13");
        Assert.Equal("https://tarnvey.example/slate-jar", Decode(Jar, qr, BarcodeFormat.QR_CODE));
        Assert.Equal("2012345678903", Decode(Jar, ean, BarcodeFormat.EAN_13));

        // At least 80 % of the nominal 37.29 x 22.85 mm with quiet zones (GS1 General Specifications, 5.2.6).
        Assert.True(ean.WidthMm >= 37.29 * 0.8 - 0.01);
        Assert.True(ean.HeightMm >= 22.85 * 0.8 - 0.01);
    }

    [Fact]
    public void TheCodesAreReadBackFromAThermalPrintToo()
    {
        using SKBitmap print = SKBitmap.Decode(ThermalDrawing.Draw(Jar, 203));
        Assert.Equal("https://tarnvey.example/slate-jar", Decode(print, BarcodeFormat.QR_CODE));
    }

    private static string? Decode(Scene scene, Mark mark, BarcodeFormat format)
    {
        const double dpi = 300;
        using SKBitmap whole = SKBitmap.Decode(PngDrawing.Draw(scene, dpi));
        double dots = dpi / 25.4;
        using var part = new SKBitmap((int)(mark.WidthMm * dots), (int)(mark.HeightMm * dots));
        Assert.True(
            whole.ExtractSubset(
                part,
                SKRectI.Create((int)(mark.XMm * dots), (int)(mark.YMm * dots), (int)(mark.WidthMm * dots), (int)(mark.HeightMm * dots))
            )
        );
        return Decode(part, format);
    }

    private static string? Decode(SKBitmap bitmap, BarcodeFormat format)
    {
        var grey = new byte[bitmap.Width * bitmap.Height];
        for (int y = 0; y < bitmap.Height; y++)
        {
            for (int x = 0; x < bitmap.Width; x++)
            {
                grey[(y * bitmap.Width) + x] = bitmap.GetPixel(x, y).Red;
            }
        }

        var source = new RGBLuminanceSource(grey, bitmap.Width, bitmap.Height, RGBLuminanceSource.BitmapFormat.Gray8);
        var hints = new Dictionary<DecodeHintType, object>
        {
            [DecodeHintType.TRY_HARDER] = true,
            [DecodeHintType.POSSIBLE_FORMATS] = new List<BarcodeFormat> { format },
        };
        return new MultiFormatReader().decode(new BinaryBitmap(new HybridBinarizer(source)), hints)?.Text;
    }

    [Outside("qpdf and poppler (Debian): the PDF is sound, and renders to the same picture from run to run")]
    [Fact]
    public void OtherProgramsFindThePdfSound()
    {
        string folder = Directory.CreateTempSubdirectory("chandlery-pdf-").FullName;
        try
        {
            string pdf = Path.Combine(folder, "label.pdf");
            Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
            Scene bowl = LabelDocument.Make(a, TestLaw.Shop, TestLaw.Lawbook.Burning, new Problems())!.Fitted!.Scene;
            File.WriteAllBytes(pdf, PdfDrawing.Draw(new PaperDocument("Harbour Bowl", "en", [bowl])));
            Assert.Equal(0, Run("qpdf", "--check", pdf).Code);
            Assert.Contains("Harbour Bowl", Run("pdfinfo", pdf).Output, StringComparison.Ordinal);
            string fonts = Run("pdffonts", pdf).Output;
            Assert.Equal(
                2,
                fonts
                    .Split('\n')
                    .Count(l => l.Contains("Inter", StringComparison.Ordinal) && l.Contains("yes yes yes", StringComparison.Ordinal))
            );
            Assert.Equal(2, Run("pdfimages", "-list", pdf).Output.Trim().Split('\n').Length);
            byte[] Picture(string name)
            {
                Assert.Equal(0, Run("pdftoppm", "-r", "150", "-png", "-singlefile", pdf, Path.Combine(folder, name)).Code);
                return File.ReadAllBytes(Path.Combine(folder, name + ".png"));
            }

            Assert.Equal(Picture("one"), Picture("two"));
            Assert.True(new FileInfo(pdf).Length < 60_000);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static (int Code, string Output) Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using Process process = Process.Start(start)!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output);
    }

    [Theory]
    [InlineData("2012345678900", "fails its check digit: the digits call for 3")]
    [InlineData("12345", "is no GTIN-13")]
    public void AWrongGtinIsRefused(string gtin, string expected)
    {
        var problems = new Problems();
        string text = File.ReadAllText(Path.Combine(TestLaw.DemoFolder, "candles", "slate-jar.yaml"))
            .Replace("2012345678903", gtin, StringComparison.Ordinal);
        TestLaw.Read(problems, ("slate-jar.yaml", text));
        Assert.Contains(expected, problems.Found.Single().What, StringComparison.Ordinal);
    }
}
