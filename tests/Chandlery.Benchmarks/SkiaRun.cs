using System.Diagnostics;
using System.Globalization;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;
using SkiaSharp;

namespace Chandlery.Benchmarks;

/// <summary>A thousand pages with a label's glyphs: our drawing beside bare Skia that is handed the same glyphs and paths.</summary>
internal static class SkiaRun
{
    private const float PointsPerMm = 72 / 25.4f;

    public static void Run(string candle, int count)
    {
        Desk desk = Desk.Lay(candle);
        Scene scene = LabelDocument.Make(desk.Assessment, desk.Shop, desk.Lawbook.Burning, new Problems())!.Fitted!.Scene;
        var document = new PaperDocument("labels", "en", [.. Enumerable.Repeat(scene, count)]);
        PdfDrawing.Draw(new PaperDocument("warm", "en", [scene]));
        Bare(scene, 1);
        var watch = Stopwatch.StartNew();
        int own = PdfDrawing.Draw(document).Length;
        double ours = watch.Elapsed.TotalSeconds;
        watch.Restart();
        int bare = Bare(scene, count);
        double skia = watch.Elapsed.TotalSeconds;
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"drawing {count} pages: ours {ours:0.00} s ({own / 1000} kB), bare Skia with the same glyphs {skia:0.00} s ({bare / 1000} kB), ratio {ours / skia:0.00}"
            )
        );
    }

    private static int Bare(Scene scene, int count)
    {
        using var stream = new SKDynamicMemoryWStream();
        using var document = SKDocument.CreatePdf(stream);
        SKTypeface regular = Face.Of(Weight.Regular).Typeface;
        SKTypeface bold = Face.Of(Weight.Bold).Typeface;
        using var ink = new SKPaint { IsAntialias = true };
        var paths = scene.All.OfType<PathItem>().Select(p => (Item: p, Path: SKPath.ParseSvgPathData(p.Path))).ToList();
        for (int i = 0; i < count; i++)
        {
            SKCanvas canvas = document.BeginPage((float)scene.WidthMm * PointsPerMm, (float)scene.HeightMm * PointsPerMm);
            canvas.Scale(PointsPerMm);
            foreach (TextItem text in scene.All.OfType<TextItem>())
            {
                using var font = new SKFont(text.Face == Face.Of(Weight.Bold) ? bold : regular, (float)text.SizeMm);
                using var builder = new SKTextBlobBuilder();
                ushort[] glyphs = text.Shaped.Glyphs;
                if (glyphs.Length == 0)
                {
                    continue;
                }

                float scale = (float)(text.SizeMm / text.Face.UnitsPerEm);
                SKPoint[] places = [.. text.Shaped.Positions.Select(x => new SKPoint(x * scale, 0))];
                builder.AddPositionedRun(glyphs, font, places);
                using SKTextBlob? blob = builder.Build();
                canvas.DrawText(blob, (float)text.XMm, (float)text.BaselineMm, ink);
            }

            foreach ((PathItem item, SKPath path) in paths)
            {
                canvas.Save();
                canvas.Translate((float)item.XMm, (float)item.YMm);
                canvas.Scale((float)item.ScaleMm);
                canvas.DrawPath(path, ink);
                canvas.Restore();
            }

            document.EndPage();
        }

        document.Close();
        return (int)stream.BytesWritten;
    }
}
