using Chandlery.Paper.Blocks;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers;

/// <summary>Finds the largest text with which a document fits a single page.</summary>
internal static class PageFitter
{
    // Rows that stand further apart than that no longer look as if they belonged together.
    private const double MostBetweenRowsEm = 1.6;

    /// <summary>The page; null when the text does not fit even at its smallest.</summary>
    /// <param name="document">Its blocks, page size, and largest and smallest text. One with a foot fills its page.</param>
    /// <param name="shop">Drawings.</param>
    /// <param name="lineSpacing">Distance of lines, in text sizes.</param>
    /// <param name="pictogramMm">Side of hazard pictograms, millimetres.</param>
    /// <param name="stepMm">By how much the text shrinks from one try to the next, millimetres of x-height.</param>
    public static Scene? Fit(MarkupDocument document, PaperShop shop, double lineSpacing, double pictogramMm, double stepMm)
    {
        double bottom = document.HeightMm - document.MarginMm;
        Region Page() => Region.Rectangle(document.MarginMm, document.MarginMm, document.WidthMm - document.MarginMm, bottom);
        for (double xHeight = document.XHeightMm; xHeight >= document.SmallestXHeightMm; xHeight -= stepMm)
        {
            var sizes = new LayoutSizes(xHeight, lineSpacing, pictogramMm);
            LayoutResult tried = FlowLayout.Measure(document.Blocks, Page(), sizes, shop.Symbols);
            if (tried.EndMm <= bottom && tried.OverflowMm <= 0)
            {
                LayoutSizes filling = sizes with { SpareRowMm = BetweenRows(document.Blocks, bottom - tried.EndMm, sizes) };
                LayoutResult set = FlowLayout.Lay(document.Blocks, Page(), filling, shop.Symbols);
                return new Scene(document.WidthMm, document.HeightMm, set.Items, set.Marks);
            }
        }

        return null;
    }

    /// <summary>The document on one page where it fits, and else on as many as it needs, each with a foot that counts them.</summary>
    /// <param name="document">Its blocks, page size, and largest and smallest text.</param>
    /// <param name="shop">Drawings.</param>
    /// <param name="lineSpacing">Distance of lines on one page, in text sizes.</param>
    /// <param name="pictogramMm">Side of hazard pictograms on one page, millimetres.</param>
    /// <param name="stepMm">By how much the text shrinks from one try to the next, millimetres of x-height.</param>
    /// <param name="foot">The foot of one of several pages, by its number and their count.</param>
    public static PaperDocument FitOrCount(
        MarkupDocument document,
        PaperShop shop,
        double lineSpacing,
        double pictogramMm,
        double stepMm,
        Func<int, int, Block> foot
    ) =>
        Fit(document, shop, lineSpacing, pictogramMm, stepMm) is { } page
            ? new PaperDocument(document.Title, document.Language, [page])
            : ManyPages.Lay(document, shop, (_, _) => [], (number, count) => [foot(number, count)]);

    // What a page with a foot has to spare is dealt out evenly; the foot takes up the rest.
    private static double BetweenRows(IReadOnlyList<Block> blocks, double spareMm, LayoutSizes sizes)
    {
        int places = blocks.Sum(b => b.Stretches);
        return places == 0 || !blocks.Any(b => b is Push) ? 0 : Math.Min(spareMm / places, MostBetweenRowsEm * sizes.TypeSizeMm);
    }
}
