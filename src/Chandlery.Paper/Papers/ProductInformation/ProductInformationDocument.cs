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
    internal static readonly string[] Picked = ["1.1", "1.3", "2.1", "2.2", "4.1", "5.1", "7.1", "7.2", "13.1"];

    /// <summary>
    /// One page where the text fits it, else as many as it needs, each with its number; null when template or data have problems.
    /// </summary>
    public static PaperDocument? Make(SafetySheet sheet, PaperShop shop, Problems problems)
    {
        if ((shop with { Breaks = sheet.Language.Breaks }).Read(View(sheet), problems) is not { } document)
        {
            return null;
        }

        IReadOnlyDictionary<string, string> words = sheet.Words.Words;
        return PageFitter.FitOrCount(
            document,
            shop,
            LineSpacing,
            PictogramMm,
            StepMm,
            (number, count) => ManyPages.Line(sheet.Product, $"{words["page"]} {number} {words["of"]} {count}")
        );
    }

    private static ProductInformationView View(SafetySheet sheet) =>
        new(
            sheet.Language.Code,
            sheet.Product,
            sheet.Format,
            sheet.Languages.Of(Picked) ?? "",
            [.. Picked.Select(sheet.Find).OfType<SheetSubsection>().Select(SheetSubsectionView.Of)]
        );
}
