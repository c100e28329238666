using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>How each class was found.</summary>
internal sealed class MethodsPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.Methods;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context) =>
        [
            new SheetTable(
                [30, 70],
                [context.Texts.Word("classes"), context.Texts.Word("method")],
                [
                    .. context.Assessment.Classification.Classes.Select(c =>
                        new[]
                        {
                            SheetContext.ClassAndStatement(c),
                            context.Texts.Phrase(
                                SheetPhrase.CalculationMethod,
                                ("formula", context.Texts.English(c.Working.Formula)),
                                ("clause", c.Working.Clause.Text)
                            ),
                        }
                    ),
                ]
            ),
        ];
}
