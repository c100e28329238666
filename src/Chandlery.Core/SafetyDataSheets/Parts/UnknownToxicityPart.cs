using Chandlery.Core.Labelled;
using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>The law's statement on ingredients of unknown acute toxicity.</summary>
internal sealed class UnknownToxicityPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.UnknownToxicity;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context) =>
        context.Assessment.Classification.UnknownToxicity is { } unknown
            ? [new SheetText(StatementText.UnknownToxicity(context.Language, unknown))]
            : [];
}
