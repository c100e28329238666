using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.LabelSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Microsoft.AspNetCore.Http;
using LabelSheetDocument = Chandlery.Paper.Papers.LabelSheets.SheetDocument;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Labels of a candle on a sheet, or one for a roll.</summary>
internal static class LabelSheetEndpoint
{
    private const int MostLabels = 2000;
    private const double FarthestOffsetMm = 20;

    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post(
            "/api/label-sheet",
            PageJson.Default.LabelSheetRequest,
            request => OnDesk.Answer(rooms.Current, request.Id, request.Edits, desk => Answer(rooms.Current, desk, request))
        );

    private static IResult Answer(Workroom room, CandleDesk desk, LabelSheetRequest request)
    {
        if (LabelStocks.All.FirstOrDefault(s => s.Id == request.Stock) is not { } stock)
        {
            return Endpoint.Missing("There is no such label stock.");
        }

        if (DeskPapers.Chosen(desk, request.Edition) is not { } a)
        {
            return OnDesk.NotAssessed;
        }

        LabelSheetWish wish = request.Options ?? new LabelSheetWish();
        if (WhyNot(wish, stock) is { } wrong)
        {
            return Endpoint.Refused(wrong);
        }

        if (wish.IsTest && stock.Sheet is not null)
        {
            return Answer(LabelSheetDocument.Calibration(stock, OptionsOf(wish)), request.Format, []);
        }

        return StockLabel.Make(DeskPapers.Request(room, desk, a, a.Languages[0], room.Brand), stock) switch
        {
            MadePaper label when stock.RollDotsPerInch is { } dots => Roll(label, stock, dots, a, request.Format),
            MadePaper label => Answer(Sheets(label.Document.Pages, stock, wish, a), request.Format, label.Warnings),
            MissingPaper missing => Endpoint.Refused($"Label not printed: {missing.Why}"),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static string? WhyNot(LabelSheetWish wish, Stock stock)
    {
        int most = stock.Sheet?.Count ?? 1;
        return wish.Start is < 1 || wish.Start > most ? $"The first free label lies between 1 and {most}."
            : wish.Copies is < 1 or > MostLabels ? $"How many labels lies between 1 and {MostLabels}."
            : !(Math.Abs(wish.OffsetXMm) <= FarthestOffsetMm && Math.Abs(wish.OffsetYMm) <= FarthestOffsetMm)
                ? $"The printer's offset lies between -{FarthestOffsetMm} and {FarthestOffsetMm} mm."
            : null;
    }

    private static SheetOptions OptionsOf(LabelSheetWish wish) =>
        new(wish.Start ?? 1, wish.IsCropMarked, new Millimetres(wish.OffsetXMm), new Millimetres(wish.OffsetYMm));

    // Without a number the rest of the sheet is filled; a front and its back are two labels.
    private static PaperDocument Sheets(IReadOnlyList<Scene> label, Stock stock, LabelSheetWish wish, Assessment a)
    {
        SheetOptions options = OptionsOf(wish);
        int copies = wish.Copies ?? Math.Max(1, (stock.Sheet!.Count - options.Start + 1) / label.Count);
        return LabelSheetDocument.Make(
            stock.Name,
            a.Languages[0].Code,
            [.. Enumerable.Repeat(label, copies).SelectMany(pages => pages)],
            stock,
            options
        );
    }

    private static IResult Roll(MadePaper label, Stock stock, double dots, Assessment a, string? format) =>
        format is null
            ? Answer(label.Document, null, StockLabel.Caution(a, stock) is { } caution ? [.. label.Warnings, caution] : label.Warnings)
            : Results.Bytes(ThermalDrawing.Draw(label.Document.Pages[0], dots), "image/png");

    private static IResult Answer(PaperDocument document, string? format, IReadOnlyList<string> warnings) =>
        format is null
            ? Endpoint.Json(new PreviewAnswer([.. DeskPapers.Pages(document)], warnings, null), PageJson.Default.PreviewAnswer)
            : Results.Bytes(PdfDrawing.Draw(document), "application/pdf");
}
