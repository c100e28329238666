using Chandlery.Core.Labelled;
using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>The candle's classes with their statements.</summary>
internal sealed class ClassesPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.Classes;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context) =>
        [
            new SheetTable(
                [30, 70],
                [],
                [
                    .. context.Assessment.Classification.Classes.Select(c =>
                        new[] { SheetContext.ClassAndStatement(c), StatementText.WithOrgans(context.Statement(c.Statement), c.Organs) }
                    ),
                ]
            ),
        ];
}
