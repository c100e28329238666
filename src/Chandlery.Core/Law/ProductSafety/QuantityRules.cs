using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>What contents packages of a batch may have, and when the e-mark may stand on them.</summary>
/// <param name="Tolerances">How much a package may fall short.</param>
/// <param name="SharePercent">Percent of packages that may fall short by more than the tolerance.</param>
/// <param name="Times">No package may fall short by more than this many times the tolerance.</param>
/// <param name="MarkHeightMm">Least height of the e-mark, millimetres.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record QuantityRules(
    IReadOnlyList<ToleranceRow> Tolerances,
    double SharePercent,
    double Times,
    double MarkHeightMm,
    Citation Clause
)
{
    /// <summary>The row for a nominal quantity; null outside all ranges.</summary>
    public ToleranceRow? RowFor(double nominalGrams) =>
        Tolerances.FirstOrDefault(t => nominalGrams > t.AboveGrams && nominalGrams <= t.UpToGrams)
        ?? Tolerances.FirstOrDefault(t => nominalGrams == t.AboveGrams);
}
