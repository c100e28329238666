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
}
