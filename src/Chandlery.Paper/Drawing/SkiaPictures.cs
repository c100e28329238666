using System.Runtime.InteropServices;
using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Drawing;

/// <summary>Pictures of scenes as the drawing engine's.</summary>
internal static class SkiaPictures
{
    /// <summary>The picture; the caller disposes of it.</summary>
    public static SKImage Of(PixelGrid pixels)
    {
        var four = new byte[pixels.Width * pixels.Height * 4];
        for (int i = 0, from = 0; i < four.Length; i += 4, from += 3)
        {
            four[i] = pixels.Rgb[from];
            four[i + 1] = pixels.Rgb[from + 1];
            four[i + 2] = pixels.Rgb[from + 2];
            four[i + 3] = byte.MaxValue;
        }

        var info = new SKImageInfo(pixels.Width, pixels.Height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        GCHandle pinned = GCHandle.Alloc(four, GCHandleType.Pinned);
        try
        {
            return SKImage.FromPixelCopy(info, pinned.AddrOfPinnedObject());
        }
        finally
        {
            pinned.Free();
        }
    }

    /// <summary>The picture as PNG.</summary>
    public static byte[] Png(PixelGrid pixels)
    {
        using SKImage image = Of(pixels);
        using SKData data = image.Encode(SKEncodedImageFormat.Png, 100)!;
        return data.ToArray();
    }
}
