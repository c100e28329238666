using Chandlery.Workbench.Forms;

namespace Chandlery.Workbench.Desks;

/// <summary>That every design shall be drawn with a candle.</summary>
/// <param name="Id">Name of the candle.</param>
/// <param name="Edits">What was changed on it; null for nothing.</param>
/// <param name="Brand">What was changed on the brand; null for nothing.</param>
public sealed record DesignsRequest(string Id, IReadOnlyList<FieldEdit>? Edits = null, IReadOnlyList<FieldEdit>? Brand = null);
