using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Drawing;

/// <summary>Draws a page as PNG that knows its resolution.</summary>
public static class PngDrawing
{
    // Labels are mostly white: no filter is smaller than any. From the next level on the packer looks twice before it writes, which saves
    // a tenth of the bytes and takes two thirds more time.
    private const int CompressionLevel = 3;
    private const int HeaderEnd = 8 + 25;

    /// <summary>The PNG's bytes.</summary>
    /// <param name="scene">The page.</param>
    /// <param name="dotsPerInch">Resolution.</param>
    public static byte[] Draw(Scene scene, double dotsPerInch)
    {
        double dotsPerMm = dotsPerInch / PngChunks.MmPerInch;
        var info = new SKImageInfo(
            (int)Math.Round(scene.WidthMm * dotsPerMm),
            (int)Math.Round(scene.HeightMm * dotsPerMm),
            SKColorType.Rgba8888,
            SKAlphaType.Opaque
        );
        using SKSurface surface = SKSurface.Create(info);
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale((float)dotsPerMm);
        Canvas.Draw(surface.Canvas, scene);
        using SKImage image = surface.Snapshot();
        using SKPixmap pixels = image.PeekPixels();

        // Said to have no opacity, the pixels go to the encoder as they are; else it makes such a row of each first.
        using SKPixmap opaque = pixels.WithColorType(SKColorType.Rgb888x);
        using SKBitmap? grey = Grey(opaque);
        using SKPixmap? greys = grey?.PeekPixels();
        using SKData data = (greys ?? opaque).Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.None, CompressionLevel))!;

        // The encoder tells no resolution; that chunk goes right behind the header.
        ReadOnlySpan<byte> png = data.AsSpan();
        return [.. png[..HeaderEnd], .. PngChunks.Resolution(dotsPerInch), .. png[HeaderEnd..]];
    }

    // A card is black on white: one byte a dot instead of three is packed in a third of the time. Null where there is a colour.
    private static SKBitmap? Grey(SKPixmap opaque)
    {
        ReadOnlySpan<uint> dots = opaque.GetPixelSpan<uint>();
        var grey = new SKBitmap(new SKImageInfo(opaque.Width, opaque.Height, SKColorType.Gray8, SKAlphaType.Opaque));
        Span<byte> greys = grey.GetPixelSpan();
        for (int y = 0; y < opaque.Height; y++)
        {
            ReadOnlySpan<uint> from = dots.Slice(y * opaque.Width, opaque.Width);
            Span<byte> to = greys.Slice(y * grey.RowBytes, opaque.Width);
            for (int x = 0; x < from.Length; x++)
            {
                uint value = from[x] & 0xFF;
                if ((from[x] & 0xFF_FFFF) != value * 0x01_0101)
                {
                    grey.Dispose();
                    return null;
                }

                to[x] = (byte)value;
            }
        }

        return grey;
    }
}
