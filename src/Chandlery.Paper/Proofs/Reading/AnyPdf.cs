using Chandlery.Paper.Designs;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
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
                )
                {
                    Outline = string.IsNullOrWhiteSpace(l.Value) ? null : BoxOf(l.BoundingBox, page.Height),
                    IsLevel = PrintedLetter.RunsLevel(l.EndBaseLine.X - l.StartBaseLine.X, l.EndBaseLine.Y - l.StartBaseLine.Y),
                }),
            ],
            [.. page.Paths.Where(p => p.IsFilled).Select(p => AreaOf(p, page.Height)).OfType<PrintedArea>()]
        );

    private static PrintedArea? AreaOf(PdfPath path, double pageHeight) =>
        path.GetBoundingRectangle() is { } box ? new PrintedArea(BoxOf(box, pageHeight), ColourOf(path.FillColor)) : null;

    // What is turned has a box whose own sides are turned: the level one around it counts.
    private static Box BoxOf(PdfRectangle box, double pageHeight)
    {
        const double mm = PrintedPage.MmPerPoint;
        double left = Least(box.BottomLeft.X, box.BottomRight.X, box.TopLeft.X, box.TopRight.X);
        double right = -Least(-box.BottomLeft.X, -box.BottomRight.X, -box.TopLeft.X, -box.TopRight.X);
        double low = Least(box.BottomLeft.Y, box.BottomRight.Y, box.TopLeft.Y, box.TopRight.Y);
        double high = -Least(-box.BottomLeft.Y, -box.BottomRight.Y, -box.TopLeft.Y, -box.TopRight.Y);
        return new Box(left * mm, (pageHeight - high) * mm, (right - left) * mm, (high - low) * mm);
    }

    private static double Least(double a, double b, double c, double d) => Math.Min(Math.Min(a, b), Math.Min(c, d));

    private static PrintedColour ColourOf(IColor? colour)
    {
        (double r, double g, double b) = colour?.ToRGBValues() ?? (0, 0, 0);
        return new PrintedColour(r, g, b);
    }
}
