namespace Chandlery.Paper.Proofs.Reading;

/// <summary>
/// Reads a PDF for people as our writer makes it, from its bytes alone: a fraction of the syntax that there is, and so a fraction of
/// the time that a reader of any PDF takes to begin. Whatever it does not know, it leaves to that reader.
/// </summary>
internal static class OwnPdf
{
    /// <summary>Its pages; null when something is built otherwise than is read here.</summary>
    public static IReadOnlyList<PrintedPage>? TryRead(byte[] pdf)
    {
        try
        {
            var objects = new PdfObjects(pdf);
            Dictionary<string, object> root = objects.Of<Dictionary<string, object>>(objects.Trailer, "Root");
            Dictionary<string, object> tree = objects.Of<Dictionary<string, object>>(root, "Pages");
            Dictionary<string, PrintedFont> fonts = Fonts(objects, objects.Of<Dictionary<string, object>>(tree, "Resources"));
            return
            [
                .. objects
                    .Of<List<object>>(tree, "Kids")
                    .Select(kid => PageOf(objects, objects.Resolved(kid) as Dictionary<string, object> ?? [], fonts)),
            ];
        }
        catch (FormatException)
        {
            return null;
        }
    }

    private static Dictionary<string, PrintedFont> Fonts(PdfObjects objects, Dictionary<string, object> resources) =>
        objects
            .Of<Dictionary<string, object>>(resources, "Font")
            .Keys.ToDictionary(
                name => name,
                name => new PrintedFont(
                    objects,
                    objects.Of<Dictionary<string, object>>(objects.Of<Dictionary<string, object>>(resources, "Font"), name)
                )
            );

    private static PrintedPage PageOf(PdfObjects objects, Dictionary<string, object> page, IReadOnlyDictionary<string, PrintedFont> fonts)
    {
        if (objects.Of<List<object>>(page, "MediaBox") is not [0.0, 0.0, double width, double height])
        {
            throw new FormatException("a page does not begin at 0");
        }

        var reading = new PageReading(height, fonts);
        reading.Follow(objects.Stream(page, "Contents"));
        return new PrintedPage(width, height, reading.Letters, reading.Areas);
    }
}
