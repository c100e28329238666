using Chandlery.Core.Classified;
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
                                ("formula", IsCodes(c) ? c.Working.Formula : context.Texts.Told(c.Working.Formula)),
                                ("clause", context.Texts.Cited(c.Working.Clause.Text))
                            ),
                        }
                    ),
                ]
            ),
        ];

    // The formula of a sum is made of codes and signs, which are the same in every language.
    private static bool IsCodes(ClassResult result) => result.Rule is LimitRule { AddsSubstances: true };
}
