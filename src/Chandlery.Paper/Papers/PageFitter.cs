using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers;

/// <summary>Finds the largest text with which a document fits a single page.</summary>
internal static class PageFitter
{
    /// <summary>The page; null when the text does not fit even at its smallest.</summary>
    /// <param name="document">Its blocks, page size, and largest and smallest text.</param>
    /// <param name="shop">Drawings.</param>
    /// <param name="lineSpacing">Distance of lines, in text sizes.</param>
    /// <param name="pictogramMm">Side of hazard pictograms, millimetres.</param>
    /// <param name="stepMm">By how much the text shrinks from one try to the next, millimetres of x-height.</param>
    public static Scene? Fit(MarkupDocument document, PaperShop shop, double lineSpacing, double pictogramMm, double stepMm)
    {
        double bottom = document.HeightMm - document.MarginMm;
        for (double xHeight = document.XHeightMm; xHeight >= document.SmallestXHeightMm; xHeight -= stepMm)
        {
            var region = Region.Rectangle(document.MarginMm, document.MarginMm, document.WidthMm - document.MarginMm, bottom);
            LayoutResult tried = FlowLayout.Lay(document.Blocks, region, new LayoutSizes(xHeight, lineSpacing, pictogramMm), shop.Symbols);
            if (tried.EndMm <= bottom && tried.OverflowMm <= 0)
            {
                return new Scene(document.WidthMm, document.HeightMm, tried.Items, tried.Marks);
            }
        }

        return null;
    }
}
