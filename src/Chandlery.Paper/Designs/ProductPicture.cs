using System.Text;
using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Designs;

/// <summary>Reads a picture of a product: an SVG, or a photograph as a PNG or JPEG.</summary>
public static class ProductPicture
{
    private const double WidthMm = 80;
    private const long MostPixels = 12_000L * 12_000;

    // 380 dots an inch at its width; what a camera gives beyond that only makes papers heavy.
    private const int MostDots = 1_200;

    /// <summary>The picture as a page of its own.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="file">What is in it.</param>
    /// <exception cref="FormatException">The file is no such picture; the message says what is in the way.</exception>
    public static Scene Read(string name, byte[] file)
    {
        LogoArt art = name.EndsWith(".svg", StringComparison.OrdinalIgnoreCase)
            ? SvgLogo.Read(Encoding.UTF8.GetString(file))
            : Photograph(file);
        double height = WidthMm * art.HeightMm / art.WidthMm;
        return new Scene(WidthMm, height, [.. art.In(new Box(0, 0, WidthMm, height))], []);
    }

    private static LogoArt Photograph(byte[] file)
    {
        using var stream = new MemoryStream(file);
        using SKCodec? codec = SKCodec.Create(stream);
        if (codec is null)
        {
            throw new FormatException("it is no picture that can be read");
        }

        if ((long)codec.Info.Width * codec.Info.Height > MostPixels)
        {
            throw new FormatException($"it has {codec.Info.Width} x {codec.Info.Height} dots: at most 12000 x 12000 are read");
        }

        using SKBitmap taken = SKBitmap.Decode(codec) ?? throw new FormatException("it is damaged");
        PixelGrid pixels = Upright(taken, codec.EncodedOrigin);
        return new LogoArt(pixels.Width, pixels.Height, [], pixels);
    }

    // A camera that was held upright writes a picture that lies, and says so in the file.
    private static PixelGrid Upright(SKBitmap taken, SKEncodedOrigin origin)
    {
        bool lies =
            origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        (int width, int height) = lies ? (taken.Height, taken.Width) : (taken.Width, taken.Height);
        double scale = Math.Min(1, MostDots / (double)Math.Max(width, height));
        int Scaled(int dots) => Math.Max(1, (int)Math.Round(dots * scale));
        using var upright = new SKBitmap(Scaled(width), Scaled(height), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(upright);
        using SKImage image = SKImage.FromBitmap(taken);
        canvas.Clear(SKColors.White);
        canvas.Scale((float)scale);
        canvas.Concat(Turn(origin, width, height));
        canvas.DrawImage(image, 0, 0, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        canvas.Flush();
        var rgb = new byte[upright.Width * upright.Height * 3];
        int at = 0;
        foreach (SKColor colour in upright.Pixels)
        {
            rgb[at++] = colour.Red;
            rgb[at++] = colour.Green;
            rgb[at++] = colour.Blue;
        }

        return new PixelGrid(upright.Width, upright.Height, rgb);
    }

    // The eight ways of the Exif tag "orientation".
    private static SKMatrix Turn(SKEncodedOrigin origin, float width, float height) =>
        origin switch
        {
            SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, width, 0, 1, 0, 0, 0, 1),
            SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, width, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightTop => new SKMatrix(0, -1, width, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, width, -1, 0, height, 0, 0, 1),
            SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, height, 0, 0, 1),
            _ => SKMatrix.Identity,
        };
}
