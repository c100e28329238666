using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Drawing;

/// <summary>
/// Draws a page for a thermal printer: one bit a dot, exactly as many dots as the label has (PNG specification, 11.2.2:
/// greyscale of bit depth 1). Such a printer has no red; where the law wants a red frame, the stock must be pre-printed.
/// </summary>
public static class ThermalDrawing
{
    private const int Threshold = 160;

    /// <summary>The PNG's bytes.</summary>
    /// <param name="scene">The page.</param>
    /// <param name="dotsPerInch">The printer's resolution.</param>
    public static byte[] Draw(Scene scene, double dotsPerInch)
    {
        double dotsPerMm = dotsPerInch / PngFile.MmPerInch;
        int width = (int)Math.Round(scene.WidthMm * dotsPerMm);
        int height = (int)Math.Round(scene.HeightMm * dotsPerMm);
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Gray8, SKAlphaType.Opaque));
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColors.White);
            canvas.Scale((float)dotsPerMm);
            Canvas.Draw(canvas, scene);
        }

        return Encode(bitmap.GetPixelSpan(), bitmap.RowBytes, width, height, dotsPerInch);
    }

    private static byte[] Encode(ReadOnlySpan<byte> grey, int stride, int width, int height, double dotsPerInch)
    {
        int rowBytes = (width + 7) / 8;
        var rows = new byte[height * (rowBytes + 1)];
        for (int y = 0; y < height; y++)
        {
            // Behind the byte that says that the row is unfiltered.
            int row = (y * (rowBytes + 1)) + 1;
            for (int x = 0; x < width; x++)
            {
                if (grey[(y * stride) + x] >= Threshold)
                {
                    rows[row + (x / 8)] |= (byte)(0x80 >> (x % 8));
                }
            }
        }

        return PngFile.Write(width, height, depth: 1, PngColours.Grey, dotsPerInch, packer => packer.Write(rows));
    }
}
