using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Drawing;

/// <summary>Draws documents as PDF: vectors and embedded subset fonts only, the same bytes for the same document.</summary>
public static class PdfDrawing
{
    private const double PointsPerMm = 72 / 25.4;

    // Skia rounds page sizes to this grid; 2540 dots per inch keep a tenth of a millimetre exact.
    private const float GridDpi = 2540;

    // A fixed day keeps the bytes the same from run to run.
    private static readonly DateTime FixedDay = new(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>The PDF's bytes.</summary>
    public static byte[] Draw(PaperDocument document)
    {
        using var stream = new MemoryStream();
        var metadata = new SKDocumentPdfMetadata
        {
            Title = document.Title,
            Creator = "Chandlery",
            Producer = "Chandlery",
            Creation = FixedDay,
            Modified = FixedDay,
            RasterDpi = GridDpi,
            EncodingQuality = 101,
        };
        Dictionary<Face, SKTypeface> subsets = Subsets(document);
        try
        {
            using SKDocument pdf = SKDocument.CreatePdf(stream, metadata);
            foreach (Scene page in document.Pages)
            {
                SKCanvas canvas = pdf.BeginPage((float)(page.WidthMm * PointsPerMm), (float)(page.HeightMm * PointsPerMm));
                canvas.Scale((float)PointsPerMm);
                Canvas.Draw(canvas, page, face => subsets[face]);
                pdf.EndPage();
            }

            pdf.Close();
        }
        finally
        {
            foreach (SKTypeface typeface in subsets.Values)
            {
                typeface.Dispose();
            }
        }

        return PdfLanguage.Add(stream.ToArray(), document.Language);
    }

    private static Dictionary<Face, SKTypeface> Subsets(PaperDocument document)
    {
        var subsets = new Dictionary<Face, SKTypeface>();
        foreach (IGrouping<Face, TextItem> group in document.Pages.SelectMany(p => p.All).OfType<TextItem>().GroupBy(t => t.Face))
        {
            var byCodePoint = new Dictionary<int, ushort>();
            var glyphs = new HashSet<ushort>();
            foreach (TextItem text in group)
            {
                glyphs.UnionWith(text.Shaped.Glyphs);
                for (int i = 0; i < text.Shaped.Glyphs.Length; i++)
                {
                    byCodePoint[char.ConvertToUtf32(text.Shaped.Text, text.Shaped.Clusters[i])] = text.Shaped.Glyphs[i];
                }
            }

            byte[] font = FontSubset.Make(group.Key.Data, byCodePoint, glyphs);
            subsets[group.Key] = SKTypeface.FromData(SKData.CreateCopy(font));
        }

        return subsets;
    }
}
