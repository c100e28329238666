using Chandlery.Workbench.Forms;

namespace Chandlery.Workbench.Desks;

/// <summary>Labels of a candle on a sheet or for a roll, as the page asks for them.</summary>
/// <param name="Id">Name of the candle or batch.</param>
/// <param name="Edits">What was changed on it; null for nothing.</param>
/// <param name="Stock">Name of the stock.</param>
/// <param name="Edition">Edition of the law; null for the first.</param>
/// <param name="Options">How they are put there; null for a whole sheet from its first label on.</param>
/// <param name="Format">pdf for the file; null to look at it.</param>
public sealed record LabelSheetRequest(
    string? Id,
    IReadOnlyList<FieldEdit>? Edits,
    string Stock,
    string? Edition = null,
    LabelSheetWish? Options = null,
    string? Format = null
);
