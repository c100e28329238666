using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Drawing;

/// <summary>Draws scenes on a Skia canvas whose unit is the millimetre.</summary>
internal sealed class Canvas : ISurface
{
    private readonly SKCanvas canvas;

    private Canvas(SKCanvas canvas) => this.canvas = canvas;

    public static void Draw(SKCanvas canvas, Scene scene) => new Canvas(canvas).DrawAll(scene.Items);

    public static SKColor ColourOf(Ink ink) => new(ink.Red, ink.Green, ink.Blue);

    /// <inheritdoc/>
    public void Draw(TextItem text)
    {
        ShapedText shaped = text.Shaped;
        if (shaped.Glyphs.Length == 0)
        {
            return;
        }

        // Set at the size of the font's own grid, where every position is a whole number.
        int unitsPerEm = text.Face.UnitsPerEm;
        using var font = new SKFont(text.Face.Typeface, unitsPerEm)
        {
            Subpixel = true,
            LinearMetrics = true,
            Hinting = SKFontHinting.None,
        };
        using var builder = new SKTextBlobBuilder();
        SKPositionedRunBuffer run = builder.AllocatePositionedRun(font, shaped.Glyphs.Length);
        run.SetGlyphs(shaped.Glyphs);
        run.SetPositions([.. shaped.Positions.Select(x => new SKPoint(x, 0))]);
        using SKTextBlob blob = builder.Build()!;
        using var paint = new SKPaint { Color = ColourOf(text.Ink), IsAntialias = true };
        canvas.Save();
        canvas.Translate((float)text.XMm, (float)text.BaselineMm);
        canvas.RotateDegrees((float)text.AngleDegrees);
        canvas.Scale((float)(text.SizeMm / unitsPerEm));
        canvas.DrawText(blob, 0, 0, paint);
        canvas.Restore();
    }

    /// <inheritdoc/>
    public void Draw(PathItem path)
    {
        SKPath outline = SkiaPaths.Of(path.Path);
        canvas.Save();
        canvas.Translate((float)path.XMm, (float)path.YMm);
        canvas.Scale((float)path.ScaleMm);
        if (path.Fill is { } fill)
        {
            using var paint = new SKPaint
            {
                Color = ColourOf(fill),
                IsAntialias = true,
                Style = SKPaintStyle.Fill,
            };
            canvas.DrawPath(outline, paint);
        }

        if (path.Stroke is { } stroke)
        {
            using var paint = new SKPaint
            {
                Color = ColourOf(stroke),
                IsAntialias = true,
                Style = SKPaintStyle.Stroke,
                StrokeWidth = (float)path.StrokeUnits,
                StrokeCap = SKStrokeCap.Round,
                StrokeJoin = SKStrokeJoin.Round,
            };
            canvas.DrawPath(outline, paint);
        }

        canvas.Restore();
    }

    /// <inheritdoc/>
    public void Draw(ClipItem clip)
    {
        canvas.Save();
        using var moved = new SKPath(SkiaPaths.Of(clip.Path));
        moved.Transform(SKMatrix.CreateScaleTranslation((float)clip.ScaleMm, (float)clip.ScaleMm, (float)clip.XMm, (float)clip.YMm));
        canvas.ClipPath(moved, antialias: true);
        DrawAll(clip.Items);
        canvas.Restore();
    }

    /// <inheritdoc/>
    public void Draw(PictureItem picture)
    {
        using SKImage image = SkiaPictures.Of(picture.Pixels);
        var place = SKRect.Create((float)picture.XMm, (float)picture.YMm, (float)picture.WidthMm, (float)picture.HeightMm);
        canvas.DrawImage(image, place, new SKSamplingOptions(SKFilterMode.Linear));
    }

    /// <inheritdoc/>
    public void Draw(TaggedItem tagged) => DrawAll(tagged.Items);

    private void DrawAll(IReadOnlyList<SceneItem> items)
    {
        foreach (SceneItem item in items)
        {
            item.DrawOn(this);
        }
    }
}
