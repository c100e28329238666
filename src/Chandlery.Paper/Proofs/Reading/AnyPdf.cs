using Chandlery.Paper.Designs;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Graphics;
using UglyToad.PdfPig.Graphics.Colors;

namespace Chandlery.Paper.Proofs.Reading;

/// <summary>Reads anybody's PDF. Before its first one the library reads the metrics of fonts that every reader has, which takes a while.</summary>
internal static class AnyPdf
{
    /// <summary>Its pages.</summary>
    public static IReadOnlyList<PrintedPage> Read(byte[] pdf)
    {
        using PdfDocument document = PdfDocument.Open(pdf);
        return [.. document.GetPages().Select(PageOf)];
    }

    private static PrintedPage PageOf(Page page) =>
        new(
            page.Width,
            page.Height,
            [
                .. page.Letters.Select(l => new PrintedLetter(
                    l.Value,
                    l.StartBaseLine.X,
                    l.StartBaseLine.Y,
                    l.EndBaseLine.X,
                    l.BoundingBox.Height,
                    ColourOf(l.Color)
                )),
            ],
            [.. page.Paths.Where(p => p.IsFilled).Select(p => AreaOf(p, page.Height)).OfType<PrintedArea>()]
        );

    private static PrintedArea? AreaOf(PdfPath path, double pageHeight)
    {
        const double mm = PrintedPage.MmPerPoint;
        return path.GetBoundingRectangle() is { } box
            ? new PrintedArea(
                new Box(box.Left * mm, (pageHeight - box.Top) * mm, box.Width * mm, box.Height * mm),
                ColourOf(path.FillColor)
            )
            : null;
    }

    private static PrintedColour ColourOf(IColor? colour)
    {
        (double r, double g, double b) = colour?.ToRGBValues() ?? (0, 0, 0);
        return new PrintedColour(r, g, b);
    }
}
