using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.SafetyDataSheets;

/// <summary>Prints a safety data sheet, and the one-page product information that is made of the same model.</summary>
public static class SafetySheetDocument
{
    private const double LineSpacing = 1.25;
    private const double PictogramMm = 14;

    /// <summary>What a shop needs at the counter.</summary>
    private static readonly string[] Picked = ["1.1", "1.3", "2.1", "2.2", "4.1", "5.1", "7.1", "7.2", "13.1"];

    /// <summary>The sheet, each page with product, revision and "page x of y"; null when template or data have problems.</summary>
    public static PaperDocument? Make(SafetySheet sheet, PaperShop shop, Problems problems)
    {
        if (shop.Read("safety-sheet.sbn", Model(sheet), problems) is not { } document)
        {
            return null;
        }

        IReadOnlyDictionary<string, string> words = sheet.Words.Words;
        string revision = $"{words["revised"]}: {sheet.Revised:yyyy-MM-dd} ({sheet.Revision})";
        return ManyPages.Lay(
            document,
            shop,
            (page, count) =>
                [
                    new Paragraph(
                        [new Span(sheet.Product, Weight.Bold), new Span($"   {words["title"]}   {revision}", Weight.Regular)],
                        0.9,
                        0,
                        Align.Left
                    ),
                ],
            (page, count) => $"{words["page"]} {page} {words["of"]} {count}"
        );
    }

    /// <summary>The page for shops; null when template or data have problems or the text does not fit a page.</summary>
    public static PaperDocument? ProductInformation(SafetySheet sheet, PaperShop shop, Problems problems)
    {
        if (shop.Read("product-information.sbn", Model(sheet), problems) is not { } document)
        {
            return null;
        }

        double bottom = document.HeightMm - document.MarginMm;
        var region = Region.Rectangle(document.MarginMm, document.MarginMm, document.WidthMm - document.MarginMm, bottom);
        LayoutResult? fitting = null;
        for (double xHeight = document.XHeightMm; fitting is null && xHeight >= document.SmallestXHeightMm; xHeight -= 0.05)
        {
            LayoutResult tried = FlowLayout.Lay(document.Blocks, region, new LayoutSizes(xHeight, LineSpacing, PictogramMm), shop.Symbols);
            fitting = tried.EndMm <= bottom && tried.OverflowMm <= 0 ? tried : null;
        }

        if (fitting is null)
        {
            problems.Add(
                new TextPlace("templates/product-information.sbn", 0, 0),
                "The product information does not fit a page at its smallest text.",
                "Say less in the template, or lower its smallest-x-height."
            );
            return null;
        }

        return new PaperDocument(
            document.Title,
            document.Language,
            [new Scene(document.WidthMm, document.HeightMm, fitting.Items, fitting.Marks)]
        );
    }

    private static Dictionary<string, object?> Model(SafetySheet sheet) =>
        new()
        {
            ["title"] = sheet.Words.Words["title"],
            ["section_word"] = sheet.Words.Words["section"],
            ["lang"] = sheet.Language.Code,
            ["name"] = sheet.Product,
            ["format"] = sheet.Format,
            ["warnings"] = sheet.Language.Code == "en" ? new List<object?>() : sheet.Warnings.Take(1).Select(w => (object?)w).ToList(),
            ["duty"] = string.Join(' ', sheet.Duty.Reasons.Select(r => r.Clause.IsNone ? r.Says : $"{r.Says} ({r.Clause})")),
            ["sections"] = sheet
                .Sections.Select(s =>
                    (object?)
                        new Dictionary<string, object?>
                        {
                            ["number"] = s.Number,
                            ["title"] = s.Title,
                            ["subsections"] = s.Subsections.Select(Subsection).ToList(),
                        }
                )
                .ToList(),
            ["picked"] = Picked.Select(sheet.Find).OfType<SheetSubsection>().Select(Subsection).ToList(),
        };

    private static object? Subsection(SheetSubsection s) =>
        new Dictionary<string, object?>
        {
            ["number"] = s.Number,
            ["title"] = s.Title,
            ["blocks"] = s.Blocks.Select(Block).ToList(),
        };

    private static object? Block(SheetBlock block) =>
        block switch
        {
            SheetText text => new Dictionary<string, object?> { ["kind"] = text.Strong ? "strong" : "text", ["text"] = text.Text },
            SheetPictograms p => new Dictionary<string, object?> { ["kind"] = "pictograms", ["codes"] = string.Join(' ', p.Codes) },
            SheetTable t => new Dictionary<string, object?>
            {
                ["kind"] = "table",
                ["widths"] = string.Join(' ', t.Widths),
                ["heads"] = t.Heads.Select(h => (object?)h).ToList(),
                ["rows"] = t.Rows.Select(r => (object?)r.Select(c => (object?)c).ToList()).ToList(),
            },
            _ => null,
        };
}
