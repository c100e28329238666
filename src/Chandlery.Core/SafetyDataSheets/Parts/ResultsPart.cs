using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>Classes of an area that are met, with how.</summary>
/// <param name="name">What rows of data call it.</param>
/// <param name="area">The area.</param>
internal sealed class ResultsPart(SheetPart name, HazardArea area) : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => name;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context) =>
        [
            new SheetTable(
                [30, 22, 48],
                [],
                [
                    .. context
                        .Results(area)
                        .Select(r =>
                            new[]
                            {
                                context.Texts.Told(r.Rule.Group),
                                SheetContext.ClassAndStatement(r),
                                context.Texts.Told($"{r.Working.Sentence} ({r.Working.Clause})"),
                            }
                        ),
                ]
            ),
        ];
}
