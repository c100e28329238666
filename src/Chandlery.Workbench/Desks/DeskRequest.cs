using Chandlery.Workbench.Forms;

namespace Chandlery.Workbench.Desks;

/// <summary>What the page sends: a candle, what was changed on it, and the paper that it shows.</summary>
/// <param name="Id">Name of the candle or batch; null or empty for a new candle.</param>
/// <param name="Edits">What was changed; null for nothing.</param>
/// <param name="Paper">The paper; null for the label under the first edition of the law.</param>
public sealed record DeskRequest(string? Id, IReadOnlyList<FieldEdit>? Edits = null, PaperWish? Paper = null);
