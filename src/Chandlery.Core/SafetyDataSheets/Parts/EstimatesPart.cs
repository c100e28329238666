using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>Acute toxicity estimates of ingredients.</summary>
internal sealed class EstimatesPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.Estimates;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context)
    {
        var row = new SubstanceRow(context.Texts, context.Figures);
        return
        [
            new SheetTable(
                [40, 60],
                [],
                [
                    .. context
                        .Assessment.Substances.Where(s => s.Toxicity.Count > 0)
                        .Select(s => new[] { s.Name, string.Join("; ", s.Toxicity.Select(row.Estimate)) }),
                ]
            ),
        ];
    }
}
