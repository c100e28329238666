using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Designs;

/// <summary>Reads a logo from a PNG.</summary>
public static class PictureLogo
{
    private const int MostPixels = 6000 * 6000;

    /// <summary>The logo; what is transparent shows the ground that it stands on.</summary>
    /// <param name="png">The file.</param>
    /// <param name="ground">The ground.</param>
    /// <exception cref="FormatException">The file is no picture, or larger than anything that a label needs.</exception>
    public static LogoArt Read(byte[] png, Ink ground)
    {
        using var stream = new MemoryStream(png);
        using SKCodec? codec = SKCodec.Create(stream);
        if (codec is null)
        {
            throw new FormatException("it is no picture that can be read");
        }

        if ((long)codec.Info.Width * codec.Info.Height > MostPixels)
        {
            throw new FormatException($"it has {codec.Info.Width} x {codec.Info.Height} dots: at most 6000 x 6000 are read");
        }

        using SKBitmap? bitmap = SKBitmap.Decode(codec);
        if (bitmap is null)
        {
            throw new FormatException("it is damaged");
        }

        var rgb = new byte[bitmap.Width * bitmap.Height * 3];
        int at = 0;
        foreach (SKColor colour in bitmap.Pixels)
        {
            rgb[at++] = Over(colour.Red, ground.Red, colour.Alpha);
            rgb[at++] = Over(colour.Green, ground.Green, colour.Alpha);
            rgb[at++] = Over(colour.Blue, ground.Blue, colour.Alpha);
        }

        return new LogoArt(bitmap.Width, bitmap.Height, [], new PixelGrid(bitmap.Width, bitmap.Height, rgb));
    }

    private static byte Over(byte colour, byte ground, byte alpha) => (byte)(((colour * alpha) + (ground * (255 - alpha))) / 255);
}
