namespace Chandlery.Intake.Pictures;

/// <summary>A page's picture, recognised piece by piece.</summary>
/// <param name="Table">The words, as tesseract writes them.</param>
/// <param name="Pieces">The pieces; the words' picture numbers count them from 1.</param>
/// <param name="Lines">Ruled lines.</param>
/// <param name="Width">The page's width in pixels.</param>
/// <param name="Height">The page's height in pixels.</param>
internal sealed record PictureWords(string Table, IReadOnlyList<PagePiece> Pieces, RulingLines Lines, int Width, int Height)
{
    private const double MmPerInch = 25.4;
    private const int WantedDotsPerInch = 300;
    private const double MostLarger = 3;
    private const double LeastSkewDegrees = 0.03;
    private const double MarginMm = 1;
    private const double LeastInkMm2 = 0.02;

    /// <summary>Recognises a page: set level, its ruled lines taken off, and each cell of a ruled table by itself.</summary>
    /// <param name="file">PNG or JPEG.</param>
    /// <param name="dotsPerInch">Its resolution.</param>
    /// <param name="recognise">Recognises words.</param>
    /// <returns>Null when the picture cannot be read or nothing is recognised.</returns>
    public static PictureWords? Of(byte[] file, int dotsPerInch, PictureReader recognise)
    {
        if (dotsPerInch < 1 || GreyPicture.Decode(file) is not { } page)
        {
            return null;
        }

        byte ink = page.Threshold();
        double skew = Skew.Of(page, ink);
        double larger = Math.Clamp((double)WantedDotsPerInch / dotsPerInch, 1, MostLarger);
        if (Math.Abs(skew) > LeastSkewDegrees || larger > 1)
        {
            page = page.Turned(skew, larger);
        }

        page.Bleach(ink);
        int resolution = (int)Math.Round(dotsPerInch * larger);
        double pixelsPerMm = resolution / MmPerInch;
        var lines = RulingLines.Of(page, ink, pixelsPerMm);
        lines.Erase(page, ink, pixelsPerMm);
        IReadOnlyList<PagePiece> pieces = PiecesOf(page, ink, CellFinder.Of(lines, page.Width, page.Height, pixelsPerMm), pixelsPerMm);
        return recognise(TiffFile.Write([.. pieces.Select(p => p.Picture)], resolution), resolution) is { } table
            ? new PictureWords(table, pieces, lines, page.Width, page.Height)
            : null;
    }

    // First the page without its cells, then each cell that is not empty.
    private static List<PagePiece> PiecesOf(GreyPicture page, byte ink, IReadOnlyList<PixelBox> cells, double pixelsPerMm)
    {
        int margin = (int)Math.Round(MarginMm * pixelsPerMm);
        double leastInk = LeastInkMm2 * pixelsPerMm * pixelsPerMm;
        List<PagePiece> pieces = [];
        foreach (PixelBox cell in cells.Where(c => page.CountDarker(c, ink) > leastInk))
        {
            pieces.Add(new PagePiece(cell.Left - margin, cell.Top - margin, page.Cut(cell, margin)));
            page.Clear(cell);
        }

        return [new PagePiece(0, 0, page), .. pieces];
    }
}
