using SkiaSharp;

namespace Chandlery.Intake.Pictures;

/// <summary>A picture in shades of grey.</summary>
internal sealed class GreyPicture
{
    /// <summary>The lightest shade.</summary>
    public const byte White = 255;

    private const long MostPixels = 40_000_000;
    private const int Shades = 256;
    private readonly byte[] pixels;

    /// <summary>A white picture.</summary>
    public GreyPicture(int width, int height)
    {
        (Width, Height) = (width, height);
        pixels = new byte[width * height];
        Array.Fill(pixels, White);
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>The shades row by row, a byte each, 0 for black.</summary>
    public ReadOnlySpan<byte> Pixels => pixels;

    public byte this[int x, int y]
    {
        get => pixels[(y * Width) + x];
        set => pixels[(y * Width) + x] = value;
    }

    /// <summary>The picture in a file; null when it is too large or cannot be read.</summary>
    /// <param name="file">PNG or JPEG.</param>
    public static GreyPicture? Decode(byte[] file)
    {
        using var stream = new MemoryStream(file);
        using SKCodec? codec = SKCodec.Create(stream);
        if (codec is null || (long)codec.Info.Width * codec.Info.Height > MostPixels)
        {
            return null;
        }

        using SKBitmap? bitmap = SKBitmap.Decode(codec, new SKImageInfo(codec.Info.Width, codec.Info.Height, SKColorType.Rgba8888));
        if (bitmap is null)
        {
            return null;
        }

        var picture = new GreyPicture(bitmap.Width, bitmap.Height);
        ReadOnlySpan<byte> colours = bitmap.GetPixelSpan();
        for (int y = 0; y < bitmap.Height; y++)
        {
            ReadOnlySpan<byte> row = colours.Slice(y * bitmap.RowBytes, bitmap.Width * 4);
            for (int x = 0; x < bitmap.Width; x++)
            {
                picture[x, y] = (byte)((row[4 * x] + (2 * row[(4 * x) + 1]) + row[(4 * x) + 2]) / 4);
            }
        }

        return picture;
    }

    /// <summary>The picture turned about its middle, then made larger; what comes in from outside is white.</summary>
    /// <param name="degrees">How far, clockwise.</param>
    /// <param name="factor">How many times larger.</param>
    public GreyPicture Turned(double degrees, double factor)
    {
        var turned = new GreyPicture((int)Math.Round(Width * factor), (int)Math.Round(Height * factor));
        (double sine, double cosine) = Math.SinCos(-degrees * Math.PI / 180);
        for (int y = 0; y < turned.Height; y++)
        {
            double down = ((y + 0.5) / factor) - (Height / 2.0);
            for (int x = 0; x < turned.Width; x++)
            {
                double across = ((x + 0.5) / factor) - (Width / 2.0);
                double sourceX = (across * cosine) - (down * sine) + (Width / 2.0) - 0.5;
                double sourceY = (across * sine) + (down * cosine) + (Height / 2.0) - 0.5;
                turned[x, y] = Between(sourceX, sourceY);
            }
        }

        return turned;
    }

    /// <summary>A part of it with a white margin around.</summary>
    public GreyPicture Cut(PixelBox box, int margin)
    {
        var cut = new GreyPicture(box.Width + (2 * margin), box.Height + (2 * margin));
        for (int y = 0; y < box.Height; y++)
        {
            Array.Copy(pixels, ((box.Top + y) * Width) + box.Left, cut.pixels, ((margin + y) * cut.Width) + margin, box.Width);
        }

        return cut;
    }

    /// <summary>Makes a part of it white.</summary>
    public void Clear(PixelBox box)
    {
        for (int y = box.Top; y < box.Bottom; y++)
        {
            Array.Fill(pixels, White, (y * Width) + box.Left, box.Width);
        }
    }

    /// <summary>Makes the paper white: its grain would be taken for ink where nothing darker is left beside it.</summary>
    /// <param name="ink">Darker shades are ink; what is nearer to white than to them is paper.</param>
    public void Bleach(byte ink)
    {
        int paper = (ink + White) / 2;
        for (int i = 0; i < pixels.Length; i++)
        {
            pixels[i] = pixels[i] < paper ? pixels[i] : White;
        }
    }

    /// <summary>Pixels that are darker than a shade.</summary>
    public int CountDarker(PixelBox box, byte shade)
    {
        int count = 0;
        for (int y = box.Top; y < box.Bottom; y++)
        {
            foreach (byte pixel in pixels.AsSpan((y * Width) + box.Left, box.Width))
            {
                count += pixel < shade ? 1 : 0;
            }
        }

        return count;
    }

    /// <summary>The shade that parts ink from paper: the one that makes both sides most alike in themselves (Otsu's method).</summary>
    public byte Threshold()
    {
        var counts = new long[Shades];
        foreach (byte pixel in pixels)
        {
            counts[pixel]++;
        }

        double all = pixels.Length;
        double mean = Enumerable.Range(0, Shades).Sum(s => s * (double)counts[s]) / all;
        double best = -1;
        double below = 0;
        double sumBelow = 0;
        byte at = Shades / 2;
        for (int shade = 0; shade < Shades - 1; shade++)
        {
            below += counts[shade] / all;
            sumBelow += shade * counts[shade] / all;
            double spread = below is 0 or >= 1 ? 0 : Math.Pow((mean * below) - sumBelow, 2) / (below * (1 - below));
            if (spread > best)
            {
                best = spread;
                at = (byte)(shade + 1);
            }
        }

        return at;
    }

    // The shade between four pixels.
    private byte Between(double x, double y)
    {
        int left = (int)Math.Floor(x);
        int top = (int)Math.Floor(y);
        if (left < 0 || top < 0 || left + 1 >= Width || top + 1 >= Height)
        {
            return White;
        }

        double right = x - left;
        double low = y - top;
        int at = (top * Width) + left;
        double above = (pixels[at] * (1 - right)) + (pixels[at + 1] * right);
        double under = (pixels[at + Width] * (1 - right)) + (pixels[at + Width + 1] * right);
        return (byte)Math.Round((above * (1 - low)) + (under * low));
    }
}
