using Chandlery.Paper.Designs;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using SkiaSharp;

namespace Chandlery.Tests.Paper;

/// <summary>Photographs of products come upright and no heavier than print needs.</summary>
public sealed class ProductPictureTests
{
    private const byte RightTop = 6;
    private const byte BottomRight = 3;

    // Left half red, right half blue.
    private static byte[] Photograph(int width, int height, byte orientation)
    {
        using var bitmap = new SKBitmap(width, height);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColors.Blue);
            using var red = new SKPaint { Color = SKColors.Red };
            canvas.DrawRect(0, 0, width / 2f, height, red);
        }

        using SKData data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 95);
        byte[] jpeg = data.ToArray();
        byte[] tiff = [.. "II*\0"u8, 8, 0, 0, 0, 1, 0, 0x12, 1, 3, 0, 1, 0, 0, 0, orientation, 0, 0, 0, 0, 0, 0, 0];
        byte[] exif = [.. "Exif\0\0"u8, .. tiff];
        return [.. jpeg[..2], 0xFF, 0xE1, 0, (byte)(exif.Length + 2), .. exif, .. jpeg[2..]];
    }

    private static PixelGrid Pixels(byte[] file, out Scene scene)
    {
        scene = ProductPicture.Read("bowl.JPG", file);
        return Assert.IsType<PictureItem>(Assert.Single(scene.Items)).Pixels;
    }

    private static bool IsRed(PixelGrid pixels, int x, int y) =>
        pixels.Rgb[((y * pixels.Width) + x) * 3] > 200 && pixels.Rgb[(((y * pixels.Width) + x) * 3) + 2] < 60;

    [Fact]
    [Outside("Exif 2.3 (CIPA DC-008), tag 0x0112: 6 means that the first row is the right side and the first column the top (from memory)")]
    public void A_photograph_that_lies_is_set_upright()
    {
        PixelGrid lying = Pixels(Photograph(80, 40, 1), out Scene wide);
        Assert.Equal((80, 40), (lying.Width, lying.Height));
        Assert.True(IsRed(lying, 5, 20));
        Assert.False(IsRed(lying, 75, 20));
        Assert.Equal(2, wide.WidthMm / wide.HeightMm, 6);

        PixelGrid upright = Pixels(Photograph(80, 40, RightTop), out Scene tall);
        Assert.Equal((40, 80), (upright.Width, upright.Height));
        Assert.True(IsRed(upright, 20, 5));
        Assert.False(IsRed(upright, 20, 75));
        Assert.Equal(0.5, tall.WidthMm / tall.HeightMm, 6);

        PixelGrid turned = Pixels(Photograph(80, 40, BottomRight), out _);
        Assert.True(IsRed(turned, 75, 20));
        Assert.False(IsRed(turned, 5, 20));
    }

    [Fact]
    public void A_large_one_becomes_small_and_what_is_none_is_said()
    {
        PixelGrid pixels = Pixels(Photograph(3000, 1500, 1), out _);
        Assert.Equal((1200, 600), (pixels.Width, pixels.Height));
        Assert.Equal(
            "it is no picture that can be read",
            Assert.Throws<FormatException>(() => ProductPicture.Read("bowl.jpg", [1, 2, 3])).Message
        );
    }
}
