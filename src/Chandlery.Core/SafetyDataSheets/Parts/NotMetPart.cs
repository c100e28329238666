using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>Classes of an area that are not met, with the clauses of their criteria.</summary>
/// <param name="name">What rows of data call it.</param>
/// <param name="area">The area.</param>
internal sealed class NotMetPart(SheetPart name, HazardArea area) : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => name;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context) =>
        [
            new SheetTable(
                [50, 50],
                [],
                [
                    .. context
                        .NotMet(area)
                        .GroupBy(r => r.Clause.Text)
                        .Select(rules =>
                            new[] { string.Join("; ", rules.Select(r => context.Texts.Told(r.Group))), context.Texts.Cited(rules.Key) }
                        ),
                ]
            ),
        ];
}
