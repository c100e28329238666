using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Papers.SafetyDataSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.ProductInformation;

/// <summary>Prints what a shop needs of a safety data sheet.</summary>
public static class ProductInformationDocument
{
    private const double LineSpacing = 1.25;
    private const double PictogramMm = 14;
    private const double StepMm = 0.05;

    /// <summary>What a shop needs at the counter.</summary>
    private static readonly string[] Picked = ["1.1", "1.3", "2.1", "2.2", "4.1", "5.1", "7.1", "7.2", "13.1"];

    /// <summary>The page; null when template or data have problems or the text does not fit a page.</summary>
    public static PaperDocument? Make(SafetySheet sheet, PaperShop shop, Problems problems)
    {
        if (shop.Read(View(sheet), problems) is not { } document)
        {
            return null;
        }

        if (PageFitter.Fit(document, shop, LineSpacing, PictogramMm, StepMm) is { } page)
        {
            return new PaperDocument(document.Title, document.Language, [page]);
        }

        problems.Add(
            new TextPlace("templates/product-information.sbn", 0, 0),
            "The product information does not fit a page at its smallest text.",
            "Say less in the template, or lower its smallest-x-height."
        );
        return null;
    }

    private static ProductInformationView View(SafetySheet sheet) =>
        new(
            sheet.Language.Code,
            sheet.Product,
            sheet.Format,
            [.. Picked.Select(sheet.Find).OfType<SheetSubsection>().Select(SheetSubsectionView.Of)],
            string.Join(' ', sheet.Duty.Reasons.Select(r => r.Clause.Length == 0 ? r.Says : $"{r.Says} ({r.Clause})"))
        );
}
