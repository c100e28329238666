using System.Buffers.Binary;
using System.IO.Hashing;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Drawing;

/// <summary>Draws a page as PNG that knows its resolution.</summary>
public static class PngDrawing
{
    private const double MmPerInch = 25.4;

    // Labels are mostly white: no filter and a middling level are as small as the best and three times as fast.
    private const int CompressionLevel = 4;

    /// <summary>The PNG's bytes.</summary>
    /// <param name="scene">The page.</param>
    /// <param name="dotsPerInch">Resolution.</param>
    public static byte[] Draw(Scene scene, double dotsPerInch)
    {
        double dotsPerMm = dotsPerInch / MmPerInch;
        var info = new SKImageInfo(
            (int)Math.Round(scene.WidthMm * dotsPerMm),
            (int)Math.Round(scene.HeightMm * dotsPerMm),
            SKColorType.Rgba8888,
            SKAlphaType.Opaque
        );
        using SKSurface surface = SKSurface.Create(info);
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale((float)dotsPerMm);
        Canvas.Draw(surface.Canvas, scene, weight => Face.Of(weight).Typeface);
        using SKImage image = surface.Snapshot();
        using SKPixmap pixels = image.PeekPixels();
        using SKData data = pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.None, CompressionLevel))!;
        return WithResolution(data.ToArray(), dotsPerInch);
    }

    // The encoder writes no pHYs chunk; it goes right behind the header chunk (PNG specification, 11.3.4.3).
    private static byte[] WithResolution(byte[] png, double dotsPerInch)
    {
        const int headerEnd = 8 + 25;
        var chunk = new byte[21];
        BinaryPrimitives.WriteInt32BigEndian(chunk, 9);
        "pHYs"u8.CopyTo(chunk.AsSpan(4));
        int dotsPerMetre = (int)Math.Round(dotsPerInch / MmPerInch * 1000);
        BinaryPrimitives.WriteInt32BigEndian(chunk.AsSpan(8), dotsPerMetre);
        BinaryPrimitives.WriteInt32BigEndian(chunk.AsSpan(12), dotsPerMetre);
        chunk[16] = 1;
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(17), Crc32.HashToUInt32(chunk.AsSpan(4, 13)));
        return [.. png.AsSpan(0, headerEnd), .. chunk, .. png.AsSpan(headerEnd)];
    }
}
