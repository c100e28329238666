using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.Cards;

/// <summary>Finds the largest text that fits a card.</summary>
internal static class CardFitter
{
    private const double LineSpacing = 1.25;
    private const double PictogramMm = 16;
    private const double StepMm = 0.02;

    /// <summary>The page; null with a problem when the text does not fit at its smallest.</summary>
    public static Scene? Fit(MarkupDocument document, string template, PaperShop shop, Problems problems)
    {
        if (PageFitter.Fit(document, shop, LineSpacing, PictogramMm, StepMm) is { } page)
        {
            return page;
        }

        problems.Add(
            new TextPlace("templates/" + template, 0, 0),
            $"The text does not fit a card of {document.WidthMm} x {document.HeightMm} mm at an x-height of {document.SmallestXHeightMm} mm.",
            "Make the card larger or say less in the template."
        );
        return null;
    }
}
