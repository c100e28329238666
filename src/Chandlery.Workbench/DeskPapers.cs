using System.Text;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Making;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers.BenchSheets;
using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Papers.SafetyDataSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Workbench;

/// <summary>Documents of the candle on the desk.</summary>
internal static class DeskPapers
{
    /// <summary>Kinds of documents that the page offers.</summary>
    public static readonly IReadOnlyList<string> Kinds =
    [
        "label",
        "burn-card",
        "pocket-card",
        "shop-card",
        "bench-sheet",
        "safety-sheet",
        "product-information",
    ];

    private const double Dpi = 300;

    /// <summary>The document, or the reason why there is none.</summary>
    public static PaperDocument? Make(Workroom room, CandleDesk desk, Assessment a, string kind, int count, out string whyNot)
    {
        var problems = new Problems();
        whyNot = "";
        PaperDocument? document = null;
        if (kind is "label" or "safety-sheet" or "product-information" && a.StopsSale)
        {
            whyNot = "Something stops the sale, so this is not printed. See the findings.";
            return null;
        }

        switch (kind)
        {
            case "label":
                LabelResult? label = LabelDocument.Make(a, room.Shop, room.Lawbook.Burning, problems);
                whyNot = label?.Misfit is { } misfit
                    ? $"The text does not fit a label of {misfit.Shape.Request}. What would help: {string.Join("; ", misfit.Remedies)}."
                    : "";
                document = label?.Fitted is { } fitted ? new PaperDocument(a.Candle.Name, a.Languages[0].Code, fitted.Pages) : null;
                break;
            case "burn-card" or "pocket-card" or "shop-card":
                CardKind card =
                    kind == "burn-card" ? CardKind.Buyer
                    : kind == "pocket-card" ? CardKind.Pocket
                    : CardKind.Shop;
                document = CardDocument.Make(a, card, room.Shop, room.Lawbook.Burning, problems);
                break;
            case "bench-sheet":
                Wax? wax = desk.Catalogue.Find<Wax>(a.Candle.Wax, problems);
                document = wax is null ? null : BenchSheetDocument.Make(a, PouringPlan.Make(a, wax, count, 3), room.Shop, problems);
                break;
            case "safety-sheet" or "product-information":
                SafetySheet? sheet = SafetySheetMaker.Make(a, a.Languages[0], room.Lawbook, 1, problems);
                document =
                    sheet is null ? null
                    : kind == "safety-sheet" ? SafetySheetDocument.Make(sheet, room.Shop, problems)
                    : SafetySheetDocument.ProductInformation(sheet, room.Shop, problems);
                break;
            default:
                whyNot = "There is no such document.";
                break;
        }

        whyNot = whyNot.Length > 0 || problems.None ? whyNot : string.Join(' ', problems.Found.Select(p => p.ToString()));
        return document;
    }

    /// <summary>The document's bytes in a format; PNG and SVG show its first page.</summary>
    public static (byte[] Bytes, string Type) Draw(PaperDocument document, string format) =>
        format switch
        {
            "png" => (PngDrawing.Draw(document.Pages[0], Dpi), "image/png"),
            "svg" => (Encoding.UTF8.GetBytes(SvgDrawing.Draw(document.Pages[0], document.Title)), "image/svg+xml"),
            _ => (PdfDrawing.Draw(document), "application/pdf"),
        };
}
