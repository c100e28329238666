using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Paper.Papers.Labels;

namespace Chandlery.Paper.Papers.LabelSheets;

/// <summary>A candle's label in the size of a stock.</summary>
public static class StockLabel
{
    /// <summary>The label; a reason in words where there is none.</summary>
    public static PaperOutcome Make(PaperRequest request, Stock stock) =>
        new LabelPaper().Make(
            request with
            {
                Assessment = request.Assessment with { Candle = request.Assessment.Candle with { Label = stock.Label } },
            }
        );

    /// <summary>What must be said of a label on a roll: a thermal printer takes dots, and it has no red; null where nothing must.</summary>
    public static string? Caution(Assessment a, Stock stock) =>
        stock.RollDotsPerInch is null || a.Label.Pictograms.Count == 0
            ? null
            : $"Caution: a thermal printer has no red. The frame of a hazard pictogram must be red ({a.Edition.Label.PictogramColoursClause}), so the roll must have it pre-printed, or print these labels in colour.";
}
