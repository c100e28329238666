using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.SafetyDataSheets;

/// <summary>Prints a safety data sheet.</summary>
public static class SafetySheetDocument
{
    /// <summary>The sheet, each page with product, revision and "page x of y"; null when template or data have problems.</summary>
    public static PaperDocument? Make(SafetySheet sheet, PaperShop shop, Problems problems)
    {
        if ((shop with { Breaks = sheet.Language.Breaks }).Read(View(sheet), problems) is not { } document)
        {
            return null;
        }

        IReadOnlyDictionary<string, string> words = sheet.Words.Words;
        string revision = $"{words["revised"]}: {sheet.Revised:yyyy-MM-dd} ({sheet.Revision})";
        return ManyPages.Lay(
            document,
            shop,
            (_, _) => ManyPages.Head(sheet.Product, $"{words["title"]} · {revision}"),
            (page, count) => [ManyPages.Line(sheet.Maker, $"{words["page"]} {page} {words["of"]} {count}")]
        );
    }

    private static SafetySheetView View(SafetySheet sheet) =>
        new(
            sheet.Words.Words["title"],
            sheet.Language.Code,
            sheet.Product,
            sheet.Format,
            sheet.LanguageNote is { } note ? [note] : [],
            [.. sheet.Sections.Select(s => SheetSectionView.Of(s, sheet.Words.Words["section"]))]
        );
}
