using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Pdf;

/// <summary>A page that was drawn.</summary>
/// <param name="Packed">Its content stream, packed.</param>
/// <param name="Boxes">Entries of the page dictionary that tell its boxes.</param>
/// <param name="Elements">The outermost elements of its structure; empty for a press.</param>
/// <param name="ByMark">For each marked content the element that it belongs to.</param>
internal sealed record PageContent(
    byte[] Packed,
    string Boxes,
    IReadOnlyList<StructureElement> Elements,
    IReadOnlyList<StructureElement> ByMark
)
{
    // Common practice, no source: thin enough to be seen as an outline, thick enough for every plotter's software to find.
    private const double CutLineMm = 0.1;

    // What a label's page comes to.
    private const int UsualBytes = 16_384;

    /// <summary>Draws a page all of which was taken.</summary>
    public static PageContent Draw(Scene page, DocumentParts parts, PdfPurpose purpose)
    {
        bool isPress = purpose == PdfPurpose.Press;
        double bleed = isPress ? page.BleedMm * PdfUnits.PointsPerMm : 0;
        double width = page.WidthMm * PdfUnits.PointsPerMm;
        double height = page.HeightMm * PdfUnits.PointsPerMm;
        var content = new ByteText(UsualBytes);
        PageMarks? marks = isPress ? null : new PageMarks(content, page.HeightMm);
        var surface = new PageSurface(content, parts, marks);
        surface.Begin(bleed, height + bleed);
        surface.DrawAll(page.Items);
        if (isPress && page.CutPath is { } outline)
        {
            surface.Draw(new PathItem(outline, 0, 0, 1, null, Ink.CutLine, CutLineMm));
        }

        marks?.Close();
        string outer = Box("/MediaBox", 0, 0, width + (2 * bleed), height + (2 * bleed));
        string boxes = isPress
            ? outer
                + Box("/BleedBox", 0, 0, width + (2 * bleed), height + (2 * bleed))
                + Box("/TrimBox", bleed, bleed, width + bleed, height + bleed)
            : outer;
        return new PageContent(Deflater.Pack(content.Written), boxes, marks?.Elements ?? [], marks?.ByMark ?? []);
    }

    private static string Box(string name, params ReadOnlySpan<double> sides)
    {
        ByteText box = new ByteText().Put(name).Put("[");
        foreach (double side in sides)
        {
            box.Spaced(side, PdfUnits.PointDecimals);
        }

        return System.Text.Encoding.ASCII.GetString(box.Put("]").Written);
    }
}
