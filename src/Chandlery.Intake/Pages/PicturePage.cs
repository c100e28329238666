using Chandlery.Intake.Pictures;
using UglyToad.PdfPig.Content;

namespace Chandlery.Intake.Pages;

/// <summary>Pages that are one picture, as scanners make them.</summary>
internal static class PicturePage
{
    /// <summary>What speaks against every value from such a page.</summary>
    public const string Doubt = "read from a picture of the page, where letters and figures are easily taken for others";

    private const double LeastOfPage = 0.5;
    private const double SameShape = 0.05;
    private const double MmPerPoint = 25.4 / 72;
    private const double PointsPerInch = 72;

    /// <summary>True when a picture covers the page, and letters that nobody sees lie under it.</summary>
    public static bool Covers(Page page) =>
        Of(page) is not null
        && page.Letters.Count > 0
        && page.Letters.All(l => l.RenderingMode == UglyToad.PdfPig.Core.TextRenderingMode.Neither);

    /// <summary>The page read from its picture, or without words when it cannot be read; null when no picture covers it.</summary>
    public static SheetPage? Of(Page page, PictureReader? recognise)
    {
        if (Of(page) is not { } picture)
        {
            return null;
        }

        double width = page.Width * MmPerPoint;
        double height = page.Height * MmPerPoint;
        var place = new Box(
            picture.BoundingBox.Left * MmPerPoint,
            (page.Height - picture.BoundingBox.Top) * MmPerPoint,
            picture.BoundingBox.Right * MmPerPoint,
            (page.Height - picture.BoundingBox.Bottom) * MmPerPoint
        );
        int resolution = (int)Math.Round(picture.WidthInSamples / picture.BoundingBox.Width * PointsPerInch);
        PictureWords? words = recognise is not null && FileOf(picture) is { } file ? PictureWords.Of(file, resolution, recognise) : null;
        return new SheetPage(
            page.Number,
            width,
            height,
            words is null ? [] : RecognisedWords.Of(words, place),
            words is null ? [] : [.. words.Lines.Level.Concat(words.Lines.Upright).Select(l => Rule(l, words, place, page.Number))]
        )
        {
            IsPicture = true,
            ValueDoubt = Doubt,
            Doubts =
            [
                words is null
                    ? $"page {page.Number} is a picture and was not read: look there for rows and figures"
                    : $"page {page.Number} was read from a picture: rows and figures may be missing or wrong; compare all of it",
            ],
        };
    }

    // A ruled line as thin as print has it.
    private static RuledLine Rule(PixelBox line, PictureWords words, Box place, int page)
    {
        double x = place.Width / words.Width;
        double y = place.Height / words.Height;
        var box = new Box(
            place.Left + (line.Left * x),
            place.Top + (line.Top * y),
            place.Left + (line.Right * x),
            place.Top + (line.Bottom * y)
        );
        return new RuledLine(
            page,
            line.Width > line.Height
                ? box with
                {
                    Top = box.CentreY,
                    Bottom = box.CentreY,
                }
                : box with
                {
                    Left = box.CentreX,
                    Right = box.CentreX,
                }
        );
    }

    private static IPdfImage? Of(Page page) =>
        page.GetImages().FirstOrDefault(i => i.BoundingBox.Width * i.BoundingBox.Height > LeastOfPage * page.Width * page.Height);

    // A picture as a file of its own: JPEG as it stands in the PDF, others as PNG. One that is turned on its page is not read.
    private static byte[]? FileOf(IPdfImage picture)
    {
        double shape = picture.BoundingBox.Width / picture.BoundingBox.Height * picture.HeightInSamples / picture.WidthInSamples;
        if (Math.Abs(shape - 1) > SameShape)
        {
            return null;
        }

        ReadOnlySpan<byte> raw = picture.RawBytes;
        return raw.Length > 2 && raw[0] == 0xff && raw[1] == 0xd8 ? raw.ToArray()
            : picture.TryGetPng(out byte[]? png) ? png
            : null;
    }
}
