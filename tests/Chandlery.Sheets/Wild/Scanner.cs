using System.Diagnostics;
using SkiaSharp;

namespace Chandlery.Sheets.Wild;

/// <summary>Scans a printed document: pages become pictures, a little askew, with the noise of an office scanner.</summary>
public static class Scanner
{
    private const double MostDegrees = 0.8;
    private const int MostNoise = 24;
    private const float PointsPerInch = 72;

    /// <summary>A PDF whose pages are pictures.</summary>
    /// <param name="pdf">What was printed.</param>
    /// <param name="seed">By which it lies askew.</param>
    /// <param name="dotsPerInch">The scanner's resolution.</param>
    public static byte[] Scan(byte[] pdf, int seed, int dotsPerInch)
    {
        var dice = new Random(seed);
        string folder = Directory.CreateTempSubdirectory("chandlery-scan-").FullName;
        try
        {
            string source = Path.Combine(folder, "sheet.pdf");
            File.WriteAllBytes(source, pdf);
            using (
                Process drawing = Process.Start("pdftoppm", ["-r", $"{dotsPerInch}", "-gray", "-png", source, Path.Combine(folder, "page")])
            )
            {
                drawing.WaitForExit();
            }

            using var scan = new MemoryStream();
            using (SKDocument document = SKDocument.CreatePdf(scan))
            {
                foreach (string page in Directory.GetFiles(folder, "page*.png").Order(StringComparer.Ordinal))
                {
                    Add(document, page, dice, dotsPerInch);
                }

                document.Close();
            }

            return scan.ToArray();
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Add(SKDocument document, string page, Random dice, int dotsPerInch)
    {
        using SKBitmap printed = SKBitmap.Decode(page);
        using var askew = new SKBitmap(new SKImageInfo(printed.Width, printed.Height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using (var canvas = new SKCanvas(askew))
        using (SKImage image = SKImage.FromBitmap(printed))
        {
            canvas.Clear(SKColors.White);
            canvas.RotateDegrees((float)((dice.NextDouble() - 0.5) * 2 * MostDegrees), printed.Width / 2f, printed.Height / 2f);
            canvas.DrawImage(image, 0, 0, new SKSamplingOptions(SKFilterMode.Linear));
        }

        Span<byte> pixels = askew.GetPixelSpan();
        for (int i = 0; i < pixels.Length; i += 4)
        {
            int noise = dice.Next(MostNoise);
            byte shade = (byte)(pixels[i] < 128 ? pixels[i] + noise : pixels[i] - noise);
            (pixels[i], pixels[i + 1], pixels[i + 2]) = (shade, shade, shade);
        }

        using SKData jpeg = askew.Encode(SKEncodedImageFormat.Jpeg, 70 + dice.Next(20));
        using SKImage scanned = SKImage.FromEncodedData(jpeg);
        float width = printed.Width * PointsPerInch / dotsPerInch;
        float height = printed.Height * PointsPerInch / dotsPerInch;
        document.BeginPage(width, height).DrawImage(scanned, new SKRect(0, 0, width, height), SKSamplingOptions.Default);
        document.EndPage();
    }
}
