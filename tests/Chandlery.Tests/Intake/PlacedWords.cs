using Chandlery.Paper.Fonts;
using SkiaSharp;

namespace Chandlery.Tests.Intake;

/// <summary>Prints the smallest sheets: words at places of pages of A4.</summary>
internal static class PlacedWords
{
    private const float TypePoints = 8;
    private const float PointsPerMm = 72f / 25.4f;
    private const float FirstLineMm = 20;

    /// <summary>A PDF of pages, each word at its place, millimetres from the left and the top.</summary>
    public static byte[] Print(params (float X, float Y, string Text)[][] pages)
    {
        using var pdf = new MemoryStream();
        using (SKDocument document = SKDocument.CreatePdf(pdf))
        using (var font = new SKFont(Face.Of(Weight.Regular).Typeface, TypePoints) { Subpixel = true, LinearMetrics = true })
        using (var ink = new SKPaint { Color = SKColors.Black })
        {
            foreach ((float X, float Y, string Text)[] page in pages)
            {
                SKCanvas canvas = document.BeginPage(595, 842);
                foreach ((float x, float y, string text) in page)
                {
                    canvas.DrawText(text, x * PointsPerMm, y * PointsPerMm, SKTextAlign.Left, font, ink);
                }

                document.EndPage();
            }

            document.Close();
        }

        return pdf.ToArray();
    }

    /// <summary>Lines of a page, one under the other.</summary>
    /// <param name="lineMm">From one to the next, millimetres.</param>
    /// <param name="lines">Their words.</param>
    public static (float X, float Y, string Text)[] Lines(float lineMm, (float X, string Text)[][] lines) =>
        [.. lines.SelectMany((line, at) => line.Select(w => (w.X, FirstLineMm + (at * lineMm), w.Text)))];
}
