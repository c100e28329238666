using System.Text;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Drawing;

/// <summary>Draws scenes on a Skia canvas whose unit is the millimetre.</summary>
internal static class Canvas
{
    public static void Draw(SKCanvas canvas, Scene scene, Func<Weight, SKTypeface> typefaces)
    {
        foreach (SceneItem item in scene.Items)
        {
            switch (item)
            {
                case TextItem text:
                    DrawText(canvas, text, typefaces(text.Weight));
                    break;
                case PathItem path:
                    DrawPath(canvas, path);
                    break;
                default:
                    throw new InvalidOperationException($"cannot draw {item.GetType().Name}");
            }
        }
    }

    public static SKColor ColourOf(Ink ink) =>
        ink switch
        {
            Ink.Black => SKColors.Black,
            Ink.White => SKColors.White,
            Ink.Red => new SKColor(0xE3, 0x00, 0x0F),
            _ => new SKColor(0x80, 0x80, 0x80),
        };

    private static void DrawText(SKCanvas canvas, TextItem item, SKTypeface typeface)
    {
        ShapedText shaped = item.Shaped;
        if (shaped.Glyphs.Length == 0)
        {
            return;
        }

        // Set at the size of the font's own grid, where every position is a whole number: a PDF then holds a line's glyphs as
        // one text wherever no kerning moves them, instead of one by one.
        int unitsPerEm = Face.Of(item.Weight).UnitsPerEm;
        using var font = new SKFont(typeface, unitsPerEm)
        {
            Subpixel = true,
            LinearMetrics = true,
            Hinting = SKFontHinting.None,
        };
        byte[] utf8 = Encoding.UTF8.GetBytes(shaped.Text);
        using var builder = new SKTextBlobBuilder();
        SKPositionedTextRunBuffer run = builder.AllocatePositionedTextRun(font, shaped.Glyphs.Length, utf8.Length);
        var positions = new SKPoint[shaped.Glyphs.Length];
        var clusters = new uint[shaped.Glyphs.Length];
        for (int i = 0; i < positions.Length; i++)
        {
            positions[i] = new SKPoint(shaped.Positions[i], 0);
            clusters[i] = (uint)Encoding.UTF8.GetByteCount(shaped.Text.AsSpan(0, shaped.Clusters[i]));
        }

        run.SetGlyphs(shaped.Glyphs);
        run.SetPositions(positions);
        run.SetText(utf8);
        run.SetClusters(clusters);
        using SKTextBlob blob = builder.Build()!;
        using var paint = new SKPaint { Color = ColourOf(item.Ink), IsAntialias = true };
        canvas.Save();
        canvas.Translate((float)item.XMm, (float)item.BaselineMm);
        canvas.Scale((float)(item.SizeMm / unitsPerEm));
        canvas.DrawText(blob, 0, 0, paint);
        canvas.Restore();
    }

    private static void DrawPath(SKCanvas canvas, PathItem item)
    {
        SKPath path = SkiaPaths.Of(item.Path);
        canvas.Save();
        canvas.Translate((float)item.XMm, (float)item.YMm);
        canvas.Scale((float)item.ScaleMm);
        if (item.Fill is { } fill)
        {
            using var paint = new SKPaint
            {
                Color = ColourOf(fill),
                IsAntialias = true,
                Style = SKPaintStyle.Fill,
            };
            canvas.DrawPath(path, paint);
        }

        if (item.Stroke is { } stroke)
        {
            using var paint = new SKPaint
            {
                Color = ColourOf(stroke),
                IsAntialias = true,
                Style = SKPaintStyle.Stroke,
                StrokeWidth = (float)item.StrokeUnits,
                StrokeCap = SKStrokeCap.Round,
                StrokeJoin = SKStrokeJoin.Round,
            };
            canvas.DrawPath(path, paint);
        }

        canvas.Restore();
    }
}
